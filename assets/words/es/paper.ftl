## paper/book.rs

paper-planned = planeado { $value }
paper-expected-wind = viento { $wind }
paper-expected-gusts = ráfagas { $gusts }
paper-expected-from = del { $from }
paper-expected-air = aire { $air }
paper-expected-humidity = humedad { $humidity }
paper-photos = fotos { $photos }
paper-by-whom = por { $by }
paper-crop-code = código { $code }
paper-parcel = parcela { $parcel }
paper-lot = partida { $lot }
paper-price = precio { $price }
paper-it-is-nothing = nada
paper-to = { $first } a { $last }
paper-see = { $date }, { $name }: vea { $first }
paper-no-field-written-down = Ningún lote anotado
paper-began = Inicio
paper-ended = Fin
paper-applicator = Aplicador
paper-certificate-number = Número de certificado
paper-weeds-or-pests = Malezas o plagas
paper-spray-volume = Volumen de caldo
paper-nozzle-height = altura de boquillas { $height }
paper-machine = Máquina
paper-droplets = Gotas
paper-supervised-by = Supervisado por
paper-also-worked-on-it = También trabajaron en ello
paper-copy-handed-over = copia entregada el { $day }
paper-for = Para
paper-water = Agua
paper-loads = Cargas
paper-left-over = Sobrante
paper-cleaned-out = Limpieza
paper-forecast-kept = Pronóstico guardado
paper-record-made = Registro hecho
paper-note = Nota
paper-outcome = Resultado
paper-least-to-most = { $least } a { $most }
paper-control-of = control de { $weed }
paper-injury = daño, { $kind }
paper-active-of-group = { $name } (grupo { $group }) { $mass }
paper-keep-out-h = no entrar durante { $hours } h
paper-harvest-after-days = cosecha después de { $days } días
paper-amended-by = Enmendado por { $by }, { $at }

## paper/lib.rs

paper-a-preview-takes = una vista previa admite de { $least } a { $most } píxeles por punto, no { $asked }
paper-there-is-no-load-card-to = no hay tarjeta de carga que imprimir
paper-load-card-has-more-steps-and = la tarjeta de carga { $number } tiene más pasos y datos de los que caben en una página; acorte los nombres o divida la mezcla
paper-the-jar-test-holds-more-text = la prueba del frasco tiene más texto del que cabe en una página; acorte nombres, precauciones o el equipo de protección
paper-there-is-no-record-to-print = no hay registro que imprimir
paper-the-farm-has-no-record = la finca no tiene el registro "{ $id }"
paper-the-page-could-not-be-handed = la página no se pudo entregar al formato: { $it }
paper-the-page-could-not-be-laid = la página no se pudo componer: { $it }
paper-the-pages-could-not-be-written = las páginas no se pudieron escribir como PDF: { $it }

## paper/review/content.rs

paper-no-record-fits = Ningún registro corresponde a lo elegido.
paper-overview = Resumen
paper-products = Productos
paper-actives = Ingredientes activos
paper-resistance-groups = Grupos de resistencia
paper-adjuvants = Coadyuvantes
paper-planned-and-applied = Planeado y aplicado
paper-weather = Clima
paper-cost = Costo
paper-water-and-hours = Agua y horas
paper-outcomes = Resultados
paper-trials = Ensayos
paper-printed = impreso el { $printed }
paper-what-the-records-of-the-farm = Lo que dan los registros de la finca, calculado de lo que se anotó en ellos. Lo que un registro no dice no está en ninguna suma, y junto a las sumas está cuántas veces es así.
paper-the-label-and-local-law-govern = Rigen la etiqueta y la ley local. El repaso dice lo que se registró y evaluó en esta finca; nunca dice por qué, y no es un registro que pida una ley.
paper-all-seasons = Todas las temporadas
paper-seasons = Temporadas { $one }
paper-season = Temporada { $one }

## paper/review/ground.rs

