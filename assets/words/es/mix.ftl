## core/mix/carrier.rs

mix-the-carrier-is-and-no-compatibility = El portador es { $kind }, y no hay ningún agente de compatibilidad en la mezcla
mix-university-of-arizona-kopec-may-1999 = University of Arizona (Kopec), mayo de 1999, prueba del frasco con y sin agente de compatibilidad
mix-make-a-jar-test-with-this = Haga una prueba del frasco con este fertilizante, una vez con el agente y otra sin él; a los 5 minutos busque grumos, lodo, gel o aceite.
mix-comes-in-water-soluble-bags-which = { $name } viene en bolsas hidrosolubles, que no se disuelven en { $carrier }
mix-manitoba-guide-to-crop-protection-via = Manitoba Guide to Crop Protection, por medio de Canola Council of Canada 2013 (las bolsas antes que el fertilizante)
mix-dissolve-the-bags-in-water-first = Disuelva primero las bolsas en agua, y vierta eso.
mix-is-dry-it-disperses-in-water = { $name } es seco; se dispersa en agua, no en { $carrier }
mix-mix-it-with-water-to-a = Mézclelo primero con agua hasta formar una papilla.
mix-the-carrier-brings-ammonium-already-may = El portador ya aporta amonio; { $name } puede sobrar
mix-leave-it-out-unless-a-label = Déjelo fuera, a menos que una etiqueta lo pida en este portador.
mix-a-stage-that-is-not-typed = una etapa que no está anotada
mix-is-corn-at-labels-of-herbicides = { $name } es maíz en { $stage }; las etiquetas de los herbicidas para maíz emergido casi siempre prohíben la urea nitrato de amonio como único portador
mix-look-at-every-label-a-few = Revise cada etiqueta; unos pocos cuartos de galón por acre como aditivo son otro asunto.
mix-bring-of-nitrogen-as-28-solution = { $name }: { $carrier } aportan { $weak } de nitrógeno como solución al 28 %, { $strong } al 32 %; sobre maíz emergido, como máximo { $from_pounds_per_acre } de V3 a V4, { $from_pounds_per_acre2 } en V7, y nada después
mix-densities = { $limits }; densidades: { $densities }
mix-look-at-the-grade-of-your = Revise el grado de su solución; baje el volumen, o aplique con agua.

## core/mix/charge.rs

mix-and = { $name } y { $name2 }
mix-the-active-of-the-one-is = { $names }: el ingrediente activo de uno es catiónico y el surfactante del otro aniónico, así que pueden ligarse
mix-a-cationic-and-an-anionic-surfactant = { $names }: un surfactante catiónico y uno aniónico en el mismo tanque pueden ligarse y precipitar
mix-make-a-jar-test-first-or = Haga primero una prueba del frasco, o elija un coadyuvante de otra carga eléctrica.
mix-the-charge-of-is-not-typed = La carga eléctrica de { $name } no está anotada, y { $name2 } no debe juntarse con un coadyuvante aniónico: { $says }
mix-type-its-charge-in-the-shed = Escriba su carga eléctrica en la bodega, según su etiqueta.

## core/mix/choice/beside.rs

mix-comes-to-at-less-than-the = { $name } resulta en { $per_area } a { $carrier }, menos que los { $least } que se aconsejan
mix-whether-holds-a-surfactant-of-its = No está anotado si { $name } contiene un surfactante propio; sin él necesita uno
mix-type-on-its-page-whether-the = Escriba en su página si la etiqueta dice que no hace falta otro.
mix-the-surfactant-built-into-serves-that = El surfactante incorporado en { $name } sirve solo a ese producto; { $partner } pide { $classes }
mix-the-charged-surfactant-built-in = El surfactante { $charge } incorporado en { $name } sirve solo a ese producto; { $partner } pide { $classes }
mix-what-one-product-brings-for-itself = Lo que un producto trae para sí mismo rara vez es lo que necesitan sus compañeros.
mix-on-with-sources-differ-it-it = Sobre { $class } con { $name } las fuentes no coinciden: { $one }, { $other }
mix-source-requires-it = { $source } lo exige
mix-source-prefers-it = { $source } lo prefiere
mix-source-allows-it = { $source } lo permite
mix-source-advises-against-it = { $source } lo desaconseja
mix-source-forbids-it = { $source } lo prohíbe
mix-the-label-as-typed-decides = Decide la etiqueta, según lo anotado.
mix-the-plan-follows-the-weightier-and = El plan sigue a la de más peso y más estricta; la etiqueta decide, en cuanto esté anotada.
mix-the-label = la etiqueta ({ $at })

