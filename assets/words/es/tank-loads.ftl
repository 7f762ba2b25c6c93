## desk/views/tank_loads/adjuvants.rs

tank-loads-the-sets-appear-when-the-mix = Los conjuntos aparecen cuando la mezcla tiene un plaguicida, un lote y un volumen de caldo.
tank-loads-which-adjuvant-suits-every-partner = ¿Qué coadyuvante conviene a todos los productos de la mezcla?
tank-loads-lean-to = preferir
tank-loads-the-lean-and-the-weeds-and = La preferencia, y las malezas y el día, deciden solo donde las etiquetas, los consejos y las publicaciones dejan elegir.
tank-loads-lean-to-each = Preferir: { $each }
tank-loads-no-set-suits-all = Ningún conjunto conviene a todos: { $text }.
tank-loads-in-the-mix = en la mezcla
tank-loads-no-adjuvant = sin coadyuvante
tank-loads-take = Tomar
tank-loads-take-names = Tomar { $names }
tank-loads-add-and-take = Agregar y tomar
tank-loads-add-and-take-names = Agregar a la bodega y tomar { $names }
tank-loads-add-and-take-does = Pone en la bodega lo que falta, conocido solo por su clase, y el conjunto en la mezcla
tank-loads-is-in-the-shed-with-its-class = Ya en la bodega, solo con la clase: { $names }. Escriba lo demás de la etiqueta que compre.
tank-loads-compare = Comparar
tank-loads-compare-names = Comparar { $names }
tank-loads-to-buy = { $rate }, por comprar
tank-loads-rate-not-known = dosis desconocida
tank-loads-no-adjuvant-14d = Sin coadyuvante
tank-loads-price-not-typed = precio no anotado
tank-loads-than-set = { $why } que el conjunto { $than }
tank-loads-in-the-mix-chosen-by-hand = en la mezcla, elegido a mano
tank-loads-one-and-other = { $one } y { $other }

## desk/views/tank_loads/cards.rs

tank-loads-there-is-no-load-yet-so = Todavía no hay carga, así que no hay tarjeta.
tank-loads-issue-and-open-for-printing = Emitir y abrir para imprimir
tank-loads-issue-and-save-as-pdf = Emitir y guardar como PDF…
tank-loads-open-a-reprint = Abrir una reimpresión
tank-loads-save-a-reprint-as-pdf = Guardar una reimpresión como PDF…
tank-loads-open-a-reprint-of-the-old = Abrir una reimpresión de las tarjetas viejas
tank-loads-save-a-reprint-of-the-old = Guardar una reimpresión de las tarjetas viejas…
tank-loads-it-came-out-differently-in-the = En el lote resultó distinto…
tank-loads-card-of-load = Tarjeta de la carga
tank-loads-card-of-load-at = Tarjeta de la carga { $at }
tank-loads-to = { $first } a { $last }
tank-loads-issued = Emitidas
tank-loads-cards-the-plan-still-says-the = Tarjetas { $range }, { $when }. El plan todavía dice lo mismo.
tank-loads-superseded = Reemplazadas
tank-loads-the-plan-has-changed-since-cards = El plan cambió desde que se emitieron las tarjetas { $range } ({ $when }). Saque las tarjetas viejas del camión y emita nuevas.
tank-loads-not-issued-yet = Todavía sin emitir
tank-loads-the-picture-is-a-draft-of = La imagen es un borrador de lo que el plan dice ahora.
tank-loads-stop-to-settle-before-cards-can = { $stops ->
    [one] { $stops } Alto por resolver antes de que se puedan emitir tarjetas
   *[other] { $stops } Altos por resolver antes de que se puedan emitir tarjetas
}
tank-loads-issued-before = Emitidas antes
tank-loads-load = { $number }, carga { $load }, { $when }
tank-loads-reprint = Reimprimir
tank-loads-reprint-card = Reimprimir la tarjeta { $number }
tank-loads-holds-a-text-that-is-not = "{ $name }" contiene un texto que no se entiende; corríjalo primero
tank-loads-the-pass-is-gone = la aplicación ya no existe
tank-loads-a-stop-stands-settle-it-first = hay un Alto pendiente; resuélvalo primero
tank-loads-other-new-cards-are-being-laid = se están preparando otras tarjetas nuevas; espere a que estén listas, o cancélelas
tank-loads-the-evening-sheet = La hoja de la víspera
tank-loads-the-evening-sheet-with = { $cards ->
        [one] La hoja de la víspera con { $cards } tarjeta
       *[other] La hoja de la víspera con { $cards } tarjetas
    }
