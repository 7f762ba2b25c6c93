## desk/views/season_log/close.rs

season-log-close-season = Cerrar la temporada { $year }
season-log-leave-it-open = Dejarla abierta
season-log-records-passes-and-cards-stay-in = Los registros, las aplicaciones y las tarjetas se quedan en este archivo y pueden consultarse. Lo que se cultivó se guarda con la temporada; cada lote sigue con su próximo cultivo, y su etapa, variedad, siembra y cosecha deben anotarse de nuevo. La bodega y todos los ajustes quedan como están.
season-log-what-the-season-taught-in-words = Lo que enseñó la temporada, en palabras
season-log-what-the-season-taught = Lo que enseñó la temporada
season-log-season-is-closed-undo-opens-it = La temporada { $year } está cerrada; con deshacer se abre de nuevo
season-log-goes-on-with = sigue con
season-log-next-crop-on = Próximo cultivo en { $name }
season-log-not-decided = sin decidir

## desk/views/season_log/export.rs

season-log-import = Importar…
season-log-import-records = Importar registros…
season-log-export = Exportar…
season-log-csv-for-a-spreadsheet = CSV, para una hoja de cálculo…
season-log-json-for-a-machine = JSON, para una máquina…
season-log-pdf-record-book-by-field = PDF, libro de registros por lote…
season-log-pdf-record-book-by-date = PDF, libro de registros por fecha…
season-log-pdf-each-record-on-a-page = PDF, cada registro en una página…
season-log-export-what-the-list-shows = Exportar lo que muestra la lista…
season-log-the-records-were-not-saved = Los registros no se guardaron
season-log-saved-as = { $count ->
        [one] { $count } registro guardado como { $path }{ $since }
       *[other] { $count } registros guardados como { $path }{ $since }
    }

## desk/views/season_log/import.rs

season-log-the-records-were-not-read = Los registros no se leyeron
season-log-is-read = Se leyó { $source }
season-log-looking-at = Revisando { $source }
season-log-the-records-were-not-looked-at = Los registros no se revisaron
season-log-records-from = Registros de { $source }
season-log-the-rows-are-being-looked-at = Se están revisando los renglones…
season-log-look-at-the-rows-again = Revisar los renglones otra vez
season-log-look-at-all-rows = Revisar los { $rows } renglones
season-log-choose-first-what-is-asked = Elija primero lo que se pide
season-log-no-row-becomes-a-record = Ningún renglón llega a ser un registro
season-log-import-number = { $count ->
        [one] Importar { $count } registro
       *[other] Importar { $count } registros
    }
season-log-imported-from = { $count ->
        [one] { $count } registro importado de { $source }
       *[other] { $count } registros importados de { $source }
    }
season-log-leave-it = Dejarlo
season-log-leave-the-file = Dejar el archivo
season-log-in-a-file-of-exported-records = { $count ->
        [one] { $count } registro en un archivo de registros exportados, { $new } de ellos nuevos.
       *[other] { $count } registros en un archivo de registros exportados, { $new } de ellos nuevos.
    }
season-log-here-already-word-for-word-and = { $count ->
        [one] { $count } registro ya está aquí, palabra por palabra, y se omite.
       *[other] { $count } registros ya están aquí, palabra por palabra, y se omiten.
    }
season-log-the-id-of-a-record-here = { $count ->
        [one] { $count } tiene el identificador de un registro de aquí que dice otra cosa
       *[other] { $count } tienen el identificador de un registro de aquí que dice otra cosa
    }
season-log-take-these-as-new-records-beside = Tomarlos como registros nuevos junto a los que están aquí
season-log-line-left-out-is-another-record = Línea { $line }: omitida, "{ $id }" es otro registro aquí
season-log-and-more = y { $another } más
season-log-and-more-look-like-one-in = y { $alike } más se parecen a uno de la bitácora
season-log-the-first-of-rows-are-looked = Mientras usted elige se revisan los primeros { $first } de { $rows } renglones.
season-log-no-line-of-the-file-gives = Ninguna línea del archivo da un registro.
season-log-of-nothing-enters-the-log-before = { $records ->
        [one] { $records } registro
       *[other] { $records } registros
    } de { $lines ->
        [one] { $lines } línea
       *[other] { $lines } líneas
    }. Nada entra en la bitácora antes de que usted importe.
season-log-like-one-in-the-log-the = { $count ->
        [one] { $count } registro se parece a uno de la bitácora: el mismo día, lote y producto
       *[other] { $count } registros se parecen a uno de la bitácora: el mismo día, lote y producto
    }
season-log-take-records-that-look-like-one = Tomar de todos modos los registros que se parecen a uno de la bitácora
season-log-to-of = { $from } a { $last } de { $records }
season-log-those-before = Los anteriores
season-log-records-before-these = Registros anteriores a estos
season-log-those-after = Los siguientes
season-log-records-after-these = Registros posteriores a estos
season-log-what-the-columns-hold = Qué contienen las columnas
season-log-its-first-lines = sus primeras líneas
season-log-show-more-columns = { $count ->
        [one] Mostrar { $count } columna más
       *[other] Mostrar { $count } columnas más
    }
