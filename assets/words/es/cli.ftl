# La línea de comandos.

cli-about = Tankard: un programa que no necesita red, para la persona que decide qué va en la aspersora.
cli-about-plan = Muestra el plan con sus avisos
cli-about-day = Muestra las aplicaciones de cada día en el orden que menos cuesta, aspersora por aspersora
cli-about-cards = Escribe las tarjetas de carga como PDF
cli-about-evening = Escribe la hoja de la víspera como PDF: qué se aplica y cuándo, qué va en el camión, quién puede volver a entrar en qué lote
cli-about-jar = Muestra la prueba del frasco de la mezcla planeada, o escribe su hoja como PDF
cli-about-forecast = Lee un pronóstico por horas de un CSV en una copia de la finca; código de salida 0 escrito, 2 antes hay que elegir algo en la ventana, 3 ilegible
cli-about-needs = Muestra lo que las aplicaciones de un día y las siguientes toman de la bodega, qué falta y qué comprar
cli-about-review = Muestra lo que suman los registros de una temporada: superficie, productos, ingredientes activos, grupos, plan y práctica, costo, horas, evaluaciones
cli-about-records = Escribe los registros como CSV o JSON, o lee registros de un CSV en una copia de la finca; código de salida 0 hecho, 1 nada registrado o algunas líneas omitidas, 2 ningún registro tomado, 3 ilegible
cli-about-ground = Lista los linderos que contiene un archivo, con sus superficies y lo que se corrigió; código de salida 0 todos se pueden tomar, 1 algunos se rechazan, 2 todos se rechazan, 3 ilegible
cli-about-boundaries = Escribe los linderos de los lotes como GeoJSON, o una aplicación con sus lotes como datos de tarea para una terminal; código de salida 1 donde hay algo que saber o nada que escribir, 2 donde hay un Alto
cli-about-book = Escribe el libro de registros como PDF: cada registro con todo lo que contiene
cli-about-workers = Escribe como PDF las hojas sobre las aplicaciones que se exhiben para los trabajadores (40 CFR 170.311) y muestra lo que les falta; código de salida 1 donde falta algo
cli-about-check = Muestra todos los avisos, los de los planes y lo que está pendiente en los registros; código de salida 0 si no hay ninguno por encima de Nota, 1 si hay un Revisar, 2 si hay un Alto, 3 si el archivo es ilegible
cli-about-help = Muestra este mensaje o la ayuda de los comandos indicados

cli-help-open = La finca que se abre; sin ella la ventana pregunta por dónde empezar
cli-help-view = La vista que se muestra primero
cli-help-theme = Claro u oscuro
cli-help-language = El idioma: en o es
cli-help-scale = Escala en por ciento, de 80 a 200
cli-help-size = Tamaño de la ventana, por ejemplo 1366x768
cli-help-renderer = Qué modo de dibujo se prueba primero
cli-help-help = Muestra la ayuda
cli-help-version = Muestra la versión
cli-help-farm = La finca
cli-help-pass = Solo esta aplicación
cli-help-json-si = Como JSON, en unidades SI
cli-help-json = Como JSON
cli-help-json-review = Como JSON, en unidades SI y hectáreas
cli-help-one-day = Solo este día, por ejemplo 2031-06-12
cli-help-out-them = Dónde escribirlas
cli-help-out-it = Dónde escribirlo
cli-help-evening-date = El día, por ejemplo 2031-06-12; sin él, el próximo con una aplicación que no está registrada
cli-help-with-cards = Con las tarjetas de carga del día detrás
cli-help-jar = Cuánto caldo preparado cabe en el frasco; sin ello, el usual de la finca
cli-help-jar-out = Dónde escribir la hoja; necesita --pass donde la finca tiene varias aplicaciones
cli-help-forecast-from = El CSV, leído con el formato que la finca recuerda para su encabezado, o por lo que dicen sus títulos
cli-help-forecast-out = Dónde escribir la finca con el pronóstico; un archivo que ya existe no se toca
cli-help-needs-date = El día, por ejemplo 2031-06-12; sin él, el próximo con aplicaciones
cli-help-review-season = Solo esta temporada, un año civil como 2031; sin ello, todas
cli-help-review-out = Dónde escribirlo como PDF, con gráficas
cli-help-records-csv = Dónde escribirlos como CSV
cli-help-records-json = Dónde escribirlos como JSON
cli-help-records-season = Solo los de este año
cli-help-records-import = Un CSV con registros: una exportación, o una hoja de cálculo cuyos títulos dicen lo que contienen sus columnas
cli-help-records-out = Dónde escribir la finca con los registros; un archivo que ya existe no se toca
cli-help-ground-file = Los linderos: GeoJSON, un shapefile (.shp), KML o KMZ, datos de tarea (TASKDATA.XML), o estos en un .zip
cli-help-ground-out = Dónde escribir la finca con los linderos; un archivo que ya existe no se toca
cli-help-boundaries-out = Dónde escribirlos: .geojson o .json; con --pass .xml, o .zip como lo toman las terminales
cli-help-boundaries-pass = Como datos de tarea de esta aplicación (ISO 11783-10), con sus productos y su volumen de caldo
cli-help-book-by = En qué orden están los registros
cli-help-book-season = Solo los registros de este año
cli-help-one-a-page = Cada registro en una página propia
cli-help-workers-record = Solo este registro
cli-help-workers-season = Los registros de este año
cli-help-check-date = El día en que se ven los registros, por ejemplo 2031-06-12; sin él, hoy