tank-loads-laying-out-the-evening-sheet = Se prepara la hoja de la víspera
tank-loads-laying-out-cards = Se preparan las tarjetas
tank-loads-the-evening-sheet-was-not-written = No se escribió la hoja de la víspera
tank-loads-the-cards-were-not-written = No se escribieron las tarjetas
tank-loads-it-is-no-longer-known-which = ya no se sabe de qué tarjetas se trataba; elíjalas otra vez
tank-loads-written-to-but = Se guardó en { $place }: { $what }; pero sus números se dieron mientras tanto a otras tarjetas, así que no deben usarse; emítalas otra vez
tank-loads-written-to = Se guardó en { $place }: { $what }{ $since }
tank-loads-handed-to-the-systems-viewer = Pasó al visor del sistema: { $what }: { $place }{ $since }
tank-loads-written-but-no-program-to-show = Se guardó: { $what }; pero ningún programa para mostrar PDF respondió: { $place }
tank-loads-the-folder-for-passing-files = la carpeta para archivos de paso: { $error }
tank-loads-count-cards = { $cards ->
        [one] { $cards } tarjeta
       *[other] { $cards } tarjetas
    }
tank-loads-card = tarjeta
tank-loads-cards = tarjetas

## desk/views/tank_loads/compare.rs

tank-loads-back = Atrás
tank-loads-back-to-all-sets = Volver a todos los conjuntos
tank-loads-in-the-mix-now = En la mezcla ahora
tank-loads-take-this-set-into-the-mix = Poner este conjunto en la mezcla
tank-loads-their-cost = su costo
tank-loads-not-known = no se conoce
tank-loads-for-the-pass = { $currency }{ $cost } por la aplicación
tank-loads-all-products = todos los productos
tank-loads-only-here = solo aquí
tank-loads-known-once-is-in-the-shed = se conoce cuando haya { $class } en la bodega
tank-loads-in-load = { $name } { $rate }, { $text } en la carga { $load }
tank-loads-nothing-to-settle-that-the-other = nada por resolver que el otro no tenga
tank-loads-and-more = y { $only } más
tank-loads-adjuvants = coadyuvantes
tank-loads-why = por qué
tank-loads-none = ninguno
tank-loads-member-to-buy = { $name } { $rate }, por comprar

## desk/views/tank_loads/day.rs

tank-loads-large-weeds = malezas grandes
tank-loads-thick-weeds = malezas densas
tank-loads-more = { $weeds } más
tank-loads-weeds-and-day = Malezas y día
tank-loads-weeds = Malezas
tank-loads-volunteer-corn-waterhemp = maíz voluntario, amaranto acuático
tank-loads-the-weeds-are = las malezas están
tank-loads-large-for-the-products = grandes para los productos
tank-loads-they-stand-in = sufren
tank-loads-extreme-heat = calor extremo
tank-loads-air-at-its-warmest = aire en lo más caliente
tank-loads-air-at-its-warmest-da5 = Aire en lo más caliente
tank-loads-carrier = Portador
tank-loads-drought = sequía
tank-loads-heat = calor
tank-loads-cold = frío
tank-loads-thick = densas
tank-loads-weeds-row = malezas
tank-loads-carrier-row = portador
tank-loads-in-carrier = en { $carrier }

## desk/views/tank_loads/evening.rs

