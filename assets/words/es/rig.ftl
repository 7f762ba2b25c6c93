## core/rig/calibration/acre_fraction.rs

rig-the-course-was-driven-in-no = El tramo se recorrió en un tiempo de cero, así que no se conocen la velocidad ni el caudal
rig-type-how-long-the-course-took = Escriba cuánto se tardó en el tramo, como "23 s".
rig-nothing-was-caught-in-the-time = No se recogió nada durante el tiempo del tramo
rig-type-what-one-nozzle-or-all = Escriba lo que dio una boquilla, o todas las boquillas de un surco, en ese tiempo.
rig-1-128-acre = 1/128 de acre
rig-how-far-the-nozzles-stand-apart = No está anotado a qué distancia están las boquillas entre sí, así que no se conocen el largo del tramo ni la velocidad
rig-type-how-the-nozzles-of-the = Escriba cómo están colocadas a lo largo de la barra las boquillas del juego.
rig-each-figure-is-taken-for-what = Cada cifra se toma como lo que dieron juntas las { $together } boquillas de un surco

## core/rig/calibration/age.rs

rig-days-before-this-pass-this-farm = { $age } días antes de esta aplicación; esta finca se atiene a { $days }
rig-before-this-season-a-rig-is = antes de esta temporada; una aspersora se calibra cada temporada
rig-with = { " " }con "{ $name }"
rig-no-calibration-of-up-to-the = No hay anotada ninguna calibración de { $name }{ $with } hasta el día de esta aplicación
rig-catch-the-nozzles-or-measure-the = Recoja el caudal de las boquillas o mida el volumen por superficie, y anótelo en la bodega.
rig-the-last-calibration-of-is-of = La última calibración de { $name }{ $with } es del { $date }, { $why }
rig-calibrate-it-before-this-pass-and = Calíbrela antes de esta aplicación y anote la calibración en la bodega.
rig-and-more = ; y { $more } más
rig-the-calibration-of-of-found = La calibración de { $name } del { $date } ({ $test }) encontró: { $text }{ $more }
rig-mend-it-and-calibrate-again-the = Corríjalo y calibre otra vez; la página de la aspersora en la bodega lo muestra todo.

## core/rig/calibration/catch.rs

rig-the-nozzles-were-caught-for-no = Las boquillas se midieron durante un tiempo de cero, así que no se conoce su caudal
rig-type-how-long-each-nozzle-was = Escriba cuánto tiempo se recogió de cada boquilla, como "30 s".
rig-nothing-was-caught-at-any-nozzle = No se recogió nada en ninguna boquilla
rig-type-what-each-nozzle-gave-such = Escriba lo que dio cada boquilla, como "32 fl oz" o "900 mL".
rig-nozzles-are-typed-as-caught-the = Están anotadas { $caught } boquillas medidas; el juego tiene { $count }
rig-mend-the-number-of-nozzles-of = Corrija el número de boquillas del juego, o quite lo que no se midió.
rig-catch-at-the-nozzles = Medición en las boquillas
rig-from-each-in = { $total } de { $all }, cada una en { $time }
rig-flow-is-volume-time = el caudal es volumen ÷ tiempo

## core/rig/calibration/course.rs

rig-the-course-has-no-length-so = El tramo no tiene largo, así que no se conoce la velocidad
rig-type-its-length-such-as-300 = Escriba su largo, como "{ $example }".
rig-a-run-over-the-course-has = Una pasada por el tramo no tiene tiempo, así que no se conoce la velocidad
rig-type-how-long-each-run-took = Escriba cuánto se tardó en cada pasada, como "41 s".
rig-speed-over-a-course = Velocidad en un tramo
rig-mean-of-run = media de { $times } { $times ->
        [one] pasada
       *[other] pasadas
    }
rig-shown-in-the-cab-against-it = { $shown } según la cabina, frente a ella
rig-the-cab-showed-the-course-gives = La cabina mostró { $shown }; el tramo da { $speed }, así que lo que muestra se desvía { $off }
rig-set-the-speed-sensor-or-the = Ajuste de nuevo el sensor de velocidad o el tamaño de la rueda, y recorra el tramo otra vez.

## core/rig/calibration/mod.rs

