## desk/views/shed/advice.rs

shed-an-adjuvant = un coadyuvante
shed-what-not-to-mix-it-with = con qué no mezclarlo
shed-in-free-words = en palabras libres
shed-something-else = otra cosa
shed-no-advice-yet-add-what-an = Todavía no hay consejos. Agregue lo que le dijo un asesor, un distribuidor o una oficina del condado, con el día.
shed-someone-not-named = alguien sin nombre
shed-add-advice = + Agregar consejo
shed-advice = Consejos
shed-whose-advice-it-is = de quién es el consejo
shed-whose-it-is-a-person-or = de quién es: una persona o una oficina
shed-who-said-it-and-of-what = Quién lo dijo, y sobre qué
shed-given-on = dado el
shed-every-pesticide = todo plaguicida
shed-with-water = con agua
shed-which-is-gone = { $id }, que ya no existe
shed-what-it-says = Qué dice
shed-where-it-holds = Dónde vale
shed-crop-of-the = { $of ->
        [advice] cultivo del consejo
       *[rule] cultivo de la norma
    }
shed-any-crop = cualquier cultivo
shed-crop-from-the-fields = cultivo de los lotes
shed-from-stage = desde la etapa
shed-to-stage = hasta la etapa
shed-both-included = ambas incluidas
shed-in-every-weather-and-carrier = con cualquier clima y portador
shed-add-a-condition = Agregar una condición
shed-add-a-condition-to-the = { $of ->
        [advice] Agregar una condición al consejo
       *[rule] Agregar una condición a la norma
    }
shed-group = grupo { $group }
shed-about-something-from-the-shed = sobre algo de la bodega
shed-it-speaks-of = habla de
shed-adjuvant-class = clase de coadyuvante
shed-rate-at-least = dosis al menos
shed-at-least = al menos
shed-rate-at-most = dosis como máximo
shed-at-most = como máximo
shed-but-over-ground = pero por superficie
shed-over-ground-at-least = por superficie al menos
shed-over-ground-at-most = por superficie como máximo
shed-not-together-with = no junto con
shed-an-active-a-group-a-kind = un ingrediente activo, un grupo, un tipo de producto
shed-nor-within = ni dentro de
shed-nor-within-days = ni dentro de, días
shed-days-before-and-after-on-the = días antes y después en el mismo lote; 0 si es solo en el tanque
shed-in-these-words = con estas palabras
shed-what-was-said = lo que se dijo
shed-typed-in-the-file-choose-what = { $other }, anotado en el archivo; elija de qué habla
shed-which-products-it-speaks-of = De qué productos habla
shed-none-in-the-shed-write-an = De ninguno de la bodega. Escriba un ingrediente activo, un grupo como "grupo 1", o un producto como se llama aquí.
shed-nothing-typed-yet = todavía nada anotado
shed-for = para { $advice }
shed-local-advice-stands-below = El consejo local está por debajo de toda etiqueta y por encima de las publicaciones generales.
shed-about = sobre
shed-any = cualquiera
shed-crop = cultivo
shed-stages = etapas
shed-conditions = condiciones
shed-from-hint = desde
shed-to-hint = hasta
shed-adjuvant = coadyuvante
shed-stance-box = postura
shed-rate = dosis
shed-owner = { $of ->
        [advice] consejo
       *[rule] norma
    }
shed-for-where = para { $advice } { $applies }

## desk/views/shed/conditions.rs

shed-in-extreme-heat = con calor extremo
shed-in-cold = con frío
shed-in-drought = con sequía
shed-on-large-weeds = en malezas grandes
shed-where-weeds-stand-thick = donde las malezas son densas
shed-against-a-weed = contra una maleza
shed-with-a-partner = con otro producto de la mezcla
shed-with-a-partner-that-has-a = con otro producto de la mezcla que tiene un surfactante completo
shed-without-another-pesticide-in-the-tank = sin otro plaguicida en el tanque
shed-without-a-complete-surfactant-built-in = sin un surfactante completo incorporado
shed-in-a-carrier = en un portador
shed-below-a-spray-volume = por debajo de un volumen de caldo
shed-above-a-spray-volume = por encima de un volumen de caldo
shed-with-droplets-finer-than-a-class = con gotas más finas que una clase
shed-with-droplets-of-a-class-or = con gotas de una clase o más gruesas
shed-above-a-rate = por encima de una dosis
shed-up-to-a-rate = hasta una dosis
shed-in-air-warmer-than = con el aire más caliente que
shed-in-air-colder-than = con el aire más frío que
shed-but-at-least-or-at-most = pero al menos, o como máximo, por superficie
shed-it-says-so-only = Lo dice solamente
shed-only-under-a-condition = Solo con una condición
shed-but-at-least = pero al menos
shed-at-least-over-ground = { $name }: al menos por superficie
shed-and-at-most = y como máximo
shed-at-most-over-ground = { $name }: como máximo por superficie
shed-over-ground = por superficie
shed-condition = { $name }: condición { $at }
shed-group-active-class = grupo, ingrediente activo, clase
shed-with-droplets-finer-than = con gotas más finas que
shed-with-droplets = con gotas
shed-or-coarser = o más gruesas
shed-up-to = hasta
shed-warmer-than = más caliente que
shed-colder-than = más frío que
shed-only = solo
shed-and-also = y
shed-against = contra
shed-weed = maleza
shed-with = con
shed-in = en
shed-below = por debajo de
shed-above = por encima de

## desk/views/shed/front.rs

shed-front-panel = Panel frontal
shed-not-stated = no se indica
shed-not-looked-at-for-a = no se toma en cuenta con este tipo: { $kind }
shed-signal-word = palabra de advertencia
shed-restricted-use = uso restringido
shed-yes-for-certified-applicators-only = sí, solo para aplicadores certificados
shed-surfactant-built-in = surfactante incorporado
shed-not-typed = no anotado
shed-no-none = no, ninguno
shed-yes-charge-not-stated = sí, carga eléctrica no indicada
shed-yes = sí, { $charge }
shed-the-label-says-that-no-other = la etiqueta dice que no hace falta otro
shed-the-label-says-that-no-other-surfactant-is-needed = la etiqueta dice que no hace falta otro surfactante
shed-it-serves-this-product-a-partner = Sirve a este producto; otro de la mezcla puede pedir uno más.
shed-of-the-surfactant-in-it = del surfactante que contiene
shed-add-an-active = + Agregar un ingrediente activo
shed-the-content-says = el contenido dice { $short }
shed-counted-as = se cuenta como { $short }
shed-usually-the-label-decides = lo usual: { $usual }; decide la etiqueta
shed-formulation = formulación
shed-grade = grado
shed-density = densidad
shed-registration = registro oficial
shed-charge = carga eléctrica
shed-active-row = ingrediente activo
shed-group-row = grupo
shed-no = no
shed-active-n = ingrediente activo { $n }
shed-content-of = contenido de { $what }
shed-basis-of = base de { $what }
shed-group-of = grupo de { $what }
shed-another-active = + Otro ingrediente activo

