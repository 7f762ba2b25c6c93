## core/water/blend.rs

water-the-hardness-of-is-not-known = No se conoce la dureza de { $it }; escriba su calcio y magnesio, o su dureza
water-both-waters-are-equally-hard-so = Las dos aguas son igual de duras, así que cualquier proporción la tiene
water-a-blend-has-between = Una mezcla de las dos tiene entre { $least } y { $most } ppm
water-with = { $name } con { $name2 }, { $part } %
water-reckoned-not-analysed-of-and-of = Calculado, no analizado: { $percent } % de { $name } y { $part } % de { $name2 }. El pH, la conductividad y la claridad no se calculan.

## core/water/carrier.rs

water-ions-over-ground-from = Iones por superficie de { $name }
water-hardness = dureza, { $hardness } × { $carrier }
water-ammonium-sulfate-tied-up = sulfato de amonio que retienen, { $need } × { $carrier }
water-at-the-least-that-the-labels = a { $least }, lo menos que indican las etiquetas
water-at-half-the-spray-volume-half = con la mitad del volumen de caldo, la mitad
water-at-least-the-least-that-the-labels-name-instead = A { $least }, lo menos que indican las etiquetas, en lugar de { $carrier }, el agua trae { $show } % menos de lo que retiene al caldo.

## core/water/classes.rs

water-us-geological-survey = US Geological Survey
water-water-quality-association = Water Quality Association
water-vermont = Vermont
water-engineering-textbook = libro de texto de ingeniería
water-united-kingdom = Reino Unido
water-class-soft = blanda
water-class-moderately-hard = moderadamente dura
water-class-hard = dura
water-class-very-hard = muy dura
water-class-slightly-hard = ligeramente dura
water-class-moderately-soft = moderadamente blanda

## core/water/conditioner.rs

water-ties-up-of-ammonium-sulfate-the = { $name } retiene { $need } de sulfato de amonio; la mezcla contiene { $held }
water-the-label-of-each-product-decides = La etiqueta de cada producto decide si se puede agregar más.
water-guidance = orientación ({ $source })
water-conditions-water-too-more-weakly-than = { $name } también acondiciona el agua, más débilmente que el sulfato de amonio; no se calcula cuánto
water-woznica-nalewaja-messersmith-and-milkowski = Woznica, Nalewaja, Messersmith y Milkowski, Weed Technology (quinclorac con sodio y calcio); un laboratorio de aguas de Dakota del Norte y Minnesota, y Saskatchewan Agriculture, marzo de 2021, nombran los dos
water-at-least-and-at-most-which = { $least } al menos y { $most } como máximo, que no se encuentran
water-at-least = { $least } al menos
water-at-most = { $most } como máximo
water-not-typed = no anotado
water-label-range-as-typed = intervalo de la etiqueta, según lo anotado ({ $places })
water-label-range-as-published = intervalo de la etiqueta, según lo publicado
water-ammonium-sulfate-for-three-figures = Sulfato de amonio para { $name }: tres cifras
water-tied-up-by-the-ions-by = retenido por los iones, según la ecuación
water-north-dakota-practice-for-most-hard = práctica de Dakota del Norte para la mayoría de las aguas duras
water-in-the-set-that-suits-the = en el conjunto que más conviene a la mezcla
water-to-plan-the-most-of-these = para planear: el mayor de estos, dentro del intervalo de las etiquetas
water-no-rate-serves-both-labels = ninguna dosis sirve para las dos etiquetas
water-the-label-says-how-much-may = la etiqueta dice cuánto puede entrar
water-plan-which-the-mix-holds = planee { $recommended }, que la mezcla ya contiene
water-serves-and-the-mix-holds = basta con { $recommended }, y la mezcla contiene { $held }
water-plan = planee { $recommended }
water-the-label-governs = Rige la etiqueta.
water-label-of-as-typed = { $source }; etiqueta de { $places }, según lo anotado
water-it-may-pay-nine-trials-in = Puede convenir: nueve ensayos en Ontario hallaron poco o ningún beneficio con glifosato, mientras que Abutilon theophrasti y algunas otras malezas responden al amonio mismo (práctica común).
water-with-glyphosate-trials = { $source }; Soltani et al. 2016
water-a-label-range-is-not-typed = no está anotado ningún intervalo de etiqueta
water-the-labels-ask-for = las etiquetas piden { $labels }
water-the-label-asks-for = la etiqueta pide { $labels }
water-the-label-allows = la etiqueta permite { $labels }
water-labels-ask-for = hay etiquetas que piden { $labels }
water-hard-its-ions-tie-up-of = { $name }, { $hardness } de dureza: sus iones retienen { $need } de sulfato de amonio, la práctica de Dakota del Norte es { $practice }, { $labels }; { $plan }
water-the-mix-holds-it-for-what = La mezcla lo contiene, para lo que retiene { $name }
water-it-is-in-the-shed-and = Está en la bodega y sirve para lo que retiene { $name }
water-the-shed-has-no-ammonium-sulfate = La bodega no tiene sulfato de amonio; compre de grado para aspersión
water-ammonium-sulfate-spray-grade = Sulfato de amonio, grado para aspersión