## core/mix/choice/collide.rs

mix-requires-both = { $name } exige { $first } y { $second }; { $one } y { $two } no deben ir en el mismo tanque
mix-two-require = { $name } exige { $first }, { $other } exige { $second }; { $one } y { $two } no deben ir en el mismo tanque
mix-product-in-crop = { $name } en { $crop }
mix-product-requires = { $name } exige { $classes }
mix-product-wants = { $name } pide { $classes }
mix-products-forbid = { $count ->
        [one] { $names } prohíbe { $classes }
       *[other] { $names } prohíben { $classes }
    }
mix-buy-another-product-in-the-place = Compre otro producto en lugar de { $one } o de { $two }, cuya etiqueta permita el resto de la mezcla.
mix-spray-the-two-crops-in-two = Aplique los dos cultivos en dos aplicaciones, cada una con sus propios coadyuvantes.
mix-take-instead-of-if-its-label = Tome { $name } en lugar de { $name2 }, si su etiqueta conviene al cultivo y a las malezas.
mix-its-partner = su compañero
mix-spray-and-in-two-passes-as = Aplique { $name } y { $partner } en dos aplicaciones, tan separadas como pidan sus etiquetas.
mix-look-for-another-formulation-of-that = Busque otra formulación de { $name } que no lo necesite.

## core/mix/choice/content.rs

mix-holds-a-is-asked-for-at = { $name } contiene { $show } % de { $what }; a un { $class } se le pide al menos { $asked }
mix-surface-active-content = contenido tensioactivo
mix-emulsifier = emulsionante
mix-read-on-each-label-what-it = Lea en cada etiqueta lo que pide del coadyuvante.
mix-sources-differ-read-on-each-label = Las fuentes no coinciden; lea en cada etiqueta lo que pide del coadyuvante.

## core/mix/choice/dose.rs

mix-how-much-ammonium-sulfate-holds-is = no está anotado cuánto sulfato de amonio contiene { $name }
mix-its-own-label = su propia etiqueta
mix-its-own-label-at = su propia etiqueta, { $at }
mix-other-sources-name = { $from }; otras fuentes nombran { $others }
mix-usual = lo usual: { $source }
mix-usual-rate = lo usual
mix-not-known-how-much-ammonium-sulfate = no se sabe: no está anotado cuánto sulfato de amonio contiene
mix-asks-for-at-least-of-allows = { $from } pide al menos { $rate } de { $class }; { $from2 } permite { $rate2 } como máximo
mix-the-ions-of-the-water = los iones del agua

## core/mix/choice/judge.rs

mix-would-suit-this-mix-better-than = { $title } convendría a esta mezcla más que { $title2 }
mix-would-suit-better-because = { $title } convendría a esta mezcla más que { $title2 }: { $why }
mix-see-the-sets-below-the-mix = Vea los conjuntos debajo de la mezcla, cada uno con sus razones; con un clic se pone uno en la mezcla.
mix-spray-in-water-or-read-on = Aplique con agua, o lea en la etiqueta si habla del portador o solo de un aditivo.
mix-forbids-and-it-is-the-carrier = { $name } prohíbe { $class }, y es el portador
mix-advises-against-and-it-is-the = { $name } desaconseja { $class }, y es el portador
mix-requires-and-the-mix-has-none = { $name } exige { $classes }, y la mezcla no tiene ninguno
mix-what-is-built-into-it-does = Lo que trae incorporado no lo reemplaza.
mix-take-one-of-the-sets-below = Tome uno de los conjuntos debajo de la mezcla.
mix-would-rather-have-and-the-mix = { $name } preferiría { $classes }, y la mezcla no tiene ninguno
mix-advises-against-and-is-in-the = { $name } desaconseja { $class }, y { $name2 } está en la mezcla
mix-forbids-and-is-in-the-mix = { $name } prohíbe { $class }, y { $name2 } está en la mezcla
mix-another-publication-allows-it = { $text }; otra publicación lo permite
mix-read-the-label-and-type-what = Lea la etiqueta y escriba lo que dice: ella decide.
mix-take-one-of-the-two-out = Saque uno de los dos, o divida la aplicación.
mix-take-one-of-the-two-out-if-the-label = Saque uno de los dos. Si la etiqueta dice otra cosa, escriba en la bodega lo que dice: ella decide.
mix-this-is-said-which-cannot-be = { $text }; esto se dice { $doubt }, lo que aquí no se puede saber
mix-what-says-of-an-adjuvant-cannot = Lo que { $name } dice de un coadyuvante no se puede comparar: { $problem }
mix-allows-of-at-most-is-planned = { $name } permite { $also } de { $name2 } como máximo; están planeados { $planned }
mix-lower-its-rate = Baje su dosis.
mix-the-label-of-each-product-decides = Decide la etiqueta de cada producto.
mix-names-of-at-least-is-planned = { $name } indica al menos { $also } de { $name2 }; están planeados { $planned }