## desk/views/shed/guidance.rs

shed-local-advice = Consejo local
shed-published = Publicado
shed-common-practice = Práctica común
shed-what-others-print = Lo que otros publican
shed-no-guidance-read-the-label = No hay recomendaciones: lea la etiqueta.
shed-guidance-to-be-checked-what-you = Recomendaciones por comprobar; decide lo que usted anota de la etiqueta.
shed-the-label-says-the-same = La etiqueta dice lo mismo, { $place }.
shed-on-the-label-as-well-type = También en la etiqueta; anote allí su página.
shed-the-label-speaks-of-it-in = La etiqueta habla de ello a su manera.
shed-it-stands-on-the-label-too = También está en la etiqueta…
shed-adds-it-to-the-label-where = Lo agrega a la etiqueta, donde usted anota la página en la que lo encontró
shed-it-stands-on-the-label-too-says-applies-source = También está en la etiqueta: { $says } { $applies } { $source }
shed-with-a-water-that-is-gone = con un agua que ya no existe, { $water }
shed-with-water-of = con agua de { $name }
shed-but = { $text }, pero { $bound }
shed-not-together-with-what = no junto con { $what }
shed-not-together-with-nor-within-of = { $days ->
        [one] no junto con { $what }, ni dentro de { $days } día de ello
       *[other] no junto con { $what }, ni dentro de { $days } días de ello
    }
shed-to = { $number } a { $most }
shed-least-to-most = { $least } a { $most }
shed-at-least-least = al menos { $least }
shed-at-most-most = como máximo { $most }
shed-from-on = desde { $from }
shed-up-to-to = hasta { $to }
shed-from-to = de { $from } a { $to }
shed-one-or-other = { $one } o { $other }
shed-but-both = { $text }, pero { $least } y { $most }
shed-in-crop = en { $crop }
shed-the-label-speaks-of-it-in-place = La etiqueta habla de ello a su manera, { $place }.

## desk/views/shed/house.rs

shed-what-holds-for-all-passes-the = Lo que vale para todas las aplicaciones: el nombre en las tarjetas, las unidades, el papel, las marcas con que mide.
shed-units = Unidades
shed-these-are-the-units-that-numbers = En estas unidades se muestran los números. Usted puede escribir en cualquiera, y queda como lo escribió.
shed-a-bare-gal-is-the-us = "gal" a secas es el galón estadounidense. Escriba "imp gal" para el imperial.
shed-where-the-usual-limits-come-from = De dónde vienen los límites usuales
shed-name-of-the-farm = nombre de la finca
shed-reading = Lectura
shed-us-gallons-pounds-acres = EE. UU.: galones, libras, acres
shed-imperial-imperial-gallons-pounds-acres = imperial: galones imperiales, libras, acres
shed-metric-litres-kilograms-hectares = métrico: litros, kilogramos, hectáreas
shed-sign-of-the-currency = signo de la moneda
shed-load-cards = Tarjetas de carga
shed-language-of-the-cards = idioma de las tarjetas
shed-names-and-what-you-type-from = los nombres, y lo que usted anota de una etiqueta, quedan como los escribió
shed-in-an-emergency = en una emergencia
shed-telephone-lines-for-an-emergency = teléfonos para una emergencia
shed-measuring = Medición
shed-finest-mark-liquids = marca más fina, líquidos
shed-finest-mark-for-liquids = marca más fina para líquidos
shed-amounts-are-rounded-to-it-a = las cantidades se redondean a ella; un producto puede tener la suya
shed-finest-mark-dry = marca más fina, secos
shed-finest-mark-for-dry-products = marca más fina para productos secos
shed-place = Lugar
shed-latitude-longitude = latitud, longitud
shed-time-zone = zona horaria
shed-is-not-a-time-zone-known = no es una zona horaria conocida aquí
shed-zones-that-may-be-meant = ¿Cuál quiere decir?
shed-zones-of-the-nearest-cities = De las ciudades más cercanas; compruebe si la suya es la misma:
shed-height-above-the-sea = altura sobre el mar
shed-not-known = no se conoce
shed-for-the-pressure-of-the-air = para la presión del aire, en la que se basa Delta T
shed-sizes-of-loads = Tamaños de las cargas
shed-what-comes-first-weighs-more-than = Lo que va primero pesa más que todo lo que le sigue. Vale para las aplicaciones cuyas cargas se dimensionan con estas metas.
shed-move-up = Subir
shed-move-down = Bajar
shed-fields-that-share-no-load = Lotes que no comparten carga
shed-two-fields-one-after-the-other = Dos lotes seguidos se aplican con cargas distintas cuando difieren en lo que está marcado.
shed-less-ground-than-planned = Menos superficie que la planeada
shed-rows-on-the-card-every = renglones en la tarjeta cada
shed-so-that-they-fit = los que quepan
shed-of-ground = de terreno
shed-what-this-farm-keeps-to = A qué se atiene esta finca
shed-where-no-label-and-no-law = Donde ninguna etiqueta y ninguna ley dice más. Una casilla vacía equivale al valor usual que se muestra en ella.
shed-wind-at-least = viento al menos
shed-wind-at-most = viento como máximo
shed-gusts-at-most = ráfagas como máximo
shed-delta-t-good-from = Delta T bueno desde
shed-delta-t-good-up-to = Delta T bueno hasta
shed-delta-t-at-most = Delta T como máximo
shed-air-at-least = aire al menos
shed-air-at-most = aire como máximo
shed-wet-from-a-chance-of = lluvioso desde una probabilidad de
shed-neighbours-nearer-than = vecinos a menos de
shed-calibration-is-old-after = la calibración es vieja después de
shed-days-after-which-a-calibration-is = días después de los cuales una calibración es vieja
shed-its-season = su temporada
shed-the-usual-value = El valor usual: { $key }
shed-units-row = unidades
shed-paper = papel
shed-language = idioma
shed-latitude = latitud
shed-longitude = longitud
shed-days-row = días
shed-calibration-limit = calibración
shed-letter = Carta

## desk/views/shed/laws.rs