## core/water/demands.rs

water-how-much-ammonium-sulfate-holds-is = No está anotado cuánto sulfato de amonio contiene { $name }, así que no se evalúa
water-type-its-content-in-the-shed = Escriba su contenido en la bodega, como "3.4 lb/gal" o "0.41 kg/L", según su etiqueta o su fabricante. Un grado de fertilizante como 8-0-0-9 no lo dice.
water-what-a-gallon-weighs-is-not-typed = Lo que { $name } contiene de sulfato de amonio está anotado como parte de su peso y su densidad no está anotada, así que no se evalúa
water-type-its-density-in-the-shed = Escriba su densidad en la bodega, como "10.2 lb/gal", según su etiqueta o su hoja de datos de seguridad.
water-is-of-fertilizer-grade-its-impurities = { $name } es de grado fertilizante: sus impurezas pueden retener el herbicida y tapar los filtros
water-take-spray-grade-which-washington-state = Tome el de grado para aspersión, que nombran Washington State University y Western Farm Press, o cuélelo.
water-the-grade-of-is-not-typed = El grado de { $name } no está anotado
water-spray-grade-dissolves-without-residue-type = El de grado para aspersión se disuelve sin residuo; escríbalo en la bodega.
water-what-says-of-ammonium-sulfate-is = Lo que { $name } dice del sulfato de amonio no es una masa, así que no se compara
water-type-it-like-8-5-lb = Escríbalo como "8.5 lb/100 gal" o "10 g/L".
water-asks-for-at-least-of-ammonium = { $name } pide al menos { $least } de sulfato de amonio; la mezcla contiene { $held }
water-allows-of-ammonium-sulfate-at-most = { $name } permite { $most } de sulfato de amonio como máximo; la mezcla contiene { $held }

## core/water/dose.rs

water-as-recommended-for-each-load = { $name }, como se recomienda para cada carga
water-ammonium-sulfate-in-the-spray = sulfato de amonio en el caldo
water-in-the-solution = ÷ { $content } en la solución
water-in-the-spray-by-its-label = en el caldo, según su etiqueta
water-of-the-product = del producto
water-of-load = × { $new_spray } de la carga { $number }

## core/water/hardness.rs

water-hardness-of = Dureza de { $name }
water-ppm-caco3 = { $show } ppm CaCO3
water-2-497-ppm-calcium = 2.497 × { $show } ppm de calcio
water-4-118-ppm-magnesium = + 4.118 × { $show } ppm de magnesio
water-hardness-standard-methods-2340-b = dureza (Standard Methods 2340 B)
water-as-stated = como se indica: { $stated }
water-from-the-one-ion-stated = por el único ion indicado

## core/water/mod.rs

