## core/plausible/area.rs

plausible-the-area-of = La superficie de { $name }
plausible-what-stays-unsprayed-of = Lo que queda sin aplicar de { $name }
plausible-what-is-sprayed-of = Lo que se aplica de { $name }
plausible-the-field-has = el lote tiene { $whole }
plausible-fit-in = cabría
plausible-its-boundary-holds = su lindero encierra { $measured }
plausible-be-that-ground = sería ese terreno
plausible-all-other-fields-are-typed-in = todos los demás lotes están anotados en { $usual } y tienen { $least } a { $most }
plausible-lie-among-them = estaría entre ellos

## core/plausible/carrier.rs

plausible-the-spray-volume = El volumen de caldo
plausible-a-label-asks-for-at-least = una etiqueta pide por lo menos { $least }
plausible-a-label-asks-for-at-most = una etiqueta pide como máximo { $most }
plausible-be-inside-what-the-labels-name = estaría dentro de lo que nombran las etiquetas
plausible-droplets-get-coarser-with-pressure = En la tabla de gotas de { $name }, { $low } da { $finer } y { $high }, que es más, { $coarser }: con una misma boquilla, más presión hace gotas más finas
plausible-look-at-both-lines = Revise las dos líneas en la tabla del fabricante y corrija la que esté mal.
plausible-mostly-to-are-sprayed = por lo general se aplican { $likely_least } a { $likely_most }
plausible-be-among-these = estaría entre estos

## core/plausible/content.rs

plausible-the-density-of = La densidad de { $name }
plausible-the-content-of-in = El contenido de { $name } en { $name2 }
plausible-is-typed-as = { $what } está anotado como { $content }; { $why }
plausible-it-is-counted-as = se cuenta como { $short }
plausible-the-one-way-to-count-for = la única manera de contar por la otra
plausible-be-what-is-written = sería lo que está escrito
plausible-the-product-is-dry-and-has = el producto es seco y no tiene volumen
plausible-be-by-mass = sería por masa
plausible-all-of-the-product-weighs = todo el producto pesa { $density }
plausible-hardly-any-holds-more-than = casi ninguno contiene más de { $most }
plausible-be-possible = sería posible
plausible-hardly-any-holds-less-than = casi ninguno contiene menos de { $least }
plausible-be-usual = sería lo usual
plausible-that-is-not-the-figure-in = esa no es la cifra de su nombre
plausible-agree-with-that = concordaría con eso
plausible-the-salt-or-ester-for-its = la sal o el éster ({ $salt }) por su ácido
plausible-the-acid-for-its-salt-or = el ácido por su sal o éster ({ $salt })
plausible-by-its-label-which-states-the = según su etiqueta, que indica lo mismo por producto y por ingrediente activo, es { $shown }

## core/plausible/dates.rs

plausible-another-year = otro año
plausible-is-harvested-on-before-it-is = { $name } se cosecha el { $harvest }, antes de sembrarse el { $planted }
plausible-come-in-order = quedaría en orden
plausible-the-pass-is-typed-for-is = La aplicación está anotada para el { $date }; { $name } se siembra el { $planted }
plausible-fall-in-its-season = caería en su temporada
plausible-the-day-of-its-pass = el día de su aplicación
plausible-is-recorded-for-which-has-not = "{ $name }" está registrado para el { $date }, que todavía no ha llegado
plausible-be-past = sería pasado
plausible-what-it-took-was-counted-on = ; lo que tomó se contó el { $counted }
plausible-is-recorded-for-and-its-pass = "{ $name }" está registrado para el { $date }, y su aplicación está planeada para el { $planned }{ $counted }
plausible-be-beside-that = estaría junto a eso

## core/plausible/mod.rs

plausible-if-the-figure-is-right = Si la cifra es correcta, déjela: nada se cambia solo.
plausible-would-agree = concordaría
plausible-would-balance = daría el equilibrio
plausible-what-is-typed-as-typed-why = { $what } está anotado como { $typed }; { $why }
plausible-hardly-any-is-more-than = casi ninguno pasa de { $most }
plausible-hardly-any-is-less-than = casi ninguno baja de { $least }
plausible-would = { $text }; { $all } { $would }
plausible-or = { $first } o { $last }

## core/plausible/offer.rs

plausible-the-basis = la base { $text }
plausible-calcium = calcio { $text }
plausible-magnesium = magnesio { $text }
plausible-latitude = latitud { $text }
plausible-longitude = longitud { $text }

## core/plausible/place.rs

plausible-is-no-latitude-and-may-be = "{ $latitude }" no es una latitud, y "{ $longitude }" puede serlo; { $texts } sería un lugar
plausible-the-farm-is-typed-to-lie = La finca está anotada en { $latitude }, { $longitude }; { $name } está dibujado a { $show } grados de allí; { $texts } quedaría junto a ella
plausible-east-for-west = este por oeste
plausible-north-for-south = norte por sur
plausible-both-signs = ambos signos
plausible-each-in-the-others-box = cada una en la casilla de la otra
plausible-each-in-the-others-box-and = cada una en la casilla de la otra, y este por oeste
plausible-each-in-the-others-box-and-north-for-south = cada una en la casilla de la otra, y norte por sur