shed-no-rule-yet-add-what-the = Todavía no hay normas. Agregue lo que la ley pide donde usted aplica: viento, horas del día, franjas, gotas.
shed-add-a-rule = + Agregar una norma
shed-law = Ley
shed-when-it-holds = Cuándo vale
shed-it-ends-before-it-begins-so = Termina antes de empezar, así que nunca vale; corrija los días.
shed-from-on-so-not-yet = Desde el { $since }, así que todavía no.
shed-it-ended-with-and-is-held = Terminó el { $until } y no se compara con ninguna aplicación posterior.
shed-now-and-up-to-and-including = Ahora, y hasta el { $until } inclusive.
shed-now-and-until-you-type-its = Ahora, y hasta que usted anote su fin.
shed-name-of-the-rule = nombre de la norma
shed-its-name-and-paragraph = su nombre y párrafo
shed-when-and-for-what = Cuándo, y para qué
shed-in-force-since = vigente desde
shed-up-to-and-including = hasta e incluido
shed-it-stands-on-the-load-cards = Está en las tarjetas de carga; el programa no compara los planes con una norma de este tipo.
shed-it-is-kept-here-for-you = Se guarda aquí para que usted la lea; el programa no compara los planes con una norma de este tipo, y lo dice.
shed-gusts-at-most-gust = ráfagas como máximo { $gust }
shed-not-with-wind-toward = no con viento hacia { $what }
shed-not-while-warm-air-lies-over = no mientras haya aire caliente sobre aire frío
shed-of = de { $width }
shed-for-h = por { $hours } h
shed-not-before = no antes de { $from }
shed-not-after = no después de { $to }
shed-at-most-0e5 = { $most } como máximo { $per }
shed-the-program-knows-no-law = El programa no conoce ninguna ley. Compara sus aplicaciones con lo que usted anota aquí, por debajo de las etiquetas y por encima de la práctica.
shed-for-law = Para { $law }: { $said }
shed-for-law-where = Para { $law } { $applies }: { $said }
shed-of-to = de { $width } hasta { $to }

## desk/views/shed/mod.rs

shed-products = Productos
shed-waters = Aguas
shed-rigs = Aspersoras
shed-stock = Existencias
shed-records = Registros
shed-farm = Finca
shed-find-a-product = buscar un producto
shed-find-by-name-or-active = buscar por nombre o ingrediente activo
shed-its-name = su nombre
shed-remove = Quitar: { $what }
shed-remove-what = Quitar { $what }
shed-passes-use = { $uses ->
        [one] { $uses } aplicación usa { $name }
       *[other] { $uses } aplicaciones usan { $name }
    }
shed-remove-it-all-the-same = Quitarlo de todos modos
shed-keep-it = Conservarlo
shed-no-name-yet = todavía sin nombre

## desk/views/shed/products.rs

shed-herbicides = Herbicidas
shed-fungicides = Fungicidas
shed-insecticides = Insecticidas
shed-growth-regulators = Reguladores de crecimiento
shed-adjuvants-and-conditioners = Coadyuvantes y acondicionadores
shed-foliar-feeds = Fertilizantes foliares
shed-others = Otros
shed-groups = grupos { $groups }
shed-none-on-hand = sin existencias
shed-on-hand = { $round } en existencia
shed-not-counted = no contado
shed-no-product-yet-take-a-label = Todavía no hay productos. Tome el folleto de una etiqueta y agregue el primero: primero su panel frontal, luego página por página. Si no tiene el folleto a mano, empiece por un ingrediente activo.
shed-no-product-has-this-in-its = Ningún producto tiene esto en su nombre ni entre sus ingredientes activos.
shed-short-by = { $name }, { $summary }, faltan { $round }
shed-name-copy = { $name }, copia
shed-here-stands-what-a-label-says = Aquí está lo que dice una etiqueta, en el orden de la etiqueta: panel frontal, cada aplicación, cultivo y temporada, personas. Agregue un producto a la izquierda y anótelo de su folleto, o empiece por su ingrediente activo.
shed-no-planned-pass-uses-it = Ninguna aplicación planeada lo usa.
shed-name-of-the-product = nombre del producto
shed-typed-from = anotado de
shed-which-label-and-when = qué etiqueta, y cuándo
shed-containers-and-price = Envases y precio
shed-sold-in = se vende en
shed-add-a-container = + Agregar un envase
shed-measuring-step = paso de medición
shed-as-everywhere-on-the-farm = como en toda la finca
shed-price = precio, { $currency }
shed-container-n = envase { $n }
shed-size-of-container = tamaño del envase { $n }
shed-full-of-container = llenos del envase { $n }
shed-opened-of-container = abierto del envase { $n }
shed-full-and = llenos, y
shed-nothing = nada
shed-another-container = + Otro
shed-add-container = Agregar un envase

## desk/views/shed/records.rs

shed-what-your-records-are-kept-for = Para qué se llevan sus registros. Cada registro dice entonces qué le falta, y para qué día debe estar.
shed-asks-for = pide: { $names }
shed-codes-of-crops = Códigos de cultivos
shed-a-record-takes-the-eppo-code = Un registro toma el código EPPO de un cultivo cuyo nombre está en la tabla. Contiene códigos EPPO (www.eppo.int). Consulte un código ahí antes de confiar en él.
shed-the-profiles-are-a-help-to = Los perfiles ayudan a llevar lo que piden algunas normas, hasta donde se encontraron; cada uno dice qué tan seguro es.
shed-who-keeps-them = Quién los lleva
shed-name-of-the-business = nombre de la empresa
shed-who-keeps-the-records = quién lleva los registros
shed-address-of-the-business = domicilio de la empresa
shed-and-how-it-is-reached = y cómo se le contacta
shed-number-of-the-business = número de la empresa
shed-with-the-authority = ante la autoridad
shed-kept-for = Se llevan para
shed-is-not-known-to-this-program = Este programa no conoce "{ $key }", así que ningún registro se compara con ello
shed-by-when-is-not-known-here = aquí no se sabe para cuándo
shed-due = plazo: { $due }
shed-kept = se conserva { $keep_words }
shed-asked-for-on-top = Se pide además
shed-elements-that-a-buyer-a-scheme = Datos que pide un comprador, un programa de certificación o la ley de su lugar. Cada registro tiene una casilla para ellos.
shed-add-an-element = + Agregar un dato
shed-address = domicilio
shed-number = número
shed-profile = Para { $scope }; { $due }; { $keep }.
shed-profile-until = Para { $scope }, hasta { $day }; { $due }; { $keep }.
shed-profile-from = Según: { $source } ({ $evidence }).
shed-name-of-element = Nombre del dato { $number }
shed-who-asks-for-element = Quién pide el dato { $number }
shed-days-until-element-is-due = Días hasta que debe estar el dato { $number }
shed-element = dato { $number }
shed-what-it-is = qué es
shed-who-asks = quién lo pide
shed-restricted-only = solo uso restringido

## desk/views/shed/rigs/calibrations.rs

shed-what-was-measured-the-latest-first = Lo que se midió, lo más reciente primero
shed-nothing-yet-calibrate-before-the-season = Todavía nada. Calibre antes de la temporada y después de cambiar boquillas: recoja en las boquillas para encontrar las gastadas, y tome el tiempo de un tramo para conocer la velocidad. Use agua limpia, no caldo.
shed-for-the-plans = para los planes
shed-reckon-with-the-flow-measured-last = calcular con el caudal medido la última vez
shed-in-place-of-that-of-new = en lugar del de boquillas nuevas
shed-of-another-size = { $count } de otro tamaño
shed-inside-the-rules = { $nozzles ->
        [one] { $nozzles } boquilla dentro de las reglas
       *[other] { $nozzles } boquillas dentro de las reglas
    }