tank-loads-the-best-order-of-the-day = Se está buscando el mejor orden del día; abajo está como antes del último cambio.
tank-loads-the-order-below-is-not-looked = La búsqueda del orden de abajo no llegó hasta el final.
tank-loads-look-for-the-best-order = Buscar el mejor orden
tank-loads-to-settle-on-this-day = Por resolver en este día
tank-loads-nothing-stands-against-this-order = Nada se opone a este orden.
tank-loads-settle = Resolver { $name }
tank-loads-without-a-rig = Sin aspersora
tank-loads-the-rigs-leave-at = las aspersoras salen a las
tank-loads-the-rigs-leave-at-701 = Las aspersoras salen a las
tank-loads-and-are-home-by = y vuelven a más tardar a las
tank-loads-the-rigs-are-home-by = Las aspersoras vuelven a más tardar a las
tank-loads-words-for-the-crew = mensaje para la cuadrilla
tank-loads-words-for-the-crew-of-the = Mensaje del día para la cuadrilla
tank-loads-printed-on-the-evening-sheet = se imprime en la hoja de la víspera
tank-loads-the-day-is-drawn-when-its = El día se dibuja cuando se puede decir su horario: anote a qué hora salen las aspersoras, y la velocidad, el ancho de barra y la eficiencia de campo de la aspersora.
tank-loads-with-a-stop = , con un Alto
tank-loads-home-at = vuelve a las { $home }
tank-loads-leaves-at = sale a las { $leaves }
tank-loads-of-cleaning-and-road = { $not_spraying } de limpieza y camino
tank-loads-take-the-best-order = Tomar el mejor orden
tank-loads-take-the-best-order-for = Tomar el mejor orden para { $name }
tank-loads-is-recorded-as-sprayed = { $name } está registrada como hecha.
tank-loads-no-place = sin lugar
tank-loads-time-not-known = tiempo no conocido
tank-loads-earlier = Antes
tank-loads-later = Después
tank-loads-let-go = Soltar
tank-loads-let-go-from-its-place = Soltar { $name } de su lugar
tank-loads-hold = Fijar
tank-loads-hold-at-its-place = Fijar { $name } en su lugar
tank-loads-join-the-loads = Juntar las cargas
tank-loads-the-passes-are-gone = las aplicaciones ya no existen
tank-loads-on-the-truck = En el camión
tank-loads-nothing-yet-no-pass-of-the = Todavía nada: ninguna aplicación del día tiene tarjetas.
tank-loads-evening-sheet = Hoja de la víspera
tank-loads-open-it-for-printing = Abrirla para imprimir
tank-loads-open-the-evening-sheet-for-printing = Abrir la hoja de la víspera para imprimir
tank-loads-save-it-as-pdf = Guardarla como PDF…
tank-loads-save-the-evening-sheet-as-pdf = Guardar la hoja de la víspera como PDF…
tank-loads-issue-and-open-all = { $ready ->
        [one] Emitir las tarjetas de { $ready } aplicación y abrir todo
       *[other] Emitir las tarjetas de { $ready } aplicaciones y abrir todo
    }
tank-loads-issue-and-save-all = { $ready ->
        [one] Emitir las tarjetas de { $ready } aplicación y guardar todo…
       *[other] Emitir las tarjetas de { $ready } aplicaciones y guardar todo…
    }
tank-loads-the-order-of-the-day-is = el orden del día todavía no está; espere a que esté, o haga que se busque otra vez
tank-loads-spray-earlier-in-the-day = Aplicar { $name } más temprano en el día
tank-loads-spray-later-in-the-day = Aplicar { $name } más tarde en el día
tank-loads-e-g-20-30 = p. ej. 20:30
tank-loads-open-name = Abrir { $name }

## desk/views/tank_loads/forecast.rs

tank-loads-the-forecast-was-not-read = No se leyó el pronóstico
tank-loads-is-read = Se leyó { $source }
tank-loads-forecast = Pronóstico
tank-loads-read-a-file = Leer un archivo…
tank-loads-read-a-forecast-from-a-file = Leer un pronóstico de un archivo…
tank-loads-type-hours-by-hand = Anotar horas a mano
tank-loads-a-forecast-is-no-measurement-measure = Un pronóstico no es una medición. Mida a la altura de la barra antes de empezar.
tank-loads-hours = { $count ->
        [one] { $count } hora
       *[other] { $count } horas
    }
tank-loads-at-to-at2 = { $at } a { $at2 }
tank-loads-there-is-none-yet-read-one = Todavía no hay ninguno. Lea uno de un archivo CSV de cualquier formato, o anote las horas de la aplicación.
tank-loads-not-said-where-from = sin decir de dónde
tank-loads-from = de { $file }
tank-loads-what-the-columns-of-hold = Qué contienen las columnas de { $source }
tank-loads-the-first = La primera: { $first }
tank-loads-no-line-of-the-file-can = No se puede leer ninguna línea del archivo.
tank-loads-they-replace-the-forecast-from-on = Reemplazan el pronóstico desde { $at }; las horas anteriores se quedan.
tank-loads-take-this-hour = Tomar esta hora
tank-loads-take-these = Tomar estas { $count } horas
tank-loads-take-the-hours = Tomar las horas
tank-loads-no-hour-was-read = No se leyó ninguna hora
tank-loads-taken-from = { $count ->
        [one] Se tomó { $count } hora de { $source }
       *[other] Se tomaron { $count } horas de { $source }
    }
tank-loads-leave-it = Dejarlo
tank-loads-leave-the-file = Dejar el archivo
tank-loads-its-first-lines = sus primeras líneas
tank-loads-show-more-columns = { $hidden ->
        [one] Mostrar { $hidden } columna más
       *[other] Mostrar { $hidden } columnas más
    }