rig-state-good = buena
rig-state-worn = gastada
rig-state-blocked = tapada
rig-another-size = otro tamaño
rig-rig-is-not-in-the-shed = La aspersora "{ $rig_id }" no está en la bodega
rig-choose-another-rig-or-add-it = Elija otra aspersora, o agréguela en la bodega.
rig-the-calibration-of-is-for-nozzle = La calibración del { $date } es para el juego de boquillas "{ $set }", que { $name } no tiene
rig-choose-the-set-that-was-fitted = Elija el juego que estaba montado.

## core/rig/calibration/tank_level.rs

rig-nothing-was-sprayed = No se aplicó nada
rig-type-what-it-took-to-fill = Escriba cuánto hizo falta para volver a llenar el tanque.
rig-no-ground-was-sprayed-so-the = No se aplicó sobre ningún terreno, así que no se conoce el volumen por superficie
rig-type-the-ground-that-was-sprayed = Escriba el terreno que se aplicó, como "{ $example }".
rig-the-ground-is-taken-for-that = El terreno se toma como el de las bandas solamente, como las dosis en la aplicación en bandas
rig-tank-level = Nivel del tanque
rig-against-as-it-was-set = frente a { $set_to }, según se ajustó
rig-the-rig-gave-where-it-was = La aspersora dio { $carrier } cuando estaba ajustada a { $set_to }, { $off }; el estudio con el que se compara considera exacta una aspersora dentro del { $show } %
rig-look-at-speed-pressure-and-nozzles = Revise velocidad, presión y boquillas, corrija lo que esté mal y mida otra vez.
rig-the-rig-was-set-to-no = La aspersora estaba ajustada a un volumen por superficie de cero
rig-type-what-it-was-set-to = Escriba a cuánto estaba ajustada, como "{ $example }", o bórrelo.

## core/rig/calibration/wear.rs

rig-mean-of = media de { $near }{ $many ->
        [0] { "" }
        [one] , sin contar 1 que se aleja mucho
       *[other] , sin contar { $many } que se alejan mucho
    }
rig-a-new-one = una nueva: { $of_a_nozzle } × √({ $pressure } ÷ { $at })
rig-the-mean-against-a-new-one = la media frente a una nueva
rig-one-alone-was-caught-so-there = { $one ->
        [row] Se midió un solo surco
       *[nozzle] Se midió una sola boquilla
    }, así que no hay promedio con el que comparar
rig-so-far-from-a-new-one = { $one ->
        [row] { $count ->
            [one] El surco
           *[other] Los surcos
        }
       *[nozzle] { $count ->
            [one] La boquilla
           *[other] Las boquillas
        }
    } { $list } { $count ->
        [one] está
       *[other] están
    } tan lejos de una nueva que el tamaño probablemente es otro
rig-so-far-from-the-others = { $one ->
        [row] { $count ->
            [one] El surco
           *[other] Los surcos
        }
       *[nozzle] { $count ->
            [one] La boquilla
           *[other] Las boquillas
        }
    } { $list } { $count ->
        [one] está
       *[other] están
    } tan lejos de las demás que el tamaño probablemente es otro
rig-read-the-number-on-the-nozzle = Lea el número en la boquilla; si es el correcto, límpiela y mida otra vez; si no, cámbiela.
rig-more-than-the-average = { $one ->
        [row] { $count ->
            [one] El surco
           *[other] Los surcos
        }
       *[nozzle] { $count ->
            [one] La boquilla
           *[other] Las boquillas
        }
    } { $list } { $count ->
        [one] está
       *[other] están
    } más de { $loosest } % { $side ->
        [above] por encima
       *[below] por debajo
    } del promedio
rig-more-than-the-average-allows-up = { $one ->
        [row] { $count ->
            [one] El surco
           *[other] Los surcos
        }
       *[nozzle] { $count ->
            [one] La boquilla
           *[other] Las boquillas
        }
    } { $list } { $count ->
        [one] está
       *[other] están
    } más de { $strictest } % { $side ->
        [above] por encima
       *[below] por debajo
    } del promedio; { $lenient } permite hasta { $loosest } %
rig-replace = { $count ->
        [one] Cámbiela.
       *[other] Cámbielas.
    }
rig-clean-and-the-strainer-and-catch = { $count ->
        [one] Límpiela
       *[other] Límpielas
    }, limpie también el filtro, y mida otra vez.
