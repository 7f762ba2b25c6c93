## desk/parts/boxes.rs

parts-does-not-lie-between-0-and = "{ $text }" no está entre 0 y 100 %{ $means }
parts-is-not-a-whole-number-write = "{ $text }" no es un número entero; escríbalo como 30
parts-e-g = p. ej. { $example }
parts-understood-between = = { $least } a { $most }

## desk/parts/dates.rs

parts-moment = { $weekday } { $day } de { $month }, { $time }
parts-weekday = { $weekday } { $day } de { $month } de { $year }
parts-short-day = { $day } { $month } { $year }
parts-short-moment = { $day } { $month } { $year }, { $time }

## desk/parts/day_picture.rs

parts-drag-it-to-hold-it-at = { $spoken }. Arrástrelo para fijarlo en otro lugar.

## desk/parts/differences.rs

parts-nothing-by-name-what-is-alike = nada por su nombre; lo que es igual está en otro orden por dentro

## desk/parts/findings.rs

parts-stop = { $stops ->
        [one] { $stops } alto
       *[other] { $stops } altos
    }
parts-to-check = { $checks } por revisar
parts-nothing-to-settle = nada por resolver

## desk/parts/gauge.rs

parts-sight-gauge-of-a-tank-of = Indicador de nivel de un tanque de { $full }, de abajo hacia arriba: { $layers }

## desk/parts/left_out.rs

parts-lines-are-left-out = { $all ->
        [one] se omite { $all } línea
       *[other] se omiten { $all } líneas
    }
parts-to = { $from } a { $last }
parts-those-before = Las anteriores
parts-lines-left-out-before-these = Líneas omitidas antes de estas
parts-those-after = Las siguientes
parts-lines-left-out-after-these = Líneas omitidas después de estas
parts-line = Línea { $line }: { $why }

## desk/parts/lists.rs

parts-move-up = Subir
parts-move-down = Bajar
parts-it-is-the-first-already = Ya está en el primer lugar
parts-it-is-the-last-already = Ya está en el último lugar
parts-nothing-is-ticked-yet = Aún no se ha marcado nada
parts-copy = Copiar
parts-remove = Quitar

## desk/parts/offers.rs

parts-take = Tomar { $offer }
parts-probably-meant = Probablemente se quiso decir: { $why }

## desk/parts/setting_plot.rs

parts-speed = velocidad, { $speed_unit }
parts-pressure = presión, { $pressure_unit }

## desk/parts/strip.rs

parts-not-in-the-forecast = { $time } no está en el pronóstico
parts-no-forecast = sin pronóstico
parts-sunrise = salida del sol { $from }
parts-sunset = puesta del sol { $to }
parts-doubtful-a-person-decides = dudoso, decide una persona
parts-forbidden-by-a-label-or-a = prohibido por una etiqueta o una ley
parts-the-hour-told-of-below = la hora que se explica abajo
parts-allowed = permitido

## desk/parts/workings.rs

parts-working = Cálculo: { $title }

## desk/parts/offers.rs

parts-takes = { $keys } toma { $first }
parts-takes-and-leaving = { $keys }, o salir de la casilla, toma { $first }
parts-or-pick = o elija
