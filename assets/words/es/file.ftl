## file/alike.rs

file-of = "{ $name }" del { $date }

## file/backups.rs

file-a-hundred-backups-of-one-second = ya hay cien copias de respaldo de un mismo segundo

## file/document.rs

file-the-file-is-empty-take-a = el archivo está vacío; tome una copia de respaldo, o empiece una finca nueva
file-the-file-is-not-utf-8 = el archivo no es texto UTF-8, así que no es un archivo de finca
file-the-file-has-format-this-tankard = el archivo tiene el formato { $found }; este Tankard conoce formatos hasta { $format }. Ábralo con un Tankard más nuevo
file-the-file-has-format-which-never = el archivo tiene el formato { $found }, que nunca existió; vea sus primeras líneas
file-line-column = línea { $line }, columna { $column }: { $what }
file-a-newer-tankard-may-have-written = { $what }; tal vez lo escribió un Tankard más nuevo

## file/forecast_csv/cell.rs

file-no-wind-is-that-strong = ningún viento es tan fuerte
file-no-hour-is-that-wet = ninguna hora es tan lluviosa
file-it-is-no-point-of-the = no es un rumbo de la brújula
file-it-lies-between-0-and = está entre 0 y { $of }
file-it-is-above-100 = pasa de 100 %
file-it-is-no-plain-number-of = no es un número sencillo de { $unit }
file-the-files-other-figures-have-a = las otras cifras del archivo tienen coma decimal, así que el punto puede significar cualquier cosa

## file/forecast_csv/read.rs

file-the-times-are-given-against-utc = las horas están dadas respecto a UTC; anote la zona horaria de la finca en la bodega, en la página de la finca, para poder pasarlas a su reloj
file-the-file-holds-hours-a-forecast = el archivo contiene { $found } horas; un pronóstico tiene a lo más { $most_hours }, así que recórtelo a los días que importan
file-the-file-has-no-column-choose = el archivo no tiene la columna "{ $name }"; elija de nuevo qué contienen sus columnas
file-and-both-hold-choose-one-of = "{ $other }" y "{ $name }" contienen ambas { $holds }; elija una de ellas
file-choose-how-the-days-of-are = elija cómo se escriben los días de "{ $name }"
file-choose-the-unit-of-the-file = elija la unidad de "{ $name }"; el archivo no la dice
file-is-no-unit-known-for-choose = "{ $unit }" no es una unidad conocida para { $holds }; elija otra
file-day-and-time-stand-in-one = el día y la hora están en una sola columna, así que ninguna otra puede contener un día o una hora del día
file-choose-the-column-that-holds-the = elija la columna que contiene la hora del día
file-choose-the-column-that-holds-the-day = elija la columna que contiene el día
file-choose-the-column-that-holds-day = elija la columna que contiene el día y la hora
file-choose-at-least-one-column-of = elija al menos una columna del clima
file-is-no-way-to-write-a = "{ $unit }" no es una forma conocida de escribir un día; elija otra
file-it-has-and-the-header-has = { $count ->
        [one] tiene { $count } columna y el encabezado tiene { $columns }
       *[other] tiene { $count } columnas y el encabezado tiene { $columns }
    }
file-nothing-but-a-time-stands-in = no contiene nada más que una hora
file-no-day-and-time-stand-in = no contiene día ni hora
file-the-clock-is-put-forward-over = el reloj se adelanta sobre "{ $text }", así que esa hora no existe
file-between-full-hours-by-the-farms = { $count ->
        [one] se deja fuera { $count } línea entre horas completas según el reloj de la finca
       *[other] se dejan fuera { $count } líneas entre horas completas según el reloj de la finca
    }
file-the-hours-begin-minutes-past-the = las horas empiezan { $minute } minutos después de la hora según el reloj de la finca
file-there-is-an-hour-only-every = hay una hora solo cada { $usual } horas; las horas intermedias quedan sin conocer, y la lluvia puede ser la suma de las { $usual }
file-times-without-an-offset-are-taken = las horas sin desfase se toman como del reloj de la finca
file-999-and-the-like-are-taken = { $count ->
        [one] -999 y similares se toman como no conocidos, en { $count } celda
       *[other] -999 y similares se toman como no conocidos, en { $count } celdas
    }