rig-look-at-the-pressure-gauge-where = Revise el manómetro; si está bien, cambie todo el juego.
rig-look-at-the-pressure-gauge-the = Revise el manómetro, los filtros y el caudal nominal tal como está anotado.
rig-together-they-give-more-than-new = { $one ->
        [row] Juntas, las boquillas de los surcos
       *[nozzle] Juntas, las boquillas
    } dan { $off } % más que nuevas, que dan { $new }; el juego está gastado
rig-together-they-give-less-than-new = { $one ->
        [row] Juntas, las boquillas de los surcos
       *[nozzle] Juntas, las boquillas
    } dan { $off } % menos que nuevas, que dan { $new }
rig-over-than-a-new-one-which = { $one ->
        [row] { $count ->
            [one] El surco
           *[other] Los surcos
        }
       *[nozzle] { $count ->
            [one] La boquilla
           *[other] Las boquillas
        }
    } { $list } { $count ->
        [one] da
       *[other] dan
    } más de { $share } % { $side ->
        [above] de más
       *[below] de menos
    } que una nueva, que da { $new }
rig-nothing-is-held-against-new-rating = No se compara nada con una boquilla nueva: no está anotado lo que da una boquilla nueva
rig-nothing-is-held-against-new-pressure = No se compara nada con una boquilla nueva: no está anotada la presión de la prueba
rig-nothing-is-held-against-new-zero = No se compara nada con una boquilla nueva: el caudal nominal del juego de boquillas es cero
rig-type-the-rating-of-the-nozzle = Escriba el caudal nominal del juego de boquillas en la bodega.
rig-type-the-pressure-at-the-nozzles = Escriba la presión en las boquillas durante la prueba.
rig-mend-the-rating-of-the-nozzle = Corrija el caudal nominal del juego de boquillas en la bodega.

## core/rig/choose.rs

rig-it-is-the-set-usually-fitted = Es el juego que suele estar montado: no hay que cambiar boquillas
rig-valves-open = , válvulas abiertas { $show_whole }
rig-droplets-as-asked = ; { $classes }, según lo que { $who ->
        [law] la ley pide
        [labels-and-laws] las etiquetas y las leyes piden
        [label] la etiqueta pide
        [both-labels] ambas etiquetas piden
       *[all-labels] todas las etiquetas piden
    }
rig-gives-at-with = { $name } da { $carrier } a { $speed } con { $pressure }{ $valves }{ $droplets }
rig-at-it-needs-beyond-the-table = A { $speed } necesita { $shown }, { $side ->
        [above] por encima de
        [just-above] apenas por encima de
        [below] por debajo de
       *[just-below] apenas por debajo de
    } los { $limit } de la tabla del fabricante de la boquilla tal como está anotada
rig-at-it-is-held-beyond-the-table = A { $speed } se mantiene en { $shown }, { $side ->
        [above] por encima de
        [just-above] apenas por encima de
        [below] por debajo de
       *[just-below] apenas por debajo de
    } los { $limit } de la tabla del fabricante de la boquilla tal como está anotada
rig-at-the-valves-would-stand-open = A { $speed } las válvulas estarían abiertas { $open_words } del tiempo; pueden estarlo de { $show_whole } a { $show_whole2 }
rig-at-its-droplets-are-for = A { $pressure } sus gotas son { $classes }; { $who ->
        [law] la ley pide
        [labels-and-laws] las etiquetas y las leyes piden
        [label] la etiqueta pide
        [both-labels] ambas etiquetas piden
       *[all-labels] todas las etiquetas piden
    } { $droplet_words }
rig-its-droplet-table-does-not-reach = Su tabla de gotas no llega a { $pressure }
rig-the-asks-for-at-most-over = { $who ->
        [law] La ley pide
       *[label] La etiqueta pide
    } avanzar a { $most } como máximo
rig-at = a { $least }
rig-from-to = de { $least } a { $most }
rig-not-known-it-lacks = No se sabe: le falta { $lacks }
rig-it-can-be-driven = Se puede avanzar { $speeds }
rig-at-no-pressure-of-its-table = A ninguna presión de su tabla son sus gotas { $droplet_words }
rig-with-a-pressure-from-to-it = Con una presión de { $least } a { $most } serviría
rig-at-no-speed-do-pressure-droplets = A ninguna velocidad concuerdan presión, gotas y etiquetas