season-log-days-with-strokes = días con diagonales
season-log-not-said = no indicado
season-log-how-days-with-strokes-are-written = Cómo se escriben los días con diagonales
season-log-figures-are-written = las cifras se escriben
season-log-how-figures-are-written = Cómo se escriben las cifras
season-log-not-taken = no se toma
season-log-what-holds = Qué contiene "{ $heading }"
season-log-from-its-column = de su columna
season-log-choose = elija
season-log-as-written = como está escrito
season-log-unit-of = Unidad de "{ $heading }"

## desk/views/season_log/law.rs

season-log-still-open = aún pendiente: { $names }
season-log-the-plain-record-other-profiles-are = el registro simple; otros perfiles se eligen en la bodega, Registros
season-log-the-profiles-are-chosen-in-the = los perfiles se eligen en la bodega, Registros
season-log-no-chosen-profile-speaks-of-this = Ningún perfil elegido trata de este registro: no contiene ningún producto por el que pregunte alguno de ellos.
season-log-days-that-follow = Días que siguen
season-log-all-that-is-asked-for-is = Está todo lo que se pide.
season-log-in-the-shed-records = en la bodega, Registros; { $due }
season-log-of-are-there = Están { $there } de { $all }
season-log-from = Según: { $basis }
season-log-was-due-by = debía hacerse a más tardar el { $due }
season-log-due-by = a más tardar el { $due }
season-log-by-when-is-not-known-here = aquí no se sabe para cuándo

## desk/views/season_log/list.rs

season-log-still-open-9ef = aún pendiente
season-log-still-open-open = { $date }, { $name }, aún pendiente: { $open }

## desk/views/season_log/listed.rs

season-log-newest-season = temporada más reciente
season-log-all-seasons = todas las temporadas

## desk/views/season_log/mod.rs

season-log-trials = Ensayos
season-log-review = Repaso
season-log-season-so-far = Temporada { $year }, hasta ahora
season-log-season = Temporada { $year }
season-log-all-seasons-156 = Todas las temporadas
season-log-record-without-a-plan = Registro sin plan
season-log-the-records-found-below-are-offered = los registros encontrados abajo se ofrecen para pares
season-log-not-counting-without-a-volume = { $count ->
        [one] { $count } aplicación en { $area } · { $volume } de caldo, sin contar { $without } sin volumen
       *[other] { $count } aplicaciones en { $area } · { $volume } de caldo, sin contar { $without } sin volumen
    }
season-log-sprayed-of-spray = { $count ->
        [one] { $count } aplicación en { $area } · { $volume } de caldo
       *[other] { $count } aplicaciones en { $area } · { $volume } de caldo
    }
season-log-find-a-field-crop-product-or = busque un lote, cultivo, producto o persona…
season-log-find-records = Buscar registros
season-log-season-c78 = Temporada
season-log-of-records = { $rows } de { $of } registros
season-log-records = { $count ->
        [one] { $count } registro
       *[other] { $count } registros
    }
season-log-clear = Borrar
season-log-show-all-records = Mostrar todos los registros
season-log-closed-on = cerrada el { $day }
season-log-close-the-season = Cerrar la temporada…
season-log-nothing-is-recorded-yet-plan-a = Aún no hay nada registrado. Planee una aplicación en Cargas de tanque y regístrela ahí cuando esté aplicada, o registre una sin plan.
season-log-nothing-is-recorded-in = No hay nada registrado en { $year }.
season-log-no-record-holds = Ningún registro contiene "{ $filter }".
season-log-page-records = Registros

## desk/views/season_log/page/day.rs

season-log-date = Fecha
season-log-start = Inicio
season-log-end = Fin
season-log-start-now = Inicio ahora
season-log-end-now = Fin ahora
season-log-operator = Operador
season-log-certificate = Certificado
season-log-rig = Aspersora
season-log-supervisor-and-helpers = Supervisor y ayudantes
season-log-supervisor = Supervisor
season-log-helpers = Ayudantes
season-log-mixed-and-loaded = mezcló y cargó
season-log-now = Ahora

## desk/views/season_log/page/fields.rs

