# Lo que está en una tarjeta de carga, además de nombres y cantidades.
# Las unidades quedan como en los envases y los manómetros (gal, qt, fl oz, lb, psi, mph).

## Días

card-weekday-1 = lunes
card-weekday-2 = martes
card-weekday-3 = miércoles
card-weekday-4 = jueves
card-weekday-5 = viernes
card-weekday-6 = sábado
card-weekday-7 = domingo
card-month-1 = enero
card-month-2 = febrero
card-month-3 = marzo
card-month-4 = abril
card-month-5 = mayo
card-month-6 = junio
card-month-7 = julio
card-month-8 = agosto
card-month-9 = septiembre
card-month-10 = octubre
card-month-11 = noviembre
card-month-12 = diciembre
card-day = { $day } de { $month } de { $year }
card-day-month = { $day } de { $month }
card-long-day = { $weekday }, { $date }

## Encabezado

card-load = Carga { $load } de { $of }
card-load-second = Carga { $load } de { $of }, segunda página
card-number = Tarjeta { $number }
card-not-issued = Tarjeta sin emitir
card-issued = Emitida { $when }
card-moment = { $day }, { $time }
card-reprinted = reimpresa { $when }
card-reprinted-old = reimpresa { $when }; reemplazada, no usar
card-draft = Borrador, no usar en el tanque
card-reprint = Reimpresión:
card-read-second = Lea la segunda página antes de empezar:
card-read-wear = equipo de protección
card-read-keep-out = no entrar
card-read-harvest = cosecha
card-read-open = lo que estaba pendiente
card-read-cautions = precauciones
card-read-emergency = emergencia
card-read-unsprayed = lo que se deja sin aplicar
card-read-note = nota para la cuadrilla
card-read-short = menos superficie

## Datos

card-field = Lote
card-fields = Lotes
card-area-of = { $area } de { $all }
card-area-in-bands = { $area } en bandas, sobre { $ground } de terreno
card-between-marks = { $spray }, entre { $below } y { $above }
card-area-of-ground = { $area } de terreno
card-fill-to = Llenar hasta
card-with = con { $water }
card-rig = Aspersora
card-calibrated = calibrada el { $day }
card-droplets = gotas: { $classes }
card-droplets-not-told = gotas: la tabla de la boquilla no lo dice
card-boom-at = barra a { $height }
card-valves-open = válvulas abiertas { $share }
card-just-over = apenas más de { $share }
card-just-under = apenas menos de { $share }
card-from-to = { $least } a { $most }
card-spray-between = Aplicar entre
card-spray-only-with = Aplicar solo con
card-usual-practice = Práctica usual
card-this-farm = esta finca
card-between = { $from } y { $to }

## Pasos

card-water = Agua
card-uan = Urea nitrato de amonio (UAN)
card-fertilizer = Fertilizante líquido
card-named-water = agua
card-named-uan = urea nitrato de amonio (UAN)
card-named-fertilizer = fertilizante líquido
card-short-water = agua
card-short-uan = UAN
card-short-fertilizer = fertilizante
card-in-tank = Ya está en el tanque
card-in-tank-gauge = ya en el tanque { $amount }
card-of-this-mix = de esta mezcla
card-agitator-on = agitador encendido
card-agitate-left = agite; quedan { $left } después del último metro
card-agitate-until-empty = agite hasta vaciar
card-clean-of = Aspersora limpia de { $products }
card-clean-after = después de { $names }
card-clean-if = si antes se aplicó { $names }
card-clean-how = agua limpia por cada válvula, sección y extremo de la barra
card-rinses = { $count ->
        [one] 1 enjuague de { $each }
       *[other] { $count } enjuagues de { $each }
    }
card-clean-out = limpiar
card-to = hasta { $mark }
card-water-to = { $water } hasta { $mark }
card-containers = { $containers } de { $size }
card-containers-and-rest = { $containers } de { $size } + { $rest }
card-container-jug = { $count ->
    [one] { $count } bidón
   *[other] { $count } bidones
}
card-container-bag = { $count ->
    [one] { $count } bolsa
   *[other] { $count } bolsas
}
card-container-box = { $count ->
    [one] { $count } caja
   *[other] { $count } cajas
}
card-container-drum = { $count ->
    [one] { $count } tambor
   *[other] { $count } tambores
}
card-container-tote = { $count ->
    [one] { $count } contenedor
   *[other] { $count } contenedores
}
card-handle-unopened = échela sin abrir, con guantes secos
card-handle-pour = vierta despacio
card-handle-pour-or-slurry = vierta despacio, o como papilla (2 partes de agua por 1)
card-handle-slurry = haga primero una papilla (2 partes de agua por 1)
card-handle-shake = agite primero el envase
card-handle-dissolve-first = disuelva primero en agua y luego vierta
card-pause-film = espere hasta que la película desaparezca y el contenido se disuelva
card-pause-dissolved = espere hasta que se disuelva
card-pause-dispersed = agite unos minutos hasta que se disperse

## Tiempo del día

card-wind = viento
card-gusts = ráfagas
card-air = aire
card-humidity = humedad
card-delta-t = Delta T
card-at-least = { $what } de { $least } como mínimo
card-at-most = { $what } de { $most } como máximo
card-what-between = { $what } de { $range }
card-no-wind-toward = sin viento hacia { $what }
card-no-wind-toward-untyped = sin viento hacia { $what }, cuyo lado no está anotado
card-nor = { $a }, ni { $b }
card-no-inversion = sin inversión térmica
card-time-from-to = desde { $from } hasta { $to }
card-sunrise = la salida del sol
card-sunset = la puesta del sol
card-before-sunrise = { $span } antes de la salida del sol
card-after-sunrise = { $span } después de la salida del sol
card-before-sunset = { $span } antes de la puesta del sol
card-after-sunset = { $span } después de la puesta del sol
card-no-rain = sin lluvia
card-no-rain-after = sin lluvia durante { $hours } h después
card-as-its-wind = { $limit }, igual que el viento
card-delta-t-good = Delta T bueno hasta { $good }
card-neighbour-on = { $what } al lado { $side } de { $field }
card-neighbour-beside = { $what } junto a { $field }
card-where-no-strip = { $what } donde no se deja franja, junto a { $field }

