## desk/report/check.rs

report-not-judged = no evaluado: { $not_judged }

## desk/report/day.rs

report-sprayed = { "      " }{ $id }, aplicado   [{ $id2 }]

## desk/report/jar.rs

report-no-jar-test-the-spray-volume = { "[" }{ $pass }]{ "\u000A" }  sin prueba del frasco: el volumen de caldo sobre el terreno no está anotado{ "\u000A" }
report-jar-test = Prueba del frasco: { $pass } · { $date }   [{ $id }]
report-look-after = { "  " }mire después de { $looks }

## desk/report/needs.rs

report-over = ; sobran { $round }
report-buy = compre { $purchase }{ $cost }{ $over }
report-without-1-product-whose-is-not = { $money }, sin 1 producto al que le falta anotar { $lacks }
report-without-products-whose-is-not-typed = { $money }, sin { $many } productos a los que les falta anotar { $lacks }
report-without-1-that-has-no-price = { $money }, sin 1 que no tiene precio
report-without-that-have-no-price = { $money }, sin { $many } que no tienen precio
report-1-pass-before-that-day-has = 1 aplicación anterior a ese día no tiene registro; toma primero su parte de la bodega
report-passes-before-that-day-have-no = { $many } aplicaciones anteriores a ese día no tienen registro; toman primero su parte de la bodega
report-a-water-without-a-name = un agua sin nombre
report-water-source-not-chosen = agua, fuente no elegida
report-one-nurse-tank-of-is-enough = basta un tanque nodriza de { $holds }
report-nurse-tanks-of = { $count } tanques nodriza de { $holds }
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
report-to-buy = Para comprar
report-in-all = { "  " }en total { $sum_words }
report-on-hand = { $round } en existencias
report-not-in-it = { "  " }no incluido: { $pass }: { $what }
report-the-products-cost = { "  " }los productos cuestan { $sum_words }

## desk/report/review/text.rs

report-all-seasons = todas las temporadas
report-review-of = { $name }: repaso de { $of }{ "\u000A" }
report-nothing-is-recorded = No hay nada registrado.
report-weather-at-application = Tiempo durante la aplicación
report-records-held-against-limits = registros comparados con límites
report-outside-what-a-label-or-a = fuera de lo que pide una etiqueta o una ley, según lo anotado
report-outside-what-is-usual-alone = solo fuera de lo usual
report-no-wind-no-temperature-no-humidity = sin viento, sin temperatura, sin humedad
report-the-label-and-local-law-govern = Rigen la etiqueta y la ley local; esto es un cálculo de lo que se registró.
report-passes-and-ground = Aplicaciones y terreno
report-ground-treated-twice-sprayed-counted-twice = terreno tratado, lo aplicado dos veces cuenta dos veces
report-ground-sprayed-at-least-once = terreno aplicado por lo menos una vez
report-so-far = { $so_far } hasta ahora
report-records-with-ground-without-an-area = registros con terreno sin superficie
report-products = Productos
report-on = { $count } sobre { $treated }, { $spent }
report-actives = { "\u000A" }Ingredientes activos
report-over-the-ground-of-the-farm = { $rate } sobre el terreno de la finca
report-no-field = ningún lote
report-not-in-it-without-its-active = { "  " }no incluido: { $name }, { $count }, sin su ingrediente activo
report-adjuvants = { "\u000A" }Coadyuvantes
report-class-not-typed = clase no anotada
report-ground-treated-without-any = terreno tratado sin ninguno
report-some-records-do-not-say-what = { "  " }Algunos registros no dicen de qué tipo o clase es un producto; cuentan como hoy está en la bodega.
report-resistance-groups = Grupos de resistencia
report-in-no-group = { "  " }en ningún grupo: { $name }, { $count }
report-planned-against-applied = Planeado frente a aplicado
report-amounts-over-ground = cantidades sobre el terreno
report-spray-volume = volumen de caldo
report-to-in-all = { $least } a { $most }, { $n } en total
report-median-error = { $name }, error mediano
report-of = { "  " }{ $name } del { $date }
report-left-over = sobrante
report-records-that-keep-no-plan = registros que no conservan plan
report-cost-of-the-products = Costo de los productos
report-in-all-ac1 = en total
report-no-price-that-fits = { "  " }sin precio que sirva: { $name }, { $count }
report-a-hectare = por hectárea
report-an-acre = por acre
report-treated = { $currency }{ $per } { $unit } tratado
report-water-and-hours = Agua y horas
report-of-it-water = de ello agua { $water }
report-without-that-say-no-volume = ; sin { $count } que no dicen volumen
report-an-hour-start-to-end = { $area } por hora, de comienzo a final
report-without-start-and-end = { $joint }{ $count } sin comienzo ni final
report-ratings-in-per-cent = Evaluaciones, en por ciento
report-95-interval-to = , intervalo del 95 % { $low } a { $high }
report-median = { $count }; mediana { $median }{ $ends }
report-text = { "  " }con { $classes }
report-trial = { "  " }Ensayo: { $name }