tank-loads-not-taken = no se toma
tank-loads-what-holds = Qué contiene "{ $heading }"
tank-loads-as-written = como está escrito
tank-loads-unit-of = Unidad de "{ $heading }"
tank-loads-hours-of = Horas del { $day }
tank-loads-hour-to-add = Hora que se agrega
tank-loads-add = Agregar { $hour }
tank-loads-each-figure-with-its-unit-what = Cada cifra con su unidad; lo que no se conoce queda vacío y no se toma por calma, seco o fresco.
tank-loads-air-at = Aire a las { $when }
tank-loads-humidity-at = Humedad a las { $when }
tank-loads-wind-at = Viento a las { $when }
tank-loads-gusts-at = Ráfagas a las { $when }
tank-loads-wind-from-at = Viento desde, a las { $when }
tank-loads-rain-at = Lluvia a las { $when }
tank-loads-cloud-at = Nubes a las { $when }
tank-loads-column = columna
tank-loads-holds = contiene
tank-loads-unit = unidad
tank-loads-hour = hora
tank-loads-choose = elija
tank-loads-air = aire
tank-loads-humidity = humedad
tank-loads-wind = viento
tank-loads-gusts = ráfagas
tank-loads-wind-from = viento desde
tank-loads-rain = lluvia
tank-loads-cloud = nubes
tank-loads-from-where = desde
tank-loads-again = { $time } otra vez
tank-loads-remove-hour = Quitar { $when }
tank-loads-read-at = { $day } a las { $time }
tank-loads-typed-by-hand = anotado a mano

## desk/views/tank_loads/heading.rs

tank-loads-name-of-the-pass = Nombre de la aplicación
tank-loads-day-of-the-pass = Día de la aplicación
tank-loads-choose-fields = Elija lotes
tank-loads-first-and-rest-more = { $first } y { $rest } más
tank-loads-choose-a-water = Elija un agua
tank-loads-choose-a-rig = Elija una aspersora
tank-loads-hard = dureza { $hardness }
tank-loads-type-the-spray-volume = Anote el volumen de caldo
tank-loads-load-cards-superseded = Tarjetas de carga, reemplazadas
tank-loads-load-cards = Tarjetas de carga
tank-loads-plan = Plan
tank-loads-sprayer = Aspersora
tank-loads-hours-1d4 = Horas
tank-loads-jar-test = Prueba del frasco
tank-loads-in-all = { $total } en total
tank-loads-of-spraying = { $time } aplicando
tank-loads-hours-hours = Horas: { $hours }
tank-loads-fields-in-the-order-they-are = Lotes, en el orden en que se aplican
tank-loads-add-a-field = Agregar un lote
tank-loads-add-a-field-e12 = + Agregar un lote
tank-loads-the-farm-has-no-field-yet = La finca todavía no tiene lotes; agregue el primero en Lotes.
tank-loads-water = Agua
tank-loads-the-shed-has-no-water-yet = La bodega todavía no tiene agua; agregue una ahí con su análisis de laboratorio.
tank-loads-rig-and-setting = Aspersora y ajuste
tank-loads-the-shed-has-no-rig-yet = La bodega todavía no tiene aspersora; agréguela ahí.
tank-loads-spray-volume-a80 = volumen de caldo
tank-loads-spray-volume-over-ground = Volumen de caldo por superficie
tank-loads-nozzle-set = juego de boquillas
tank-loads-speed = Velocidad
tank-loads-pressure = Presión
tank-loads-by-the-nozzle-set = { $pressure } según el juego de boquillas
tank-loads-as-the-set-gives = como da el juego
tank-loads-as-the-rig = como la aspersora: { $class }
tank-loads-droplet-class = Clase de gota
tank-loads-boom-height = altura de la barra
tank-loads-boom-height-095 = Altura de la barra
tank-loads-e-g-20-in-or-50 = p. ej. 20 in o 50 cm
tank-loads-carrier-density = densidad del portador
tank-loads-carrier-density-bab = Densidad del portador
tank-loads-of = de { $carrier_kind }
tank-loads-the-tank-is-filled = el tanque se llena
tank-loads-the-tank-is-filled-a1c = El tanque se llena
tank-loads-not-before = no antes de
tank-loads-not-to-begin-before = No empezar antes de
tank-loads-operator-of-the-pass = Operador de la aplicación
tank-loads-who-sprays-it = quién la hace
tank-loads-words-for-the-crew-0ab = Mensaje para la cuadrilla
tank-loads-usually-fitted = montado normalmente: { $fitted }
tank-loads-not-on = { $id } (no en { $name })
tank-loads-nozzle-set-229 = Juego de boquillas
tank-loads-the-rig-has-no-usual-one = la aspersora no tiene valor usual
tank-loads-the-rigs-usual = lo usual de la aspersora, { $usual }
tank-loads-not-on-the-farm = { $id } (no está en la finca)
tank-loads-only = solo
tank-loads-part-of-to-spray = Parte de { $name } que se aplica
tank-loads-spray-earlier = Aplicar { $name } antes
tank-loads-leave-out = Omitir
tank-loads-leave-name-out = Omitir { $name }
tank-loads-speed-row = velocidad
tank-loads-pressure-row = presión
tank-loads-droplets-row = gotas
tank-loads-operator-row = operador