file-the-clock-shows-twice-in-this = el reloj muestra las { $time } dos veces en esta noche, y nada dice cuál de las dos es; escriba ambas en orden, o con un desfase
file-its-hour-stands-on-line-already = su hora ya está en la línea { $before }

## file/ground/archive.rs

file-it-seems-to-be-a-packed = parece ser un archivo comprimido, pero { $what }
file-files-packed-in-it = archivos comprimidos en él
file-what-is-packed-in-the-file = lo que está comprimido en el archivo

## file/ground/crs.rs

file-there-is-no-prj-to-say = no hay un .prj que diga sobre qué están medidas las formas; sus números corresponden a longitud y latitud en WGS 84 y se toman así: vea el mapa antes de tomarlas
file-the-prj-cannot-be-read = el .prj "{ $text }" no se puede leer
file-the-shapes-are-measured-on = las formas están medidas sobre "{ $name }"
file-the-shapes-are-measured-on-not = las formas están medidas sobre "{ $name }", no en grados
file-the-longitudes-of-do-not-start = las longitudes de "{ $name }" no empiezan en Greenwich
file-is-no-longitude-and-latitude-and = { $x }, { $y } no es longitud y latitud, y no hay un .prj que diga qué es; guarde el archivo de nuevo en WGS 84 (EPSG:4326), o copie su .prj junto a él
file-lies-off-its-zone = { $x }, { $y } está fuera de su zona
file-the-shapes-are-measured-on-which = las formas están medidas sobre "{ $name }" ({ $datum }), que está hasta 1 a 2 m de WGS 84; se toman como están

## file/ground/dbf.rs

file-it-is-too-short = es demasiado corto
file-the-lengths-of-its-columns-do = las longitudes de sus columnas no corresponden a las de sus renglones
file-it-ends-after-of-rows = termina después de { $rows } de { $stated } renglones

## file/ground/found.rs

file-task-data-iso-11783-10 = datos de tarea (ISO 11783-10)
file-shapefile = shapefile
file-the-file-has-more-than-cut = el archivo tiene más de { $most } { $of }; recórtelo primero a los lotes de la finca
file-the-file-is-no-geojson-shapefile = el archivo no es GeoJSON, shapefile, KML ni datos de tarea; { $it }
file-save-it-anew-on-wgs-84 = { $it }; guárdelo de nuevo en WGS 84 (longitud y latitud, EPSG:4326) en el programa del que viene
file-is-larger-than-mb = { $what } pasa de { $mb } MB; recórtelo primero a los lotes de la finca
file-the-kind-cannot-be-read = el archivo ({ $kind }) no se puede leer: { $why }

## file/ground/gather.rs

file-latitude-and-longitude-stand-in-each = la latitud y la longitud están una en el lugar de la otra y se intercambian: { $why }
file-it-measures-ha-more-than-any = mide { $hectares } ha, más que cualquier lote; sus puntos pueden estar en otras unidades
file-it-measures-less-than-a-square = mide menos de un metro cuadrado
file-a-point-of-it-is-no = un punto suyo no es un número
file-a-line-of-it-has-no = una línea suya no tiene longitud

## file/ground/geojson.rs

file-it-is-not-saved-as-utf = no está guardado como UTF-8
file-one-that-is-not-named = uno que no tiene nombre
file-the-file-is-measured-on = el archivo está medido sobre "{ $name }"
file-feature = elemento { $number }
file-it-has-no-geometry = no tiene geometría
file-its-geometry-is-empty = su geometría está vacía
file-a-point-of-it-has-fewer = un punto suyo tiene menos de dos números
file-yes = sí
file-no = no

## file/ground/kml.rs

file-it-points-to-other-files-which = apunta a otros { $links } archivos, que no se examinan
file-placemark = marca de lugar { $number }
file-it-has-no-point-line-or = no tiene punto, línea ni polígono
file-a-polygon-has-no-outer-ring = un polígono no tiene anillo exterior
file-is-no-longitude-and-latitude = "{ $tuple }" no es longitud y latitud

## file/ground/limits.rs