## core/rig/clean_out.rs

rig-before = Antes de { $before }: { $how }

## core/rig/density.rs

rig-for = { $density } para { $name }

## core/rig/reckon.rs

rig-a-rating-above-nothing = un caudal nominal mayor que cero
rig-its-rating = su caudal nominal
rig-the-layout-of-its-nozzles = la disposición de sus boquillas
rig-a-least-pressure-below-its-most = una presión mínima menor que la máxima
rig-its-range-of-pressure = su intervalo de presión
rig-the-pressure-it-is-held-at = la presión a la que se mantiene
rig-its-droplet-classes = sus clases de gota

## core/rig/rinse.rs

rig-of-it-nothing = nada
rig-1-part-in = 1 parte en { $show }
rig-on-about = , en unos { $ground }
rig-lines-and-boom-of-hold-the = Las líneas y la barra de { $name } contienen { $volume }: lo primero de una mezcla nueva no sale a plena concentración{ $ground }
rig-run-the-mix-to-the-nozzles = Haga llegar la mezcla a las boquillas antes de empezar, donde la etiqueta lo permita.
rig-what-stays-in-when-it-runs = Lo que queda en { $name } cuando se vacía está anotado como cero; ninguna aspersora se vacía del todo, así que el enjuague no se calcula
rig-what-stays-in-name-when-it-runs-dry-is = No está anotado lo que queda en { $name } cuando se vacía, así que el enjuague no se calcula
rig-not-typed = no está anotado
rig-what-stays-in-is-nothing-so = { $goes_to }. { $says }; lo que queda en { $name } está anotado como cero, así que no se puede calcular si basta con enjuagar
rig-what-stays-in-is-not-typed-so = { $goes_to }. { $says }; no está anotado lo que queda en { $name }, así que no se puede calcular si basta con enjuagar
rig-type-what-stays-in-tank-lines = Anote en la bodega lo que queda en tanque, líneas y barra; lo trae el manual de la aspersora.
rig-until-then-clean-the-rig-out = Anote en la bodega lo que queda en tanque, líneas y barra; lo trae el manual de la aspersora. Hasta entonces limpie la aspersora como dicen las etiquetas.
rig-before-of-the-rig-is-cleaned = Antes de "{ $name }" del { $date } se limpia la aspersora: { $what }
rig-whose-crop-is-not-typed = { $name }, cuyo cultivo no está anotado
rig-whether-traces-of-hurt-what-grows = { $goes_to }; no se puede saber si restos de { $what } dañan lo que crece allí
rig-type-the-crop-by-its-usual = Escriba el cultivo por su nombre usual; donde siga sin conocerse, limpie la aspersora como dicen las etiquetas.
rig-of-goes-to = "{ $name }" del { $date } va a { $fields }
rig-enough-for-leave-about-that-much = , suficiente para { $ground }: deje para ello más o menos esa superficie del último lote
rig-about-stay-when-it-runs-dry = Unos { $residual } quedan cuando se vacía{ $leave }.{ $rule }
rig-is-cleaned-before-its-next-pass = { $name } se limpia antes de su próxima aplicación: { $next_words }. { $says }
rig-clean-it-out-as-the-labels = Límpiela como dicen las etiquetas, con los pasos que están junto al enjuague.
rig-rinse-of-each-10-of-the = { $rinses } { $rinses ->
        [one] enjuague de { $tenth } (10 % del tanque) llega a eso
       *[other] enjuagues de { $tenth } cada uno (10 % del tanque) llegan a eso
    }. Limpie la aspersora como dice la etiqueta, o aplique antes en otro lote.
rig-the-of-rinsing-water-on-board = los { $water } de agua de enjuague a bordo dejan { $left }
rig-the-rinsing-water-on-board-is = el agua de enjuague a bordo no está anotada
rig-the-rinsing-water-on-board-does = el agua de enjuague a bordo no lo dice
rig-rinse-in-three-parts-through-the = Enjuague en tres partes, por toda la barra, y aténgase a lo que la etiqueta dice de la limpieza.
rig-clean-the-rig-out-as-the = Limpie la aspersora como dice la etiqueta, o aplique antes en otro lote.
rig-rinsing = Enjuague
rig-what-stays-in = lo que queda en { $name }
rig-ground-it-would-still-spray = terreno que aún se aplicaría
rig-rinsing-water-on-board = agua de enjuague a bordo
rig-to-the-power = { $rinses } × { $each }: ({ $residual } ÷ ({ $residual } + { $each })) a la potencia { $rinses }{ $whose }

