## core/label/applications.rs

label-applications-of-on = Aplicaciones de { $product } en { $field } { $words }
label-applications-so-far = aplicaciones hasta ahora
label-this-pass = + esta aplicación
label-labels-most = máximo de la etiqueta
label-after = { " " }después de { $days }
label-this-pass-would-be-application-number = { $field }: esta sería la aplicación número { $saturating_add } de { $product } { $words }{ $before }; su etiqueta permite { $most }
label-unless-they-lie-on-different-parts = { $text }, a menos que estén en partes distintas
label-leave-the-field-out-or-choose = Deje fuera el lote o elija otro producto.
label-on-the-same-day-as = el mismo día que
label-days-after = { $days } después de
label-before = { $days } antes de
label-had-on-this-pass-is-that = { $field } recibió { $product } el { $date }; esta aplicación es { $how_far } esa, y su etiqueta exige { $days_apart } días entre dos
label-choose-another-product = Elija otro producto.
label-not-before = No antes del { $day }.
label-1-day = 1 día
label-days = { $days } días

## core/label/boom_height.rs

label-asks-for-nozzles-at-most-above = { $speaker } pide boquillas a { $most } como máximo sobre lo que se aplica; las de esta aplicación están a { $height }
label-lower-the-boom-and-type-the = Baje la barra y escriba la altura en la aplicación.
label-at-most = como máximo{ " " }
label-the-height-of-the-boom-is = La altura de la barra no está anotada; { $asked }
label-type-the-height-of-the-nozzles = Escriba la altura de las boquillas sobre el cultivo en el pulverizador o en la aplicación.

## core/label/buffer.rs

label-on-the-of = al lado { $side } de
label-down-the-wind = { $width }, a favor del viento,
label-keeps-from-that-is-away = { $who } guarda { $asked } respecto a { $what }; eso, { $side } { $field }, está a { $distance }
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
label-keeps-from-how-far-that-lies = { $who } guarda { $asked } respecto a { $what }; no está anotado a qué distancia queda eso, { $side } { $field }
label-type-how-far-it-lies-from = Escriba en la página del lote a qué distancia queda del borde, o deje la franja.
label-speaks-of-wind-toward-what-lies = { $who } habla de viento hacia { $what }; lo que hay junto a { $field } no está anotado
label-type-its-neighbours-with-their-sides = Escriba sus vecinos con sus lados en la página del lote, o mire alrededor antes de la aplicación.
label-speaks-of-wind-toward-which-of = { $who } habla de viento hacia { $what }; por sus palabras no se puede saber a cuál de los vecinos de { $field } se refiere: { $beside }
label-name-the-neighbour-that-is-meant = Nombre al vecino al que se refiere, con las palabras de la etiqueta, en la página del lote, o vigile usted mismo el viento.

## core/label/carrier.rs

label-asks-for-of-spray-the-pass = { $name } pide { $word } { $limit } de caldo; la aplicación lleva { $carrier }
label-at-least = al menos
label-raise-the-carrier-volume = Suba el volumen de caldo.
label-at-most-2e7 = como máximo
label-lower-the-carrier-volume = Baje el volumen de caldo.

## core/label/dates.rs

label-from-on = desde el { $from }
label-up-to = hasta el { $to }
label-from-to = del { $from } al { $to }
label-may-be-used-month-day-this = { $name } puede usarse { $words } (mes-día); esta aplicación es el { $date }
label-move-the-pass-or-choose-another = Cambie la fecha de la aplicación o elija otro producto.

## core/label/droplets.rs

label-the-droplet-class-of-this-pass = La clase de gota de esta aplicación no está anotada
label-copy-the-class-from-the-nozzle = Copie la clase de la tabla del fabricante de la boquilla en el pulverizador o en la aplicación.
label-the-droplet-classes-of-are-not = Las clases de gota de { $name } no están anotadas
label-copy-them-from-the-nozzle-makers = Cópielas de la tabla del fabricante de la boquilla en el juego, en la bodega.
label-the-pressure-of-is-not-known = No se conoce la presión de { $name }, y por eso tampoco sus gotas
label-type-what-its-setting-lacks-or = Escriba lo que falta en su ajuste, o la clase de la aplicación.
label-the-droplet-table-of-does-not = La tabla de gotas de { $name } no llega a { $pressure }
label-change-speed-volume-or-set-or = Cambie la velocidad, el volumen o el juego, o escriba más líneas de la tabla del fabricante de la boquilla.
label-take-a-coarser-set-or-less = Tome un juego de gota más gruesa o baje la presión: maneje más despacio o aplique menos volumen.
label-choose-a-coarser-nozzle-or-less = Elija una boquilla de gota más gruesa o baje la presión, y escriba la clase de ese ajuste.
label-take-a-finer-set-or-more = Tome un juego de gota más fina o suba la presión: maneje más rápido o aplique más volumen.
label-choose-a-finer-nozzle-or-more = Elija una boquilla de gota más fina o suba la presión, y escriba la clase de ese ajuste.
label-asks-for-droplets-those-of-this = { $who } pide gotas { $asked }; las de esta aplicación son { $classes }
label-which-is = { $theirs }, que es { $word }
label-between-two-lines-of-the-nozzle = { $theirs }, entre dos líneas de la tabla del fabricante de la boquilla, que puede ser { $word }
label-set-a-pressure-of-the-table = Ponga una presión de la tabla en la que la clase sea segura.