## core/mix/choice/mod.rs

mix-no-adjuvant = sin coadyuvante

## core/mix/choice/search.rs

mix-what-the-shed-has-of-it = lo que la bodega tiene de ello no conviene: { $reason }
mix-rate-though-the-shed-does-not-suit = { $from }; lo que la bodega tiene de ello no conviene: { $reason }
mix-its-label-says-not-to-mix = su etiqueta dice que no se mezcle con { $name }
mix-the-label-of-says-not-to = la etiqueta de { $name } dice que no se mezcle con { $name2 }

## core/mix/choice/voices.rs

mix-where-a-partner-forbids-ammonium-a = Donde un compañero prohíbe el amonio, un acondicionador sin amonio puede secuestrar la dureza

## core/mix/choice/words.rs

mix-or = { $before } o { $last }
mix-clause-requires = exige { $what }
mix-clause-lacks = exige { $what }, que falta en este conjunto
mix-clause-wants = pide { $what }
mix-clause-would-rather = preferiría { $what }
mix-clause-forbids = prohíbe { $what }
mix-clause-advises-against = desaconseja { $what }
mix-clause-allows = permite { $what }
mix-clause-brings = trae su propio surfactante ({ $what }), que le sirve solo a él
mix-clause-no-guidance = no tiene orientación sobre coadyuvantes: lea su etiqueta
mix-clause-nothing-of-these = no dice nada de estos: lea su etiqueta
mix-clause-asks-for-nothing = no pide nada que falte
mix-behind = Después de { $title }: { $why }
mix-something-in-the-mix-speaks-against = algo en la mezcla habla en contra de una parte
mix-a-demand-is-not-met = una exigencia no se cumple
mix-it-would-have-to-be-bought = habría que comprarlo
mix-two-of-a-kind-where-one-will-do = dos de la misma clase, donde basta uno
mix-has-more-against-it = { $authority ->
        [label] una etiqueta tiene más en contra
        [local] un consejo local tiene más en contra
        [published] una publicación tiene más en contra
       *[practice] la práctica común tiene más en contra
    }
mix-would-rather-have-the-other = { $authority ->
        [label] una etiqueta preferiría el otro
        [local] un consejo local preferiría el otro
        [published] una publicación preferiría el otro
       *[practice] la práctica común preferiría el otro
    }
mix-weaker-on-weeds = más débil contra las malezas, lo que aquí pesa más
mix-harder-on-the-crop = más duro con el cultivo, lo que aquí pesa más
mix-its-price-or-rate-is-not-known = no se conoce su precio o su dosis
mix-dearer-by = { $per_ground } más caro
mix-as-good-as = Tan bueno como { $title }

## core/mix/guidance.rs

mix-no-such-class = no hay tal clase
mix-what-is-it-about = ¿de qué trata?
mix-published-or-practice = ¿publicado o práctica?
mix-no-such-stance = no hay tal postura

## core/mix/interval.rs

mix-and-stand-in-one-tank = { $name } y { $name2 } están en el mismo tanque
mix-is-planned-for-for = { $name } está planeada para el { $date }, { $name2 } para el { $date2 } ({ $name3 })
mix-name-is-planned-for-date-first-for-date2-name2 = { $name } está planeada para el { $date }, { $first } para el { $date2 } ({ $name2 })

## core/mix/jar.rs