## desk/views/tank_loads/hours.rs

tank-loads-when-may-it-be-sprayed-on = ¿Cuándo se puede aplicar el { $date }?
tank-loads-the-farm-has-no-forecast-yet = La finca todavía no tiene pronóstico, así que no se puede evaluar ninguna hora. Abra un archivo de pronóstico o anote las horas en la hoja de abajo.
tank-loads-the-forecast-does-not-reach-this = El pronóstico no llega hasta este día, así que no se puede evaluar ninguna hora. Abra uno más nuevo o anote las horas en la hoja de abajo.
tank-loads-hours-of-the-day = Horas del día
tank-loads-is-not-in-the-forecast = { $key } no está en el pronóstico
tank-loads-the-second-time = , la segunda vez
tank-loads-not-given = no se da
tank-loads-chance-of-rain = probabilidad de lluvia
tank-loads-delta-t = Delta T
tank-loads-wet-bulb = bulbo húmedo
tank-loads-it-is-inside-every-limit-that = Está dentro de todos los límites que se conocen.
tank-loads-what-speaks-against-it = Qué se opone
tank-loads-what-the-hours-are-held-against = Con qué se comparan las horas
tank-loads-outside-it = fuera de él
tank-loads-it-rests-on = se basa en
tank-loads-the-passes-of-in-their-order = Las aplicaciones del { $date } en su orden
tank-loads-go-to = Ir a { $name }
tank-loads-source-not-named = fuente sin nombre
tank-loads-too-short = { $span }, demasiado corto
tank-loads-no-hour-allowed = ninguna hora permitida
tank-loads-limit = límite
tank-loads-forecast-source = Pronóstico: { $source }.
tank-loads-forecast-read = Pronóstico: { $source }, leído el { $read }.
tank-loads-a-forecast-is-no-measurement-measure-wind = Un pronóstico no es una medición: mida viento, dirección y temperatura a la altura de la barra antes de empezar. No aplique durante una inversión térmica, ni hacia personas, agua, abejas o un cultivo sensible.

## desk/views/tank_loads/jar.rs

tank-loads-there-is-no-jar-test-yet = Todavía no hay prueba del frasco; le hace falta el volumen de caldo por superficie, en la línea del encabezado.
tank-loads-jar-test-jar = Prueba del frasco, { $jar }
tank-loads-print = Imprimir…
tank-loads-jar-test-to-print = Prueba del frasco, para imprimir
tank-loads-in-the-jar = { $name } en el frasco
tank-loads-not-complete-see-the-jar-tests = incompleta; vea la página propia de la prueba del frasco
tank-loads-jar-filled-to = Frasco lleno hasta
tank-loads-jar = Frasco
tank-loads-not-complete-so-there-is-no = incompleta, así que no hay hoja que imprimir
tank-loads-save-as-pdf = Guardar como PDF…
tank-loads-save-the-jar-test-as-pdf = Guardar la prueba del frasco como PDF…
tank-loads-look-after-and = Mire después de { $looks } y { $last }
tank-loads-the-jar-test-was-not-written = No se escribió la prueba del frasco: { $problem }
tank-loads-the-jar-test-was-not-written-72c = No se escribió la prueba del frasco
tank-loads-the-jar-test-is-written-to = La prueba del frasco se guardó en { $path }{ $since }
tank-loads-it-is-no-longer-known-which-one-was-meant = ya no se sabe de cuál se trataba; elíjala otra vez
tank-loads-the-spray-volume-over-ground-is = el volumen de caldo por superficie no está anotado

## desk/views/tank_loads/loads.rs