## core/rig/setting.rs

rig-the-pass-takes-nozzle-set-which = La aplicación usa el juego de boquillas "{ $nozzles }", que { $name } no tiene
rig-choose-another-set-or-add-it = Elija otro juego, o agréguelo a la aspersora en la bodega.
rig-the-speed-is-typed-as-nothing = La velocidad está anotada como cero, así que no se puede calcular ningún ajuste
rig-type-the-speed-for-the-rig = Escriba la velocidad en la aspersora o en la aplicación.
rig-setting-of = Ajuste de { $name }
rig-band-nozzles = banda { $width } ÷ { $nozzles } boquillas
rig-rows-apart-nozzles = surcos cada { $rows } ÷ { $nozzles } boquillas
rig-for-each-nozzle = { $carrier } × { $speed } × { $width }, por boquilla
rig-root-of-of-water = raíz de { $dense } ÷ { $water } del agua
rig-as-water = × { $factor }, como agua
rig-a-nozzle-gives-rated = una boquilla da, como caudal nominal, de agua
rig-a-nozzle-gives-measured-on = una boquilla da, medido el { $date }, de agua
rig-of-a-nozzle-at-at = { $of_a_nozzle } a { $at }
rig-root-of = { $of_a_nozzle } × raíz de ({ $pressure } ÷ { $at })
rig-of-a-nozzle-of-a-nozzle2-valves-open = { $of_a_nozzle } ÷ { $of_a_nozzle2 }, válvulas abiertas
rig-not-listed = no figura
rig-droplets-at-by-the-nozzle-makers = gotas a { $pressure } según la tabla del fabricante de la boquilla, que vale para agua
rig-no-catch-with-a-pressure-is = No hay anotada para { $name } ninguna medición con presión hasta el día de esta aplicación, así que se usa su caudal nominal y no el caudal medido
rig-type-the-calibration-of-this-set = Anote la calibración de este juego en la bodega, o desactive el caudal medido.
rig-type-it-in-the-shed = Escríbalo en la bodega.
rig-type-it-in-the-shed-size = Escríbalo en la bodega; el tamaño { $size } significa { $flow } a { $at } o { $flow2 } a { $at2 }, lo que tenga la tabla del fabricante de la boquilla.
rig-lacks-so-not-all-of-its = A { $name } le falta { $lacks }, así que no se puede calcular todo su ajuste
rig-the-density-of-the-is-not = La densidad del portador ({ $carrier_kind }) no está anotada; el ajuste se calcula como para agua, y las boquillas darían menos
rig-type-the-density-of-the-pass = Escriba la densidad para la aplicación: { $offered }.
rig-is-typed-as-size-which-gives = { $name } está anotado con el tamaño { $size }, que da { $flow } a { $at }; su caudal nominal es { $flow2 } a { $at2 }
rig-look-at-the-nozzle-and-mend = Mire la boquilla y corrija el tamaño o el caudal nominal en la bodega.
rig-bands-of-overlap-with-rows-apart = { $name }: las bandas de { $width } se superponen, con surcos cada { $rows }; se aplica todo el terreno
rig-mend-the-band-or-the-rows = Corrija la banda o los surcos en la bodega.
rig-or-drive-with = , o avance a { $speed } con { $set }
rig-gives-with-at-is-planned = { $name } da { $given } con { $set } a { $speed }; están planeados { $carrier }
rig-set = Ajuste { $needs }{ $slower }.
rig-it-does-or-take-another-set = Da { $carrier } { $speeds }; o tome otro juego u otro volumen.
rig-take-another-set-another-volume-or = Tome otro juego, otro volumen u otra presión.
rig-the-droplets-of-the-pass-are = Las gotas de la aplicación están anotadas como { $class }; la tabla de { $name } tiene { $classes } a { $pressure }
rig-the-class-typed-is-held-against = La clase anotada se compara con las etiquetas; quítela para atenerse a la tabla.
rig-and-for = { $typed }, y { $who ->
        [law] la ley pide
        [labels-and-laws] las etiquetas y las leyes piden
        [label] la etiqueta pide
        [both-labels] ambas etiquetas piden
       *[all-labels] todas las etiquetas piden
    } { $droplet_words }