season-log-fields = Lotes
season-log-in-all = { $area } en total
season-log-stage-on = Etapa en { $name }
season-log-crop-on = Cultivo en { $name }
season-log-area-of = Superficie de { $name }
season-log-add-a-field = Agregar un lote…
season-log-ground-of-somebody-else = Terreno de otra persona
season-log-new-ground = Terreno nuevo
season-log-not-in-the-plan = no está en el plan
season-log-of = { $what } de { $name }
season-log-name = Nombre
season-log-part = Parte
season-log-spot-north-strip = manchón, franja norte
season-log-planted = Siembra
season-log-crop-code = Código del cultivo
season-log-variety = Variedad
season-log-location = Ubicación
season-log-county-section-or-latitude-and-longitude = condado, sección, o latitud y longitud
season-log-parcel = Parcela
season-log-its-reference-in-the-aid-claim = su referencia en la solicitud de apoyo
season-log-another-area-than-planned-the-amounts = Otra superficie que la planeada: las cantidades, tal como están, se reparten sobre { $area }.
season-log-another-area-and-rate = Otra superficie que la planeada: las cantidades, tal como están, se reparten sobre { $area }, { $rate } de caldo.
season-log-scale-the-amounts-to-the-area = Ajustar las cantidades a la superficie

## desk/views/season_log/page/lines.rs

season-log-products = Productos
season-log-lot-words = partida { $lot }
season-log-amount-of = Cantidad de { $name }
season-log-product = Producto
season-log-more-about = Más sobre { $name }
season-log-amount-in-all = cantidad en total
season-log-over-ground = por superficie
season-log-planned-and-not-recorded-of = planeado y no registrado: { $amount } de { $name }
season-log-add-a-product = Agregar un producto…
season-log-lot = Partida
season-log-as-on-the-container = como en el envase
season-log-price = Precio
season-log-registration = Registro oficial
season-log-restricted = Restringido
season-log-certified-use-only = solo uso certificado
season-log-restricted-use = Uso restringido
season-log-yes-certified-use-only = sí, solo uso certificado
season-log-no = no
season-log-re-entry-h = Reingreso, h
season-log-hours-before-re-entry = Horas antes del reingreso
season-log-harvest-d = Cosecha, d
season-log-days-before-harvest = Días antes de la cosecha

## desk/views/season_log/page/machine.rs

season-log-spray = Caldo
season-log-loads-used = Cargas usadas
season-log-spray-volume = Volumen de caldo
season-log-left-over = Sobrante
season-log-water = Agua
season-log-it-went = Se destinó
season-log-as-the-label-and-the-law = como lo permiten la etiqueta y la ley
season-log-where-it-went = A dónde se destinó
season-log-usual-answers = respuestas usuales
season-log-on-the-ground = = { $rate } sobre el terreno
season-log-loads-in-the-plan = { $planned } cargas en el plan
season-log-mixed-in-from-that-of-spray = { $mixed } mezclados en { $all ->
        [yes] las cargas
       *[no] { $loads } de { $of } cargas
    }{ $scaled ->
        [yes] , ajustado a la superficie
       *[no] { "" }
    }{ $less ->
        [yes] , menos { $left } sobrantes son { $out }
       *[no] { "" }
    }{ $over ->
        [yes] , { $rate } sobre el terreno
       *[no] { "" }
    }. De ahí: { $out } de caldo{ $product ->
        [yes] { " " }y { $products }
       *[no] { "" }
    }.{ $stays ->
        [yes] { " " }Lo que se anotó de { $kept } queda como está.
       *[no] { "" }
    }
season-log-so-much-of = { $amount } de { $name }
season-log-take-the-amounts-from-that = Tomar las cantidades de ahí
season-log-droplets = gotas { $class }
season-log-not-typed = no anotado
season-log-machine = Máquina
season-log-method = Método
season-log-ground-boom = barra terrestre
season-log-nozzles = Boquillas
season-log-pressure = Presión
season-log-speed = Velocidad
season-log-boom-height = Altura de la barra
season-log-droplets-446 = Gotas
season-log-droplets-by-the-plan = gotas según el plan: { $classes }
season-log-cleaned-out = Limpieza
season-log-before-and-after-such-as-triple = antes y después, como triple lavado
season-log-how-it-was-cleaned-out = Cómo se limpió
season-log-kept-in-the-tank = se dejó en el tanque para la próxima aplicación
season-log-thinned-and-sprayed-out = diluido y aplicado en el lote
season-log-kept-in-a-marked-container = se dejó en un envase marcado
season-log-taken-back-to-the-collecting-tank = devuelto al tanque colector
season-log-e-g-3 = p. ej. 3

## desk/views/season_log/page/mod.rs

season-log-note = Nota
season-log-kept-for = Se conserva para
season-log-signature = Firma
season-log-the-record-of-is-removed-undo = El registro de { $name } está eliminado; con deshacer vuelve
season-log-close = Cerrar
season-log-close-the-record = Cerrar el registro
season-log-remove = Eliminar…
season-log-remove-the-record = Eliminar el registro…
season-log-show-its-plan = Mostrar su plan
season-log-for-workers = Para los trabajadores…
season-log-sheet-for-workers = Hoja para los trabajadores…
season-log-what-is-displayed-for-workers-after = Lo que se exhibe para los trabajadores después de una aplicación, como PDF
season-log-name-of-the-pass = Nombre de la aplicación
season-log-remove-it = Eliminarlo
season-log-keep-it = Conservarlo
season-log-as-it-was-sprayed = Como se aplicó: { $count }
season-log-as-it-was-sprayed-c2b = Como se aplicó
season-log-findings = { $count } avisos:

## desk/views/season_log/page/outcomes.rs

season-log-control-of-a-weed = control de una maleza
season-log-injury-of-the-crop = daño al cultivo
season-log-photo-or-note-alone = solo foto o nota
season-log-outcomes = Resultados
season-log-how-the-weeds-died-and-how = cómo murieron las malezas y cómo lo soportó el cultivo
season-log-add-a-rating = Agregar una evaluación
season-log-add-a-photo-or-note = Agregar una foto o nota
season-log-injury = daño: { $words }
season-log-photo = foto
season-log-look-number = observación { $number }
season-log-ends-of-a-rating = : 0 % es ningún efecto, 100 % todo muerto
season-log-rating-number = Evaluación { $number }
season-log-look-words = Observación { $number }: { $words }
season-log-photos = { $count ->
        [one] { $what } · { $count } foto
       *[other] { $what } · { $count } fotos
    }
season-log-choose-a-field = elija un lote
season-log-field-d07 = Lote
season-log-field-looked-at = Lote observado
season-log-day = Día
season-log-day-of-the-look = Día de la observación
season-log-weed = Maleza
season-log-injury-d86 = Daño
season-log-rated = Evaluado
season-log-what-is-rated = Qué se evalúa
season-log-burn-stunting = quemadura, achaparramiento
season-log-looked = Observó
season-log-who-looked = Quién observó
season-log-note-on-the-look = Nota sobre la observación
season-log-leaf-burn = quemadura de hojas
season-log-leaf-cupping = acopamiento de hojas
season-log-stand-loss = pérdida de plantas
season-log-photo-of-a-look = foto { $number }
season-log-no-program-shows-pictures = Ningún programa para mostrar imágenes respondió: { $path }
season-log-open-photo = Abrir la foto { $number }
season-log-open = Abrir
season-log-path-of-a-photo = ruta, como fotos/molino-14-dias.jpg
season-log-photo-number = Foto { $number }
season-log-photos-label = Fotos
season-log-bleaching = blanqueamiento
season-log-stunting = achaparramiento
season-log-waterhemp = quelite
season-log-add-a-photo = Agregar una foto

## desk/views/season_log/page/rest.rs

season-log-weeds = Malezas
season-log-weeds-apart-by-commas = Malezas, separadas por comas
season-log-waterhemp-velvetleaf = quelite, abutilón
season-log-copy-handed-over-on = { $name } · copia entregada el { $day }
season-log-customer = Cliente
season-log-a-neighbour = un vecino
season-log-telephone = Teléfono
season-log-telephone-of-the-customer = Teléfono del cliente
season-log-address = Domicilio
season-log-address-of-the-customer = Domicilio del cliente
season-log-copy-given = Copia entregada
season-log-copy-handed-over-on-6b3 = Copia entregada el
season-log-not-yet = aún no

## desk/views/season_log/page/rows.rs

season-log-as-planned = como se planeó
season-log-planned = planeado { $planned }, { $sign }{ $ratio } %
season-log-planned-planned = planeado { $planned }
season-log-remove-01d = Quitar
season-log-remove-what = Quitar { $what }
season-log-typed-before = anotado antes

## desk/views/season_log/page/weather.rs

season-log-weather = Clima
season-log-measured-at-the-boom-and-beside = medido a la altura de la barra, y al lado lo que se esperaba
season-log-up-to = hasta { $gust }
season-log-limit = límite: { $texts }
season-log-wind = Viento
season-log-gust = Ráfaga
season-log-wind-from = Viento desde
season-log-such-as-nw = como NW
season-log-from-where-it-blows-such-as = De dónde sopla, como NW
season-log-temperature = Temperatura
season-log-humidity = Humedad
season-log-forecast = Pronóstico: { $source }
season-log-show-the-forecast-for-these-hours = Mostrar el pronóstico de estas horas
season-log-add-a-reading = Agregar una lectura
season-log-reading-number = lectura { $number }
season-log-of-reading = { $what }, lectura { $number }
season-log-time-of-reading = Hora de la lectura { $number }

## desk/views/season_log/print.rs

season-log-the-record-book-was-not-saved = El libro de registros no se guardó
season-log-record-laid-out = registro compuesto
season-log-records-laid-out = registros compuestos
season-log-the-record-book-of-is-saved = { $count ->
        [one] El libro de registros con { $count } registro está guardado como { $path }{ $since }
       *[other] El libro de registros con { $count } registros está guardado como { $path }{ $since }
    }
season-log-the-sheet-for-workers-was-not = La hoja para los trabajadores no se guardó
season-log-the-sheet-for-workers-is-saved = La hoja para los trabajadores está guardada como { $path }{ $since }
season-log-with-blanks-to-fill-in = La hoja para los trabajadores está guardada como { $path }{ $since }, con espacios por llenar: { $missing }