## core/plausible/rate.rs

plausible-that-its-label-names = que nombra su etiqueta
plausible-that-a-label-of-the-mix = que nombra una etiqueta de la mezcla
plausible-at-which-such-an-adjuvant-is = con que se usa un coadyuvante así
plausible-to = { $least } a { $most }
plausible-at-least = por lo menos { $least }
plausible-at-most = como máximo { $most }
plausible-of-is = { $typed } de { $name } es { $far } { $range }
plausible-of-cannot-be-reckoned-as-the = { $typed } de { $name } no se puede calcular como la dosis { $range }
plausible-if-the-rate-is-right-look = Si la dosis es correcta, vea si la de la etiqueta está bien anotada; nada se cambia solo.
plausible-would-be-inside = { $text }; { $texts } estaría dentro
plausible-times-the-most = { $over } veces el máximo
plausible-times-less-than-the-least = { $under } veces menos que el mínimo

## core/plausible/rig.rs

plausible-the-tank-of = El tanque de { $name }
plausible-the-boom-of = La barra de { $name }
plausible-the-speed-of = La velocidad de { $name }
plausible-the-boom-height-of = La altura de la barra de { $name }
plausible-the-pressure-of = La presión de { $name }
plausible-the-hardness-of = La dureza de { $name }
plausible-the-bicarbonate-of = El bicarbonato de { $name }
plausible-the-conductivity-of = La conductividad de { $name }
plausible-the-speed-of-the-pass = La velocidad de la aplicación
plausible-the-height-of-the-nozzles = La altura de las boquillas
plausible-the-pressure-of-the-pass = La presión de la aplicación
plausible-the-speed = La velocidad
plausible-does-this-volume-at-to = { $name } da este volumen a { $least } a { $most }
plausible-is-for-to = { $name } es para { $least } a { $most }
plausible-the-spacing-of = La separación de { $name }
plausible-nozzles-so-far-apart-reach-over = { $count } boquillas con esa separación alcanzan { $reach }, la barra está anotada con { $typed }
plausible-the-flow-of = El caudal de { $name }
plausible-the-pressure-of-the-rating-of = La presión del caudal nominal de { $name }
plausible-size-gives-at-and-it-is = el tamaño { $size } da { $flow } a { $at }, y su caudal nominal está anotado a { $at2 }

## core/plausible/water.rs

plausible-calcium-and-magnesium-make-the-report = { $name }: el calcio y el magnesio dan { $reckoned }, el informe indica { $stated }
plausible-holds-of-bicarbonate-times-as-much = { $name } contiene { $bicarbonate } de bicarbonato, { $show } veces la carga que tienen en contra el calcio, el magnesio y el sodio
plausible-its-ions-make-about = sus iones dan cerca de { $expected }

## core/plausible/weather.rs

plausible-the-warmest-air-of-the-pass = El aire más cálido de la aplicación
plausible-the-air-of = El aire de "{ $name }"
plausible-the-wind-of-record = El viento de "{ $name }"
plausible-the-gust-of = La ráfaga de "{ $name }"
plausible-it-is-signed-amend-it-in = Está firmado: enmiéndelo en la bitácora de la temporada.
plausible-to-were-expected = se esperaban { $cold } a { $warm }

## core/plausible/zone.rs

plausible-zone-named = "{ $typed }" puede significar { $zone }
plausible-zone-near = Según la hora de { $city }, a unos { $far } km; puede haber un límite de zonas de por medio

## core/plausible/recorded.rs

plausible-recorded-over-the-label = { $name }: { $amount } de { $product } son { $rate }, { $times } veces lo máximo que se indica para ello ({ $most })
plausible-recorded-off-the-plan = { $name }: { $amount } de { $product } es { $times } veces { $more ->
        [yes] lo planeado
       *[no] menos de lo planeado
    } ({ $planned })
plausible-what-was-sprayed-stays = Lo que de verdad se aplicó queda como está; revise otra vez la cifra y su unidad.

## core/plausible/dates.rs

plausible-sprayed-on-another-day = { $name } está registrado para el { $date }, y su aplicación sigue planeada para el { $planned }: el plan cuenta el registro como otra aplicación
plausible-the-day-of-the-record = el día del registro para su aplicación
plausible-move-the-pass-or-plan-another = Si fue esta aplicación, tome el día del registro para ella; si la aplicación se hará otra vez, déjela.

## core/plausible/named.rs

plausible-name-says-another-formulation = El nombre de { $name } dice { $code }, y su formulación está anotada como { $typed }; el orden de mezcla se rige por ella
plausible-type-the-formulation-of-the-label = Escriba la formulación que indica su etiqueta.
plausible-no-active-is-typed = No está anotado ningún ingrediente activo de { $name }: no se juzgan los límites por activo, los grupos de resistencia, las leyes ni lo publicado sobre él
plausible-type-the-actives-of-the-label = Escriba los activos y sus contenidos según su etiqueta.