cli-usage-heading = Uso:
cli-commands = Comandos
cli-command = COMANDO
cli-arguments = Argumentos
cli-options = Opciones
cli-values = { $help } [valores: { $values }]
cli-default = { $help } [si no se indica: { $value }]
cli-wrong = error: { $what }
cli-wrong-value = el valor "{ $value }" no sirve para { $name }
cli-wrong-value-one-of = el valor "{ $value }" no sirve para { $name }: debe ser uno de { $values }
cli-wrong-value-because = el valor "{ $value }" no sirve para { $name }: { $why }
cli-wrong-unknown = no se conoce el argumento "{ $name }"
cli-wrong-command = no se conoce el comando "{ $name }"
cli-wrong-missing = falta: { $names }
cli-wrong-together = { $name } no se puede usar junto con { $other }
cli-wrong-otherwise = no se entiende la línea de comandos
cli-more-help = Para saber más, pruebe --help.

cli-not-a-language = uno de { $known }
cli-not-a-day = "{ $text }" no es un día; escríbalo como 2031-06-12
cli-not-a-scale = { $text } no está entre 80 y 200
cli-not-a-year = "{ $text }" no es un año; escríbalo como 2031
cli-not-a-size = "{ $text }" no es un tamaño; escríbalo como 1366x768
cli-the-answer-could-not-be-written = no se pudo escribir la respuesta: { $error }
cli-no-such-pass = la finca no tiene la aplicación "{ $id }"; tiene { $known }
cli-no-such-pass-nor-another = la finca no tiene la aplicación "{ $id }"; no tiene ninguna
cli-no-pass-is-planned = No hay ninguna aplicación planeada.
cli-no-pass-is-planned-on = No hay ninguna aplicación planeada para el { $date }.
cli-the-label-and-local-law-govern = Rigen la etiqueta y la ley local; esto es un cálculo de lo que se anotó.
cli-no-card-without-a-pass = no hay ninguna aplicación planeada, así que no hay tarjeta que escribir
cli-no-card = no hay tarjeta que escribir
cli-cards-written = { $count ->
    [one] { $count } tarjeta escrita en { $path }
   *[other] { $count } tarjetas escritas en { $path }
}
cli-no-cards-for = { $count ->
    [one] no hay tarjetas para "{ $pass }": antes hay que resolver { $count } Alto
   *[other] no hay tarjetas para "{ $pass }": antes hay que resolver { $count } Altos
}
cli-no-pass-from = no hay ninguna aplicación planeada desde el { $today }; elija el día con --date
cli-no-sheet = para el { $day } no hay ninguna aplicación planeada que no esté registrada, así que no hay hoja que escribir
cli-sheet-written = hoja del { $day } escrita en { $path }
cli-sheet-with-cards-written = { $count ->
    [one] hoja del { $day } con { $count } tarjeta escrita en { $path }
   *[other] hoja del { $day } con { $count } tarjetas escrita en { $path }
}
cli-no-record-to-print = no hay registro que imprimir
cli-records-written = { $count ->
    [one] { $count } registro escrito en { $path }
   *[other] { $count } registros escritos en { $path }
}
cli-sheets-written = { $count ->
    [one] { $count } hoja escrita en { $path }
   *[other] { $count } hojas escritas en { $path }
}
cli-nothing-to-test = no hay ninguna aplicación planeada, así que no hay nada que probar
cli-a-sheet-is-of-one-pass = una hoja es de una aplicación; elíjala con --pass: { $known }
cli-jar-test-written = prueba del frasco escrita en { $path }
cli-no-jar-test = no hay prueba del frasco para "{ $pass }": { $problem }
cli-file-is-there = ya existe un archivo, así que no se toca; elija otro nombre: { $path }
cli-problem-with-file = { $problem }: { $path }
cli-line-left-out = la línea { $line } se omite: { $why }
cli-no-hour-taken = no se tomó ninguna hora; lea el archivo una vez en la ventana, donde se eligen sus columnas y se recuerdan
cli-hours-taken = horas tomadas: { $count }, finca escrita en { $path }
cli-no-review = no hay nada registrado de { $year }, así que no hay repaso que escribir
cli-no-review-at-all = no hay nada registrado de ninguna temporada, así que no hay repaso que escribir
cli-review-written = repaso de { $year } escrito en { $path }
cli-review-of-all-written = repaso de todas las temporadas escrito en { $path }
cli-window-could-not-be-opened = no se pudo abrir la ventana: { $problem }
cli-no-display = aquí no hay pantalla, así que la ventana no se puede abrir; se planea en la terminal

