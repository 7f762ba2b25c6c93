## core/label/applications.rs

label-applications-of-on = Aplicaciones de { $product } en { $field } { $words }
label-applications-so-far = aplicaciones hasta ahora
label-this-pass = + esta aplicación
label-labels-most = máximo de la etiqueta
label-one-application-too-many = { $field }: esta sería la aplicación número { $number } de { $product } { $season }; su etiqueta permite { $most }
label-one-application-too-many-after = { $field }: esta sería la aplicación número { $number } de { $product } { $season } después de las del { $days }; su etiqueta permite { $most }
label-unless-they-lie-on-different-parts = { $text }, a menos que estén en partes distintas
label-leave-the-field-out-or-choose = Deje fuera el lote o elija otro producto.
label-too-near-on-the-same-day = { $field } recibió { $product } el { $date }; esta aplicación es el mismo día, y su etiqueta exige { $days_apart } días entre dos
label-too-near-after = { $field } recibió { $product } el { $date }; esta aplicación es { $apart } después, y su etiqueta exige { $days_apart } días entre dos
label-too-near-before = { $field } recibió { $product } el { $date }; esta aplicación es { $apart } antes, y su etiqueta exige { $days_apart } días entre dos
label-choose-another-product = Elija otro producto.
label-not-before = No antes del { $day }.
label-days = { $days ->
        [one] { $days } día
       *[other] { $days } días
    }

## core/label/boom_height.rs

label-asks-for-nozzles-at-most-above = { $speaker } pide boquillas a { $most } como máximo sobre lo que se aplica; las de esta aplicación están a { $height }
label-lower-the-boom-and-type-the = Baje la barra y escriba la altura en la aplicación.
label-the-height-of-the-boom-is = La altura de la barra no está anotada; { $asked }
label-type-the-height-of-the-nozzles = Escriba la altura de las boquillas sobre el cultivo en la aspersora o en la aplicación.

## core/label/buffer.rs

label-keeps-from-that-is-away =
    { $downwind ->
        [yes] { $who } exige dejar { $width }, a favor del viento, hasta
       *[no] { $who } exige dejar { $width } hasta
    } { $what }; eso, { $side_is_typed ->
        [yes] al lado { $side } de
       *[no] junto a
    } { $field }, está a { $distance }
label-leave-a-strip-of-unsprayed-along = { $which ->
        [yes] { $which2 ->
            [yes] Deje una franja de { $width } sin aplicar a lo largo de ese borde mientras el viento sople hacia él, a menos que lo que queda sin aplicar ya la abarque.
           *[no] Deje una franja de { $width } sin aplicar a lo largo de ese borde mientras el viento sople hacia él.
        }
       *[no] { $which2 ->
            [yes] Deje una franja de { $width } sin aplicar a lo largo de ese borde, a menos que lo que queda sin aplicar ya la abarque.
           *[no] Deje una franja de { $width } sin aplicar a lo largo de ese borde.
        }
    }
label-keeps-from-how-far-that-lies =
    { $downwind ->
        [yes] { $who } exige dejar { $width }, a favor del viento, hasta
       *[no] { $who } exige dejar { $width } hasta
    } { $what }; no está anotado a qué distancia queda eso, { $side_is_typed ->
        [yes] al lado { $side } de
       *[no] junto a
    } { $field }
label-type-how-far-it-lies-from = Escriba en la página del lote a qué distancia queda del borde, o deje la franja.
label-speaks-of-wind-toward-what-lies = { $who } habla de viento hacia { $what }; lo que hay junto a { $field } no está anotado
label-type-its-neighbours-with-their-sides = Escriba sus vecinos con sus lados en la página del lote, o mire alrededor antes de la aplicación.
label-speaks-of-wind-toward-which-of = { $who } habla de viento hacia { $what }; por sus palabras no se puede saber a cuál de los vecinos de { $field } se refiere: { $beside }
label-name-the-neighbour-that-is-meant = Nombre al vecino al que se refiere, con las palabras de la etiqueta, en la página del lote, o vigile usted mismo el viento.