paper-what-is-left-over = Sobrante: { $left }
paper-no-errors = ninguno
paper-mean = media
paper-median = mediana
paper-not-measured = No se midió: el viento en { $wind } de { $records } { $records ->
        [one] registro
       *[other] registros
    }, la temperatura del aire en { $temperature }, la humedad en { $humidity }.
paper-treated = { $count } { $count ->
        [one] aplicación
       *[other] aplicaciones
    }, tratado: { $figures }
paper-ground-treated-season-by-season = Superficie tratada, temporada por temporada, { $ground }
paper-ground-treated-by-month = Superficie tratada por mes, { $newest }, { $ground }
paper-the-charts-have-the-newest-seasons = Las gráficas tienen las { $lines } temporadas más recientes; las tablas las tienen todas
paper-by-season = Por temporada
paper-at-least-once = por lo menos una vez
paper-ground-treated-since-january = Superficie tratada desde enero, { $ground }
paper-since-january = desde enero
paper-by-month = Por mes
paper-ground-treated-by-month-ground = Superficie tratada por mes, { $ground }
paper-amounts-over-ground = Cantidades por superficie
paper-ground = Superficie
paper-amounts-over-ground-how-many-uses = Cantidades por superficie: cuántos usos con qué desviación, por ciento
paper-how-many = cuántos
paper-most-too-little = lo más que faltó
paper-most-too-much = lo más que sobró
paper-errors-in-figures = Errores en cifras
paper-the-largest-errors-of-amounts-over = Los mayores errores de cantidades por superficie
paper-which-ones-and-why-stands-on = Cuáles son, y por qué, está en la pantalla y en cada registro
paper-spray-by-water = Caldo por agua
paper-water-in-it = agua incluida
paper-without-a-volume = sin volumen
paper-not-known = no se sabe
paper-ground-in-it = superficie incluida
paper-in-an-hour = por hora
paper-ground-in-all = superficie en total
paper-without-times = sin horas
paper-hours-by-rig = Horas por aspersora

## paper/review/money.rs

paper-over-ground = por superficie
paper-went-out = salió
paper-bars-cost = Barras: costo. { $several_classes }
paper-bars-ground = Barras: superficie. { $several_classes }
paper-treated-without-any = Tratado sin ninguno: { $figures }
paper-kind-of-product = tipo de producto
paper-adjuvant-class = clase de coadyuvante
paper-uses-without-a-price = usos sin precio
paper-cost-by-field = Costo por lote
paper-cost-by-crop = Costo por cultivo
paper-cost-by-kind = Costo por tipo de producto
paper-cost-by-class = Costo por clase de coadyuvante

## paper/review/products.rs

paper-no-product-in-the-records = No hay ningún producto en los registros.
paper-no-active-in-the-records = Los registros no dicen cuánto ingrediente activo salió.
paper-triangle = triángulo
paper-no-group-came-again = Ningún grupo ({ $kind }) se repitió demasiado pronto en { $seasons }.
paper-bars-ground-treated = Barras: superficie tratada
paper-over-the-farms-ground = por la superficie de la finca
paper-bars-over-of-ground-that-can = Barras: por { $figures } de superficie que se puede aplicar, en todo el tiempo elegido; bajo cada ingrediente activo, lo que salió en cada lote y por la superficie del lote
paper-groups-by-field-and-season = Grupos ({ $kind }) por lote y temporada
paper-it-came-and-by-which-rule = se usó, y según qué regla es demasiado pronto
paper-where-a-group-came-again = Dónde se repitió un grupo ({ $kind })
paper-at-most-times-in-a-season = se pide como máximo { $most } { $most ->
        [one] vez
       *[other] veces
    } en una temporada: { $basis }
paper-at-most-seasons-in-a-row = se pide como máximo { $most } { $most ->
        [one] temporada seguida
       *[other] temporadas seguidas
    }: { $basis }
paper-at-most-applications-in-a-row = se pide como máximo { $most } { $most ->
        [one] aplicación seguida
       *[other] aplicaciones seguidas
    }: { $basis }

## paper/review/ratings.rs