shed-nothing-measured-yet = todavía nada medido
shed-day-of-the-calibration = día de la calibración
shed-measured-by = medido por
shed-who-measured = quién midió
shed-nozzle-set = juego de boquillas
shed-usually = normalmente { $usual }
shed-at-the-nozzles = en las boquillas
shed-pressure-meanwhile = presión mientras tanto
shed-mean-flow-of-a-nozzle = caudal medio de una boquilla
shed-against-a-new-one = frente a una nueva
shed-volume-over-ground = volumen por superficie
shed-against-what-was-set = frente a lo ajustado
shed-the-cab-against-it = la cabina frente a eso
shed-type-what-was-measured-to-see = Anote lo que se midió para verlo.
shed-how-it-is-reckoned = Cómo se calcula
shed-note-on-the-calibration = nota sobre la calibración
shed-test-of-day = { $test } del { $day }
shed-count-worn = { $count ->
        [one] { $count } gastada
       *[other] { $count } gastadas
    }
shed-count-blocked = { $count ->
        [one] { $count } tapada
       *[other] { $count } tapadas
    }
shed-day = día
shed-by = por

## desk/views/shed/rigs/form.rs

shed-tank = Tanque
shed-full-to-its-mark = lleno hasta su marca
shed-finest-mark = marca más fina
shed-on-the-tank-or-the-meter = en el tanque o en el medidor; las cargas se ajustan a ella
shed-least-that-is-stirred = lo mínimo que se agita
shed-boom = Barra
shed-working-width = ancho de trabajo
shed-usual-height = altura usual
shed-of-the-nozzles-above-what-is = de las boquillas sobre lo que se aplica
shed-nozzles = Boquillas
shed-usually-fitted = montado normalmente
shed-nozzle-sets-of-this-rig = Juegos de boquillas de esta aspersora
shed-usual-setting = Ajuste usual
shed-field-efficiency = eficiencia de campo
shed-share-of-the-time-that-is = parte del tiempo que se pasa aplicando
shed-filling-and-road = Llenado y camino
shed-stop-of-a-filling = parada para llenar
shed-hose-on-and-off-rinsing-jugs = conectar y quitar la manguera, enjuagar bidones; sin el agua que corre
shed-each-product-added = cada producto agregado
shed-nurse-tank-holds = capacidad del tanque nodriza
shed-speed-on-the-road = velocidad en el camino
shed-rinsing = Enjuague
shed-stays-when-run-dry = queda al vaciarse
shed-in-tank-lines-and-boom = en tanque, líneas y barra
shed-lines-and-boom-hold = líneas y barra contienen
shed-between-the-tank-and-the-nozzles = entre el tanque y las boquillas
shed-clean-water-tank = tanque de agua limpia
shed-anything-else = Algo más
shed-anything-else-380 = algo más
shed-angle-size-how-far-apart = ángulo, tamaño, a qué distancia
shed-from-the-nozzle-makers-table-at = de la tabla del fabricante de la boquilla, a la presión usual
shed-type-a-nozzle-set = Anotar un juego de boquillas
shed-then-speed-pressure-and-droplets-can = entonces se pueden calcular velocidad, presión y gotas de una aplicación
shed-pulsed-valves = válvulas pulsantes
shed-valves-pulse = las válvulas pulsan
shed-valves-that-open-and-close-the = válvulas que abren y cierran las boquillas muchas veces por segundo
shed-open-at-least = abiertas al menos
shed-least-share-open = parte abierta mínima
shed-most-share-open = parte abierta máxima
shed-of-the-time = del tiempo
shed-note = nota
shed-pressure = presión
shed-speed = velocidad
shed-nozzles-row = boquillas
shed-droplets-row = gotas

## desk/views/shed/rigs/mod.rs

shed-rig = Aspersora
shed-nozzle-sets = Juegos de boquillas
shed-calibration = Calibración
shed-no-rig-yet-walk-round-the = Todavía no hay aspersora. Dé la vuelta a la aspersora y agréguela: primero el tanque, luego la barra.
shed-tank-boom = tanque { $tank } · barra { $boom }
shed-tank-tank = tanque { $tank }
shed-tank-still-to-type = falta escribir el tanque
shed-add-a-rig = + Agregar una aspersora
shed-here-stands-what-a-load-must = Aquí está en qué debe caber una carga, y qué tan rápido se aplica.
shed-name-of-the-rig = nombre de la aspersora

## desk/views/shed/rigs/nozzles.rs

shed-sets = Juegos
shed-no-nozzle-set-yet-with-one = Todavía no hay juego de boquillas. Con uno se calculan velocidad, presión y gotas de cada aplicación que va con esta aspersora, y una calibración se compara con boquillas nuevas.
shed-the-first = { $first }, el primero
shed-at = { $flow } a { $at }
shed-apart = a { $spacing } entre sí
shed-bands-of-over-rows-apart = bandas de { $width } sobre surcos a { $rows } entre sí
shed-at-each-row-rows-apart = { $nozzles } en cada surco, surcos a { $rows } entre sí
shed-add-a-nozzle-set = + Agregar un juego de boquillas
shed-new-set = Juego nuevo
shed-set = juego { $name }
shed-the-set = El juego
shed-name-of-the-set = nombre del juego
shed-angle-and-size-or-what-you = ángulo y tamaño, o como usted lo llame
shed-number-on-the-boom = cantidad en la barra
shed-working-width-by-how-far-apart = ancho de trabajo entre la distancia entre ellas
shed-else-working-width-by-how-far = si no, ancho de trabajo entre la distancia entre ellas
shed-width-by-spacing-gives = ancho entre distancia da { $usual }
shed-pressures-of-the-nozzle-makers-table = Presiones de la tabla del fabricante de la boquilla
shed-least-pressure = presión mínima
shed-most-pressure = presión máxima
shed-note-on-the-set = nota sobre el juego
shed-rated-as-typed = { $name }, caudal nominal como se anotó
shed-by-us-gal-min-at = { $name }, por US gal/min a { $at }
shed-by-l-min-at = { $name }, por L/min a { $at }
shed-after-iso-10625-it-fills-in = según ISO 10625, { $colour }; llena el caudal nominal
shed-after-iso-10625-stamped-on-it = según ISO 10625, estampado en ella; llena el caudal nominal
shed-a-new-one-gives = una nueva da
shed-at-the-pressure = a la presión
shed-of-water = de agua
shed-of-water-and-at-which-pressure = de agua, y a qué presión
shed-over-the-whole-ground = sobre todo el terreno
shed-band-over-each-row = en banda sobre cada surco
shed-directed-at-each-row = dirigido a cada surco
shed-they-spray = aplican
shed-nozzles-apart = distancia entre boquillas
shed-from-nozzle-to-nozzle = de boquilla a boquilla
shed-width-of-the-band = ancho de la banda
shed-wide-rows = de ancho, surcos
shed-rows-apart = distancia entre surcos
shed-nozzles-to-a-row = boquillas por surco
shed-to-a-row = por surco
shed-volumes-and-rates-of-its-passes = Los volúmenes y las dosis de sus aplicaciones valen para el terreno dentro de las bandas.
shed-droplets = Gotas
shed-the-classes-are-those-of-asabe = Las clases son las de ASABE S572 e ISO 25358. Cópielas a mano de la tabla del fabricante de la boquilla: el programa no conoce la tabla de ningún fabricante.
shed-add-a-line = + Agregar una línea
shed-droplets-get-coarser = Aquí { $high } da gotas más gruesas que { $low }, pero más presión las hace más finas: revise las dos líneas en la tabla del fabricante.
shed-pressure-line = presión, línea { $line }
shed-passes-speak-of = { $passes ->
        [one] { $passes } aplicación habla de { $name }
       *[other] { $passes } aplicaciones hablan de { $name }
    }