## core/label/ends.rs

label-ends-the-wrong-way-round = En la etiqueta de { $name } están anotados { $least } como mínimo y { $most } como máximo ({ $kind }); nada puede cumplir ambos
label-hold-both-ends-against-the-label = Compare ambos con la etiqueta; puede que estén al revés.

## core/label/carrier.rs

label-asks-for-more-spray = { $name } pide al menos { $least } de caldo; la aplicación lleva { $carrier }
label-asks-for-less-spray = { $name } pide como máximo { $most } de caldo; la aplicación lleva { $carrier }
label-raise-the-carrier-volume = Suba el volumen de caldo.
label-lower-the-carrier-volume = Baje el volumen de caldo.

## core/label/dates.rs

label-from-on = desde el { $from }
label-up-to = hasta el { $to }
label-from-to = del { $from } al { $to }
label-may-be-used-month-day-this = { $name } puede usarse { $words }; esta aplicación es el { $date }
label-move-the-pass-or-choose-another = Cambie la fecha de la aplicación o elija otro producto.

## core/label/droplets.rs

label-the-droplet-class-of-this-pass = La clase de gota de esta aplicación no está anotada
label-copy-the-class-from-the-nozzle = Copie la clase de la tabla del fabricante de la boquilla en la aspersora o en la aplicación.
label-the-droplet-classes-of-are-not = Las clases de gota de { $name } no están anotadas
label-copy-them-from-the-nozzle-makers = Cópielas de la tabla del fabricante de la boquilla en el juego, en la bodega.
label-the-pressure-of-is-not-known = No se conoce la presión de { $name }, y por eso tampoco sus gotas
label-type-what-its-setting-lacks-or = Escriba lo que falta en su ajuste, o la clase de la aplicación.
label-the-droplet-table-of-does-not = La tabla de gotas de { $name } no llega a { $pressure }
label-change-speed-volume-or-set-or = Cambie la velocidad, el volumen o el juego, o escriba más líneas de la tabla del fabricante de la boquilla.
label-take-a-coarser-set-or-less = Tome un juego de gota más gruesa o baje la presión: avance más despacio o aplique menos volumen.
label-choose-a-coarser-nozzle-or-less = Elija una boquilla de gota más gruesa o baje la presión, y escriba la clase de ese ajuste.
label-take-a-finer-set-or-more = Tome un juego de gota más fina o suba la presión: avance más rápido o aplique más volumen.
label-choose-a-finer-nozzle-or-more = Elija una boquilla de gota más fina o suba la presión, y escriba la clase de ese ajuste.
label-droplets-are-finer = { $who } pide gotas { $asked }; las de esta aplicación son { $classes }, o sea más finas
label-droplets-are-coarser = { $who } pide gotas { $asked }; las de esta aplicación son { $classes }, o sea más gruesas
label-droplets-may-be-finer = { $who } pide gotas { $asked }; las de esta aplicación son { $classes }, entre dos líneas de la tabla del fabricante de la boquilla, y pueden ser más finas
label-droplets-may-be-coarser = { $who } pide gotas { $asked }; las de esta aplicación son { $classes }, entre dos líneas de la tabla del fabricante de la boquilla, y pueden ser más gruesas
label-set-a-pressure-of-the-table = Ponga una presión de la tabla en la que la clase sea segura.
label-droplets-not-known = { $why }; { $asked }

## core/label/ground_speed.rs

label-asks-for-at-most-over-ground = { $speaker } pide una velocidad de avance de { $most } como máximo; en esta aplicación se avanza a { $speed }
label-drive-slower-with-a-set-that = Maneje más despacio, con un juego que convenga a esa velocidad.
label-the-speed-of-this-pass-is = La velocidad de esta aplicación no está anotada; { $asked }
label-type-the-speed-for-the-rig = Escriba la velocidad en la aspersora o en la aplicación.

