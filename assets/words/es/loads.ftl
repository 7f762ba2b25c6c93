## core/loads/apart.rs

loads-and-do-not-share-a-load = { $name } y { $name2 } no comparten carga: { $text }
loads-what-keeps-fields-apart-can-be = Lo que mantiene separados los lotes se elige en la bodega, en la página Finca.
loads-their-crops-differ = sus cultivos son distintos ({ $both })
loads-their-owners-differ = sus propietarios son distintos ({ $both })
loads-not-typed = no anotado
loads-one-variety-names-it = la variedad de { $name } nombra { $active }, la de { $other } no
loads-one-variety-takes-it-back = la variedad de { $name } nombra { $active }, la de { $other } lo retira
loads-keeps-from-the-of-which-waits = { $speaker } exige dejar { $width } hasta { $what } de { $name }, que espera su propio viento

## core/loads/build.rs

loads-the-products-leave-no-room-for = Los productos no dejan lugar para el agua en el caldo
loads-raise-the-spray-volume-or-look = Suba el volumen de caldo, o revise las dosis.
loads-the-tank-of-holds-it-cannot = Al tanque de { $name } le caben { $tank }; no se puede llenar hasta { $fill }
loads-lower-fill-to-or-clear-it = Baje "llenar hasta", o bórrelo para llenar el tanque.
loads-the-tank-of-holds-nothing = Al tanque de { $name } no le cabe nada
loads-of-spray-in-fillings-of-would = { $spray } de caldo en llenados de { $fill } serían { $show } cargas
loads-look-at-the-tanks-volume-in = Revise el volumen del tanque en la bodega.
loads-usual-practice = Práctica usual: { $limits }
loads-of-spray-of-which-are-to = { $volume } de caldo, de los que deben sobrar { $extra } y ya hay { $carried } en el tanque, no se pueden repartir en cargas de { $fill }
loads-mix-less-beyond-the-ground-or = Mezcle menos además de lo que pide el terreno, o revise lo que hay en el tanque.
loads-number-of-loads = Número de cargas
loads-for-the-ground-beyond-it = { $spray } para el terreno + { $extra } además de él
loads-of-it-in-the-tank-already = de eso, ya en el tanque
loads-counted = cargas
loads-load-needs-of-less-than-the = La carga { $load } necesita { $exact } de { $name }, menos que la marca más fina de { $step }
loads-give-the-product-a-finer-measuring = Dé al producto un paso de medida más fino en la bodega.
loads-choose-loads-that-take-whole-bags = La bolsa se echa entera: elija cargas, o una dosis dentro de la etiqueta, que den bolsas enteras.
loads-load-of-is-measured-as = Carga { $load }: { $exact } de { $name } se mide como { $text }, { $rounding }
loads-is-rounded-down-in-one = Carga { $load }: { $name } se redondea hacia abajo a { $amount }, porque la marca siguiente pasaría el máximo de una etiqueta
loads-is-rounded-down-in-several = Cargas { $loads }: { $name } se redondea hacia abajo, porque la marca siguiente pasaría el máximo de una etiqueta
loads-comes-in-water-soluble-bags-and = { $name } viene en bolsas hidrosolubles y el peso de una no está anotado, así que sus cantidades pueden no ser bolsas enteras
loads-type-the-bag-as-the-first = Escriba la bolsa como el primero de sus envases en la bodega; una bolsa nunca se abre.
loads-load-is-only-on = La carga { $number } es de solo { $volume } en { $area }
loads-even-loads-settle-it-or-the = Con cargas iguales se arregla, o las superficies son un pelo más grandes de lo debido.
loads-load-is-below-the-agitation-of = La carga { $number } es de { $volume }; por debajo de { $least } no alcanza la agitación de { $name }
loads-even-loads-may-settle-it = Con cargas iguales puede arreglarse.
loads-in-load = { $name } en la carga { $number }
loads-in-the-tank-already = { $volume } − { $carried } ya en el tanque
loads-to-the-measuring-step = al paso de medida
loads-rounding = redondeo

