## desk/report/check.rs

report-not-judged = no evaluado: { $not_judged }

## desk/report/day.rs

report-sprayed = { "      " }{ $id }, aplicado   [{ $id2 }]

## desk/report/jar.rs

report-no-jar-test-the-spray-volume = { "[" }{ $pass }]{ "\u000A" }  sin prueba del frasco: el volumen de caldo por superficie no está anotado{ "\u000A" }
report-jar-test = Prueba del frasco: { $pass } · { $date }   [{ $id }]
report-look-after = { "  " }mire después de { $looks }

## desk/report/needs.rs

report-over = ; sobran { $round }
report-buy = compre { $purchase }{ $cost }{ $over }
report-without-products-whose-is-not-typed = { $money }, sin { $many } { $many ->
        [one] producto sin
       *[other] productos sin
    } { $lacks ->
        [price] precio anotado
       *[price-or-container] precio o envase anotado
    }
report-without-that-have-no-price = { $money }, sin { $many } que no { $many ->
        [one] tiene
       *[other] tienen
    } precio
report-passes-before-that-day-have-no = { $many } { $many ->
        [one] aplicación anterior a ese día no tiene registro; toma primero su parte de la bodega
       *[other] aplicaciones anteriores a ese día no tienen registro; toman primero su parte de la bodega
    }
report-a-water-without-a-name = un agua sin nombre
report-water-source-not-chosen = agua, fuente no elegida
report-nurse-tanks-of = { $count ->
        [one] basta un tanque nodriza de { $holds }
       *[other] { $count } tanques nodriza de { $holds }
    }
report-short = faltan { $round }
report-left = quedan { $round }
report-density-not-typed = densidad no anotada
report-not-typed = no anotado
report-no-pass-of-is-to-be = No hay ninguna aplicación del { $day } por hacer.
report-what-the-passes-of-take = Lo que toman las aplicaciones del { $day }: { $passes }
report-with = { "  " }{ $rig_name } con { $source }: { $tanks }
report-nor-is-any-after-it = Ni hay ninguna después.
report-what-all-passes-from-then-on = Lo que toman todas las aplicaciones desde entonces: { $passes }
report-nothing-is-short-of-what-is = No falta nada de lo contado.
report-to-buy = Por comprar
report-in-all = { "  " }en total { $sum_words }
report-on-hand = { $round } en existencia
report-not-in-it = { "  " }no incluido: { $pass }: { $what }
report-the-products-cost = { "  " }los productos cuestan { $sum_words }

## desk/report/review/text.rs

report-records = registros
report-ground = superficie
report-records-of-month = { $month }: { $count } { $count ->
        [one] registro
       *[other] registros
    }
report-so-many-records = { $count } { $count ->
        [one] registro
       *[other] registros
    }
report-all-seasons = todas las temporadas
report-review-of = { $name }: repaso de { $of }{ "\u000A" }
report-nothing-is-recorded = No hay nada registrado.
report-weather-at-application = Clima durante la aplicación
report-records-held-against-limits = registros comparados con límites
report-outside-what-a-label-or-a = fuera de lo que pide una etiqueta o una ley, según lo anotado
report-outside-what-is-usual-alone = solo fuera de lo usual
report-no-wind-no-temperature-no-humidity = sin viento, sin temperatura, sin humedad
report-the-label-and-local-law-govern = Rigen la etiqueta y la ley local; esto es un cálculo de lo que se registró.
report-passes-and-ground = Aplicaciones y superficie
report-ground-treated-twice-sprayed-counted-twice = superficie tratada; la aplicada dos veces cuenta dos veces
report-ground-sprayed-at-least-once = superficie aplicada por lo menos una vez
report-so-far = { $so_far } hasta ahora
report-records-with-ground-without-an-area = registros con terreno sin superficie
report-products = Productos
report-on = { $count } { $count ->
        [one] registro
       *[other] registros
    } sobre { $treated }, { $spent }
report-actives = { "\u000A" }Ingredientes activos
report-over-the-ground-of-the-farm = { $rate } por la superficie de la finca
report-no-field = ningún lote
report-not-in-it-without-its-active = { "  " }no incluido: { $name }, { $count } { $count ->
        [one] vez
       *[other] veces
    }, sin su ingrediente activo
report-adjuvants = { "\u000A" }Coadyuvantes
report-class-not-typed = clase no anotada
report-ground-treated-without-any = superficie tratada sin ninguno
report-some-records-do-not-say-what = { "  " }Algunos registros no dicen de qué tipo o clase es un producto; cuentan como hoy está en la bodega.
report-resistance-groups = Grupos de resistencia
report-in-no-group = { "  " }en ningún grupo: { $name }, { $count } { $count ->
        [one] vez
       *[other] veces
    }
report-planned-against-applied = Planeado frente a aplicado
report-amounts-over-ground = cantidades por superficie
report-spray-volume = volumen de caldo
report-to-in-all = { $least } a { $most }, { $n } en total
report-median-error = { $name }, error mediano
report-of = { "  " }{ $name } del { $date }
report-left-over = sobrante
report-records-that-keep-no-plan = registros que no conservan plan
report-cost-of-the-products = Costo de los productos
report-in-all-ac1 = en total
report-no-price-that-fits = { "  " }sin precio que sirva: { $name }, { $count } { $count ->
        [one] vez
       *[other] veces
    }
report-a-hectare-treated = { $currency }{ $per } por hectárea tratada
report-an-acre-treated = { $currency }{ $per } por acre tratado
report-water-and-hours = Agua y horas
report-of-it-water = de eso, agua { $water }
report-of-it-water-without-volume = de eso, agua { $water }; sin { $count } { $count ->
        [one] registro
       *[other] registros
    } que no { $count ->
        [one] dice
       *[other] dicen
    } el volumen