## core/label/groups.rs

label-on-fields-times-in-seasons = { $times ->
        [1] en { $names } una vez en las últimas { $seasons } temporadas, y esta es la { $now }
        [2] en { $names } dos veces en las últimas { $seasons } temporadas, y esta es la { $now }
       *[other] en { $names } { $times } veces en las últimas { $seasons } temporadas, y esta es la { $now }
    }
label-on-fields-times = { $times ->
        [1] en { $names } una vez, y esta es la { $now }
        [2] en { $names } dos veces, y esta es la { $now }
       *[other] en { $names } { $times } veces, y esta es la { $now }
    }
label-ordinal = { $ending ->
        [st] { $number }.ª
       *[th] { $number }.ª
    }
label-group-was-sprayed = El grupo { $group } se aplicó { $parts }
label-group-of-a-kind-was-sprayed = { $kind }: el grupo { $group } se aplicó { $parts }
label-another-effective-group-in-the-mix = Otro grupo eficaz en la mezcla, u otro la próxima vez, hace que este siga funcionando.
label-no-label-in-the-mix-says = Ninguna etiqueta de la mezcla dice, según lo anotado, qué malezas controla, así que no se cuentan los grupos eficaces
label-type-controls-in-the-shed-with = Escriba "controla" en la bodega, con las malezas de la etiqueta.
label-add-a-product-of-another-group = Agregue un producto de otro grupo que la controle.
label-what-controls-is-not-typed-type = Lo que controla { $silent } no está anotado; escríbalo, o agregue un producto de otro grupo.
label-nothing-in-the-mix-controls-on = Nada en la mezcla controla { $weed } en { $on }, según las etiquetas y las malezas resistentes anotadas
label-only-one-effective-group-is-in = Contra { $weed } en { $on } hay un solo grupo eficaz en la mezcla: el grupo { $one }
label-norsworthy-et-al-2012-weed-science = Norsworthy et al. 2012, Weed Science 60 (sp1):31-62, de memoria

## core/label/harvest.rs

label-may-not-be-harvested-before-keeps = { $name } no debe cosecharse antes del { $earliest }: { $product } exige { $most } días
label-type-the-expected-day-of-harvest = Escriba el día de cosecha esperado en la página del lote para que esto se evalúe.
label-keeps-days-to-harvest-is-expected = { $name } exige { $days } días hasta la cosecha; se espera cosechar { $name2 } { $left } días después de esta aplicación
label-harvest-not-before-or-choose-another = No coseche antes del { $days }, o elija otro producto.
label-keeps-days-and-the-harvest-lies-before = { $name } exige { $days } días hasta la cosecha; la cosecha de { $name2 } está anotada para el { $harvest }, antes de esta aplicación
label-type-the-harvest-to-come-or-the-crop = Escriba en la página del lote la cosecha que todavía viene, o lo que está sembrado ahora; no coseche antes del { $days }.
label-had-on-which-keeps-it-from = { $name } recibió { $name2 } el { $date }, lo que impide cosecharlo hasta el { $until }; su cosecha se espera el { $harvest }
label-harvest-not-before = No coseche antes del { $until }.

## core/label/laws.rs

label-speaks-of-which-is-not-judged = { $source } habla de { $says }, que no se evalúa cuando lo dice una ley
label-hold-this-pass-against-it-yourself = Compare usted mismo esta aplicación con ella.

## core/label/mod.rs

label-law-since = { $source }, desde el { $day }
label-the-label-says-so = { $text }; la etiqueta lo dice { $doubt }
label-the-rule-says-so = { $text }; la norma lo dice { $doubt }
label-the-says-so-which-cannot-be = { $who ->
        [rule] { $text }; la norma lo dice { $doubt }, lo que aquí no se puede saber
       *[label] { $text }; la etiqueta lo dice { $doubt }, lo que aquí no se puede saber
    }