paper-no-class-is-compared = No se compara ninguna clase de coadyuvante: nada se evaluó con una y sin ella en los mismos días después de una aplicación.
paper-no-trial-in-what-is-chosen = Ningún ensayo tiene terreno en lo elegido.
paper-one-against-other = { $one } frente a { $other }
paper-no-pair-is-rated = Todavía no hay ningún par evaluado en ambos lados: evalúe sus lotes en las páginas de sus registros.
paper-rated = { $count } { $count ->
        [one] registro está evaluado
       *[other] registros están evaluados
    }
paper-mean-with-the-interval-in-which = Media con el intervalo en que se halla al 95 %, y n, el número de lotes evaluados. Control: 100 % es todo muerto; daño: 0 % es ninguno. Una sola evaluación no tiene intervalo
paper-per-cent = { $of }, por ciento
paper-in-pairs-field-by-field-in = En pares, lote por lote en una temporada: { $text }.
paper-and-ratings-no-pairs = { $of }: { $n } y { $n2 } evaluaciones, sin pares
paper-all-ratings-without-pairs = Todas las evaluaciones, sin pares: { $text }.
paper-ratings-with-an-adjuvant-class-less = Evaluaciones con una clase de coadyuvante menos las sin él, puntos porcentuales: a la derecha de la línea se evaluó más alto
paper-of-pairs = { $of }: { $n } { $n ->
        [one] par
       *[other] pares
    }
paper-comparisons-have-too-few = { $n } { $n ->
        [one] comparación tiene
       *[other] comparaciones tienen
    } muy pocas para saber: menos de seis evaluaciones con o sin la clase, y menos de seis pares.
paper-less-per-cent-points-right-of = { $one } menos { $other }, puntos porcentuales: a la derecha de la línea { $one } se evaluó más alto
paper-and = { $name } { $show } y { $show2 }
paper-one-pair = un par
paper-one-side = un lado
paper-other-side = otro lado
paper-the-pairs-mean-ratings-in-per = Los pares, evaluaciones medias en por ciento: un lado es { $one }, el otro { $other }

## paper/worker_protection.rs

paper-no-entry-time = ninguno
paper-h-the-longest-of-the-products = { $hours } h, el más largo de los productos
paper-at-least-h-not-known-for = por lo menos { $hours } h; no se conoce para { $unknown }
paper-from-memory-check = { $day }, de memoria, verifique
paper-100-ft-from-the-sprayer-on = 100 ft desde la aspersora, por todos lados
paper-25-ft-from-the-sprayer-on = 25 ft desde la aspersora, por todos lados
paper-25-ft-from-the-sprayer-on-every-side-unless = 25 ft desde la aspersora, por todos lados, a menos que las boquillas estuvieran a menos de 12 in del suelo
paper-not-known-for-this-method = no se conoce para este método
paper-not-known-without-the-droplet-class = no se conoce sin la clase de gota

## paper/review/parts.rs

paper-column-season = temporada
paper-column-passes = aplicaciones
paper-column-treated = tratada
paper-column-month = mes
paper-column-error = error
paper-column-amounts = cantidades
paper-column-ground = superficie
paper-column-volume = volumen
paper-column-record = registro
paper-column-product = producto
paper-column-water = agua
paper-column-spray = caldo
paper-column-records = registros
paper-column-rig = aspersora
paper-column-time = tiempo
paper-column-class = clase
paper-column-products = productos
paper-column-cost = costo
paper-column-kind = tipo
paper-column-active = ingrediente activo
paper-column-field = lote
paper-column-crop = cultivo
paper-column-group = grupo
paper-column-rated = evaluado
paper-column-days = días
paper-column-pairs = pares
paper-column-difference = diferencia

## typst/record-book.typ