tank-loads-loads = Cargas
tank-loads-fill-the-tank-to = Llenar el tanque hasta
tank-loads-its-mark = su marca
tank-loads-fill-to = llenar hasta
tank-loads-the-loads-appear-when-the-pass = Las cargas aparecen cuando la aplicación tiene lotes, una aspersora y un volumen de caldo.
tank-loads-full-tanks-then-a-rest = llenos y un resto
tank-loads-even-loads = cargas iguales
tank-loads-by-your-aims = por sus metas
tank-loads-their-order-is-set-in-the = Su orden se fija en la bodega, en la página Finca.
tank-loads-other-sizes-of-loads = Otros tamaños de cargas ({ $count }), caldo en el tanque, cargas decididas a mano
tank-loads-spray-in-the-tank-loads-decided = Caldo en el tanque, cargas decididas a mano
tank-loads-in-the-tank-already = ya en el tanque
tank-loads-in-the-tank-already-24f = Ya en el tanque
tank-loads-this-pass = esta aplicación
tank-loads-mixed-elsewhere = mezclado en otro lugar
tank-loads-the-pass-that-it-was-mixed = La aplicación para la que se mezcló
tank-loads-beyond-the-ground = más allá del terreno
tank-loads-mixed-beyond-the-ground = Mezclado más allá del terreno
tank-loads-load-at = carga { $at }
tank-loads-load-as-decided = Carga { $at } según lo decidido
tank-loads-decide-load = Decidir la carga { $number }
tank-loads-take-words = Tomar { $words }
tank-loads-load-number-volume-ground-fields = Carga { $number }: { $volume }, { $ground }, { $fields }
tank-loads-nothing = nada

## desk/views/tank_loads/mix.rs

tank-loads-tank-mix = Mezcla de tanque
tank-loads-add-the-products-of-this-pass = Agregue los productos de esta aplicación con sus dosis: "{ $volume }", "0.25 % v/v", "{ $mass }", "{ $active }".
tank-loads-water-carrier-in-load-number = { $water } { $carrier } en la carga { $number }
tank-loads-product-by-its-place = producto, por su lugar
tank-loads-over-ground = por superficie
tank-loads-in-this-load = en esta carga
tank-loads-not-in-the-shed = { $product } (no está en la bodega)
tank-loads-rate-of = Dosis de { $name }
tank-loads-name-in-load-load = { $name } en la carga { $load }
tank-loads-place-of-show-the-order = Lugar { $number } de { $name }, mostrar el orden
tank-loads-take-it-out-of-the-mix = Sacarlo de la mezcla
tank-loads-take-out-of-the-mix = Sacar { $name } de la mezcla
tank-loads-but-at-least-at-most-over = Pero al menos, o como máximo, por superficie
tank-loads-bounds-over-ground-for = Límites por superficie para { $name }
tank-loads-not-reckoned = no calculado
tank-loads-see-what-there-is-to-settle = Vea qué hay por resolver
tank-loads-name-over-ground = { $name } por superficie
tank-loads-but-at-least = pero al menos
tank-loads-least-of-over-ground = Mínimo de { $name } por superficie
tank-loads-at-most = como máximo
tank-loads-most-of-over-ground = Máximo de { $name } por superficie
tank-loads-the-shed-has-no-product-yet = La bodega todavía no tiene productos; agregue ahí el primero.
tank-loads-add-a-product = + Agregar un producto
tank-loads-add-a-product-to-the-mix = Agregar un producto a la mezcla
tank-loads-published-mixing-order = Orden de mezcla publicado
tank-loads-first-fill = primer llenado
tank-loads-how-full-before-the-first-product = Qué tan lleno antes del primer producto
tank-loads-rate = dosis
tank-loads-order = orden
tank-loads-water-short = agua

## desk/views/tank_loads/mod.rs

tank-loads-no-pass-is-planned-yet = Todavía no hay aplicación planeada
tank-loads-its-fields-in-fields = sus lotes en Lotes
tank-loads-its-products-in-shed = sus productos en Bodega
tank-loads-its-water-in-shed = su agua en Bodega
tank-loads-its-sprayer-in-shed = su aspersora en Bodega
tank-loads-plan-the-first-one-at-the = Planee la primera a la izquierda.
tank-loads-a-pass-needs-what-the-farm = Una aplicación necesita lo que la finca todavía no tiene: agregue primero { $missing }.
tank-loads-the-demo-farm-shows-how-it = La finca de demostración enseña cómo se ve cuando todo está: menú Finca, "Abrir una copia de la finca de demostración".
tank-loads-load-as-it-goes-in = Carga { $number }, en el orden en que entra
tank-loads-the-tank = El tanque
tank-loads-the-gauge-fills-when-the-pass = El indicador se llena cuando la aplicación tiene lotes, una aspersora y un volumen de caldo.
tank-loads-show-working = { $name }: { $text }, mostrar el cálculo

## desk/views/tank_loads/passes.rs