report-an-hour-start-to-end = { $area } por hora, de inicio a fin
report-without-start-and-end = { $count } { $count ->
        [one] registro
       *[other] registros
    } sin inicio ni fin
report-an-hour-and-without-start-and-end = { $area } por hora, de inicio a fin; { $count } { $count ->
        [one] registro
       *[other] registros
    } sin inicio ni fin
report-ratings-in-per-cent = Evaluaciones, en por ciento
report-95-interval-to = , intervalo del 95 % { $low } a { $high }
report-median = { $count } { $count ->
        [one] lote
       *[other] lotes
    }; mediana { $median }{ $ends }
report-text = { "  " }con { $classes }
report-trial = { "  " }Ensayo: { $name }

## desk/report/text.rs

report-fields = { "  " }lotes    { $fields } = { $area }
report-spray = { "  " }caldo    { $carrier } = { $spray_volume }
report-of-spraying = , { $time } de aplicación
report-water-hard = { "  " }agua     { $name }, dureza de { $hardness }
report-ties-up-of-ammonium-sulfate = , retiene { $most } de sulfato de amonio
report-load-of-on = { "  " }carga { $number } de { $loads }: { $volume } en { $area }
report-of-this-mix-are-in-the = { "        " }{ $to } de esta mezcla ya están en el tanque
report-to = { "        " }{ $carrier_kind } hasta { $to }
report-not-judged-302 = { "  " }no evaluado: { $not_judged }
report-perhaps-meant = { " " }Quizás quiso decir: { $offers }.
report-which-adjuvant-suits-every-partner = { "  " }qué coadyuvante conviene a todos los productos de la mezcla
report-rate-not-known = dosis desconocida
report-to-buy-a40 = , por comprar
report-no-adjuvant = sin coadyuvante
report-in-the-mix = { "  " }en la mezcla
report-setting-at = { "  " }ajuste   { $name } a { $figures }
report-which-nozzles-do-this-pass-best = { "  " }qué boquillas hacen mejor esta aplicación
report-in-this-pass = { "  " }en esta aplicación
report-time = { "  " }tiempo   { $figures }
report-not-in-it-3ae = { "           " }no incluido: { $lacks }
report-rinse-stay-in-the-rig = { "  " }enjuague { $residual } quedan en la aspersora; { $ways }
report-hours = { "  " }horas    { $answer }

## desk/report/words.rs

report-not-in-the-table = no está en la tabla
report-droplets = gotas { $classes }
report-valves-open = válvulas abiertas { $duty }
report-suits-as-planned = conviene como está planeado
report-suits-at = conviene a { $speed }
report-suits-at-another-speed = conviene a otra velocidad
report-cannot-be-told = no se puede saber
report-does-not-suit = no conviene
report-what-a-new-nozzle-delivers-is = No está anotado lo que da una boquilla nueva, así que no se pueden saber presión ni gotas.
report-at-no-speed-do-pressure-and = A ninguna velocidad quedan presión y gotas dentro de lo que permiten el juego y las etiquetas.
report-at = A { $slowest }
report-between = Entre { $ends }
report-pressure-stays-at = la presión se queda en { $least }
report-pressure-stays-between = la presión se queda entre { $ends }
report-droplets-classes = las gotas son { $classes }
report-filling-of-loads = { $time }, { $fills } cargas
report-spraying-time = aplicación
report-filling-time = llenado
report-road-time = camino
report-at-it-stays = { $at } { $stay }.
report-one-and-other = { $one } y { $other }
report-sprays-an-hour = aplica por hora
report-loads-an-hour = carga por hora
report-the-last-of-the-spray-would = Lo último del caldo aún cubriría { $ground }: deje esa superficie de { $name } para ello, y aplique allí el agua de enjuague.
report-the-last-of-the-spray-would-anywhere = Lo último del caldo aún cubriría { $ground }: deje esa superficie para ello, y aplique allí el agua de enjuague.
report-more-than-the-clean-water-tank = { $rinses }, más de lo que contiene el tanque de agua limpia, deja { $to_percent }{ $source }
report-leaves = { $rinses } deja { $to_percent }{ $source }
report-times-with = { $times ->
        [one] una vez
       *[other] { $times } veces
    } con { $each }
report-the-pass-takes = { $best }; la aplicación dura { $needs }.
report-how-long-the-pass-takes-is = { $best }; no se sabe cuánto dura la aplicación.
report-no-span-is-long-enough-the = Ningún lapso es suficiente: la aplicación dura { $needs }. El más largo es { $span }, suficiente para { $to_percent } de ella.{ $midnight }
report-the-longest-span-is = El lapso más largo es { $span }.
report-no-hour-of-the-day-is = No se permite ninguna hora del día.
report-no-hour-of-the-day-is-allowed-many-are = No se permite ninguna hora del día; { $many ->
        [one] una es dudosa
       *[other] { $many } son dudosas
    }, y decide una persona.
report-without-a-place = sin lugar
report-of-cleaning-before-it = { $time } de limpieza antes
report-of-road-before-it = { $time } de camino antes
report-clean-outs = { $many ->
        [0] sin limpieza
        [one] 1 limpieza
       *[other] { $many } limpiezas
    }
report-out-at-home-at = salida a las { $from }, regreso a las { $to }
report-lasts-in-all = dura { $lasts } en total
report-for-cleaning-and-road = { $clean_outs }, { $not_spraying } para limpieza y camino, { $ends }