card-side-north = norte
card-side-northeast = noreste
card-side-east = este
card-side-southeast = sureste
card-side-south = sur
card-side-southwest = suroeste
card-side-west = oeste
card-side-northwest = noroeste

## Franjas sin aplicar

card-unsprayed = Dejar sin aplicar
card-leave = deje { $strip }{ $when } ({ $who })
card-leave-planned = , según el viento planeado
card-leave-any-wind = , sople de donde sople el viento
card-leave-as-soon = , en cuanto el viento sople hacia allí
card-leave-not-drawn = , que no está en el dibujo
card-strip-along = { $width } a lo largo de { $what }
card-strip-to = { $width } hasta { $what }
card-strip-side = lado { $side }
card-strip-all-round = por todos los lados
card-strip-edge = { $length } del borde
card-no-strip = no se deja ninguna franja
card-no-room-to-draw = No hay lugar para dibujar los lotes; están en el mapa.
card-left-unsprayed = sin aplicar
card-gateway = entrada
card-north = N
card-wind-from = viento del { $from }

## Recuadros

card-wear = Use
card-after-spraying = Después de aplicar
card-keep-out = No entrar
card-keep-out-hours = durante { $hours } h después de terminar de aplicar ({ $product }){ $silent }
card-keep-out-untyped = vea las etiquetas; no hay tiempo de reingreso anotado
card-harvest = Cosecha desde
card-harvest-day = el { $day }, { $days } días después de esta aplicación ({ $product }){ $silent }
card-harvest-untyped = vea las etiquetas; no hay intervalo a la cosecha anotado
card-silent = ; sin anotar para { $products }
card-open = Pendiente cuando se emitió esta tarjeta
card-stop = Alto
card-check = Revisar
card-note-level = Nota
card-cautions = Precauciones
card-emergency = En una emergencia
card-note = Nota para la cuadrilla
card-less-ground = Menos superficie
card-remarks = Observaciones
card-no-room-tank = No hay lugar para el dibujo del tanque.
card-no-room-short = no hay lugar en esta tarjeta; el programa calcula lo que lleva.
card-foot = Rigen la etiqueta y la ley local. Esta tarjeta es un cálculo de lo que se anotó; lea la etiqueta.

## Precauciones

card-said-by = { $what } ({ $who })
card-caution-not-with = No junto con { $what }
card-caution-not-with-days = No junto con { $what }, ni dentro de { $days } días en el mismo lote
card-caution-droplets = Gotas: { $classes }
card-caution-not-toward = No aplicar mientras el viento sople hacia { $what }
card-caution-boom = Barra a { $height } como máximo
card-caution-speed = Avance a { $speed } como máximo
card-caution-keep = Manténgase a no menos de { $width } de { $what }
card-caution-keep-downwind = Manténgase a no menos de { $width } de { $what } donde el viento sople hacia allí
card-usual-measure = Mida el viento, su dirección y la temperatura a la altura de la barra antes de empezar; no aplique con inversión térmica ni hacia personas, agua, abejas o un cultivo sensible.
card-usual-pour = Nunca junte concentrados; que cada uno entre en agua, con agitación, y enjuague el incorporador antes del siguiente.
card-usual-air-gap = Mantenga un espacio de aire o una válvula antirretorno entre la fuente de agua y el tanque.
card-usual-rinse = Enjuague tres veces cada envase vacío y vierta el enjuague en el tanque.

## Gotas

card-class-extremely-fine = extremadamente finas
card-class-very-fine = muy finas
card-class-fine = finas
card-class-medium = medianas
card-class-coarse = gruesas
card-class-very-coarse = muy gruesas
card-class-extremely-coarse = extremadamente gruesas
card-class-ultra-coarse = ultra gruesas
card-class-or-coarser = { $class } o más gruesas
card-class-to = { $finest } a { $coarsest }

## Condiciones

card-and = { $a } y { $b }
card-when = { $what } { $when }
card-when-heat = con calor extremo
card-when-cold = con frío
card-when-drought = con sequía
card-when-large-weeds = en malezas grandes
card-when-thick = donde la maleza es densa
card-when-weed = contra { $weed }
card-when-a-weed = contra una maleza
card-when-with = con { $what }
card-when-with-partner = con otro producto
card-when-alone = sin otro plaguicida en el tanque
card-when-no-surfactant = sin un surfactante completo incorporado
card-when-loaded-partner = con otro producto que tiene un surfactante completo
card-when-carrier = en { $carrier }
card-when-below = con menos de { $rate } de caldo
card-when-above = con más de { $rate } de caldo
card-when-finer = con gotas más finas que { $class }
card-when-coarser = con gotas { $class } o más gruesas
card-when-rate-above = con más de { $rate }
card-when-rate-up-to = con hasta { $rate }
card-when-warmer = con más de { $air }
card-when-colder = con menos de { $air }

## Espacios para anotar

card-blank-wind = Viento a la altura de la barra, y de dónde
card-blank-gust = Ráfaga
card-blank-temperature = Temperatura
card-blank-humidity = Humedad
card-blank-start = Inicio
card-blank-finish = Fin
card-blank-mixed-by = Mezcló
card-blank-signature = Firma