shed-calibrations-speak-of = { $calibrations ->
        [one] { $calibrations } calibración habla de { $name }
       *[other] { $calibrations } calibraciones hablan de { $name }
    }
shed-passes-and-calibrations-speak-of = { $passes ->
        [one] { $passes } aplicación y { $calibrations ->
            [one] { $calibrations } calibración hablan de { $name }
           *[other] { $calibrations } calibraciones hablan de { $name }
        }
       *[other] { $passes } aplicaciones y { $calibrations ->
            [one] { $calibrations } calibración hablan de { $name }
           *[other] { $calibrations } calibraciones hablan de { $name }
        }
    }
shed-name = nombre
shed-size = tamaño
shed-at-pressure = a
shed-apart-and = entre sí,
shed-rows = surcos
shed-at-a-pressure-of = a una presión de
shed-droplets-line = gotas, línea { $line }
shed-line-of-the-droplets = línea { $line } de las gotas

## desk/views/shed/rigs/sheets.rs

shed-no-planned-pass-goes-with-it = Ninguna aplicación planeada va con ella.
shed-no-planned-pass-goes-with-this = Ninguna aplicación planeada va con este juego.
shed-how-much-it-covers = Cuánto cubre
shed-type-working-width-speed-and-field = Anote ancho de trabajo, velocidad y eficiencia de campo para verlo.
shed-with-nothing-of-speed-width-or = Si la velocidad, el ancho o la eficiencia es cero, no cubre nada.
shed-while-in-the-field = mientras está en el lote
shed-filling-and-the-road-are-not = No incluye el llenado ni el camino.
shed-type-what-the-clean-water-tank = Anote la capacidad del tanque de agua limpia para ver cómo usarla.
shed-plan-a-pass-with-it-to = Planee una aplicación con ella para ver cómo usar el agua limpia.
shed-type-what-stays-when-it-is = Anote lo que queda al vaciarse, y la capacidad del tanque de agua limpia.
shed-after = Después de { $name }.
shed-counted-of-each = { $rinses ->
        [one] { $rinses } enjuague de { $each }
       *[other] { $rinses } enjuagues de { $each }
    }
shed-more-than-the-clean-water-tank = más de lo que cabe en el tanque de agua limpia
shed-left = queda { $left }
shed-what-stays-would-spray = lo que queda alcanzaría para

## desk/views/shed/rigs/ways.rs

shed-catch-at-the-nozzles = + Recoger en las boquillas
shed-1-128-acre = + 1/128 de acre
shed-speed-over-a-course = + Velocidad en un tramo
shed-tank-level = + Nivel del tanque
shed-a-bare-number-is-taken-as = Un número sin unidad se toma como { $units }.
shed-stand-with-the-boom-out-at = Con la aspersora detenida y la barra extendida, a la presión con la que aplica. Lea la presión en la barra y anótela abajo.
shed-hold-a-jug-under-each-nozzle = Sostenga una jarra debajo de cada boquilla durante { $time } y anote lo que contiene, del extremo izquierdo de la barra al derecho, en el sentido de avance. { $bare }
shed-a-sample-across-the-boom-will = Basta una muestra a lo largo de la barra; deje vacías las demás.
shed-drive-it-in-the-field-with = Recórralo en el lote con la marcha y las revoluciones con las que aplica, ya a velocidad antes de su inicio, y tome el tiempo.
shed-mark-a-course-in-the-field = Marque un tramo en el lote, no en el camino: mientras más largo, mejor lo dice el tiempo.
shed-fill-the-tank-half-and-be = Llene el tanque a la mitad, y esté ya a velocidad antes de su inicio.
shed-time-two-runs-or-more-one = Tome el tiempo de dos pasadas o más, una en cada sentido, y anote lo que mostraba la cabina. Un número sin unidad se toma como s.
shed-stand-level-and-fill-the-tank = Estacione en terreno nivelado y llene el tanque con agua limpia hasta una marca que pueda volver a encontrar.
shed-spray-it-on-a-measured-piece = Aplíquela en un terreno medido, con el ajuste con el que aplica.
shed-stand-on-the-same-place-fill = Estacione en el mismo lugar, llene hasta la misma marca, y mida cuánto se necesita.
shed-mark-a-course-of-in-the = Marque un tramo de { $course } en el lote: en él, un ancho de { $width } es 1/128 de acre.
shed-mark-the-course-on-which-what = Marque el tramo en el que lo que se recoge junto aplica 1/128 de acre. Anote en Juegos de boquillas cómo están dispuestas, y aquí se dirá su longitud.
shed-caught-for = recogido durante
shed-each-nozzle = cada boquilla
shed-time-of-the-course = tiempo del tramo
shed-length-of-the-course = longitud del tramo
shed-the-cab-showed = la cabina mostraba
shed-not-noted = no anotado
shed-ground-sprayed = terreno aplicado
shed-took-to-fill-up = se necesitó para llenar
shed-it-was-set-to = estaba ajustada a
shed-left-to-right = de izquierda a derecha; la barra gráfica y "promedio" frente al promedio de las recogidas
shed-type-under-nozzle-sets-how-many = Anote en Juegos de boquillas cuántas hay, o cómo están dispuestas, para ver una casilla para cada una.
shed-nozzle = boquilla { $at }
shed-nozzle-place-flow-state = boquilla { $place }: { $flow }, { $state }
shed-rinse-the-sprayer-and-put-clean = Enjuague la aspersora y póngale agua limpia. Recoja agua, nunca caldo, y de todos modos use guantes.
shed-stand-and-catch-what-the-nozzles-of-a-row = Con la aspersora detenida, con las mismas revoluciones y la misma presión, recoja durante ese tiempo lo que dan juntas las { $together } boquillas de un surco. Anótelo una vez por cada surco que recoja. { $bare }
shed-stand-and-catch-what-one-nozzle-gives = Con la aspersora detenida, con las mismas revoluciones y la misma presión, recoja durante ese tiempo lo que da una boquilla. Anótelo una vez por cada una que recoja. { $bare }
shed-caught = recogido
shed-course = tramo
shed-runs = pasadas
shed-run = pasada
shed-average = promedio
shed-new = nueva
shed-left-to-right-with-new = de izquierda a derecha; la barra gráfica y "promedio" frente al promedio de las recogidas, "nueva" frente a una boquilla nueva