## core/loads/card.rs

loads-than-exact = { $which ->
        [yes] { $show } % más que lo exacto
       *[no] { $show } % menos que lo exacto
    }
loads-exact = exacto

## core/loads/carry.rs

loads-are-in-the-tank-already-but = Ya hay { $volume } en el tanque, pero se llena hasta { $fill }
loads-mend-what-is-in-the-tank = Corrija lo que hay en el tanque, o "llenar hasta".
loads-are-in-the-tank-already-which = Ya hay { $volume } en el tanque; no se sabe para qué aplicación se mezclaron, así que se toman como de esta mezcla
loads-choose-the-pass-that-they-were = Elija la aplicación para la que se mezclaron, o asegúrese de que los productos y la concentración sean los mismos.
loads-the-in-the-tank-were-mixed = Los { $volume } del tanque se mezclaron para { $name }, que es otra mezcla: { $why }
loads-spray-it-out-where-it-belongs = Aplíquelo donde corresponde y limpie el tanque, o elija la aplicación para la que se mezcló.
loads-no-rig = ninguna aspersora
loads-the-volume-in-the-tank-were-mixed-for-name = Los { $volume } del tanque se mezclaron para { $name }, que sale con { $rig }
loads-choose-the-rig-that-holds-them = Elija la aspersora que los tiene, o asegúrese de que se trasvasaron.
loads-the-in-the-tank-were-mixed-468 = Los { $volume } del tanque se mezclaron para { $name }, que está planeada para el { $date }
loads-mend-the-days-or-what-is = Corrija los días, o lo que hay en el tanque.
loads-what-is-in-the-tank-already = Lo que ya hay en el tanque pasa de { $name } a { $name2 }, que se mantienen separados: { $text }
loads-make-sure-that-this-is-right = Asegúrese de que esto sea correcto en los dos lotes.
loads-what-leaves-of-its-spray-cannot = No se puede saber cuánto caldo deja { $name }, porque no tiene cargas
loads-settle-its-plan-or-make-sure = Resuelva su plan, o asegúrese de lo que hay en el tanque.
loads-leaves-in-the-tank-this-pass =
    { $any ->
        [yes] { $name } deja { $leaves } en el tanque; esta aplicación sigue con { $volume } de ello
       *[no] { $name } no deja nada en el tanque; esta aplicación sigue con { $volume } de ello
    }{ $others ->
        [yes] , y también { $names }
       *[no] { "" }
    }
loads-make-the-two-agree = Haga que los dos coincidan.
loads-it-is-carried-by = su portador es { $carrier_kind }
loads-another-water = otra agua
loads-its-water-is = su agua es { $water }
loads-the-spray-volume-over-ground-is = el volumen de caldo por superficie no está anotado, así que no se conoce su concentración
loads-is-not-in-it = { $product } no está en ella
loads-is-in-it = { $product } está en ella
loads-the-strength-of-differs = la concentración de { $product } es distinta
loads-are-in-the-tank-already-and = Ya hay { $volume } en el tanque y la aplicación lleva { $takes }: no hay que mezclar ninguna carga
loads-more-is-in-the-tank-than-it-takes = Ya hay { $volume } en el tanque y la aplicación lleva { $takes }: no hay que mezclar ninguna carga, y sobran { $left }
loads-spray-it-out-and-decide-where = Aplíquelo, y decida adónde va el resto.
loads-left-after-the-last-metre-on =
    { $any ->
        [yes] Sobran { $left } después del último metro;
       *[no] No sobra nada después del último metro;
    } { $passes ->
        [one] { $names } sigue con { $taken }
       *[other] { $names } siguen con { $taken }
    }