## desk/views/season_log/recording.rs

season-log-record-what-is-left-of-it = Registrar lo que queda
season-log-record-it-again = Registrarla otra vez
season-log-choose-the-pass-first = Elija la aplicación en Cargas de tanque y luego regístrela.
season-log-record-as-sprayed = Registrar como se aplicó
season-log-some-of-it = Una parte…
season-log-what-is-left-of-it = Lo que queda: { $area }
season-log-all-of-it-again-as-a = Todo otra vez, como segunda aplicación
season-log-load = Carga { $load }
season-log-record-these-loads = Registrar estas cargas
season-log-the-pass-has-no-ground-or = La aplicación no tiene terreno ni producto que se pudiera calcular, así que aún no hay nada que registrar
season-log-numbers-of-all = { $numbers } de { $all }
season-log-what-was-left-of-is-recorded = Lo que quedaba de { $name } está registrado; anote lo que fue distinto
season-log-of-recorded-type-what-differed = { $numbers } de { $name }: registrado; anote lo que fue distinto
season-log-is-recorded-a-second-time-type = { $name } está registrada por segunda vez; anote lo que fue distinto, o deshaga
season-log-is-recorded-type-what-differed = { $name } está registrada; anote lo que fue distinto
season-log-not-reckoned-so-not-in-the = { $words }. Sin calcular, y por eso no está en el registro: { $left_out }
season-log-the-day-is-as-planned-and = { $words }. El día es el planeado, { $date }, y aún no llega; corríjalo si fue otro
season-log-pass-without-a-plan = Aplicación sin plan
season-log-a-record-is-begun-type-what = Se empezó un registro; anote lo que se aplicó
season-log-load-one = Carga { $one }
season-log-loads-to = Cargas { $first } a { $last }
season-log-loads = Cargas { $numbers }

## desk/views/season_log/review/adjuvants.rs

season-log-classes-by-ground-treated = Clases por superficie tratada
season-log-without-any = Sin ninguno
season-log-ground-treated-by-adjuvant-class = Superficie tratada por clase de coadyuvante
season-log-hatched-with-none = { $several_classes }; rayado: sin ninguno
season-log-use-and-cost = Uso y costo
season-log-went-out = se aplicó

## desk/views/season_log/review/cost.rs

season-log-kind-of-product = tipo de producto
season-log-adjuvant-class = clase de coadyuvante
season-log-cost-by = Costo por
season-log-nothing-is-known-by = No se sabe nada por { $by }.
season-log-cost-by-by = Costo por { $by }
season-log-the-highest-cost = el costo más alto
season-log-cost-by-in-figures = Costo por { $by }, en cifras
season-log-uses-without-a-price = usos sin precio
season-log-cost = Costo

## desk/views/season_log/review/groups.rs

season-log-kind-of-product-73b = Tipo de producto
season-log-groups-by-field-and-season = Grupos ({ $kind }) por lote y temporada
season-log-triangle = triángulo
season-log-where-a-group-came-again = Dónde se repitió un grupo
season-log-came-again = { $words } se repitió
season-log-to = { $from } a { $to }
season-log-no-group-came-again-too-soon = Ningún grupo se repitió demasiado pronto en { $when }.
season-log-it-came = se usó
season-log-asked-for-at-most = se pide a lo más
season-log-who-says-so = quién lo dice

## desk/views/season_log/review/laid.rs

season-log-laying-out-the-records = Preparando los registros para el repaso
season-log-the-records-were-not-laid-out = Los registros no se prepararon para el repaso
season-log-the-records-are-being-laid-out = Se están preparando los registros…
season-log-lay-out-the-records = Preparar los registros

## desk/views/season_log/review/mod.rs

season-log-overview = Resumen
season-log-products-and-actives = Productos y activos
season-log-resistance-groups = Grupos de resistencia
season-log-adjuvants = Coadyuvantes
season-log-planned-and-applied = Planeado y aplicado
season-log-water-and-hours = Agua y horas
season-log-no-record-fits-what-is-chosen = Ningún registro corresponde a lo elegido. Elija otras temporadas, otro lote u otro cultivo.
season-log-from-season = De la temporada
season-log-to-season = A la temporada
season-log-all-fields = todos los lotes
season-log-crop = Cultivo
season-log-all-crops = todos los cultivos
season-log-the-chart-has-the-with-of = La gráfica tiene los { $shown } con { $by } de { $all }; la tabla los tiene todos
season-log-no-record-has-a-product = Ninguno de estos registros tiene un producto.

## desk/views/season_log/review/outcomes.rs

season-log-no-adjuvant = sin coadyuvante
season-log-days = Días
season-log-count-rated = { $count ->
        [one] { $count } registro está evaluado
       *[other] { $count } registros están evaluados
    }