label-and = { $first } y { $last }
label-ask-for = { $who ->
        [labels] las etiquetas piden { $asked }
        [laws] las leyes piden { $asked }
       *[both] las etiquetas y las leyes piden { $asked }
    }
label-ask-for-at-most = { $who ->
        [labels] las etiquetas piden como máximo { $asked }
        [laws] las leyes piden como máximo { $asked }
       *[both] las etiquetas y las leyes piden como máximo { $asked }
    }
label-for-the-crop-of-is-not = para { $crop } (el cultivo de { $name } no está anotado)

## core/label/names.rs

label-oil = aceite
label-crop-oil = aceite agrícola
label-oil-adjuvant = coadyuvante oleoso
label-oil-concentrate = concentrado de aceite
label-ammonium = amonio
label-ammonium-salt = sal de amonio
label-ammonium-product = producto con amonio
label-group-group = grupo { $group }
label-group-group-kind = { $kind } del grupo { $group }
label-family-kind = { $kind } { $family }
label-group-product = producto del grupo { $group }

## core/label/partners.rs

label-may-not-be-mixed-with-is = { $name } no debe mezclarse con { $what }; { $name2 } está en la mezcla
label-take-one-of-the-two-out = Saque uno de los dos, o aplíquelos en dos aplicaciones.
label-not-together-with-these-words-are = { $name }: no junto con { $words }; estas palabras no se evalúan por completo
label-read-the-mix-against-them-or = Compare la mezcla con ellas, o escriba cada compañero por su ingrediente activo, su grupo, su clase o su nombre.
label-may-not-come-within-same-day = { $name } no debe aplicarse a menos de { $days } de { $what }; { $field } recibió { $partner } el { $date }, el mismo día
label-may-not-come-within-before = { $name } no debe aplicarse a menos de { $days } de { $what }; { $field } recibió { $partner } el { $date }, { $apart } antes de esta aplicación
label-may-not-come-within-after = { $name } no debe aplicarse a menos de { $days } de { $what }; { $field } recibió { $partner } el { $date }, { $apart } después de esta aplicación
label-may-not-come-within-of-of = { $name } no debe aplicarse a menos de { $days } de { $what }; "{ $name2 }" del { $date } pone { $name3 } en { $name4 }
label-move-one-of-the-two-passes = Cambie la fecha de una de las dos aplicaciones.

## core/label/plant_back.rs

label-may-not-be-planted-before = { $names }: { $crop } no debe sembrarse antes del { $day }, { $words }
label-cold-and-drought-lengthen-what-the = El frío y la sequía alargan el plazo con que cuenta la etiqueta; vea si ella lo dice.
label-months-after = { $months } meses después de { $name }
label-the-label-of-names-when-other = La etiqueta de { $name } dice cuándo pueden seguir otros cultivos, pero no { $next }, según lo anotado
label-type-what-it-says-of-this = Escriba lo que dice de este cultivo, o planee otro cultivo siguiente.
label-months-after-of = { $months } meses después de { $name } del { $date }
label-planted-too-early = { $name } recibió { $product } el { $date }; su etiqueta exige { $months } meses hasta { $crop }, hasta el { $until }, y se sembró el { $planted }
label-perhaps-planted-too-early = { $name } recibió { $product } el { $date }; su etiqueta exige { $months } meses hasta { $crop }, hasta el { $until }, y su día de siembra no está anotado
label-look-at-the-crop-before-more = Revise el cultivo antes de aplicarle algo más.

## core/label/rate.rs