file-pieces-of-ground = piezas de terreno
file-points = puntos

## file/ground/mod.rs

file-what-belongs-to-the-file = lo que pertenece al archivo
file-open-the-shp-that-it-belongs = abra el .shp al que pertenece
file-save-the-boundaries-as-one-of = guarde los linderos como uno de estos en el programa del que vienen
file-it-is-a-packed-file-with = es un archivo comprimido sin ninguno de estos dentro

## file/ground/shapefile.rs

file-it-ends-in-the-middle-of = termina a la mitad de su primera forma
file-it-has-no-shapes = no tiene formas
file-there-is-no-dbf-beside-so = no hay un .dbf junto a "{ $name }", así que sus formas no tienen nombres
file-the-dbf-beside-is-left-so = el .dbf junto a "{ $name }" se deja, así que sus formas no tienen nombres: { $why }
file-the-dbf-beside-has-rows-for = el .dbf junto a "{ $name }" tiene { $count } renglones para { $records } formas, así que sus nombres se dejan: nadie puede decir cuál pertenece a cuál
file-the-names-are-in-the-code = los nombres están en la página de códigos "{ $named }", que no se lee; puede haber letras equivocadas
file-record = registro { $number }
file-the-file-ends-in-the-middle = el archivo termina a la mitad de él
file-its-head-is-missing = falta su cabecera
file-record-records = registro { $records }
file-its-record-is-shorter-than-it = su registro es más corto de lo que dice
file-it-has-no-shape = no tiene forma
file-its-parts-do-not-fit-its = sus partes no corresponden a sus puntos
file-it-is-a-surface-in-space = es una superficie en el espacio, que no se lee
file-its-shape-is-of-a-kind = su forma es de un tipo que no existe: { $other }

## file/ground/take.rs

file-has-no-area-so-it-is = "{ $name }" no tiene superficie, así que no es un lote
file-the-farm-has-no-field = la finca no tiene el lote "{ $id }"
file-keeps-its-boundary = "{ $name }" conserva su lindero: { $why }
file-what-was-chosen-for-it-has = lo que se eligió para él no tiene superficie
file-is-no-point-so-it-is = "{ $name }" no es un punto, así que no es una entrada

## file/ground/taskdata.rs

file-it-names-a-file-xml-that = nombra un archivo "{ $name }.XML" que no está junto a él
file-partfield = lote { $fields }
file-it-has-no-boundary = no tiene lindero
file-a-ring-of-it-is-of = un anillo suyo es del tipo "{ $other }"
file-it-has-no-outer-ring = no tiene anillo exterior
file-points-and-lines-that-guide-machines = se dejan fuera { $count } puntos y líneas que guían máquinas
file-zones-headlands-and-main-fields = se dejan fuera { $count } zonas, cabeceras y lotes principales
file-polygon = polígono
file-line-drawn = línea
file-point = punto
file-is-no-latitude-or-longitude = "{ $text }" no es latitud ni longitud

## file/ground/write_taskdata.rs

file-the-farm-has-no-pass = la finca no tiene la aplicación "{ $pass }"
file-the-spray-volume-of-the-pass = el volumen de caldo de la aplicación no está anotado, así que no hay dosis que escribir
file-a-stop-stands-in-the-plan = hay un Alto en el plan de la aplicación; lo que no se puede aplicar no se manda a una terminal
file-the-pass-sprays-bands-and-the = la aplicación es en bandas, y la dosis es la de las bandas; una terminal que cuenta todo el ancho toma más
file-has-no-boundary-so-a-terminal = "{ $name }" no tiene lindero, así que una terminal no puede saber dónde está
file-spray-of = Caldo de { $pass }
file-spray = Caldo
file-is-cut-to-names-have-letters = "{ $name }" se recorta a "{ $fits }": los nombres tienen { $letters } letras en los datos de tarea

## file/ground/xml.rs

file-line = línea { $line }: { $error }
file-has-more-in-it-than-is = "{ $start }" contiene más de lo que se lee
file-line-more-than-elements-within-one = línea { $line }: más de { $depth } elementos uno dentro de otro
file-line-is-not-known = línea { $line }: "&{ $reference };" no se conoce
file-it-brings-entities-of-its-own = trae entidades propias, que no se leen
file-it-ends-in-the-middle = termina a la mitad
file-has-more-than-attributes = "{ $name }" tiene más de { $facts } atributos
file-in-element = en "{ $name }": { $error }