loads-are-to-be-left-after-the = { $any ->
        [yes] Deben sobrar { $beyond } después del último metro; las cargas decididas dejan { $left }
       *[no] Deben sobrar { $beyond } después del último metro; las cargas decididas no dejan nada
    }
loads-raise-the-last-of-them-or = Suba la última de ellas, o quite lo que se mezcla además de lo que pide el terreno.
loads-mixed-beyond-the-ground = porque se mezcló más de lo que pide el terreno
loads-as-typed-beyond-the-ground = como está anotado además de lo que pide el terreno
loads-are-left-after-the-last-metre = Sobran { $left } después del último metro, { $why }; { $residual } quedan en { $name } cuando se vacía
loads-left-are-left-after-the-last-metre-why-only = Sobran { $left } después del último metro, { $why }; de ello solo { $residual } quedan en { $name } cuando se vacía
loads-mix-less-or-plan-a-pass = Mezcle menos, o planee una aplicación que siga con el resto.
loads-left-are-left-after-the-last-metre-why-what = Sobran { $left } después del último metro, { $why }; lo que queda en { $name } cuando se vacía no está anotado
loads-type-what-stays-in-the-rig = Escriba en la bodega lo que queda en la aspersora, o planee una aplicación que siga con el resto.

## core/loads/decided.rs

loads-load-is-decided-as-though-the = La carga { $number } está decidida como { $size }, aunque el tanque se llena hasta { $fill }
loads-lower-the-load-or-raise-fill = Baje la carga, o suba "llenar hasta".
loads-the-decided-loads-hold-more-than = Las cargas decididas tienen { $beyond } más de lo que lleva la aplicación
loads-lower-the-last-of-them-or = Baje la última de ellas, o quite las que no hacen falta.
loads-mend-the-decided-loads-of-the = Corrija las cargas decididas de la aplicación.
loads-load-is-decided-as-the-tank = La carga { $number } está decidida como { $size }; al tanque de { $name } le caben { $tank }
loads-load-is-decided-as-nothing = La carga { $number } está decidida como cero
loads-load-is-decided-as-but-are = La carga { $number } está decidida como { $size }, pero ya hay { $carried } en el tanque
loads-tank-runs-over = Lo que ya hay en el tanque pasa de { $last } a { $first }, que se mantienen separados
loads-decided-load-runs-over = La carga { $number }, como está decidida, pasa de { $last } a { $first }, que se mantienen separados

## core/loads/rest.rs

loads-the-pass-is-gone = La aplicación ya no existe
loads-the-pass-has-no-loads-yet = La aplicación todavía no tiene cargas; primero resuelva su plan
loads-the-pass-has-loads-cannot-have = La aplicación tiene { $count } cargas; no pueden haberse llenado { $after }
loads-are-left-over-for = Sobran { $tank }; a { $carrier } cubrirían { $ground }
loads-are-left-over = Sobran { $tank }
loads-rest-of-a-pass = { $name }, resto
loads-no-load-was-filled-yet-so = Todavía no se llenó ninguna carga, así que no puede sobrar nada de ella; diga después de qué carga
loads-load-was-of-it-cannot-be = La carga { $number } fue de { $volume }; no pueden sobrar { $typed } de ella
loads-field-is-not-in-the-pass = El lote "{ $id }" no está en la aplicación
loads-is-now-in-fields = { $name } tiene ahora { $area } en Lotes
loads-ground-of-the-pass-is-left = Queda terreno de la aplicación; lo que hay en el tanque sigue allí
loads-the-other-pass-is-gone = La otra aplicación ya no existe
loads-one-of-the-passes-is-gone = Una de las aplicaciones ya no existe
loads-the-passes-do-not-take-the = Las aplicaciones no llevan el mismo caldo en una misma aspersora
loads-the-second-pass-begins-with-spray = La segunda aplicación empieza con caldo que ya está en el tanque
loads-loads-of-the-second-pass-are = Hay cargas de la segunda aplicación decididas a mano
loads-the-first-pass-has-no-loads = La primera aplicación todavía no tiene cargas
loads-the-last-load-has-no-room = En la última carga no cabe más