mix-1-us-pint-473-ml = 1 pinta (473 mL)
mix-1-us-quart-946-ml = 1 cuarto de galón (946 mL)
mix-is-in-the-mix-at-a = { $name } está en la mezcla con una dosis de cero, así que el frasco no lo contiene
mix-takes-too-little-in-a-jar = De { $name } cabe demasiado poco en un frasco de { $jar } para medirlo, aun a partir de una solución madre
mix-look-at-its-rate-on-the = Revise su dosis en el plan.
mix-comes-in-bags-that-go-in = { $name } viene en bolsas que entran enteras; un frasco lleva parte de una
mix-weigh-it-out-of-an-opened = Péselo de una bolsa abierta, al aire libre y con el equipo de protección de la etiqueta, o deje la prueba al consejo del titular del registro.
mix-the-products-leave-no-room-for = Los productos no dejan lugar para { $plain } en el frasco
mix-raise-the-spray-volume-or-look = Suba el volumen de caldo, o revise las dosis.
mix-the-plan-has-a-stop-a = El plan tiene un Alto; una prueba del frasco no lo levanta
mix-settle-it-on-the-plan-before = Resuélvalo en el plan antes de aplicar la mezcla.
mix-the-tank-mix-is-empty-so = La mezcla de tanque está vacía, así que no hay nada que probar
mix-add-its-products-with-their-rates = Agregue sus productos con sus dosis.
mix-could-not-be-reckoned-so-it = { $name } no se pudo calcular, así que falta en el frasco; sin él la prueba no dice nada de esta mezcla
mix-settle-what-the-plan-says-of = Resuelva primero lo que el plan dice de él.
mix-water = agua ({ $water })
mix-plain-water = agua
mix-weigh = pese
mix-weigh-it-out-of-an-opened-bag-with-a = péselo de una bolsa abierta, con un trocito de la película; espere hasta que la película desaparezca
mix-in-the-jar = { $name } en el frasco
mix-rate-over-ground = dosis por superficie
mix-parts-of-stock = × { $parts } partes de solución madre
mix-to-the-mark = hasta la marca
mix-in-spoons-of-4-93-ml = en cucharaditas de 4.93 mL
mix-the-second-jar-takes-a-compatibility = El segundo frasco lleva un agente de compatibilidad al { $share } del caldo, 2 pt/100 gal
mix-the-rate-is-from-memory-the = La dosis es de memoria; rige la etiqueta del propio agente.

## core/mix/jar/measure.rs

mix-stock-of-a-liquid = Solución madre 1 en { $parts }: diluya 1 mL hasta { $first } mL con { $carrier }
mix-stock-of-a-solid = Solución madre 1 en { $parts }: disuelva 1 g agitando hasta { $first } mL con { $carrier }
mix-then-1-ml-of-that-to = { $text }, luego 1 mL de eso hasta { $step } mL
mix-shake-it-and-take-at-once = { $text }; agítela y tome { $take } enseguida
mix-of-stock = { $take } de solución madre
mix-tbsp = { $show } { $us }cda
mix-tsp = { $rest } { $us }cdta
mix-about-1-8-tsp = cerca de 1/8 { $us }cdta
mix-show-us-tsp = { $show } { $us }cdta
mix-about-spoons = cerca de { $spoons }

## core/mix/jar/sheet.rs