## file/lock.rs

file-on-process-since = { $user } en { $host } (proceso { $process }) desde { $since }
file-someone = alguien
file-has-this-farm-open = { $who } tiene abierta esta finca
file-had-this-farm-open-and-did = { $who } tenía abierta esta finca y no la cerró: { $why }
file-its-process-has-ended-as-after = su proceso terminó, como tras una falla o un corte de luz
file-no-sign-of-it-for-minutes = sin señales de él desde hace { $minutes } minutos, como tras una falla, un corte de luz o una conexión perdida

## file/names.rs

file-it-leads-off-this-machine-or = lleva fuera de esta máquina o a un dispositivo; copie la imagen junto a la finca
file-it-is-no-picture-by-its = por su terminación no es una imagen
file-not-there = no está ahí

## file/put.rs

file-it-is-no-ordinary-file = no es un archivo ordinario
file-what-was-written-does-not-read = lo que se escribió no se lee igual
file-it-leads-round-in-a-circle = da vueltas en círculo

## file/records_csv/enter.rs

file-line-looks-like-one-in-the = línea { $line }: "{ $id }" se parece a uno de la bitácora: { $own }

## file/records_csv/read.rs

file-the-file-has-more-than-rows = el archivo tiene más de { $rows } renglones; exporte los registros una temporada a la vez
file-the-file-is-not-in-utf = el archivo no está en UTF-8; guárdelo como "CSV UTF-8"
file-the-head-line-is-not-that = la línea de encabezado no es la de registros exportados
file-it-names-no-record = no nombra ningún registro
file-it-is-of-the-record-of = es del registro "{ $id }", del cual la línea { $first } no se puede leer
file-no-column-of-a-record-so = no es columna de un registro, así que no se lee: { $foreign }
file-it-has-columns-and-the-head = tiene { $cells } columnas y la línea de encabezado { $columns }
file-is-not-as-on-line-though = { $name } no es como en la línea { $line }, aunque ambas son de un mismo registro
file-is-typed-and-the-area-is = { $name } está anotado y la superficie no
file-is-not-as-on-the-row = { $name } no es como en el renglón anterior del mismo lote
file-some-rows-of-the-record-name = algunos renglones del registro nombran un lote y otros ninguno
file-its-field-has-other-products-than = su lote tiene otros productos que el primer lote del registro; cada uno tiene un renglón para todos ellos
file-name-is-not-as-on-line-line-though-both = { $name } no es como en la línea { $line }, aunque ambas son de un mismo producto
file-it-names-no-amount-though-its = no nombra ninguna cantidad, aunque su registro tiene varios renglones
file-is-where-the-share-by-area = { $name } es { $said } donde la parte por superficie es { $own }: un lote del registro no tiene renglón aquí, o se cambió un texto y no la cifra; vacíe la celda para tomar los textos como están
file-time-of-day-write-it-like = { $name }: "{ $text }" no es una hora del día; escríbala como 05:30
file-is-none-of-those-known = { $name }: "{ $text }" no es ninguno de los conocidos
file-date-the-day-is-missing = date: falta el día
file-left-went-is-typed-and-what = left_went está anotado y lo que sobró no
file-number-of-loads = { $name }: "{ $text }" no es un número de cargas
file-moment-write-it-like-2031-06 = { $name }: "{ $text }" no es un momento; escríbalo como 2031-06-12T09:40:00
file-area-it-is-missing = area: falta
file-is-typed-and-the-amount-is = { $name } está anotado y la cantidad no
file-restricted-is-neither-yes-nor-empty = restricted: "{ $other }" no es yes ni vacío
file-number-of-hours = { $name }: "{ $text }" no es un número de horas
file-number-of-days = { $name }: "{ $text }" no es un número de días
file-export-a-season-at-a-time = el archivo pasa de { $mb } MB; exporte los registros una temporada a la vez

## file/records_csv/read_days.rs

