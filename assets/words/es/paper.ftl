## paper/book.rs

paper-to = { $first } a { $last }
paper-see = { $date }, { $name }: vea { $first }
paper-no-field-written-down = Ningún lote anotado
paper-began = Comienzo
paper-ended = Final
paper-applicator = Aplicador
paper-certificate-number = Número de certificado
paper-weeds-or-pests = Malezas o plagas
paper-spray-volume = Volumen de caldo
paper-nozzle-height = altura de boquillas
paper-machine = Máquina
paper-droplets = Gotas
paper-supervised-by = Supervisado por
paper-also-worked-on-it = También trabajaron en ello
paper-copy-handed-over = copia entregada
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
paper-group = { " " }(grupo { $group })
paper-keep-out-h = no entrar { $hours } h
paper-harvest-after-days = cosecha después de { $days } días
paper-amended-by = Enmendado por { $by }, { $at }

## paper/lib.rs

paper-there-is-no-load-card-to = no hay tarjeta de carga que imprimir
paper-load-card-has-more-steps-and = la tarjeta de carga { $number } tiene más pasos y datos de los que caben en una página; acorte los nombres o divida la mezcla
paper-the-jar-test-holds-more-text = la prueba del frasco tiene más texto del que cabe en una página; acorte nombres, precauciones o el equipo de protección
paper-there-is-no-record-to-print = no hay registro que imprimir
paper-the-farm-has-no-record = la finca no tiene el registro "{ $id }"
paper-the-page-could-not-be-handed = la página no se pudo entregar al formato: { $it }
paper-the-page-could-not-be-laid = la página no se pudo componer: { $it }
paper-the-pages-could-not-be-written = las páginas no se pudieron escribir como PDF: { $it }

## paper/review/content.rs

paper-overview = Resumen
paper-products = Productos
paper-actives = Ingredientes activos
paper-resistance-groups = Grupos de resistencia
paper-adjuvants = Coadyuvantes
paper-planned-and-applied = Planeado y aplicado
paper-weather = Tiempo
paper-cost = Costo
paper-water-and-hours = Agua y horas
paper-outcomes = Resultados
paper-trials = Ensayos
paper-printed = impreso { $printed }
paper-what-the-records-of-the-farm = Lo que dan los registros de la finca, calculado de lo que se anotó en ellos. Lo que un registro no dice no está en ninguna suma, y junto a las sumas está cuántas veces es así.
paper-the-label-and-local-law-govern = Rigen la etiqueta y la ley local. El repaso dice lo que se registró y evaluó en esta finca; nunca dice por qué, y no es un registro que pida una ley.
paper-all-seasons = Todas las temporadas
paper-seasons = Temporadas { $one }
paper-season = Temporada { $one }

## paper/review/ground.rs

paper-treated = { $count }, { $figures } tratados
paper-ground-treated-season-by-season = Terreno tratado, temporada por temporada, { $ground }
paper-ground-treated-by-month = Terreno tratado por mes, { $newest }, { $ground }
paper-the-charts-have-the-newest-seasons = Las gráficas tienen las { $lines } temporadas más recientes; las tablas las tienen todas
paper-by-season = Por temporada
paper-at-least-once = por lo menos una vez
paper-ground-treated-since-january = Terreno tratado desde enero, { $ground }
paper-since-january = desde enero
paper-by-month = Por mes
paper-ground-treated-by-month-ground = Terreno tratado por mes, { $ground }
paper-amounts-over-ground = Cantidades sobre el terreno
paper-ground = Terreno
paper-amounts-over-ground-how-many-uses = Cantidades sobre el terreno: cuántos usos con qué desviación, por ciento
paper-how-many = cuántos
paper-most-too-little = lo que más faltó
paper-most-too-much = lo que más sobró
paper-errors-in-figures = Errores en cifras
paper-the-largest-errors-of-amounts-over = Los mayores errores de cantidades sobre el terreno
paper-which-ones-and-why-stands-on = Cuáles son, y por qué, está en la pantalla y en cada registro
paper-spray-by-water = Caldo por agua
paper-water-in-it = agua en ello
paper-without-a-volume = sin volumen
paper-not-known = no se sabe
paper-ground-in-it = terreno en ello
paper-in-an-hour = en una hora
paper-ground-in-all = terreno en total
paper-without-times = sin horas
paper-hours-by-rig = Horas por pulverizador