label-to = { $least } a { $most }
label-at-least-least = al menos { $least }
label-at-most-most = como máximo { $most }
label-a-rate-on-the-label-cannot = Una dosis de la etiqueta no se puede comparar: { $problem }
label-the-rate-of-depends-on-a = La dosis de { $name } depende de una etapa que { $name2 } no indica de forma comparable
label-write-stages-like-v6-r1-or = Escriba las etapas como V6, R1 o BBCH 14.
label-a-field-without-a-crop = un lote sin cultivo
label-has-no-rate-for-as-its = { $name } no tiene dosis para { $crop }, según lo anotado de su etiqueta
label-has-no-rate-for-at-stage = { $name } no tiene dosis para { $crop } en { $stage }, según lo anotado de su etiqueta
label-if-the-label-has-one-type = Si la etiqueta tiene una, escríbala en la bodega; si no, el producto no debe usarse aquí.
label-no-rate-is-typed-from-the = No hay ninguna dosis anotada de la etiqueta de { $name }, así que su dosis no se evalúa
label-type-the-labels-rate-in-the = Escriba la dosis de la etiqueta en la bodega.
label-is-planned-at-on-its-label = { $name } está planeado a { $planned } en { $crop }; su etiqueta permite { $shown }
label-though-another-statement-of-the-label = { $text }, aunque otra indicación de la etiqueta permite más
label-see-which-of-the-two-statements = Vea cuál de las dos indicaciones corresponde a las malezas y al suelo.
label-lower-the-rate = Baje la dosis.
label-is-planned-at-on-below-its = { $name } está planeado a { $planned } en { $crop }, por debajo de lo que dice su etiqueta: { $shown }
label-is-planned-perhaps-below = { $name } está planeado a { $planned } en { $crop }, por debajo de lo que dice su etiqueta: { $shown } { $doubt }
label-less-than-the-labels-rate-may = Menos que la dosis de la etiqueta puede fallar y crea resistencia.

## core/label/re_entry.rs

label-nobody-enters-without-protection-for-h = Nadie debe entrar sin protección durante { $hours } h después de terminar de aplicar, según la etiqueta de { $speaker }
label-nobody-enters-where = Nadie debe entrar sin protección durante { $hours } h después de terminar de aplicar { $doubt }, según la etiqueta de { $speaker }

## core/label/restricted.rs

label-for-certified-applicators-only-or-for = { $count ->
        [one] { $names } es solo para aplicadores certificados, o para personas bajo su supervisión directa donde la ley local lo permita
       *[other] { $names } son solo para aplicadores certificados, o para personas bajo su supervisión directa donde la ley local lo permita
    }
label-a-record-is-owed-write-who = Hay obligación de llevar registro: anote en él quién aplicó y el número del certificado.

## core/label/season.rs

label-the-label-of-limits-a-season = La etiqueta de { $name } limita { $active } por temporada, pero no hay anotado ningún ingrediente activo de ese nombre
label-write-the-active-in-the-same = Escriba el ingrediente activo igual en los dos lugares.
label-the-season-total-on-the-label = El total de la temporada de la etiqueta no se puede comparar: { $problem }
label-the-season-total-of-is-typed = El total de la temporada de { $active } está anotado como "{ $most }", que no es una masa por superficie
label-type-it-like-4-lb-ae = Escríbalo como "4 lb ae/ac" o "4.5 kg ae/ha".
label-counts-as-the-season-total-as = { $name } cuenta { $active } como { $short }, el total de la temporada como { $basis }
label-type-both-on-one-basis = Escriba los dos sobre la misma base.
label-the-in-cannot-be-reckoned-without = Sin su densidad no se puede calcular cuánto { $active } hay en { $name }, así que el total de la temporada no se evalúa
label-type-the-density-in-the-shed = Escriba la densidad en la bodega.
label-this-pass-was-recorded-on-and = Esta aplicación se registró el { $date } y está planeada para el { $date2 }; ese registro cuenta como otra aplicación
label-if-it-is-a-second-application = Si es una segunda aplicación, planéela por separado.
label-unrecorded-pass-is-not-counted = "{ $name }" del { $date } también pone { $shared } en { $fields } y no está registrada, así que los totales de la temporada, el número y el intervalo de aplicaciones no la cuentan
label-rest-of-a-pass-is-not-counted = "{ $name }" del { $date } también pone { $shared } en { $fields } y está { $partly }, así que los totales de la temporada, el número y el intervalo de aplicaciones no cuentan eso
label-record-it-or-take-it-out = Regístrela, o quítela si no se aplicó.
label-on = { $what } en { $name } { $words }
label-records-so-far = registros hasta ahora
label-none = ninguno
label-in-all = en total
label-this-pass-brings-to-the-labels = { $name }: con esta aplicación { $what } llega a { $after } { $words }; el máximo de la etiqueta es { $limit }
label-this-pass-brings-beyond-what-was-sprayed = { $name }: con esta aplicación { $what } llega a { $after } { $words }; la etiqueta de { $product }, que se aplicó ahí, permite { $limit } entre todos los productos
label-with-what-is-planned-before = { $name }: con { $named }, planeado y todavía sin registro, { $what } llega a { $sum } { $words }; el máximo de la etiqueta es { $limit }
label-pass-of-a-day = "{ $name }" del { $date }
label-lower-a-rate-or-take-out-what = Baje una dosis, o quite lo que no se aplica.
label-sprayed-before-planting-is-not-counted = { $name } recibió { $what } el { $days }, antes de la siembra de su cultivo el { $planted }; el máximo de la etiqueta por cultivo se cuenta desde la siembra, sin eso
label-hold-the-total-of-the-crop-against = Lea si la etiqueta cuenta lo que se aplica antes de la siembra, y súmelo si es así.
label-lower-the-rate-leave-the-field = Baje la dosis, deje fuera el lote o elija otro producto.
label-the-season-total-of-on-leaves = El total de la temporada de { $what } en { $name } deja fuera registros: { $left_out }
label-mend-these-records-in-the-season = Corrija estos registros en la bitácora de la temporada.