mix-do-not-spray = no aplique
mix-do-not-spray-unless-gentle-turning = no aplique, a menos que se arregle al voltear suavemente
mix-try-a-defoamer-where-none-helps = pruebe un antiespumante; si ninguno ayuda, no aplique
mix-two-clear-jars-a-and-b = dos frascos transparentes, A y B, cada uno con tapa y una línea en { $line }
mix-a-clear-jar-with-a-lid = un frasco transparente con tapa y una línea en { $line }
mix-from-the-source-that-fills-the = de la fuente que llena el tanque
mix-from-the-delivery-that-fills-the = de la entrega que llena el tanque
mix-lid-on-shake-for-feel-whether = Tape. Agite durante { $shake }. Sienta si el frasco se calienta.
mix-let-it-stand-and-look-at = Déjelo reposar y mírelo a los tiempos de abajo. Después voltéelo suavemente diez veces y vuelva a mirar.
mix-leave-it-overnight-if-the-spray = Déjelo toda la noche si el caldo puede quedarse en el tanque.
mix-jar-filled-to = Frasco, llenado hasta
mix-carrier = Portador
mix-spray-volume = Volumen de caldo
mix-carrier-in-the-jar = Portador en el frasco
mix-take-about-twice-as-large-so = Tome { $jars }; más o menos del doble de tamaño, para que se pueda agitar.
mix-take-the-carrier-at-the-same = Tome el portador { $source }, a la misma temperatura.
mix-after-each-product-lid-on-turn = Después de cada producto: tape, voltee suavemente hasta que quede parejo, y solo entonces el siguiente.
mix-a-jar-test-shows-only-whether = Una prueba del frasco solo muestra si los productos se toleran en el frasco. No muestra nada del control de malezas ni del cultivo. Rigen la etiqueta y la ley local; lea las etiquetas.
mix-jar-work-outdoors = Trabaje al aire libre, lejos de personas, alimentos y animales. Use guantes, protección para los ojos y todo lo que pidan las etiquetas.
mix-jar-write-on-it = Escriba en el frasco lo que contiene. Nunca use un frasco o una cuchara de cocina, ni vuelva a usar nunca uno de estos en una cocina.
mix-jar-never-two-concentrates = Ponga cada producto en el portador, nunca dos concentrados juntos.
mix-jar-open-slowly = Abra la tapa despacio y lejos de la cara; déjela floja mientras el frasco reposa.
mix-jar-afterwards = Después vierta el frasco en el tanque si la mezcla se aplica, o deshágase de ella como dicen las etiquetas.
mix-to = hasta { $to }
mix-about = cerca de { $joined }
mix-to-the-line-dry-products-take = hasta la línea; los productos secos ocupan poco lugar
mix-compatibility-agent-jar-b-only = Agente de compatibilidad, solo en el frasco B
mix-jar-a-only = solo frasco A
mix-even-at-every-look-the-products = Parejo cada vez que se miró: los productos se toleran en este frasco.
mix-parted-but-came-back-on-gentle = Se separó, pero volvió al voltear suavemente: mantenga el agitador encendido hasta que el tanque esté vacío.
mix-got-warm-or-did-not-come = Se calentó, o no volvió: no aplique esta mezcla.
mix-jar-b-is-even-and-jar = El frasco B está parejo y el A no: ponga el agente de compatibilidad en la mezcla, o no la aplique.
mix-seconds = { $show } segundos
mix-overnight = de un día para otro

## core/mix/line.rs

mix-is-dry-but-its-rate-is = { $name } es seco ({ $code }) pero su dosis es un volumen; escriba una masa, como "2 oz/ac" o "140 g/ha"
mix-is-a-liquid-and-oz-may = { $name } es líquido, y "oz" puede ser de volumen o de peso; escriba "fl oz", o "oz wt" si se pesa
mix-is-a-solution-lb-may-be = { $name } es una solución: "lb" puede ser de la solución o de la sal que contiene; escriba "lb ai/100 gal" para la sal, o un volumen para la solución
mix-is-a-liquid-but-its-rate = { $name } es líquido pero su dosis es una masa; escriba "fl oz" si se quiere decir onzas líquidas, "lb ai/100 gal" para ir por su contenido, o indique su densidad
mix-has-no-active-typed-so-a = { $name } no tiene ningún ingrediente activo anotado, así que una dosis de ingrediente activo no se puede calcular; escriba su contenido en la bodega
mix-holds-several-actives-so-does-not = { $name } contiene varios ingredientes activos, así que "{ $short }" no dice cuál; dé la dosis en producto
mix-the-rate-counts-the-label-of = La dosis cuenta { $short }, la etiqueta de { $name } cuenta { $short2 }; escriba la dosis sobre la base de la etiqueta
mix-the-content-of-in-does-not = { $which ->
        [yes] El contenido de { $name } en { $name2 } no permite llegar a su volumen; indique su densidad
       *[no] El contenido de { $name } en { $name2 } no permite llegar a su masa; indique su densidad
    }
mix-at-least-lies-above-at-most = { $name }: "al menos" está por encima de "como máximo"
mix-over-ground = { $name } por superficie
mix-rate-as-typed = dosis como está anotada: { $rate }
mix-in-of-finished-spray = en { $carrier } de caldo preparado
mix-content-of = ÷ contenido de { $name } ({ $short }), { $content }
mix-raised-to-at-least = subido a "al menos"
mix-lowered-to-at-most = bajado a "como máximo"

## core/mix/order.rs

mix-no-published-mixing-order-is-called = Ningún orden de mezcla publicado se llama "{ $wanted }"; el plan sigue { $order }
mix-choose-an-order-beside-the-mix = Elija un orden al lado de la mezcla.
mix-the-labels-of-and-both-want = { $which ->
        [yes] Las etiquetas de { $name } y { $name2 } piden las dos que su producto entre primero
       *[no] Las etiquetas de { $name } y { $name2 } piden las dos que su producto entre al final
    }