## desk/report/text.rs

report-fields = { "  " }lotes    { $fields } = { $area }
report-spray = { "  " }caldo    { $carrier } = { $spray_volume }
report-of-spraying = , { $time } de aplicación
report-water-hard = { "  " }agua     { $name }, dureza de { $hardness }
report-ties-up-of-ammonium-sulfate = , inmoviliza { $most } de sulfato de amonio
report-load-of-on = { "  " }carga { $number } de { $loads }: { $volume } en { $area }
report-of-this-mix-are-in-the = { "        " }{ $to } de esta mezcla ya están en el tanque
report-to = { "        " }{ $carrier_kind } hasta { $to }
report-not-judged-302 = { "  " }no evaluado: { $not_judged }
report-perhaps-meant = { " " }Quizás quiso decir: { $offers }.
report-which-adjuvant-suits-every-partner = { "  " }qué coadyuvante conviene a cada componente
report-rate-not-known = dosis desconocida
report-to-buy-a40 = , para comprar
report-no-adjuvant = sin coadyuvante
report-in-the-mix = { "  " }en la mezcla
report-setting-at = { "  " }ajuste   { $name } a { $figures }
report-which-nozzles-do-this-pass-best = { "  " }qué boquillas hacen mejor esta aplicación
report-in-this-pass = { "  " }en esta aplicación
report-time = { "  " }tiempo   { $figures }
report-not-in-it-3ae = { "           " }no incluido: { $lacks }
report-rinse-stay-in-the-rig = { "  " }enjuague { $residual } quedan en el pulverizador; { $ways }
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
report-droplets-classes = gotas { $classes }
report-loads = , { $fills } cargas
report-sprays-an-hour = aplica por hora
report-loads-an-hour = carga por hora
report-of-501 = { " " }de { $name }
report-the-last-of-the-spray-would = Lo último del caldo aún cubriría { $ground }: deje esa superficie{ $on } para ello, y aplique allí el agua de enjuague.
report-more-than-the-clean-water-tank = , más de lo que contiene el tanque de agua limpia,
report-leaves = { $rinses }{ $more } deja { $to_percent }{ $source }
report-once-with = una vez con { $each }
report-times-with = { $times } veces con { $each }
report-the-pass-takes = { $best }; la aplicación toma { $needs }.
report-how-long-the-pass-takes-is = { $best }; no se sabe cuánto toma la aplicación.
report-no-span-is-long-enough-the = Ningún intervalo es suficiente: la aplicación toma { $needs }. El más largo es { $span }, suficiente para { $to_percent } de ella.{ $midnight }
report-the-longest-span-is = El intervalo más largo es { $span }.
report-no-hour-of-the-day-is = No se permite ninguna hora del día.
report-no-hour-of-the-day-is-allowed-one-is = No se permite ninguna hora del día; una es dudosa, y decide una persona.
report-no-hour-of-the-day-is-allowed-many-are = No se permite ninguna hora del día; { $many } son dudosas, y decide una persona.
report-without-a-place = sin lugar
report-of-cleaning-before-it = { $time } de limpieza antes
report-of-road-before-it = { $time } de camino antes
report-no-clean-out = sin limpieza
report-1-clean-out = 1 limpieza
report-clean-outs = { $many } limpiezas
report-out-at-home-at = salida a las { $from }, regreso a las { $to }
report-lasts-in-all = dura { $lasts } en total
report-for-cleaning-and-road = { $clean_outs }, { $not_spraying } para limpieza y camino, { $ends }
