## core/day/fields.rs

day-its-fields-in-the-order-have = { $name }: sus lotes en el orden { $names } tienen { $time } menos de camino que como están anotados
day-change-the-order-of-the-fields = Cambie el orden de los lotes en la línea del encabezado, a menos que otras cosas hablen a favor del actual.

## core/day/lay.rs

day-how-long-it-takes-is-not = No se sabe cuánto dura; escriba la velocidad, el ancho de la barra y la eficiencia de campo de su aspersora
day-it-has-no-ground-yet = Aún no tiene superficie que aplicar; elija sus lotes y escriba sus superficies
day-times-here-are-of-the-whole = { $name }: { $words }; los tiempos de aquí son de toda la aplicación
day-record-what-is-left-once-it = Registre lo que falta en cuanto se aplique, o baje el terreno de la aplicación a lo que se hizo.
day-is-held-at-place-which-is = { $name } está fijada en el lugar { $wanted }, que no está libre para ella; queda en el lugar { $place }
day-hold-it-at-another-place-or = Fíjela en otro lugar, o deje que vaya donde quepa.

## core/day/mod.rs

day-no-rig-is-chosen-for-it = No tiene aspersora elegida
day-its-rig-is-not-in-the = Su aspersora no está en la bodega
day-no-hour-is-typed-at-which = No hay anotada una hora a la que salgan las aspersoras, así que el día se cuenta desde la medianoche, y una aplicación empieza de noche
day-type-the-hour-at-which-the = Escriba la hora a la que salen las aspersoras, si la primera aplicación no debe empezar tan temprano.

## core/day/road.rs

day-the-road-from-to = el camino de { $from } a { $to }
day-the-road-to = el camino a { $field }
day-no-road = ningún camino

## core/day/sheet.rs

day-is-recorded-as-sprayed = { $name } está registrada como hecha.
day-the-label-and-the-law-win = La etiqueta y la ley prevalecen sobre esta hoja; lea la etiqueta antes de mezclar.
day-measure-before-each-start = Mida el viento, su dirección y la temperatura a la altura de la barra antes de cada comienzo; no aplique con inversión térmica ni hacia personas, agua, abejas o un cultivo sensible.
day-not-counted-having-no-cards = No se cuentan, por no tener tarjetas: { $stopped }.
day-no-rig-chosen = Sin aspersora elegida
day-stops = { $count ->
        [one] { $count } Alto
       *[other] { $count } Altos
    }
day-checks = { $count ->
        [one] { $count } Revisar
       *[other] { $count } Revisar
    }
day-loads = { $count ->
        [one] { $count } carga
       *[other] { $count } cargas
    }
day-it-has-no-load = No tiene ninguna carga.
day-start-not-typed = inicio no anotado
day-not-before = no antes de las { $strftime }
day-not-all-of-this-time-is = No todo este tiempo está dentro de los límites
day-in-bands-treated = { $area } en bandas, superficie tratada { $area2 }
day-loads-and-amounts-here-are-of = { $words }; las cargas y cantidades de aquí son de toda la aplicación.
day-too-short-for-it = { $longest }, demasiado corto para ella
day-not-judged = sin evaluar
day-no-hours = ninguna
day-its-place-is-not-all-inside = { $best }; su lugar no está del todo dentro
day-clean-out-the-rig = Limpie la aspersora
day-clean-out-the-rig-after = Limpie la aspersora después de { $name } del { $day }, si no se ha hecho
day-clean-out-from-to = de { $products } ({ $name }) a { $next }
day-road = Camino
day-left-over = { $loads }, sobran { $left }
day-begin-with-the-in-the-tank =
    { $of_a_pass ->
        [yes] Empiece con los { $volume } del tanque, que dejó { $name }
       *[no] Empiece con los { $volume } del tanque
    }{ $right_before ->
        [no] ; esa no viene justo antes
       *[yes] { "" }
    }
day-sun-up = Sol { $sun }
day-no-rig-leaves-before = Ninguna aspersora sale antes de las { $strftime }
day-rigs-home-by = Aspersoras de vuelta a las { $to } a más tardar
day-rigs-home-by-on-the-next-day = Aspersoras de vuelta a las { $to } del día siguiente a más tardar
day-no-protective-equipment-is-typed = No hay equipo de protección anotado para { $names }; vea la etiqueta.
day-no-re-entry-time-is-typed = No hay tiempo de reingreso anotado para { $names }; vea la etiqueta.
day-there-is-no-forecast-of-this = No hay pronóstico para este día, así que no se evalúa ninguna hora.
day-source-not-named = fuente sin nombre
day-forecast-a-forecast-is-no-measurement = Pronóstico: { $source }. Un pronóstico no es una medición.
day-forecast-read = Pronóstico: { $source }, leído el { $date }, { $time }. Un pronóstico no es una medición.