file-is-no-day = "{ $cell }" no es un día
file-a-spreadsheet-seems-to-have-rewritten = { $why }; parece que una hoja de cálculo reescribió las fechas; escríbala año-mes-día, como 2031-06-12, o exporte los registros otra vez y lea ese archivo
file-rewritten-dates = parece que una hoja de cálculo reescribió las fechas
file-rewritten-dates-month-first = parece que una hoja de cálculo reescribió las fechas; las que llevan diagonales se leen como mes/día/año, pues una de ellas solo puede serlo
file-rewritten-dates-day-first = parece que una hoja de cálculo reescribió las fechas; las que llevan diagonales se leen como día/mes/año, pues una de ellas solo puede serlo

## file/records_import/day.rs

file-may-be-one-of-two-days = "{ $cell }" puede ser uno de dos días
file-there-is-no-day = no hay día
file-may-be-a-day-as-the = "{ $cell }" puede ser un día como lo cuenta la hoja de cálculo; muestre la columna como fecha y exporte otra vez
file-short-years = los años de dos dígitos se leen como 2000 en adelante
file-day-month-year = día/mes/año
file-month-day-year = mes/día/año

## file/records_import/figure.rs

file-may-mean-or = "{ $cell }" puede significar { $one } o { $other }

## file/records_import/holds.rs

file-pass-or-mix = aplicación o mezcla
file-unit-of-the-area = unidad de la superficie
file-unit-of-the-rate = unidad de la dosis
file-unit-of-the-amount = unidad de la cantidad
file-spray-over-ground = caldo por superficie
file-spray-volume = volumen de caldo
file-boom-height = altura de la barra
file-wind-from = viento desde
file-weeds-or-pests = malezas o plagas
file-holds-day = día
file-holds-start = inicio
file-holds-end = fin
file-holds-field = lote
file-holds-area = superficie
file-holds-crop = cultivo
file-holds-variety = variedad
file-holds-stage = etapa
file-holds-parcel = parcela
file-holds-product = producto
file-holds-registration = registro oficial
file-holds-lot = partida
file-holds-rate = dosis
file-holds-amount = cantidad
file-holds-water = agua
file-holds-rig = aspersora
file-holds-nozzles = boquillas
file-holds-pressure = presión
file-holds-speed = velocidad
file-holds-operator = operador
file-holds-certificate = certificado
file-holds-supervisor = supervisor
file-holds-customer = cliente
file-holds-wind = viento
file-holds-gust = ráfaga
file-holds-temperature = temperatura
file-holds-humidity = humedad
file-holds-note = nota

## file/records_import/preview.rs

file-it-is-one-record-with-line = es un solo registro con la línea { $first }, que se deja fuera
file-speaks-of-a-rate-over-ground = "{ $heading }" habla de una dosis por superficie y se toma como la cantidad en todo el lote
file-choose-which-column-holds-the = elija qué columna contiene: { $holds }
file-choose-what-holds-the-amount-on = elija qué contiene "{ $heading }": la cantidad en todo el lote, o la dosis
file-choose-which-column-holds-the-amount = elija qué columna contiene la cantidad, o la dosis
file-choose-the-unit-of-heading-the-file-does-not = elija la unidad de "{ $heading }"; el archivo no la dice
file-choose-how-days-are-written-on = elija cómo se escriben los días: "{ $cell }" en la línea { $line } puede ser uno de dos
file-choose-how-figures-are-written-may = elija cómo se escriben las cifras: "{ $cell }" puede significar { $one } o { $other }
file-there-is-no-field = no hay lote
file-the-log-has-it-already-as = la bitácora ya lo tiene, como "{ $own }"
file-looks-like-one-in-the-log = se parece a uno de la bitácora: { $own }
file-there-is-no-product = no hay producto
file-there-is-no-amount-and-no = no hay cantidad, ni dosis con qué calcularla
file-products-of-the-shed-with-the = productos de la bodega, con los ingredientes activos que tienen ahora: { $names }
file-products-that-the-shed-does-not = productos que la bodega no tiene, guardados por nombre sin ingredientes activos: { $names }
file-fields-that-the-farm-does-not = lotes que la finca no tiene, guardados por nombre: { $names }
file-the-amount-is-more-than-5 = la cantidad difiere más de 5 % de dosis × superficie en { $lines }; se toma la cantidad
file-a-product-stands-again-in-the = un producto aparece otra vez en el mismo registro en { $lines }; se toman ambos
file-the-season-is-closed-and-of = { $count ->
        [one] la temporada { $year } está cerrada, y { $count } de los registros es de ella
       *[other] la temporada { $year } está cerrada, y { $count } de los registros son de ella
    }