## core/label/ground_speed.rs

label-asks-for-at-most-over-ground = { $speaker } pide { $most } como máximo sobre el terreno; en esta aplicación se maneja a { $speed }
label-drive-slower-with-a-set-that = Maneje más despacio, con un juego que convenga a esa velocidad.
label-the-speed-of-this-pass-is = La velocidad de esta aplicación no está anotada; { $asked }
label-type-the-speed-for-the-rig = Escriba la velocidad en el pulverizador o en la aplicación.

## core/label/groups.rs

label-times = { $many } veces
label-in-the-last-seasons = { " " }en las últimas { $seasons } temporadas
label-on-and-this-is-the = en { $names } { $times }{ $seasons }, y esta es la { $count }
label-group = Grupo
label-was-sprayed = { $of_kind }{ $word } { $group } se aplicó { $parts }
label-another-effective-group-in-the-mix = Otro grupo eficaz en la mezcla, u otro la próxima vez, hace que este siga funcionando.
label-no-label-in-the-mix-says = Ninguna etiqueta de la mezcla dice, según lo anotado, qué malezas controla, así que no se cuentan los grupos eficaces
label-type-controls-in-the-shed-with = Escriba "controla" en la bodega, con las malezas de la etiqueta.
label-add-a-product-of-another-group = Agregue un producto de otro grupo que la controle.
label-what-controls-is-not-typed-type = Lo que controla { $silent } no está anotado; escríbalo, o agregue un producto de otro grupo.
label-nothing-in-the-mix-controls-on = Nada en la mezcla controla { $weed } en { $on }, según las etiquetas y las malezas resistentes anotadas
label-only-one-effective-group-is-in = Contra { $weed } en { $on } hay un solo grupo eficaz en la mezcla: el grupo { $one }
label-norsworthy-et-al-2012-weed-science = Norsworthy et al. 2012, Weed Science 60 (sp1):31-62, de memoria

## core/label/harvest.rs

label-may-not-be-harvested-before-keeps = { $name } no puede cosecharse antes del { $earliest }: { $product } exige { $most } días
label-type-the-expected-day-of-harvest = Escriba el día de cosecha esperado en la página del lote para que esto se juzgue.
label-keeps-days-to-harvest-is-expected = { $name } exige { $days } días hasta la cosecha; se espera cosechar { $name2 } { $left } días después de esta aplicación
label-harvest-not-before-or-choose-another = No coseche antes del { $days }, o elija otro producto.
label-had-on-which-keeps-it-from = { $name } recibió { $name2 } el { $date }, lo que impide cosecharlo hasta el { $until }; su cosecha se espera el { $harvest }
label-harvest-not-before = No coseche antes del { $until }.

## core/label/laws.rs

label-speaks-of-which-is-not-judged = { $source } habla de { $says }, que no se juzga cuando lo dice una ley
label-hold-this-pass-against-it-yourself = Compare usted mismo esta aplicación con ella.

## core/label/mod.rs

label-since = , desde el { $day }
label-the-label-says-so = { $text }; la etiqueta lo dice { $doubt }
label-the-rule-says-so = { $text }; la norma lo dice { $doubt }
label-the-says-so-which-cannot-be = { $who ->
        [rule] { $text }; la norma lo dice { $doubt }, lo que aquí no se puede saber
       *[label] { $text }; la etiqueta lo dice { $doubt }, lo que aquí no se puede saber
    }
label-and = { $first } y { $last }
label-ask-for = { $places } piden { $most }{ $asked }
label-the-labels = las etiquetas
label-the-laws = las leyes
label-the-labels-and-laws = las etiquetas y las leyes
label-for-the-crop-of-is-not = para { $crop } (el cultivo de { $name } no está anotado)

## core/label/names.rs

label-crop-oil = aceite agrícola
label-oil-adjuvant = coadyuvante oleoso
label-oil-concentrate = concentrado de aceite
label-ammonium-salt = sal de amonio
label-ammonium-product = producto con amonio
label-group-group = grupo { $group }
label-group-group-kind = { $kind } del grupo { $group }
label-group-product = producto del grupo { $group }