## core/label/stage.rs

label-stage-up-to = hasta { $to }
label-stage-from = desde { $from }
label-stage-from-to = de { $from } a { $to }
label-is-at-stops-at = { $name } está en { $stage }; { $name2 } se usa solo hasta { $to_stage }
label-look-at-the-crop-again-before = Vuelva a revisar el cultivo antes de llenar el tanque.
label-may-be-used-is-which-cannot = { $name } puede usarse { $ranges }; { $field } está en "{ $stage }", lo que no se puede comparar
label-may-be-used-at-stages-none-typed = { $name } puede usarse { $ranges }; { $field } está sin etapa, lo que no se puede comparar
label-is-at-may-be-used = { $name } está en { $stage }; { $name2 } puede usarse { $ranges }

## core/label/tolerance.rs

label-variety-is-not-said-to-stand = { $name } contiene { $active }, que daña este cultivo con hojas salvo que su variedad lo tolere; de la variedad en { $fields } no está anotado que tolere { $active }
label-leave-it-out-or-type-what-it-stands = Deje fuera el lote, o escriba en su página lo que su variedad tolera, como "tolerante a glyphosate".
label-only-on-tolerant-varieties = { $name } contiene { $active }, que daña este cultivo con hojas salvo que su variedad lo tolere; la variedad en { $fields } no está anotada
label-type-the-variety-with-what-it-stands = Escriba la variedad en la página del lote, con lo que tolera, como "tolerante a glyphosate".

## core/label/typed.rs

label-from-the-label-of-is-not = De la etiqueta de { $name } no está anotado: { $missing }
label-type-it-in-the-shed-or = Escríbalo en la bodega, o léalo en la etiqueta antes de entrar al lote o cosecharlo.
label-said-for-crops-the-crop-of-name-is-not = Lo que la etiqueta de { $name } dice sobre { $words } es para { $crops }; el cultivo de { $field } no está anotado
label-type-the-crop-on-the-fields = Escriba el cultivo en la página del lote.
label-typed-for-and-not-judged-on = Lo que la etiqueta de { $name } dice sobre { $words } está anotado para { $crops } y no se evalúa en { $crop }
label-write-the-crop-in-the-same = Escriba el cultivo igual en los dos lugares, o escriba lo que la etiqueta dice para él.
label-typed-a-re-entry-time = un tiempo de reingreso
label-typed-protective-equipment = equipo de protección
label-typed-a-harvest-interval = un intervalo a la cosecha
label-typed-rate = dosis
label-typed-spray-volume = volumen de caldo
label-typed-crop-stage = etapa del cultivo
label-typed-most-a-season = máximo por temporada
label-typed-harvest-interval = intervalo a la cosecha
label-typed-applications = aplicaciones
label-typed-dates = fechas