paper-record-book = Libro de registros
paper-it-was = era
paper-it-is = es
paper-head-field = Lote
paper-head-ground = Superficie
paper-head-crop = Cultivo
paper-head-stage = Etapa
paper-head-planted = Siembra
paper-head-location = Ubicación
paper-head-product = Producto
paper-head-registration = Número de registro
paper-head-amount = Cantidad
paper-head-rate = Dosis
paper-restricted-use = uso restringido
paper-head-weather-at = Clima a las
paper-head-wind = Viento
paper-head-from = Desde
paper-head-gust = Ráfaga
paper-head-air = Aire
paper-head-humidity = Humedad
paper-signed = Firmado
paper-book-governs = Rigen la etiqueta y la ley local; este libro contiene lo que se anotó y no decide lo que exige la ley.
paper-number = Número

## typst/worker-protection.typ

paper-application-information = Información de la aplicación
paper-date-of-the-application = Fecha de la aplicación
paper-area-treated = Área tratada
paper-crop-or-site = Cultivo o sitio
paper-location-and-description = Ubicación y descripción
paper-epa-registration-number = Número de registro de la EPA
paper-active-ingredients = Ingredientes activos
paper-restricted-entry = Entrada restringida
paper-restricted-entry-interval = Intervalo de entrada restringida
paper-nobody-enters-before = Nadie debe entrar antes de
paper-exclusion-zone = Zona de exclusión mientras se aplicaba:
paper-exclusion-zone-rule = 40 CFR 170.405(a)(1): 100 ft para gotas más finas que medianas, por vía aérea o con aspersora de aire forzado, y para fumigante, humo, niebla o neblina; 25 ft para gotas medianas o más gruesas desde más de 12 in sobre el suelo.
paper-display-until = Exhibir hasta
paper-keep-until = Conservar hasta
paper-safety-data-sheets = Las hojas de datos de seguridad de estos productos están exhibidas junto a esta hoja.
paper-display-both = Exhiba ambas dentro de las 24 horas siguientes al final de la aplicación y antes de que entren los trabajadores; 30 días después del intervalo de entrada restringida se pueden retirar, y se conservan dos años más (los dos años son de memoria, verifique 40 CFR 170.311(b)(6)).
paper-in-an-emergency = En una emergencia
paper-nearest-medical-facility = Centro médico de emergencia más cercano, su dirección y teléfono:
paper-workers-governs = Rigen la etiqueta y la ley local. Según 40 CFR 170.311(b); calculado de lo que se anotó.

## typst/season-review.typ

paper-season-review = Repaso de la temporada
paper-governs = Rigen la etiqueta y la ley local.

## typst/jar-test.typ

paper-jar-test = Prueba del frasco
paper-tick-what-you-see = Marque lo que vea
paper-tested-on = Probado el
paper-carrier-temperature = Temperatura del portador
paper-tested-by = Probado por
paper-signature = Firma
paper-remarks = Observaciones
paper-before = Antes
paper-then = Después
paper-open-when-printed = Pendiente cuando se imprimió
paper-wear = Equipo de protección
paper-cautions = Precauciones
paper-put-in-in-this-order = Agregue en este orden
paper-result = Resultado

## typst/evening-sheet.typ

paper-evening-sheet = Hoja de la víspera
paper-spraying-of-the-day = Aplicaciones del día
paper-the-next-load-begins = empieza la siguiente carga
paper-cleaning-out = limpieza
paper-road = camino
paper-hours = Horas
paper-by = Por
paper-before-it = Antes:
paper-limits = Límites:
paper-note-says = Nota:
paper-see-the-plan = Vea el plan.
paper-has-no-cards = No tiene tarjetas:
paper-harvest-not-before = No cosechar antes de
paper-beside-it = Al lado
paper-for-the-crew = Para la cuadrilla
paper-products-on-the-truck = Productos en el camión
paper-also-on-the-truck = También en el camión
paper-mind = Tenga cuidado
paper-no-strip-is-left = no se deja ninguna franja
paper-leave-unsprayed = Deje sin aplicar
paper-evening-governs = Rigen la etiqueta y la ley local. Esta hoja es un cálculo de lo que se anotó; los planes dicen lo que no se evalúa.

## typst

paper-page-of = Página { $page } de { $pages }
paper-printed-page-of = Impreso el { $printed } · Página { $page } de { $pages }
paper-printed-page = { $printed }, página { $page } de { $pages }