## core/label/partners.rs

label-may-not-be-mixed-with-is = { $name } no puede mezclarse con { $what }; { $name2 } está en la mezcla
label-take-one-of-the-two-out = Saque uno de los dos, o aplíquelos en dos aplicaciones.
label-not-together-with-these-words-are = { $name }: no junto con { $words }; estas palabras no se juzgan por completo
label-read-the-mix-against-them-or = Compare la mezcla con ellas, o escriba cada compañero por su ingrediente activo, su grupo, su clase o su nombre.
label-on-the-same-day = el mismo día
label-before-this-pass = { $apart } antes de esta aplicación
label-after-this-pass = { $apart } después de esta aplicación
label-may-not-come-within-of-had = { $name } no puede aplicarse a menos de { $days } de { $what }; { $name2 } recibió { $name3 } el { $date }, { $when }
label-may-not-come-within-of-of = { $name } no puede aplicarse a menos de { $days } de { $what }; "{ $name2 }" del { $date } pone { $name3 } en { $name4 }
label-move-one-of-the-two-passes = Cambie la fecha de una de las dos aplicaciones.

## core/label/plant_back.rs

label-may-not-be-planted-before = { $names }: { $crop } no puede sembrarse antes del { $day }, { $words }
label-cold-and-drought-lengthen-what-the = El frío y la sequía alargan el plazo con que cuenta la etiqueta; vea si ella lo dice.
label-months-after = { $months } meses después de { $name }
label-the-label-of-names-when-other = La etiqueta de { $name } dice cuándo pueden seguir otros cultivos, pero no { $next }, según lo anotado
label-type-what-it-says-of-this = Escriba lo que dice de este cultivo, o planee otro cultivo siguiente.
label-months-after-of = { $months } meses después de { $name } del { $date }
label-its-day-of-planting-is-not = su día de siembra no está anotado
label-it-was-planted-on = se sembró el { $day }
label-had-on-its-label-keeps-months = { $name } recibió { $name2 } el { $date }; su etiqueta exige { $months } meses hasta { $crop }, hasta el { $until }, y { $planted }
label-look-at-the-crop-before-more = Revise el cultivo antes de aplicarle algo más.

## core/label/rate.rs

label-to = { $least } a { $most }
label-at-least-least = al menos { $least }
label-at-most-most = como máximo { $most }
label-a-rate-on-the-label-cannot = Una dosis de la etiqueta no se puede comparar: { $problem }
label-the-rate-of-depends-on-a = La dosis de { $name } depende de una etapa que { $name2 } no indica de forma comparable
label-write-stages-like-v6-r1-or = Escriba las etapas como V6, R1 o BBCH 14.
label-a-field-without-a-crop = un lote sin cultivo
label-at = { " " }en { $stage }
label-has-no-rate-for-as-its = { $name } no tiene dosis para { $crop }{ $which }, según lo anotado de su etiqueta
label-if-the-label-has-one-type = Si la etiqueta tiene una, escríbala en la bodega; si no, el producto no puede usarse aquí.
label-no-rate-is-typed-from-the = No hay ninguna dosis anotada de la etiqueta de { $name }, así que su dosis no se juzga
label-type-the-labels-rate-in-the = Escriba la dosis de la etiqueta en la bodega.
label-is-planned-at-on-its-label = { $name } está planeado a { $planned } en { $crop }; su etiqueta permite { $shown }
label-though-another-statement-of-the-label = { $text }, aunque otra indicación de la etiqueta permite más
label-see-which-of-the-two-statements = Vea cuál de las dos indicaciones corresponde a las malezas y al suelo.
label-lower-the-rate = Baje la dosis.
label-is-planned-at-on-below-its = { $name } está planeado a { $planned } en { $crop }, por debajo de lo que dice su etiqueta: { $shown }{ $doubt }
label-less-than-the-labels-rate-may = Menos que la dosis de la etiqueta puede fallar y crea resistencia.

## core/label/re_entry.rs

label-nobody-enters-without-protection-for-h = Nadie entra sin protección durante { $hours } h después de terminar de aplicar{ $when }, según la etiqueta de { $speaker }

## core/label/restricted.rs

label-for-certified-applicators-only-or-for = { $are ->
        [is] { $names } es solo para aplicadores certificados, o para personas bajo su supervisión directa donde la ley local lo permita
       *[are] { $names } son solo para aplicadores certificados, o para personas bajo su supervisión directa donde la ley local lo permita
    }
label-a-record-is-owed-write-who = Hay obligación de llevar registro: anote en él quién aplicó y el número del certificado.