## paper/review/money.rs

paper-over-ground = sobre terreno
paper-went-out = salió
paper-bars = { $which ->
        [yes] Barras: costo. { $several_classes }
       *[no] Barras: terreno. { $several_classes }
    }
paper-treated-without-any = Tratado sin ninguno: { $figures }
paper-kind-of-product = tipo de producto
paper-adjuvant-class = clase de coadyuvante
paper-uses-without-a-price = usos sin precio
paper-cost-by = Costo por { $what }

## paper/review/products.rs

paper-bars-ground-treated = Barras: terreno tratado
paper-over-the-farms-ground = sobre el terreno de la finca
paper-bars-over-of-ground-that-can = Barras: sobre { $figures } de terreno que se puede aplicar, en todo el tiempo elegido; bajo cada ingrediente activo lo que salió en cada lote, y sobre el lote
paper-groups-by-field-and-season = Grupos ({ $kind }) por lote y temporada
paper-it-came-and-by-which-rule = se usó, y según qué regla es demasiado pronto
paper-where-a-group-came-again = Dónde se repitió un grupo ({ $kind })
paper-in-a-season = { $count } en una temporada
paper-season-in-a-row = temporada seguida
paper-seasons-in-a-row = temporadas seguidas
paper-application-in-a-row = aplicación seguida
paper-applications-in-a-row = aplicaciones seguidas
paper-asked-for-at-most = se piden como máximo { $asked }: { $basis }

## paper/review/ratings.rs

paper-record-is = registro está
paper-records-are = registros están
paper-rated = { $count } evaluados
paper-mean-with-the-interval-in-which = Media con el intervalo en que se halla al 95 %, y n, el número de lotes evaluados. Control: 100 % es todo muerto; daño: 0 % es ninguno. Una sola evaluación no tiene intervalo
paper-per-cent = { $of }, por ciento
paper-in-pairs-field-by-field-in = En pares, lote por lote en una temporada: { $text }.
paper-and-ratings-no-pairs = { $of }: { $n } y { $n2 } evaluaciones, sin pares
paper-all-ratings-without-pairs = Todas las evaluaciones, sin pares: { $text }.
paper-ratings-with-an-adjuvant-class-less = Evaluaciones con una clase de coadyuvante menos las sin él, puntos porcentuales: a la derecha de la línea se evaluó más alto
paper-comparison-has = comparación tiene
paper-comparisons-have = comparaciones tienen
paper-less-per-cent-points-right-of = { $one } menos { $other }, puntos porcentuales: a la derecha de la línea { $one } se evaluó más alto
paper-and = { $name } { $show } y { $show2 }
paper-one-pair = un par
paper-one-side = un lado
paper-other-side = otro lado
paper-the-pairs-mean-ratings-in-per = Los pares, evaluaciones medias en por ciento: un lado es { $one }, el otro { $other }

## paper/worker_protection.rs

paper-h-the-longest-of-the-products = { $hours } h, el más largo de los productos
paper-at-least-h-not-known-for = por lo menos { $hours } h; no se conoce para { $unknown }
paper-from-memory-check = { $day }, de memoria, verifique
paper-100-ft-from-the-sprayer-on = 100 ft desde el pulverizador, por todos lados
paper-25-ft-from-the-sprayer-on = 25 ft desde el pulverizador, por todos lados
paper-25-ft-from-the-sprayer-on-every-side-unless = 25 ft desde el pulverizador, por todos lados, a menos que las boquillas estuvieran a menos de 12 in del suelo
paper-not-known-for-this-method = no se conoce para este método
paper-not-known-without-the-droplet-class = no se conoce sin la clase de gota