cli-nothing-recorded = no hay nada registrado, así que no hay nada que escribir
cli-nothing-recorded-in = no hay nada registrado en { $season }, así que no hay nada que escribir
cli-left-out-since-another = "{ $id }" se omite: la finca tiene otro registro con ese identificador
cli-records-there-already = { $count ->
    [one] { $count } registro ya está ahí, palabra por palabra
   *[other] { $count } registros ya están ahí, palabra por palabra
}
cli-no-record-taken = no se tomó ningún registro; en la ventana se muestra lo que contienen las columnas, y se puede corregir
cli-records-taken = registros tomados: { $count }, finca escrita en { $path }

cli-ground-taken = lotes nuevos: { $fields }, linderos de lotes: { $boundaries }, entre los lotes: { $surroundings }, finca escrita en { $path }
cli-ground-found = { $kind }: encontrados { $found }, rechazados { $refused }
cli-ground-note = nota: { $note }
cli-ground-new-field = un lote nuevo
cli-ground-boundary-of = el lindero de "{ $name }"
cli-ground-among = entre los lotes: { $kind }
cli-ground-gateway = un acceso a "{ $name }"
cli-ground-left-out = omitido
cli-ground-mended = corregido: { $mended }
cli-ground-refused = rechazado
cli-no-task-data = no hay datos de tarea de "{ $pass }": { $problem }
cli-task-data-written = datos de tarea de la aplicación escritos en { $path }
cli-boundaries-are-geojson = los linderos se escriben como .geojson; los datos de tarea son de una --pass: { $path }
cli-task-data-is-xml = los datos de tarea de una aplicación se escriben como .xml o .zip: { $path }
cli-no-boundary = ningún lote tiene lindero y no hay nada dibujado entre los lotes, así que no hay nada que escribir
cli-boundaries-written = { $count ->
    [one] { $count } lindero o elemento del entorno escrito en { $path }
   *[other] { $count } linderos y elementos del entorno escritos en { $path }
}