file-and-more = { $first } y { $more } más
file-on-lines = { $count ->
        [one] la línea { $lines }
       *[other] las líneas { $lines }
    }
file-is-not-as-on-line-which = { $holds } no es como en la línea { $before }, que es del mismo día y lote; deles otros inicios o aplicaciones
file-amounts-are-reckoned = { $count ->
        [one] { $count } cantidad se calcula de la dosis
       *[other] { $count } cantidades se calculan de las dosis
    }
file-spray-volumes-are-reckoned = { $count ->
        [one] { $count } volumen de caldo se calcula por la superficie
       *[other] { $count } volúmenes de caldo se calculan por las superficies
    }
file-records-have-no-area = { $count ->
        [one] { $count } registro no tiene superficie; su superficie queda pendiente
       *[other] { $count } registros no tienen superficie; sus superficies quedan pendientes
    }

## file/records_import/row.rs

file-has-no-unit = { $holds } "{ $cell }" no tiene unidad
file-amount-may-be-fluid-ounces-or = la cantidad "{ $amount }" puede ser en onzas líquidas o de peso; elija fl oz u oz wt
file-the-rate-has-no-area-to = la dosis { $rate } no tiene superficie que la acompañe
file-the-rate-has-no-spray-volume = la dosis { $rate } no tiene volumen de caldo que la acompañe
file-the-rate-may-be-fluid-ounces = la dosis { $rate } puede ser en onzas líquidas o de peso; elija fl oz/ac u oz wt/ac
file-the-rate-is-of-an-active = la dosis { $rate } es de un ingrediente activo; hace falta la cantidad del producto

## file/records_import/scale.rs

file-to = { $least } a { $most }
file-the-figures-in-on-line-comes = las cifras de "{ $heading }" { $like ->
        [amounts-per-ground] parecen cantidades por acre o hectárea, no de lotes enteros
        [small-rates] parecen demasiado pequeñas para dosis
        [large-amounts] parecen demasiado grandes para cantidades
       *[amounts-of-fields] parecen cantidades de lotes enteros, no dosis
    }: { $name } en la línea { $line } da { $rate } donde la etiqueta tiene { $more ->
        [0] { $label }
       *[other] { $label }, y { $more } más
    }

## file/store.rs

file-the-farm-could-not-be-written = la finca no se pudo escribir como texto: { $it }
file-larger-than-a-farm = el archivo pasa de { $mb } MB, así que no es un archivo de finca: { $path }
file-changed-by-something-else = otro programa cambió el archivo desde que se abrió; guarde con otro nombre, o ábralo otra vez: { $path }
file-marked-read-only = el archivo está marcado como de solo lectura, así que se deja como está; quite la marca o guarde con otro nombre: { $path }
file-could-not-be-replaced = el archivo no se pudo reemplazar, y escribirlo en su lugar falló: { $source }; la finca completa está en { $copy }, así que conserve ese archivo: { $path }
file-farm-has-grown = la finca creció a más de { $mb } MB, que no se podrían abrir de nuevo, así que no se guarda; saque temporadas viejas, o guárdelas primero con otro nombre: { $path }
file-not-there-any-more = el archivo ya no está ahí: se movió o se eliminó, o se quitó la memoria o la unidad compartida en que está: { $path }
file-there-is-a-link = ya hay un archivo con este nombre que es un enlace a otro lugar, así que no se toca; elija otro nombre: { $path }
file-there-is-a-farm = ya hay un archivo con este nombre que es una finca, así que no se toca; elija otro nombre: { $path }
file-there-is-a-pdf = ya hay un archivo con este nombre que es un PDF, así que no se toca; elija otro nombre: { $path }
file-there-is-no-pdf = ya hay un archivo con este nombre que no es un PDF, así que no se toca; elija otro nombre: { $path }