mix-in-the-compatibility-agent-goes-in = en { $carrier } el agente de compatibilidad entra antes que todo lo que mantiene separado
mix-its-label-puts-it = { $which ->
        [yes] su etiqueta lo pone primero
       *[no] su etiqueta lo pone al final
    }
mix-place-in = { $why } ({ $type_name }, lugar { $rank } en { $title })
mix-does-not-say-where-goes-it = { $title } no dice dónde va { $name }; se pone al final
mix-no-order-speaks-of-it-so = ningún orden habla de él, así que entra al final
mix-mixing-order = Orden de mezcla
mix-published-orders-differ-puts-before-the = Los órdenes publicados no coinciden: { $chosen_title } pone { $name } antes de { $names }; { $against } al revés
mix-a-jar-test-tells-which-suits = Una prueba del frasco dice cuál conviene; rige la etiqueta.

## core/mix/pairs.rs

mix-a-side-without-a-name = un lado sin nombre
mix-no-charge-is-called = ninguna carga eléctrica se llama "{ $which }"
mix-no-side-is = ningún lado es "{ $kind } { $which }"
mix-no-class-is-called = ninguna clase se llama "{ $key }"
mix-no-condition-is = ninguna condición es "{ $token }"
mix-may-work-against-each-other = { $names } pueden contrarrestarse
mix-may-bind-each-other = { $names } pueden ligarse
mix-may-fall-out-of-the-water = { $names } pueden precipitar en el agua
mix-may-hurt-the-crop-together = { $names } juntos pueden dañar el cultivo
mix-may-work-less-well = { $name } en { $carrier } puede funcionar menos
mix-may-fall-out = { $name } en { $carrier } puede precipitar
mix-may-hurt-the-crop = { $name } en { $carrier } puede dañar el cultivo
mix-no-such-effect = no hay tal efecto
mix-note-check-or-stop = ¿nota, revisar o alto?
mix-with = { $name } con { $third }
mix-first-and-last = { $first } y { $last }
mix-pair-at-an-untold-rate = { $text }: { $says }; su dosis por superficie no se conoce, por falta de un contenido o de una densidad
mix-pair-at-a-rate = { $text }: { $says }; aquí es { $rate }

## core/mix/start.rs

mix-there-are-two-formulations-and-keep = Hay dos formulaciones, { $first } y { $code }; deje una.
mix-there-are-two-contents-and-keep = Hay dos contenidos, { $content } y { $second }; deje uno.
mix-the-active-such-as-glyphosate = el ingrediente activo, como glyphosate
mix-the-formulation-such-as-sl-or = la formulación, como SL o WG
mix-the-content-such-as-540-g = el contenido, como 540 g ae/L
mix-write-an-active-a-formulation-and = Escriba un ingrediente activo, una formulación y un contenido, como "{ $example }".
mix-still-missing = Todavía falta: { $missing }.
mix-the-content-is-counted-both-as = El contenido se cuenta a la vez como ae y como ai; deje el que imprime la etiqueta.
mix-labels-usually-count-as-it-was = Las etiquetas suelen contar { $active } como { $short }; se escribió como { $short2 }.
mix-the-content-cannot-be-read = El contenido no se puede leer: { $problem }.
mix-of-what-write-lb-gal-g = ¿{ $text } de qué? Escriba "{ $text } lb/gal", "{ $text } g/L" o "{ $text } % w/w".
mix-was-read-as = { $text } se leyó como { $text } { $unit }.
mix-the-content-is-nothing-write-how = El contenido es cero; escriba cuánto ingrediente activo indica la etiqueta.
mix-is-weighed-so-its-content-goes = { $code } se pesa, así que su contenido va en peso: escríbalo como "75 % w/w" o "750 g/kg".
mix-a-content-by-weight-of-a = Un contenido en peso de un líquido necesita su densidad; escríbala en su página.
mix-begin-with-one-active-add-the = Empiece con un ingrediente activo; agregue los otros en su página, cada uno con su propio contenido.
mix-is-counted-as = "{ $typed }" se cuenta como { $name }.
mix-is-not-known-here-is-meant = "{ $typed }" no se conoce aquí: escriba su grupo y su base según la etiqueta. Hasta entonces cuenta como ai. ¿Quiere decir { $name }?
mix-is-not-known-here-type-its = "{ $typed }" no se conoce aquí: escriba su grupo y su base según la etiqueta. Hasta entonces cuenta como ai.