## core/label/weather.rs

label-asks-for-cooler-air = { $speaker } pide aire de { $limit } como máximo; se espera { $air } en lo más caliente del día
label-asks-for-warmer-air = { $speaker } pide aire de al menos { $limit }; se espera { $air } en lo más caliente del día
label-spray-on-a-cooler-day-or = Aplique en un día más fresco, o elija otro producto.
label-spray-on-a-warmer-day-or = Aplique en un día más cálido, o elija otro producto.
label-no-wind-suits-this-mix-asks = { $least ->
        [law] { $most ->
            [law] Ningún viento conviene a esta mezcla: una ley pide al menos { $low }, otra como máximo { $high }
           *[label] Ningún viento conviene a esta mezcla: una ley pide al menos { $low }, una etiqueta como máximo { $high }
        }
       *[label] { $most ->
            [law] Ningún viento conviene a esta mezcla: una etiqueta pide al menos { $low }, una ley como máximo { $high }
           *[label] Ningún viento conviene a esta mezcla: una etiqueta pide al menos { $low }, otra como máximo { $high }
        }
    }
label-split-the-pass = Divida la aplicación.
label-ask-on-the-day = { $who ->
        [labels] Las etiquetas piden para ese día: { $words }
        [laws] Las leyes piden para ese día: { $words }
       *[both] Las etiquetas y las leyes piden para ese día: { $words }
    }
label-measure-at-the-boom-before-starting = Mida a la altura de la barra antes de empezar.

## core/label/directions