## desk/views/shed/sheets.rs

shed-perhaps-typed-wrongly = Quizá mal anotado
shed-where-it-is-planned = Dónde está planeado
shed-on-hand-d01 = En existencia
shed-no-container-is-typed-so-nothing = No hay envase anotado, así que no se cuenta nada.
shed-nothing-is-counted-yet-where-there = Todavía no se ha contado nada. Si no hay nada, anote el día del conteo en Existencias.
shed-its-containers-are-counted-by-volume = Sus envases se cuentan por volumen y por peso; dé su densidad para sumarlos.
shed-in-all = en total
shed-planned-passes-take = las aplicaciones aún sin registro toman
shed-left-then = queda después de ellas
shed-short-by-round = faltan { $round }
shed-where-it-went = A dónde se fue
shed-no-record-holds-it-yet = Todavía ningún registro lo contiene.
shed-count-passes = { $passes ->
        [one] { $passes } aplicación
       *[other] { $passes } aplicaciones
    }
shed-count-fields = { $fields ->
        [one] { $fields } lote
       *[other] { $fields } lotes
    }

## desk/views/shed/start.rs

shed-from-a-label = + De una etiqueta
shed-from-an-active = + De un ingrediente activo…
shed-active-formulation-content = Ingrediente activo, formulación, contenido
shed-start-from-an-active = empezar por un ingrediente activo
shed-add-it = Agregarlo
shed-not-now = Ahora no
shed-known-actives = ingredientes activos conocidos
shed-known-active = ingrediente activo conocido
shed-formulation-to-start-with = formulación con que empezar
shed-group-not-known = grupo no conocido
shed-group-content-counted-as-short = { $group }, { $content }, se cuenta como { $short }
shed-take = Tomar { $name }

## desk/views/shed/statements.rs

shed-each-pass = Cada aplicación
shed-crop-and-season = Cultivo y temporada
shed-people = Personas
shed-stance = { $name }: postura
shed-for-crop = { $name }: para el cultivo
shed-name-from-stage = { $name }: desde la etapa
shed-name-to-stage = { $name }: hasta la etapa
shed-name-at = { $name }: en
shed-only-if = { $name }: solo si
shed-counted = { $name }: se cuenta
shed-name-at-most = { $name }: como máximo
shed-active = { $name }: ingrediente activo
shed-common-name = nombre común
shed-hint-wind = viento
shed-hint-product = producto
shed-days-apart = { $name }: días entre aplicaciones
shed-days-apart-ddc = días entre aplicaciones
shed-may-be-used-in-these-stages = se puede usar en estas etapas
shed-days = { $name }: días
shed-days-before-harvest-or-grazing = días antes de la cosecha o el pastoreo
shed-hours = { $name }: horas
shed-hours-without-protection = horas, sin protección
shed-is = { $name }: es
shed-months = { $name }: meses
shed-class-or-coarser = { $class } o más gruesas
shed-finest = { $name }: más fina
shed-any-coarser = cualquiera más gruesa
shed-class-at-most = { $class } como máximo
shed-coarsest = { $name }: más gruesa
shed-name-at-least = { $name }: al menos
shed-name-gusts-at-most = { $name }: ráfagas como máximo
shed-not-toward = no hacia
shed-what-lies-beside-it-apart-by = lo que está al lado, separado por comas
shed-from = { $name }: de
shed-name-to = { $name }: a
shed-above-what-is-sprayed = sobre lo que se aplica
shed-before = { $name }: antes de
shed-how-in-the-labels-words = cómo, en palabras de la etiqueta
shed-width = { $name }: ancho
shed-what-lies-beside-it = lo que está al lado
shed-down-the-wind-only = solo a favor del viento
shed-hours-without-rain = horas sin lluvia
shed-class = { $name }: clase
shed-before-all-others = antes de todos los demás
shed-after-all-others = después de todos los demás
shed-name-place = { $name }: lugar
shed-tank-filled-to = tanque lleno hasta
shed-name-tank-filled-to = { $name }: tanque lleno hasta
shed-active-group-class-or-product = ingrediente activo, grupo, clase o producto
shed-within-days = { $name }: dentro de, días
shed-month-and-day = mes y día
shed-weeds-apart-by-commas = malezas, separadas por comas
shed-gloves-boots-in-the-labels-words = guantes, botas, …, en palabras de la etiqueta
shed-in-the-labels-words = en palabras de la etiqueta
shed-still-to-type = falta anotarlo
shed-another-statement-from-the-label = + Otra indicación de la etiqueta
shed-what-does-the-label-say-next = ¿Qué más dice la etiqueta?
shed-nothing-more = Nada más
shed-add = Agregar { $name }
shed-page = página
shed-if = si
shed-after-months = después de
shed-months-box = meses
shed-gusts = ráfagas
shed-from-box = de
shed-to-box = a
shed-before-box = antes de
shed-any-value = cualquiera

## desk/views/shed/stock/account.rs

shed-all-products = Todos los productos
shed-before-f5e = Anterior
shed-next = Siguiente
shed-its-label = Su etiqueta
shed-how-much-that-is-in-all = No se sabe cuánto es en total, por falta de una densidad.
shed-nothing-is-counted-yet = Todavía no se ha contado nada.
shed-empty = vacíos: { $count } { $kind } de { $size }
shed-to-give-back = { $all } por devolver
shed-no-day-of-a-count-is = No hay día de conteo anotado: esto es lo que se anotó como existente, los registros no restan nada y las compras no suman nada.
shed-came-in = entrada
shed-went-out = salida
shed-nothing-happened-since = Desde entonces no pasó nada
shed-since-then = Desde entonces { $since }
shed-counted-on-that-days-spraying-what = { $which ->
        [yes] Contado el { $day } después de las aplicaciones de ese día{ $counted }. { $since }. Lo que se anote de ese día cuenta como incluido en el conteo.
       *[no] Contado el { $day } antes de las aplicaciones de ese día{ $counted }. { $since }. Lo que se anote de ese día cuenta como posterior al conteo.
    }