season-log-by-adjuvants-in-the-tank = { $chosen }, { $days }, por coadyuvantes en el tanque
season-log-in-figures = { $chosen } en cifras
season-log-by-adjuvants = { $of }, { $days }, por coadyuvantes
season-log-100-is-all-dead = 100 % es todo muerto
season-log-0-is-no-injury = 0 % es ningún daño
season-log-mean-with-the-interval-in-which = Media con el intervalo en que se encuentra al 95 %, y n, el número de lotes evaluados; { $means }. Una sola evaluación no tiene intervalo
season-log-95-interval = intervalo al 95 %
season-log-ratings = Evaluaciones
season-log-one-rating = una evaluación
season-log-two-choices-compared = Comparación de dos opciones
season-log-compare = Comparar
season-log-compare-with = Comparar con
season-log-both-and-on-neither-side = { $count ->
        [one] { $count } registro tiene ambos y no está en ningún lado
       *[other] { $count } registros tienen ambos y no están en ningún lado
    }
season-log-nothing-was-rated-with-both-in = No se evaluó nada con ambos en los mismos días después de una aplicación.
season-log-in-pairs-field-by-field-in = En pares, lote por lote en una temporada
season-log-all-ratings-without-pairs = Todas las evaluaciones, sin pares
season-log-and-records-no-pairs = { $one } y { $other } registros, sin pares
season-log-less = { $one } menos { $other }
season-log-in-per-cent-points-right-of = { $name }, en puntos porcentuales: a la derecha de la línea { $one } tuvo la evaluación más alta
season-log-per-cent-points = puntos porcentuales
season-log-difference-in-pairs = diferencia en pares
season-log-difference-of-all = diferencia de todos
season-log-not-told = no se distingue
season-log-differences = Diferencias
season-log-and = { $one } y { $other }
season-log-the-pairs-mean-ratings-in-per = Los pares, evaluaciones medias en por ciento
season-log-field-and-season = lote y temporada
season-log-pairs = Pares
season-log-count-pairs = { $count ->
        [one] { $count } par
       *[other] { $count } pares
    }

## desk/views/season_log/review/overview.rs

season-log-treated = { $count ->
        [one] { $count } aplicación, tratado: { $figures }
       *[other] { $count } aplicaciones, tratado: { $figures }
    }
season-log-ground-treated-season-by-season = Superficie tratada, temporada por temporada
season-log-ground-treated-by-season = Superficie tratada por temporada
season-log-ground-treated-by-month = Superficie tratada por mes, { $newest }
season-log-ground-treated-since-january = Superficie tratada desde enero
season-log-by-season = Por temporada
season-log-at-least-once = por lo menos una vez
season-log-by-month = Por mes
season-log-since-january = desde enero
season-log-ground-treated-by-month-in = Superficie tratada por mes en { $year }
season-log-ground-treated-since-january-season-by = Superficie tratada desde enero, temporada por temporada
season-log-the-chart-has-the-newest-seasons = La gráfica tiene las { $lines } temporadas más recientes; las tablas las tienen todas

## desk/views/season_log/review/paper.rs

season-log-review-as-pdf = Repaso como PDF…
season-log-the-review-was-not-written-it = El repaso no se escribió: ya no se sabe de qué temporadas se trataba; elíjalo otra vez
season-log-the-review-was-not-written = El repaso no se escribió
season-log-the-review-is-written-to = El repaso está escrito en { $path }{ $since }

## desk/views/season_log/review/planned.rs

season-log-amounts-over-ground = Cantidades por superficie
season-log-ground = Superficie
season-log-the-largest-errors-of-amounts-over = Los mayores errores de cantidades por superficie
season-log-the-largest-errors = Los mayores errores
season-log-a-click-leads-to-the-record = Un clic lleva al registro
season-log-how-often-so-far-off-per = { $name }: con qué frecuencia hubo tal error, por ciento
season-log-errors-in-per-cent = Errores en por ciento: { $name }
season-log-errors-in-figures = Errores en cifras
season-log-how-many = cuántos
season-log-most-too-little = lo más que faltó
season-log-most-too-much = lo más que sobró

## desk/views/season_log/review/products.rs

season-log-products-by-ground-treated = Productos por superficie tratada
season-log-actives-over-the-ground-of-the = Ingredientes activos por la superficie de la finca
season-log-actives = Ingredientes activos
season-log-an-active-field-by-field = Un ingrediente activo, lote por lote
season-log-ground-treated-by-product = Superficie tratada por producto
season-log-most-ground = más superficie
season-log-most = más
season-log-over-of-ground-that-can-be = Por { $ground } de superficie que se puede aplicar, en todo el tiempo elegido
season-log-over-the-farms-ground = por la superficie de la finca
season-log-not-known = no se sabe
season-log-active = Ingrediente activo
season-log-over-the-field = por el lote
season-log-by-field = { $name } por lote

## desk/views/season_log/review/table.rs

season-log-name-count-of-headings = { $count ->
        [one] { $name }: { $count } renglón de { $headings }
       *[other] { $name }: { $count } renglones de { $headings }
    }

## desk/views/season_log/review/trials.rs