rig-the-class-typed-is-held-against-the-labels-see = La clase anotada se compara con las etiquetas. Vea cuál de las dos es correcta: quite la clase para atenerse a la tabla, o corrija la tabla en la bodega.
rig-does-not-suit-this-pass-as = { $name } no conviene a esta aplicación como está planeada; otro juego sí. { $gives }
rig-fit-and-choose-it-for-the = Monte { $name } y elíjalo para la aplicación.

## core/rig/before.rs

rig-before-recorded = { $rig } aplicó por último "{ $name }" del { $date }, según el registro: en el tanque, las líneas y la barra aún puede haber { $left }, que esta mezcla no contiene
rig-before-planned = En { $rig } esta aplicación sigue a "{ $name }" del { $date }, que aún no está registrada: en el tanque, las líneas y la barra aún puede haber { $left }, que esta mezcla no contiene
rig-before-undecided = { $count ->
        [one] { $rig } aplica también { $names } ese día, y no está decidido cuál de las dos va primero: después de ella aún puede haber en el tanque, las líneas y la barra { $left }, que esta mezcla no contiene
       *[other] { $rig } aplica también { $names } ese día, y no está decidido cuál va primero: después de ellas aún puede haber en el tanque, las líneas y la barra { $left }, que esta mezcla no contiene
    }
rig-before-label-says = La etiqueta de { $product } pide limpiar: { $how }
rig-before-hurts = { $says }: { $fields }
rig-before-not-labelled = La etiqueta de { $product }, según lo anotado, tiene dosis para { $crops } y ninguna para lo que crece en { $fields }
rig-before-unknown = No se puede saber si restos de { $what } dañan lo que crece ahí: { $fields }
rig-before-usual = Una aspersora se limpia entre mezclas distintas
rig-before-rinse-to = Limpie la aspersora: { $count ->
        [one] un enjuague de { $each } de agua limpia
       *[other] { $count } enjuagues de { $each } de agua limpia cada uno
    }, por cada válvula, sección y extremo de la barra, lo que deja { $left } de la concentración.
rig-before-rinse = Limpie la aspersora: { $count ->
        [one] un enjuague de { $each } de agua limpia
       *[other] { $count } enjuagues de { $each } de agua limpia cada uno
    }, por cada válvula, sección y extremo de la barra.
rig-before-clean-out = Limpie la aspersora antes de la primera carga.
rig-before-read-the-label = Ninguna etiqueta, según lo anotado, dice cómo: lea lo que dicen sobre la limpieza.
rig-before-spared = Haga esta aplicación antes de { $names } y no hará falta limpiar: fíjela en su lugar del día, o escriba cuándo empieza. Si no:
rig-before-decide = Fije las aplicaciones en sus lugares del día, o escriba cuándo empiezan.
rig-before-record-says = Su registro dice sobre la limpieza: { $words }.

## core/rig/work.rs

rig-filling-and-road = llenado y camino
rig-filling = llenado
rig-road = camino
rig-the-time-for-the-pass-does = El tiempo de la aplicación no cuenta { $lacks }
rig-type-what-is-missing-with-the = Escriba lo que falta con la aspersora, el agua y los lotes.
rig-filling-the-flow-of-the-water = el llenado (el caudal del agua no está anotado)
rig-filling-the-flow-of-the-is = el llenado (no se conoce el caudal de { $other })
rig-the-stop-for-each-filling = la parada de cada llenado
rig-adding-the-products = agregar los productos
rig-the-road-its-speed-is-not = el camino (su velocidad no está anotada)
rig-not-known = no se sabe
rig-time-for-the-pass = Tiempo de la aplicación
rig-spraying-turns-included = aplicación, con las vueltas
rig-filling-load = llenado de { $fills } { $fills ->
        [one] carga
       *[other] cargas
    }
rig-in-all = en total
rig-ground-in-an-hour-of-spraying = terreno en una hora de aplicación
rig-not-counted = sin contar: { $lacks }