tank-loads-plan-a-pass = + Planear una aplicación
tank-loads-recorded-as-sprayed = registrada como hecha
tank-loads-cards-superseded = tarjetas reemplazadas
tank-loads-the-day-as-a-whole = El día completo: { $date }
tank-loads-the-day-as-a-whole-its = El día completo: su orden, el camión, la hoja de la víspera
tank-loads-new-pass = Aplicación nueva
tank-loads-date-new-pass = { $date } aplicación nueva
tank-loads-remove = ¿Quitar "{ $name }"?
tank-loads-remove-it = Quitarla
tank-loads-keep-it = Conservarla
tank-loads-copy = { $date } { $name } (copia)
tank-loads-name-copy = { $name } (copia)
tank-loads-count-fields = { $fields ->
        [one] { $fields } lote
       *[other] { $fields } lotes
    }
tank-loads-count-loads = { $loads ->
        [one] { $loads } carga
       *[other] { $loads } cargas
    }
tank-loads-remove-its-issued-cards-stay = { $issued ->
        [one] ¿Quitar "{ $name }"? Su { $issued } tarjeta emitida se queda en el archivo.
       *[other] ¿Quitar "{ $name }"? Sus { $issued } tarjetas emitidas se quedan en el archivo.
    }

## desk/views/tank_loads/preview.rs

tank-loads-load-card = Tarjeta de carga { $number }
tank-loads-the-card-cannot-be-laid-out = No se puede preparar la tarjeta: { $problem }
tank-loads-laying-out-the-card = se prepara la tarjeta
tank-loads-the-layout-stopped = se detuvo la preparación
tank-loads-the-picture-has-the-wrong-size = la imagen tiene un tamaño equivocado

## desk/views/tank_loads/rest.rs

tank-loads-it-came-out-differently-in-the-field = En el lote resultó distinto
tank-loads-loads-filled-so-far = cargas llenadas hasta ahora
tank-loads-none-yet = todavía ninguna
tank-loads-still-in-the-tank = todavía en el tanque
tank-loads-still-in-the-tank-095 = Todavía en el tanque
tank-loads-volume-from-here-on = volumen de aquí en adelante
tank-loads-spray-volume-from-here-on = Volumen de caldo de aquí en adelante
tank-loads-rates-from-here-on = dosis de aquí en adelante
tank-loads-rate-of-from-here-on = Dosis de { $name } de aquí en adelante
tank-loads-are-left-of-spray-load = { $loads ->
        [one] Quedan { $ground }: { $spray } de caldo, { $loads } carga
       *[other] Quedan { $ground }: { $spray } de caldo, { $loads } cargas
    }
tank-loads-no-ground-is-left = No queda terreno
tank-loads-plan-the-rest-and-see-its = Planear el resto y ver sus tarjetas
tank-loads-keep-what-was-sprayed = Guardar lo que se aplicó
tank-loads-carry-it-into = Pasarlo a "{ $name }"
tank-loads-left-of = queda de { $name }
tank-loads-ground-left-of = Terreno que queda de { $name }
tank-loads-and-on-top-of-that = y además
tank-loads-more-ground-of = Más terreno de { $name }
tank-loads-nothing-more = nada
tank-loads-are-left-some-in-the-tank = { $loads ->
        [one] Quedan { $ground }: { $spray } de caldo, de los que { $tank } están en el tanque, { $loads } carga
       *[other] Quedan { $ground }: { $spray } de caldo, de los que { $tank } están en el tanque, { $loads } cargas
    }

## desk/views/tank_loads/settle.rs

tank-loads-worth-knowing = Vale la pena saber
tank-loads-to-settle = Por resolver
tank-loads-nothing-speaks-against-this-pass-as = Nada se opone a esta aplicación, hasta donde se evalúa.
tank-loads-not-judged-yet-decide-from-the = Todavía sin evaluar, decida según las etiquetas: { $not_judged }.
tank-loads-water-and-jar-test = Agua y prueba del frasco
tank-loads-working-shown = Cálculo que se muestra
tank-loads-a-click-on-a-number-shows = Un clic en un número muestra cómo se obtuvo.
tank-loads-water-conditioner = Acondicionador de agua
tank-loads-the-ions-tie-up = los iones retienen { $most }
tank-loads-need-of = Necesidad de { $name }
tank-loads-no-water-is-chosen = No se ha elegido agua.
tank-loads-nothing-in-this-mix-asks-for = Nada en esta mezcla pide uno.
tank-loads-words-in-load-load = { $words } en la carga { $load }
tank-loads-not-in-the-mix = { $name }, no está en la mezcla:
tank-loads-none-in-the-shed = { $name }, no hay en la bodega
tank-loads-plan-row = plan