## core/label/season.rs

label-the-label-of-limits-a-season = La etiqueta de { $name } limita { $active } por temporada, pero no hay anotado ningún ingrediente activo de ese nombre
label-write-the-active-in-the-same = Escriba el ingrediente activo igual en los dos lugares.
label-the-season-total-on-the-label = El total de la temporada de la etiqueta no se puede comparar: { $problem }
label-the-season-total-of-is-typed = El total de la temporada de { $active } está anotado como "{ $most }", que no es una masa por superficie
label-type-it-like-4-lb-ae = Escríbalo como "4 lb ae/ac".
label-counts-as-the-season-total-as = { $name } cuenta { $active } como { $short }, el total de la temporada como { $basis }
label-type-both-on-one-basis = Escriba los dos sobre la misma base.
label-the-in-cannot-be-reckoned-without = Sin su densidad no se puede calcular cuánto { $active } hay en { $name }, así que el total de la temporada no se juzga
label-type-the-density-in-the-shed = Escriba la densidad en la bodega.
label-this-pass-was-recorded-on-and = Esta aplicación se registró el { $date } y está planeada para el { $date2 }; ese registro cuenta como otra aplicación
label-if-it-is-a-second-application = Si es una segunda aplicación, planéela por separado.
label-is = está { $partly }
label-is-not-recorded = no está registrada
label-of-also-puts-on-and-so = { $counted ->
        [that] "{ $name }" del { $date } también pone { $shared } en { $fields } y { $is }, así que los totales de la temporada, el número y el intervalo de aplicaciones no cuentan eso
       *[it] "{ $name }" del { $date } también pone { $shared } en { $fields } y { $is }, así que los totales de la temporada, el número y el intervalo de aplicaciones no la cuentan
    }
label-record-it-or-take-it-out = Regístrela, o quítela si no se aplicó.
label-on = { $what } en { $name } { $words }
label-records-so-far = registros hasta ahora
label-in-all = en total
label-this-pass-brings-to-the-labels = { $name }: con esta aplicación { $what } llega a { $after } { $words }; el máximo de la etiqueta es { $limit }
label-lower-the-rate-leave-the-field = Baje la dosis, deje fuera el lote o elija otro producto.
label-the-season-total-of-on-leaves = El total de la temporada de { $what } en { $name } deja fuera registros: { $left_out }
label-mend-these-records-in-the-season = Corrija estos registros en la bitácora de la temporada.

## core/label/stage.rs

label-from = desde { $from }
label-is-at-stops-at = { $name } está en { $stage }; { $name2 } termina en { $to_stage }
label-look-at-the-crop-again-before = Vuelva a revisar el cultivo antes de llenar el tanque.
label-without-a-stage = sin etapa
label-at-stage = en "{ $stage }"
label-may-be-used-is-which-cannot = { $name } puede usarse { $ranges }; { $name2 } está { $stage }, lo que no se puede comparar
label-is-at-may-be-used = { $name } está en { $stage }; { $name2 } puede usarse { $ranges }

## core/label/typed.rs

label-from-the-label-of-is-not = De la etiqueta de { $name } no está anotado: { $missing }
label-type-it-in-the-shed-or = Escríbalo en la bodega, o léalo en la etiqueta antes de entrar al lote o cosecharlo.
label-what-the-label-of-says-on = Lo que la etiqueta de { $name } dice sobre { $words } está
label-said-for-crops-the-crop-of-name-is-not = { $said } para { $crops }; el cultivo de { $name } no está anotado
label-type-the-crop-on-the-fields = Escriba el cultivo en la página del lote.
label-typed-for-and-not-judged-on = { $said } anotado para { $crops } y no se juzga en { $crop }
label-write-the-crop-in-the-same = Escriba el cultivo igual en los dos lugares, o escriba lo que la etiqueta dice para él.

## core/label/weather.rs

label-asks-for-air-of-is-expected = { $speaker } pide aire de { $word } { $limit }; se espera { $air } en lo más caliente del día
label-spray-on-a-cooler-day-or = Aplique en un día más fresco, o elija otro producto.
label-spray-on-a-warmer-day-or = Aplique en un día más cálido, o elija otro producto.
label-a-law = una ley
label-a-label = una etiqueta
label-one-label = una etiqueta
label-one-law = una ley
label-no-wind-suits-this-mix-asks = Ningún viento conviene a esta mezcla: { $asks_least } pide al menos { $low }, { $asks_most } como máximo { $high }
label-split-the-pass = Divida la aplicación.
label-ask-on-the-day = { $who } piden para ese día: { $words }
label-measure-at-the-boom-before-starting = Mida a la altura de la barra antes de empezar.