season-log-no-trial-is-laid-out-yet = Aún no hay ningún ensayo trazado. Un ensayo compara dos tratamientos, par por par.
season-log-all-trials-of-the-farm-whatever = Todos los ensayos de la finca, sin importar lo elegido arriba
season-log-against = { $one } frente a { $other }
season-log-no-pair-is-rated-on-both = Ningún par está evaluado todavía en ambos lados: evalúe sus lotes en las páginas de sus registros.

## desk/views/season_log/review/weather.rs

season-log-of-held-against-labels-laws-and = { $count ->
        [one] { $judged } de { $count } registro comparado hasta ahora con etiquetas, leyes y práctica: { $of_label_or_law } fuera de una etiqueta o una ley, { $of_practice } solo fuera de la práctica
       *[other] { $judged } de { $count } registros comparados hasta ahora con etiquetas, leyes y práctica: { $of_label_or_law } fuera de una etiqueta o una ley, { $of_practice } solo fuera de la práctica
    }
season-log-not-measured = Sin medir
season-log-records-without-it = registros sin ello
season-log-air-temperature = temperatura del aire
season-log-n-of-of = { $n } de { $of }
season-log-outside-a-label-or-a-law = Fuera de una etiqueta o de una ley
season-log-outside-what-the-farm-keeps-to = Fuera de lo que la finca respeta, o de lo usual
season-log-nothing-so-far = nada hasta ahora
season-log-nothing = nada
season-log-the-newest-of = los { $shown } más recientes de { $all }
season-log-show-more = Mostrar más
season-log-show-more-heading = Mostrar más: { $heading }

## desk/views/season_log/review/work.rs

season-log-at-least = al menos { $sum }
season-log-spray-by-water = Caldo por agua
season-log-most-spray = más caldo
season-log-hours-by-rig-from-start-to = Horas por aspersora, de inicio a fin
season-log-hours-by-rig = Horas por aspersora
season-log-water-in-it = agua incluida
season-log-without-a-volume = sin volumen
season-log-hours = Horas
season-log-ground-in-it = superficie incluida
season-log-in-an-hour = por hora
season-log-ground-in-all = superficie en total
season-log-without-times = sin horas de inicio y fin

## desk/views/season_log/seal.rs

season-log-broken-seal = sello roto
season-log-name-of-date = "{ $name }" del { $date }
season-log-the-signed-record-was-changed-outside = El registro firmado { $first } se cambió fuera de una enmienda; su página en la bitácora de la temporada dice más
season-log-signed-records-were-changed-outside-of = { $count } registros firmados se cambiaron fuera de una enmienda, el primero { $first }; la bitácora de la temporada los marca
season-log-amendment = Enmienda
season-log-why-it-is-changed = por qué se cambia
season-log-keep-the-amendment = Guardar la enmienda
season-log-leave-it-as-it-was = Dejarlo como estaba
season-log-take-the-record-as-it-is = Tomar el registro como está
season-log-an-amendment-will-say-that-the = Una enmienda dirá que el registro se cambió fuera de una enmienda. Lo que se firmó y enmendó se queda.
season-log-what-is-known-of-it = lo que se sabe de ello
season-log-take-it-as-it-is = Tomarlo como está
season-log-take-it-as-it-is-a9a = Tomarlo como está…
season-log-amend = Enmendar…
season-log-amend-the-record = Enmendar el registro…
season-log-signed-by = { $amended ->
        [0] Firmado por { $by }, { $at }
        [one] Firmado por { $by }, { $at } · { $amended } enmienda
       *[other] Firmado por { $by }, { $at } · { $amended } enmiendas
    }
season-log-signed-but-by-whom-is-gone = { $amended ->
        [0] Firmado, pero se perdió por quién
        [one] Firmado, pero se perdió por quién · { $amended } enmienda
       *[other] Firmado, pero se perdió por quién · { $amended } enmiendas
    }
season-log-who = Quién
season-log-who-amends = Quién enmienda
season-log-why = Por qué
season-log-why-it-is-amended = Por qué se enmienda
season-log-type-over-what-is-wrong-on = Escriba sobre lo que está mal en la página de abajo; aquí aparece lo que cambia
season-log-and-more-more = y { $more } más
season-log-from-then-on-the-record-is = Desde entonces el registro se enmienda, no se edita: lo que ahí decía se queda, con quién lo cambió, cuándo y por qué. Las evaluaciones y notas de lo que resultó pueden agregarse en cualquier momento.
season-log-still-open-what-comes-later-is = Aún pendiente: { $open }. Lo que venga después es una enmienda.
season-log-who-signs = Quién firma
season-log-sign-it = Firmarlo
season-log-not-yet-27c = Aún no
season-log-sign = Firmar…
season-log-sign-the-record = Firmar el registro…
season-log-not-signed-it-may-be-edited = sin firmar; puede editarse
season-log-its-day-is-still-to-come = El día de este registro, { $date }, aún no llega: se puede firmar una vez aplicado.
season-log-signed-by-by-at = Firmado por { $by }, { $at }
season-log-the-signature-is-gone = La firma se perdió
season-log-this-seal-does-not-hold = este sello no es válido
season-log-seal = sello { $first }
season-log-remove-this-signed-record-the-law = ¿Eliminar este registro firmado? La ley puede pedir que se conserve por años.
season-log-remove-this-record = ¿Eliminar este registro?
season-log-is-signed-from-now-on-it = { $name } está firmado; de ahora en adelante se enmienda
season-log-the-amendment-of-is-kept-what = La enmienda de { $name } está guardada; lo que ahí decía se muestra debajo de su firma
season-log-is-taken-as-it-is-what = { $name } se toma como está; lo que había en la cadena rota se queda