## desk/views/tank_loads/sprayer.rs

tank-loads-which-nozzles-do-this-pass-best = ¿Qué boquillas hacen mejor esta aplicación?
tank-loads-no-rig-is-chosen-yet-choose = Todavía no se ha elegido aspersora; elíjala en la línea del encabezado.
tank-loads-has-no-nozzle-set-yet-type = { $name } todavía no tiene juego de boquillas. Anote sus boquillas de la tabla del fabricante, y esta página dice velocidad, presión y gotas.
tank-loads-the-spray-volume-over-ground-is-not-typed-yet = El volumen de caldo por superficie todavía no está anotado; anótelo en la línea del encabezado, en la aspersora.
tank-loads-nothing-can-be-told-of-the = No se puede decir nada de los juegos de boquillas de { $name }.
tank-loads-go-to-in-shed = Ir a { $name } en Bodega
tank-loads-show-in-the-picture = Mostrar { $name } en la imagen
tank-loads-not-as-planned = no como está planeado: { $as_planned }
tank-loads-in-this-pass = en esta aplicación
tank-loads-take-the-speed = Tomar la velocidad
tank-loads-take-for-this-pass = Tomar { $name } para esta aplicación
tank-loads-is-the-nozzle-set-of-this = { $name } es el juego de boquillas de esta aplicación; con deshacer vuelve el anterior
tank-loads-at-is-the-setting-of-this = { $name } a { $speed } es el ajuste de esta aplicación; con deshacer vuelve el anterior
tank-loads-pressure-and-droplets-over-speed = Presión y gotas según la velocidad: { $name }
tank-loads-picture-of-pressure-over-speed-with = Imagen de la presión según la velocidad con { $name }. Planeado: { $figures }. { $sentence }
tank-loads-setting-of-this-pass = Ajuste de esta aplicación
tank-loads-with-this-set = Con este juego
tank-loads-each-nozzle-gives = cada boquilla da
tank-loads-valves-open = válvulas abiertas
tank-loads-not-typed = no anotado
tank-loads-last-calibration = Última calibración
tank-loads-gives-what-a-new-nozzle-gives = da lo que da una boquilla nueva
tank-loads-of-nozzles-caught-worn-blocked-or = { $odd } de { $nozzles } boquillas recogidas están gastadas, tapadas o son de otro tamaño
tank-loads-none-is-kept-for-this-set = No se guarda ninguna para este juego.
tank-loads-calibrations-in-shed = Calibraciones en Bodega
tank-loads-how-long-it-takes = Cuánto tarda
tank-loads-the-time-is-known-once-the = El tiempo se conoce cuando la aspersora tiene velocidad, ancho de barra y eficiencia de campo; anótelos en Bodega.
tank-loads-not-in-it = No incluye: { $lacks }.
tank-loads-what-stays-in-the-rig-and = Qué queda en la aspersora, y cómo se enjuaga
tank-loads-this-is-known-once-the-rig = Esto se conoce cuando la aspersora tiene anotado lo que queda al vaciarse; anótelo en Bodega.
tank-loads-after-the-last-load = Después de la última carga
tank-loads-what-stays-in-the-rig = Qué queda en la aspersora
tank-loads-stay-in-tank-lines-and-boom = quedan en tanque, líneas y barra; no está anotado cuánta agua hay para enjuagar.
tank-loads-stay-in-tank-lines-and-boom-water-of-water = quedan en tanque, líneas y barra; hay { $water } de agua para enjuagar.
tank-loads-before-the-mix-arrives-at-the = Antes de que la mezcla llegue a las boquillas, { $volume } pasan por líneas y barra.
tank-loads-no-cleaning-beyond-that-is-known = No se sabe que se pida otra limpieza antes de la siguiente aplicación de esta aspersora.
tank-loads-cleaning-before-the-next-pass-of = Limpieza antes de la siguiente aplicación de esta aspersora
tank-loads-leaves-of-the-strength = deja { $strength } de la concentración
tank-loads-the-best-with-the-water-on = lo mejor con el agua a bordo
tank-loads-with-the-water-on-board = con el agua a bordo
tank-loads-more-water-than-is-on-board = más agua de la que hay a bordo
tank-loads-gives-more-than-a-new-nozzle = da { $off } % más que una boquilla nueva
tank-loads-gives-less-than-a-new-nozzle = da { $off } % menos que una boquilla nueva
tank-loads-before-the-mix-arrives-on-ground = Antes de que la mezcla llegue a las boquillas, { $volume } pasan por líneas y barra, en { $ground }.