water-no-water-is-chosen-so-its = No hay agua elegida, así que su dureza no se evalúa
water-choose-the-water-in-the-heading = Elija el agua en la línea del encabezado de la aplicación.
water-the-pass-takes-water-which-is = La aplicación lleva el agua "{ $water }", que no está en la bodega
water-choose-another-water-or-add-it = Elija otra agua, o agréguela en la bodega.
water-has-no-analysis-so-its-need = { $name } no tiene análisis, así que no se conoce cuánto acondicionador necesita
water-type-calcium-and-magnesium-or-the = Escriba el calcio y el magnesio, o la dureza, según un informe de laboratorio.
water-calcium-and-magnesium-make-the-report = { $name }: el calcio y el magnesio dan { $reckoned }, el informe indica { $stated }; el plan usa los iones
water-the-analysis-of-does-not-state = El análisis de { $name } no indica { $missing }; la necesidad no cuenta nada de ello
water-the-analysis-of-name-does-not-state-bicarbonate-which = El análisis de { $name } no indica el bicarbonato, que importa para { $concerned }
water-chemcert-australia-saskatchewan-agriculture = ChemCert Australia; Saskatchewan Agriculture, marzo de 2021

## core/water/need.rs

water-ammonium-sulfate-tied-up-by = Sulfato de amonio que retiene { $name }
water-without-iron = sin hierro
water-ion-calcium = calcio
water-ion-magnesium = magnesio
water-ion-sodium = sodio
water-ion-potassium = potasio
water-ion-iron = hierro
water-ppm-of-an-ion = { $factor } × { $ppm } ppm de { $ion }
water-most = máximo
water-hardness-all-calcium-or-all-magnesium = dureza toda de calcio o toda de magnesio, mínimo
water-0-042-ppm-iron = + 0.042 × { $show } ppm de hierro

## core/water/ranges.rs


## core/water/thresholds.rs

water-glyphosate-at-low-rates = { $limit } (glifosato en dosis bajas)
water-glyphosate-at-higher-rates = { $limit } (glifosato en dosis más altas)

## core/water/verdict.rs

water-is-hard-which-may-tie-up = { $name } tiene { $found } de dureza, lo que puede retener { $concerns }; algunas publicaciones tratan el agua por encima de { $first }, otras solo por encima de { $last }
water-name-is-found-hard-which-may-tie-up-concerns = { $name } tiene { $found } de dureza, lo que puede retener { $concerns }; el límite es { $first }
water-holds-of-bicarbonate-which-may-weaken = { $name } contiene { $found } de bicarbonato, lo que puede debilitar { $concerns }; algunas publicaciones lo aconsejan desde { $first }, otras solo desde { $last }
water-name-holds-found-of-bicarbonate-which-may-weaken = { $name } contiene { $found } de bicarbonato, lo que puede debilitar { $concerns }; el límite es { $first }
water-holds-of-iron-which-may-weaken = { $name } contiene { $found } de hierro, lo que puede debilitar { $concerns }; se esperan problemas por encima de { $first }
water-has-which-may-not-suit-the = { $name } tiene { $found }, lo que puede no convenir a { $concerns }; el límite es { $first }
water-is-and-soil-in-the-water = { $name } está { $found }, y la tierra en el agua retiene { $concerns }
water-has-a-conductivity-of-so-it = { $name } tiene una conductividad de { $found }, así que contiene mucha sal de algún tipo; el límite es { $first }
water-whether-it-is-an-amine-or = No está anotado si es una amina o un éster; solo se quieren decir aminas y otras sales.

## core/water/without_ammonium.rs

water-the-label-of = la etiqueta de { $name }
water-ties-up-what-of-ammonium-sulfate = { $name } retiene lo que { $need } de sulfato de amonio liberarían, y { $who } habla en contra del amonio
water-in-the-mix-holds-none = { $tied }; { $name } de la mezcla no lo contiene
water-of-the-shed-conditions-without-it = { $tied }; { $name } de la bodega acondiciona sin él
water-of-the-shed-conditions-at-a-rate = { $tied }; { $name } de la bodega acondiciona sin él, { $rate } según su etiqueta
water-type-its-labels-rate-in-the = Escriba en la bodega la dosis de su etiqueta, y lea si las etiquetas de sus compañeros lo aceptan.
water-read-whether-the-partners-labels-accept = Lea si las etiquetas de sus compañeros lo aceptan, y luego agréguelo a la mezcla.
water-the-shed-has-no-conditioner-without = { $tied }; la bodega no tiene ningún acondicionador sin amonio que convenga
water-buy-one-whose-label-is-accepted = Compre uno cuya etiqueta acepten { $partners }.
water-conditioner-without-ammonium = Acondicionador sin amonio