## desk/views/season_log/trials.rs

season-log-no-trial-yet-a-trial-holds = Aún no hay ensayos. Un ensayo compara dos tratamientos, en franjas de un lote o en lotes pareados: registre ambos, evalúelos en los resultados de sus registros y forme aquí los pares.
season-log-add-a-trial = Agregar un ensayo
season-log-new-trial = Ensayo nuevo
season-log-name-of-the-trial = Nombre del ensayo
season-log-remove-this-trial = ¿Eliminar este ensayo?
season-log-remove-trial = Eliminar el ensayo { $name }…
season-log-the-one-side = el primer lado
season-log-the-one-side-df3 = El primer lado
season-log-crop-oil-concentrate = concentrado de aceite agrícola
season-log-the-other-side = el otro lado
season-log-the-other-side-371 = El otro lado
season-log-non-ionic-surfactant = surfactante no iónico
season-log-note-on-the-trial = Nota sobre el ensayo
season-log-what-was-seen-beside-the-figures = lo que se vio aparte de las cifras
season-log-no-pair-yet-choose-a-record = Aún no hay pares: elija un registro para cada lado.
season-log-pair-side = { $side ->
        [one] Par { $number }, primer lado: { $words }
       *[other] Par { $number }, otro lado: { $words }
    }
season-log-remove-pair = Quitar el par { $number }
season-log-add-the-pair = Agregar el par
season-log-add-pairs = Agregar { $count } pares
season-log-choose-a-record = elija un registro
season-log-pair-a-record = forme un par con un registro
season-log-record-of-the-one-side = Registro del primer lado
season-log-record-of-the-other-side = Registro del otro lado
season-log-nothing-is-rated-on-both-sides = Todavía no se evaluó nada en ambos lados de un par: evalúe la misma maleza, los mismos días después, en ambos registros.
season-log-the-one = el primero
season-log-the-other = el otro
season-log-the-difference-is-less-in-points = La diferencia es { $one } menos { $other }, en puntos porcentuales.
season-log-a-record-that-is-gone = un registro que ya no está
season-log-field-name-of-date = { $field }, { $name } del { $date }

## desk/views/season_log: heads of columns, words before boxes

season-log-head-field = lote
season-log-head-fields = lotes
season-log-head-area = superficie
season-log-head-crop = cultivo
season-log-head-stage = etapa
season-log-head-product = producto
season-log-head-products = productos
season-log-head-date = fecha
season-log-head-pass = aplicación
season-log-head-operator = operador
season-log-head-open = pendiente
season-log-head-line = línea
season-log-head-day = día
season-log-head-start = inicio
season-log-head-column = columna
season-log-head-holds = contiene
season-log-head-unit = unidad
season-log-head-grew = tuvo
season-log-head-what = qué
season-log-head-after = después
season-log-head-rating = evaluación
season-log-head-pair = par
season-log-head-one = uno
season-log-head-other = otro
season-log-head-difference = diferencia
season-log-head-mean = media
season-log-head-median = mediana
season-log-head-at = hora
season-log-head-wind = viento
season-log-head-gust = ráfaga
season-log-head-from = desde
season-log-head-air = aire
season-log-head-humidity = humedad
season-log-head-adjuvants = coadyuvantes
season-log-head-days = días
season-log-head-pairs = pares
season-log-head-ratings = evaluaciones
season-log-head-water = agua
season-log-head-spray = caldo
season-log-head-records = registros
season-log-head-rig = aspersora
season-log-head-time = tiempo
season-log-head-class = clase
season-log-head-ground = superficie
season-log-head-cost = costo
season-log-head-kind = tipo
season-log-head-active = activo
season-log-head-record = registro
season-log-head-error = error
season-log-head-amounts = cantidades
season-log-head-volume = volumen
season-log-head-uses = usos
season-log-head-group = grupo
season-log-head-season = temporada
season-log-head-passes = aplicaciones
season-log-head-treated = tratada
season-log-head-month = mes
season-log-head-none = ninguno
season-log-head-with = con
season-log-head-by = por
season-log-head-seasons = temporadas
season-log-head-to = a
season-log-head-beside = junto a
season-log-head-hours = horas