## core/day/sheet/after.rs

day-hours-of-today = { $hours } h, { $name }
day-h-of = { $hours } h, { $name } del { $date }
day-hours-h-name-of-day = { $hours } h, { $name } del { $day }
day-enter-from-if-on-time = { $moment } si va a tiempo ({ $from })
day-enter-from = { $moment } ({ $from })
day-h-after-the-last-of-the = { $hours } h después de terminar de aplicar ({ $name })
day-see-the-labels-none-is-typed = vea las etiquetas; no hay ninguno anotado
day-enter-from-and-after = { $until }, y { $after }
day-days = { $days } días, { $short }
day-days-of = { $days } días, { $name } del { $date }
day-no-harvest-interval-is-typed-for = No hay intervalo a la cosecha anotado para { $name } en { $fields }; vea la etiqueta.

## core/day/sheet/truck.rs

day-lot = partida { $lot }
day-lots = partidas { $lots }
day-water-source-not-chosen = Agua, fuente no elegida
day-for-loads = { $count ->
        [one] para { $count } carga
       *[other] para { $count } cargas
    }
day-the-nurse-tank-is-filled-once = el tanque nodriza de { $name } se llena una vez con { $volume }
day-the-nurse-tank-is-filled-times = el tanque nodriza de { $name } se llena { $times } veces con hasta { $volume }
day-what-the-nurse-tank-of-holds = no está anotado cuánto cabe en el tanque nodriza de { $name }
day-clean-water-for-rinsing = Agua limpia para enjuagar { $name }
day-to-begin-with-filling-it-again = para empezar; no se cuenta volver a llenarlo

## core/day/tell.rs

day-of = { $name } del { $day }
day-clean-the-rig-out-as-the = Limpie antes la aspersora como dicen las etiquetas, si no se ha hecho desde entonces.
day-clean-out-as-the-labels-say = Limpie como dicen las etiquetas, fíjela en un lugar antes de esa, o aplíquela otro día.
day-no-order-without-that-is-as = Ningún orden sin eso es tan bueno en lo demás. Limpie como dicen las etiquetas, o aplíquela otro día.
day-goes-to-after = { $name } va a { $fields } después de { $after }. { $says }
day-goes-to-after-whether-traces-of = { $name } va a { $fields } después de { $after }; no se puede saber si restos de { $what } dañan lo que crece allí
day-type-the-crop-by-its-usual = Escriba el cultivo por su nombre usual; donde siga sin conocerse, limpie la aspersora como dicen las etiquetas.
day-with-what-is-held-no-order = Con lo que está fijado, ningún orden cuesta menos; esto está demostrado
day-no-order-costs-less-this-is = Ningún orden cuesta menos; esto está demostrado
day-being-home-sooner = volver antes
day-more-than-passes-on-one-rig = Más de { $exact } aplicaciones en una aspersora se ordenan probando, así que puede escaparse un orden mejor; lo más que podría aventajar a este es: { $gain }
day-held-at-place = Fijada en el lugar { $at }
day-here-no-allowed-hours-are-long = Aquí no hay horas permitidas que alcancen para ella; estas son las primeras, con algunas dudosas entre ellas
day-it-takes-the-same-spray-so = Lleva el mismo caldo, así que no necesita limpieza, y lo que sobre puede seguir en ella
day-same-spray-saves-fillings = { $count ->
        [one] Lleva el mismo caldo, así que no necesita limpieza, y lo que sobre puede seguir en ella; con las cargas unidas hay un llenado menos
       *[other] Lleva el mismo caldo, así que no necesita limpieza, y lo que sobre puede seguir en ella; con las cargas unidas hay { $saved } llenados menos
    }