label-at-most-text-per = a lo más { $text } { $per }
label-active-at-most-text-per = { $active }, a lo más { $text } { $per }
label-at-most-most-per = a lo más { $most } { $per }
label-at-most-days-apart = a lo más { $most } { $per }, con { $days_apart } días entre sí
label-1-day-before-harvest-or-grazing = 1 día antes de la cosecha o del pastoreo
label-days-before-harvest-or-grazing = { $days } días antes de la cosecha o del pastoreo
label-1-hour-without-protection = 1 hora, sin protección
label-hours-without-protection = { $hours } horas, sin protección
label-1-hour-without-rain = 1 hora sin lluvia
label-hours-without-rain = { $hours } horas sin lluvia
label-at-most-text = a lo más { $text }
label-alone = solo { $finest }
label-finest-to-coarsest = { $finest } a { $coarsest }
label-or-coarser = { $finest } o más gruesas
label-adjuvant-in-form = { $class }, { $stance }
label-adjuvant-in-form-at = { $class }, { $stance }, { $rate }
label-buffer-in-form = { $width } hasta { $to }
label-buffer-downwind-in-form = { $width } a favor del viento hasta { $to }
label-next-crop-in-form-one = { $crop }, 1 mes
label-next-crop-in-form = { $crop }, { $months } meses
label-it-is-too-long-to-be = Es demasiado larga para ser una oración.
label-no-phrase-known-here-fits-it = Ninguna frase conocida aquí coincide con ella.
label-it-stands-under-the-heading-which = Está bajo el título "{ $heading }", que puede hablar de otro uso o de otra cosa.
label-it-stands-under-the-heading-whose = Está bajo el título "{ $heading }", cuyo cultivo no se sabe con seguridad.
label-no-phrase-known-here-accounts-for = Ninguna frase conocida aquí explica "{ $figure }" en ella.
label-the-word-may-turn-what-it = La palabra "{ $word }" puede cambiar lo que dice.
label-the-word-may-narrow-what-it = La palabra "{ $word }" no se conoce aquí y puede limitar lo que dice a otro uso o lugar.
label-the-word-speaks-of-another-use = La palabra "{ $word }" habla de otro uso, lugar o modo de aplicar; anote una fila si es el suyo.
label-the-word-makes-a-condition = Vale bajo una condición, que empieza con "{ $word }"; anote la fila y elija la condición con ella.
label-the-part-before-it-is-not = La parte de la oración que está antes no se entiende, y puede limitarla también.
label-in-brackets-stands-something-else = Entre paréntesis dice "{ $aside }", que no es lo mismo que lo que está antes.
label-minutes-are-entered-as-the-next = El formulario toma horas enteras, así que los minutos se anotan como la siguiente hora entera.
label-days-are-entered-as-the-next = El formulario toma meses, así que los días se anotan como los meses que con seguridad los contienen.
label-a-figure-in-it-cannot-be = Una cifra en ella no se puede leer.
label-the-form-takes-whole-days-and = El formulario acepta solo días y horas enteros.
label-it-does-not-say-over-which = No dice sobre qué terreno va su agua.
label-one-class-so-neither-finer-nor = Una sola clase, así que no se anota ni más fina ni más gruesa.
label-it-counts-an-active-that-is = Cuenta un ingrediente activo; eso se sabe cuando el producto tiene uno solo y su nombre está anotado.
label-a-season-is-entered-as-a = Una temporada se anota como año calendario; el formulario puede contar también por cultivo o por 12 meses.
label-it-does-not-say-over-what = No dice en qué plazo; se anota un año calendario.
label-it-has-none-of-the-words = No tiene cifras ni ninguna de las palabras con que se escriben los límites; léala de todos modos.
label-it-speaks-of-the-grain-alone = Habla del grano; el formulario lo toma para cualquier cosecha, y el forraje o el pastoreo pueden tener otro intervalo.
label-up-to-a-stage-is-entered = "Up to" (hasta) se anota con la etapa misma incluida; compárelo con la etiqueta.
label-it-says-at-which-time = Dice "{ $time }"; el formulario lo toma para cualquier momento del cultivo.
label-it-speaks-of-several-crops-in = Nombra { $crops } en varios lugares, así que no se sabe con seguridad qué dice de cada uno: anote una fila para cada cultivo.
label-the-text-is-too-long-to = El texto es demasiado largo para leerlo hasta el final.
label-the-text-says-several-things-on = El texto dice varias cosas sobre { $kind }; escriba usted para qué vale cada una.
label-the-text-has-several-times-between = El texto tiene varios plazos entre aplicaciones.
label-other-rates-are-not-understood = Otra oración con una dosis no se entendió, así que vea si esta vale para todo.
label-with-the-number-of-applications-that = Con el número de aplicaciones que ya está anotado.
label-the-form-takes-the-days-between = El formulario acepta los días entre aplicaciones junto con su número, que el texto no da.
label-one-figure-so-it-is-entered = Una sola cifra, así que se anota como mínimo y como máximo.

## core/label/directions/adjuvants.rs

label-the-form-cannot-hold-either = Deja elegir entre coadyuvantes de distinto uso; el formulario solo admite una elección dentro de un mismo uso: aceites y surfactantes, o acondicionadores y nitrógeno.
label-the-form-takes-one-of-a-role = Pide juntos varios coadyuvantes de un mismo uso; el formulario toma los requeridos para un mismo uso como una elección: basta uno de ellos.
label-and-may-mean-both-together = "And" (y) puede significar los dos juntos, o cada uno de ellos.
label-it-speaks-against-a-rate-of = Habla en contra de una dosis de un coadyuvante, y no en contra del coadyuvante.
label-the-rate-behind-the-last-is = Basta uno de ellos: márquelos todos, para que el formulario los tome como una elección. La dosis que sigue al último se anota para cada uno.
label-one-of-them-will-do = Basta uno de ellos: márquelos todos, para que el formulario los tome como una elección.