shed-bought-last-at-on = Última compra a { $sign }{ $price } el { $day }.
shed-that-is-its-price-in-the = Ese es su precio en la bodega.
shed-its-price-in-the-shed = Su precio en la bodega: { $own }.
shed-take-the-price-of-the-bill = Tomar el precio de la factura
shed-purchases-of-cost = Las compras de { $year } costaron { $sum }.
shed-counted-and-since = Contado el { $day }{ $counted }. { $since }.
shed-amount-came-in = entraron { $amount }
shed-amount-was-sprayed = se aplicaron { $amount }
shed-amount-went-out = salieron { $amount }
shed-none = ninguno

## desk/views/shed/stock/count.rs

shed-another-lot-or-size = + Otra partida u otro tamaño
shed-empty-ones = vacíos
shed-empty-of = { $kind } de { $size } sin contenido
shed-empty-of-to-give-back = { $kind } de { $size } sin contenido por devolver
shed-day-of-the-count = día del conteo
shed-after-that-days-spraying = después de las aplicaciones de ese día
shed-before-that-days-spraying = antes de las aplicaciones de ese día
shed-counted-what-the-account-had-come = Contado { $counted }. No se sabe a cuánto había llegado la cuenta.
shed-counted-as-the-account-has-it = Contado { $counted }, como lo tiene la cuenta ({ $round }).
shed-why-it-differs = por qué difiere
shed-counted-less = Contado { $counted }, la cuenta había llegado a { $account }: { $less } menos.
shed-counted-more = Contado { $counted }, la cuenta había llegado a { $account }: { $more } más.
shed-there-are = hay
shed-full-row = llenos, renglón { $n }
shed-container-row = envase, renglón { $n }
shed-size-row = tamaño, renglón { $n }
shed-opened-row = abierto, renglón { $n }
shed-lot-row = partida, renglón { $n }
shed-row = renglón { $n }
shed-full = llenos
shed-of-size = de
shed-opened = abierto
shed-lot-box = partida
shed-on-day = el
shed-counted-box = contado

## desk/views/shed/stock/forms.rs

shed-written-down-by = anotado por
shed-who-writes-it-down = quién lo anota
shed-write-it-down = Anotarlo
shed-leave-it = Dejarlo
shed-day-it-happened = día en que pasó
shed-kind-of-size = { $kind } de { $size }
shed-it-was-counted-on-what-happened = { $which ->
        [yes] Se contó el { $counted } después de las aplicaciones de ese día: lo que pasó antes está en el conteo, y no cambia nada de las existencias.
       *[no] Se contó el { $counted }: lo que pasó antes está en el conteo, y no cambia nada de las existencias.
    }
shed-how-many = cuántos
shed-as-printed-on-it = como está impreso en él
shed-price-on-the-bill = precio en la factura
shed-bought-from = comprado a
shed-from-whom = a quién
shed-delivery-note-or-anything-else = remisión, o algo más
shed-no-day-of-a-count-is-typed-so-purchases = No hay día de conteo anotado, así que las compras se guardan pero no se suman a las existencias. Cuéntelo primero.
shed-there-was-none-of-it-before = Antes no había nada: contar desde este día
shed-how-much = cuánto
shed-if-known = si se conoce
shed-such-as = como { $lot }
shed-spilt-lent-handed-in = derramado, prestado, entregado
shed-found-given-back-borrowed = hallado, devuelto, prestado
shed-no-day-of-a-count-is-typed-so-it = No hay día de conteo anotado, así que se guarda pero no cambia nada de las existencias. Cuéntelo primero.
shed-of-empty = de { $count } vacíos
shed-given-back-to = devuelto a
shed-to-whom = a quién
shed-type-what-one-container-holds-such = Anote lo que contiene un envase, como "{ $example }"
shed-type-how-much-such-as-1 = Anote cuánto, como "{ $example }"
shed-type-how-many-containers = Anote cuántos envases
shed-say-why = Diga por qué
shed-why = por qué
shed-bought = Se compró…
shed-count = Contar…
shed-went-out-act = Salió…
shed-came-in-act = Entró…
shed-gave-back-empties = Se devolvieron vacíos…
shed-container = envase
shed-kind = tipo
shed-price-row = precio
shed-bought-from-row = de
shed-to-whom-row = a
shed-another = otro
shed-rinsed-box = enjuagados

## desk/views/shed/stock/lines.rs

shed-which-does-not-hold-any-more = , lo que ya no vale
shed-the-account-had-come-to = ; la cuenta había llegado a { $reckoned }
shed-bought-of = compra: { $count } { $kind } de { $size }
shed-sprayed = aplicado: { $name }
shed-gave-back-empty-of = vacíos devueltos: { $count } { $kind } de { $size }
shed-rinsed = , enjuagados
shed-lot = , partida { $lot }
shed-day-what-change-balance = día	qué	cambio	saldo{ "\u000A" }
shed-account = Cuenta
shed-the-latest-first = lo más reciente primero
shed-copy-as-a-table = Copiar como tabla
shed-nothing-is-written-down-yet = Todavía no hay nada anotado.
shed-then-there = había entonces
shed-counted-after-that-days-spraying = contado después de las aplicaciones de ese día
shed-counted-before-that-days-spraying = contado antes de las aplicaciones de ese día
shed-bought-of-from = compra: { $count } { $kind } de { $size }, a { $from }
shed-bought-of-at = compra: { $count } { $kind } de { $size } a { $sign }{ $price }
shed-bought-of-at-from = compra: { $count } { $kind } de { $size } a { $sign }{ $price }, a { $from }
shed-gave-back-empty-of-to = vacíos devueltos a { $to }: { $count } { $kind } de { $size }
shed-what = qué
shed-change = cambio
shed-open-the-record = Abrir el registro

## desk/views/shed/stock/list.rs

shed-to-buy = Por comprar
shed-no-product-yet-so-there-is = Todavía no hay productos, así que no hay nada que contar.
shed-nothing-is-short-of-what-is = No falta nada de lo contado.
shed-name-short-by-round-buying = { $name }, faltan { $round }, { $buying }
shed-in-all-sum = en total { $sum }
shed-it-is-not-known-what-is = { $count ->
        [one] Se toma { $count } producto del que no se sabe qué hay en existencia.
       *[other] Se toman { $count } productos de los que no se sabe qué hay en existencia.
    }
shed-water-on = Agua el { $day }
shed-not-reckoned = No calculado

## desk/views/shed/stock/mod.rs

shed-full-kind-of-size-lot = { $full } { $kind } de { $size }{ $lot }
shed-in-an-opened-of = en un envase abierto ({ $kind }) de { $size }{ $lot }
shed-without-a-container-typed = sin envase anotado{ $lot }
shed-from-the-day-of-a-count = Desde el día de un conteo se restan los registros y lo que salió, y se suman las compras. Las aplicaciones sin registro se comparan con lo que queda.
shed-open-a-product-to-count-it = Abra un producto para contarlo. No hay aplicación planeada que aún no tenga registro.
shed-what-the-passes-take-on = lo que toman las aplicaciones del