## file/doing.rs

file-opening = abrir el archivo
file-reading = leer el archivo
file-writing = escribir el archivo
file-removing-a-link = quitar un enlace
file-following-the-link = seguir el enlace
file-making-a-new-file = crear un archivo nuevo
file-putting-the-new-file-in-place = poner el archivo nuevo en su lugar
file-setting-the-rights = fijar los permisos
file-flushing-to-disk = pasar al disco
file-making-a-copy = hacer una copia
file-making-a-folder-for-backups = crear una carpeta para copias de respaldo
file-keeping-a-backup = guardar una copia de respaldo
file-making-a-folder-for-unsaved-work = crear una carpeta para el trabajo sin guardar
file-writing-the-lock = escribir el candado
file-refreshing-the-lock = renovar el candado
file-looking-at-the-file-there = examinar el archivo que está ahí
file-failed = no se pudo { $doing }: { $source }: { $path }
file-failed-no-room = no se pudo { $doing }: { $source }; no hay espacio: libere un poco, o guarde con otro nombre en otro disco: { $path }
file-failed-may-not = no se pudo { $doing }: { $source }; ahí no se puede escribir nada: guarde con otro nombre en una carpeta propia: { $path }
file-failed-no-folder = no se pudo { $doing }: { $source }; la carpeta no está ahí: vuelva a poner la memoria o la unidad compartida en que está, o guarde con otro nombre: { $path }
file-failed-try-again = no se pudo { $doing }: { $source }; inténtelo otra vez, o guarde con otro nombre en otro disco: { $path }

## file/table/mod.rs

file-it-is-a-folder = es una carpeta
file-it-cannot-be-opened = no se puede abrir: { $why }
file-the-file-is-empty = el archivo está vacío
file-the-table-is-too-large = { $of ->
        [forecast] el archivo pasa de { $mb } MB, así que no es un pronóstico para una finca; recórtelo a los días que importan
       *[records] el archivo pasa de { $mb } MB, así que es más que una bitácora de la temporada; recórtelo a unas pocas temporadas a la vez
    }
file-more-lines-or-columns = el archivo tiene más de { $rows } líneas o { $columns } columnas; recórtelo a lo que importa
file-a-workbook-not-a-csv = el archivo es un libro de hojas de cálculo o un archivo comprimido, no un CSV; guarde la hoja como CSV y lea ese
file-not-text-so-no-csv = el archivo no es texto, así que no es un CSV
file-no-table-was-found = no se encontró ninguna tabla: no hay líneas con un día o una hora y dos o más columnas, separadas por comas, puntos y comas o tabuladores

## file/table/when.rs

file-is-no-day-written = { $order ->
        [year-first] "{ $cell }" no es un día escrito año-mes-día
        [dots] "{ $cell }" no es un día escrito día.mes.año
        [day-first] "{ $cell }" no es un día escrito día/mes/año
       *[month-first] "{ $cell }" no es un día escrito mes/día/año
    }
file-no-number-of-seconds = "{ $text }" no es un número de segundos
file-too-large-for-seconds = "{ $text }" es demasiado grande para segundos desde 1970
file-is-no-time = "{ $text }" no es una hora
file-no-day-in = no hay día en "{ $text }"
file-no-time-of-day-in = no hay hora del día en "{ $text }"
file-no-distance-from-utc = "{ $text }" no es una diferencia con UTC
file-the-end-of-the-day = "{ $text }" es el fin del día; escriba 00:00 o 23:59
file-no-time-of-day = "{ $text }" no es una hora del día
file-unit-fraction = fracción
file-unit-oktas = octas
file-unit-compass-point = punto cardinal
file-year-month-day = año-mes-día
file-day-dot-month-dot-year = día.mes.año
file-year-month-day-utc = año-mes-día, UTC
file-day-dot-month-dot-year-utc = día.mes.año, UTC
file-day-month-year-utc = día/mes/año, UTC
file-month-day-year-utc = mes/día/año, UTC
file-unix = segundos desde 1970