day-it-needs-no-clean-out = No necesita limpieza
day-it-has-a-stop-to-settle = Tiene un Alto por resolver primero
day-the-earliest-allowed-hours-that-are = Las primeras horas permitidas que alcanzan
day-before = Antes de { $name }: { $gain }
day-held-at-their-places = Fijadas en sus lugares
day-it-costs-nothing = { $who }: no cuesta nada
day-let-it-go-to-have-the = Suéltela para volver a tener el mejor orden.
day-no-order-leaves-room-for-its = ningún orden deja lugar para sus { $takes } junto a las otras aplicaciones
day-its-do-not-end-before-the = sus { $takes } no terminan antes de que las aspersoras deban estar de vuelta
day-no-span-of-the-day-is = ningún lapso del día alcanza para sus { $takes }
day-the-day-is-not-long-enough = el día no alcanza para sus { $takes }
day-finds-no-place-on = { $name } no encuentra lugar el { $date }: { $no_place }
day-move-it-to-another-day-or = Pásela a otro día o a otra aspersora, o divídala.
day-has-no-place-in-the-day = { $name } no tiene lugar en el día: no se sabe cuánto dura
day-type-speed-boom-width-and-field = Escriba la velocidad, el ancho de la barra y la eficiencia de campo de su aspersora.
day-has-no-place-without-a-field = { $name } no tiene lugar en el día: aún no tiene lote
day-choose-its-fields = Elija sus lotes.
day-has-no-place-without-ground = { $name } no tiene lugar en el día: sus lotes no tienen superficie
day-type-the-areas-of-its-fields = Escriba sus superficies en Lotes.
day-runs-past-midnight-until = { $name } pasa de la medianoche, hasta las { $strftime }
day-type-the-hour-at-which-the-rigs-are-to = Escriba la hora a la que las aspersoras deben estar de vuelta, si eso es demasiado tarde.
day-the-forecast-does-not-tell-of = El pronóstico no dice nada del { $date }, así que las horas de las aplicaciones de { $rig_name } no se evalúan
day-open-a-forecast-that-reaches-it = Abra un pronóstico que llegue hasta ese día.
day-the-forecast-does-not-tell-of-date-and-no = El pronóstico no dice nada del { $date } y no hay anotada una hora a la que salga { $rig_name }, así que no se dicen horas, solo cuánto duran las cosas
day-open-a-forecast-that-reaches-it-or-type-the = Abra un pronóstico que llegue hasta ese día, o escriba la hora a la que salen las aspersoras.
day-hold-passes-at-places-where-you = Fije aplicaciones en lugares donde conozca un orden mejor.
day-begins-with-spray-of-but-does = { $name } empieza con caldo de { $name2 }, pero no viene justo después
day-begins-with-that-are-in-the = { $name } empieza con { $volume } que ya están en el tanque, y otra aplicación viene antes
day-hold-both-at-places-where-one = Fije las dos en lugares donde una venga justo después de la otra, o quite de la aplicación lo que hay en el tanque.
day-were-the-rigs-not-to-be = Si las aspersoras no tuvieran que estar de vuelta a las { $strftime }, volvería a las { $strftime2 } con más aplicaciones hechas: { $left_out }.
day-how-fast-is-on-the-road = qué tan rápido va { $rig_name } por el camino
day-not-known-and-counted-as-nothing = { $rig_name }: no se conoce y se cuenta como nada: { $missing }
day-type-roads-with-the-fields-and = Escriba los caminos con los lotes, y la velocidad en el camino con la aspersora.

## core/day/words.rs

day-count = { $number ->
        [0] ninguna
        [1] una
        [2] dos
        [3] tres
        [4] cuatro
        [5] cinco
        [6] seis
        [7] siete
        [8] ocho
        [9] nueve
        [10] diez
        [11] once
        [12] doce
       *[other] { $number }
    }
day-pass = { $count ->
        [one] { $number } aplicación
       *[other] { $number } aplicaciones
    }
day-less-than-a-minute = menos de un minuto
day-more-find-a-place = { $count ->
        [one] { $passes } más encuentra lugar
       *[other] { $passes } más encuentran lugar
    }
day-more-right-after-what-leaves-spray = { $count ->
        [one] { $passes } más justo después de la que le deja el caldo
       *[other] { $passes } más justo después de la que les deja el caldo
    }
day-fewer-in-doubtful-hours = { $more } menos en horas dudosas
day-fewer-after-a-mix-that-hurts = { $more } menos después de una mezcla que daña el cultivo
day-clean-out-fewer = { $count ->
        [one] { $number } limpieza menos
       *[other] { $number } limpiezas menos
    }
day-less-for-cleaning-and-road = { $time } menos de limpieza y camino
day-home-sooner = de vuelta { $time } antes
day-more-without-a-place = { $more } más sin lugar
day-more-that-do-not-come-right = { $count ->
        [one] { $passes } más que no viene justo después de la que le deja el caldo
       *[other] { $passes } más que no vienen justo después de la que les deja el caldo
    }
day-more-in-doubtful-hours = { $more } más en horas dudosas
day-more-after-a-mix-that-hurts = { $more } más después de una mezcla que daña el cultivo
day-clean-out-more = { $count ->
        [one] { $number } limpieza más
       *[other] { $number } limpiezas más
    }
day-more-for-cleaning-and-road = { $time } más de limpieza y camino
day-home-later = de vuelta { $time } después
day-than-in-the-best-order = { $parts } que en el mejor orden