## desk/views/shed/stock/table.rs

shed-no-product-yet-add-the-first = Todavía no hay productos. Agregue el primero en Productos, con los envases en que se vende.
shed-on-hand-861 = en existencia
shed-from-then = desde entonces
shed-what-is-taken-on-costs = Lo que se toma el { $day } cuesta { $of_day }.
shed-what-is-taken-from-then-on = Lo que se toma desde entonces cuesta { $season }.
shed-something-in-its-account-is-in = Algo en su cuenta es dudoso
shed-open-its-account = Abrir su cuenta
shed-account-name = Cuenta: { $name }
shed-counted-day-used = contado el { $day }, { $used } usados desde entonces
shed-no-container-typed = sin envase anotado
shed-passes-before-take-first = aplicaciones anteriores toman antes { $round }
shed-cost = costo { $currency }{ $cost }
shed-product = producto
shed-leaves = deja
shed-density-asked = ¿densidad?
shed-counted-day = contado el { $day }

## desk/views/shed/waters.rs

shed-no-water-yet-take-a-laboratory = Todavía no hay agua. Tome un informe de laboratorio y agregue la primera: lo que más importa son el calcio y el magnesio.
shed-no-analysis = sin análisis
shed-hard = dureza { $hardness }
shed-add-a-water = + Agregar un agua
shed-here-stands-what-a-laboratory-found = Aquí está lo que un laboratorio encontró en el agua que llena el tanque.
shed-no-planned-pass-takes-it = Ninguna aplicación planeada la toma.
shed-name-of-the-water = nombre del agua
shed-as-the-laboratory-states-it-what = Como lo indica el laboratorio. Lo que el informe no indica queda vacío y no se toma como cero.
shed-ions = Iones
shed-kept-but-the-equation-has-no = se guarda, pero la ecuación no tiene término para él
shed-hardness-ph-and-salt = Dureza, pH y sal
shed-only-where-calcium-and-magnesium-are = solo donde no se dan calcio y magnesio por separado
shed-calcium-and-magnesium-are-used-instead = se usan calcio y magnesio en su lugar
shed-a-coin-on-the-bottom-of = no se ve una moneda en el fondo de un balde
shed-filling = Llenado
shed-gives-when-filling = da al llenar
shed-the-pump-or-hydrant-by-a = la bomba o el hidrante, con una jarra y un reloj
shed-sample = Muestra
shed-who-analysed-it-or-anything-else = quién la analizó, o algo más
shed-choose-a-water = elija un agua
shed-blend-with-another-water = Mezclar con otra agua
shed-add-another-water-such-as-rain = Agregue otra agua, como agua de lluvia, para ver qué contiene una mezcla de las dos.
shed-blend-with = mezclar con
shed-hardness-wanted = dureza deseada
shed-e-g-150-ppm = p. ej. 150 ppm
shed-and = { $one } y { $other }
shed-an-ion-that-either-report-does = Un ion que uno de los dos informes no indica queda abierto. El pH, la conductividad y la claridad de una mezcla no se calculan.
shed-keep-the-blend-as-a-water = Guardar la mezcla como un agua propia
shed-hardness-as-calcium-carbonate = Dureza, como carbonato de calcio
shed-type-calcium-and-magnesium-or-the = Anote calcio y magnesio, o la dureza, para verla.
shed-german-degrees = grados alemanes
shed-french-degrees = grados franceses
shed-other-schemes-call-it-the-same = Otras escalas la llaman igual.
shed-ammonium-sulfate-that-it-ties-up = Sulfato de amonio que retiene
shed-without-iron-to-without-iron-most = { $without_iron } a { $without_iron_most }
shed-without-iron = sin hierro
shed-with-iron = con hierro
shed-north-dakota-practice = práctica de Dakota del Norte
shed-labels-as-published = etiquetas, según lo publicado
shed-not-stated-so-not-counted = No se indica, así que no se cuenta: { $missing }.
shed-this-water = esta agua
shed-calcium = calcio
shed-magnesium = magnesio
shed-sodium = sodio
shed-potassium = potasio
shed-iron = hierro
shed-manganese = manganeso
shed-bicarbonate = bicarbonato
shed-hardness = dureza
shed-conductivity = conductividad
shed-clarity = claridad
shed-sampled = muestreada el
shed-blend-with-row = con
shed-takes = toma
shed-holds = contiene

## desk/views/shed/paste.rs

shed-directions-from-the-label = instrucciones de la etiqueta
shed-elsewhere-on-the-label = En otra parte de la etiqueta
shed-paste-directions = Pegar instrucciones…
shed-paste-what-the-directions-say-or = Pegue lo que dicen las instrucciones, o una parte. Nada entra al formulario antes de que usted lo marque comparándolo con la etiqueta.
shed-it-stands-on = está en
shed-directions-stand-on = las instrucciones están en
shed-becomes = { $name }: { $value }
shed-becomes-in-a-crop = { $name } en { $crop }: { $value }
shed-stands-there-already = ya está ahí
shed-enter = Anotar { $becomes }
shed-enter-ticked = { $count ->
        [one] Anotar { $count } línea marcada
       *[other] Anotar { $count } líneas marcadas
    }
shed-enter-what-is-ticked = Anotar lo marcado
shed-tick-all-lines = { $count ->
        [one] Marcar { $count } línea
       *[other] Marcar las { $count } líneas
    }
shed-take-all-ticks-away = Quitar todas las marcas
shed-type-it-under = Escribirlo en "{ $kind }"
shed-type-sentence-under = Escribir en { $kind }: { $sentence }
shed-another-row-for-the-sentence = + Otra fila
shed-next-sentence-not-understood = Oración siguiente
shed-back-to-the-pasted-text = Volver al texto pegado
shed-put-the-sentence-away = Quitar la oración
shed-put-the-text-away = Guardar el texto
shed-the-form-has = el formulario tiene { $typed }
shed-beside-it = al lado
shed-in-its-place = en su lugar
shed-how-is-entered = cómo se anota { $becomes }
shed-not-understood-type-yourself-what-is = { $count ->
        [one] { $count } oración no se entendió; escriba usted lo que haya que escribir de ella
       *[other] { $count } oraciones no se entendieron; escriba usted lo que haya que escribir de ellas
    }
shed-without-a-limit-by-their-words = { $count ->
        [one] { $count } oración más no tiene cifras ni palabras de límite; léala de todos modos
       *[other] { $count } oraciones más no tienen cifras ni palabras de límite; léalas de todos modos
    }
shed-hide-the-empty-rows = Ocultar las filas vacías
shed-any-one-of-them-will-do = basta uno de ellos: { $classes }
shed-or-another-class = u otra clase…
shed-or-another-class-beside = U otra clase en lugar de { $name }
shed-empty-rows-for-what-is-not = Filas vacías para lo que aún no está escrito