## core/loads/sizing/mod.rs

loads-by-your-aims = por sus metas
loads-first = { $aim } primero
loads-full-tanks-then-a-rest = tanques llenos y luego un resto
loads-even-loads = cargas iguales
loads-the-last-load-topped-up-for = la última carga completada para la agitación
loads-load-sizes = Tamaños de las cargas
loads-aims-in-order = metas, en orden: { $order }
loads-loads-that-are-alike-end-at = las cargas iguales terminan en una marca de la aspersora
loads-loads-that-are-alike-end-at-a-mark-that = las cargas iguales terminan en una marca que se puede leer
loads-the-agitation-needs = la agitación necesita
loads-what-the-agitation-needs-is-not = lo que necesita la agitación no está anotado, así que ninguna carga cuenta como demasiado pequeña
loads-looked-at = { $count ->
        [one] { $names }: se revisó { $count } forma
       *[other] { $names }: se revisaron { $count } formas
    }

## core/loads/sizing/words.rs

loads-1-load-of = 1 carga de { $last }
loads-loads-of = { $count } cargas de { $last }
loads-one-load-of-and-one-of = una carga de { $alike } y una de { $last }
loads-loads-of-and-one-of = { $count } cargas de { $alike } y una de { $last }
loads-nothing-left-over = no sobra nada
loads-left-over = sobran { $left }
loads-no-load-too-small-to-agitate = ninguna carga demasiado pequeña para agitar
loads-fillings = { $count ->
        [one] { $count } llenado
       *[other] { $count } llenados
    }
loads-too-small-to-agitate = { $count ->
        [one] { $count } carga demasiado pequeña para agitar
       *[other] { $count } cargas demasiado pequeñas para agitar
    }
loads-opened = { $count ->
        [one] { $count } envase abierto
       *[other] { $count } envases abiertos
    }
loads-to-measure = { $count ->
        [one] { $count } cantidad por medir
       *[other] { $count } cantidades por medir
    }
loads-from-exact = a { $number } % de lo exacto
loads-more-or-less-left-over = { $which ->
        [yes] sobran { $volume } más
       *[no] sobran { $volume } menos
    }
loads-more-or-less-too-small-to-agitate = { $more ->
        [yes] { $count ->
            [one] una carga más demasiado pequeña para agitar
           *[other] { $count } cargas más demasiado pequeñas para agitar
        }
       *[no] { $count ->
            [one] una carga menos demasiado pequeña para agitar
           *[other] { $count } cargas menos demasiado pequeñas para agitar
        }
    }
loads-more-or-less-fillings = { $more ->
        [yes] { $count ->
            [one] un llenado más
           *[other] { $count } llenados más
        }
       *[no] { $count ->
            [one] un llenado menos
           *[other] { $count } llenados menos
        }
    }
loads-more-or-less-to-measure = { $more ->
        [yes] { $count ->
            [one] una cantidad más por medir
           *[other] { $count } cantidades más por medir
        }
       *[no] { $count ->
            [one] una cantidad menos por medir
           *[other] { $count } cantidades menos por medir
        }
    }
loads-amounts-exact = { $which ->
        [yes] cantidades { $by } % más lejos de lo exacto
       *[no] cantidades { $by } % más cerca de lo exacto
    }
loads-nothing-gained-and-nothing-lost = nada se gana y nada se pierde
loads-and-nothing-lost = { $gains }, y nada se pierde
loads-and-nothing-gained = { $costs }, y nada se gana
loads-but = { $gains }, pero { $costs }
loads-more-or-less-to-open = { $more ->
        [yes] { $count } { $container } de { $name } más por abrir
       *[no] { $count } { $container } de { $name } menos por abrir
    }
