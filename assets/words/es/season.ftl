## core/season/amend.rs

season-what-stands-here-was-changed-outside = lo que está aquí se cambió fuera de una enmienda; aceptado como está por { $by }: { $why }
season-it-was-changed-outside-of-an = se cambió fuera de una enmienda antes de aceptarse como está

## core/season/amend/words.rs

season-put-in = { $what }: se puso { $is }
season-taken-out = { $what }: se quitó { $was }
season-now = { $what }: { $was }, ahora { $is }
season-that-is-and-stands-there = que { $what } es { $said }, y allí está { $stands }
season-field = Lote
season-of = { $what } de { $field }
season-product = Producto
season-product-at = producto { $at }
season-what-of-line = { $what } de { $line }
season-of-in = { $what } de { $active } en { $line }
season-active-in = Ingrediente activo en { $line }
season-weed-or-pest = Maleza o plaga
season-reading = Lectura
season-at = a las { $time }
season-of-reading = { $what } de la lectura { $reading }
season-left-over = Sobrante
season-where-the-rest-went = A dónde fue el resto
season-customer = Cliente
season-of-the-customer = { $what } del cliente
season-in-the-forecast = { $what } en el pronóstico
season-record = Registro
season-it-is-nothing = nada
season-it-is-yes = sí
season-it-is-no = no
season-what-in-line = { $what } en { $line }
season-changed-planned-as = Planeado como
season-changed-name = Nombre
season-changed-date = Fecha
season-changed-start = Inicio
season-changed-end = Fin
season-changed-fields = Lotes
season-changed-spray-volume = Volumen de caldo
season-changed-planned-spray-volume = Volumen de caldo planeado
season-changed-loads = Cargas
season-changed-left-over = Sobrante
season-changed-products = Productos
season-changed-weeds-or-pests = Malezas o plagas
season-changed-water = Agua
season-changed-rig = Aspersora
season-changed-method = Método
season-changed-nozzles = Boquillas
season-changed-pressure = Presión
season-changed-speed = Velocidad
season-changed-height-of-the-nozzles = Altura de las boquillas
season-changed-clean-out = Limpieza
season-changed-wind = Viento
season-changed-wind-from = Viento desde
season-changed-gust = Ráfaga
season-changed-temperature = Temperatura
season-changed-humidity = Humedad
season-changed-readings = Lecturas
season-changed-droplets = Gotas
season-changed-forecast = Pronóstico
season-changed-operator = Operador
season-changed-certificate = Certificado
season-changed-supervisor = Supervisor
season-changed-helpers = Ayudantes
season-changed-customer = Cliente
season-changed-made = Hecho
season-changed-note = Nota
season-changed-time = Hora
season-changed-source = Fuente
season-changed-area = Superficie
season-changed-crop = Cultivo
season-changed-stage = Etapa
season-changed-planned-area = Superficie planeada
season-changed-part = Parte
season-changed-variety = Variedad
season-changed-day-of-planting = Día de siembra
season-changed-location = Ubicación
season-changed-parcel = Parcela
season-changed-eppo-code-of-the-crop = Código EPPO del cultivo
season-changed-product = Producto
season-changed-registration-number = Número de registro
season-changed-amount = Cantidad
season-changed-planned-amount = Cantidad planeada
season-changed-lot = Partida
season-changed-price = Precio
season-changed-kind = Tipo
season-changed-adjuvant-class = Clase de coadyuvante
season-changed-restricted-use = Uso restringido
season-changed-hours-before-entry = Horas antes de entrar
season-changed-days-before-harvest = Días antes de la cosecha
season-changed-group = Grupo
season-changed-basis = Base
season-changed-mass = Masa
season-changed-address = Domicilio
season-changed-phone = Teléfono
season-changed-copied = Copia entregada

## core/season/binds.rs

season-for-where-the-crop-was-not = { $at }, para { $crop }, donde el cultivo no estaba anotado
season-any-other-crop = cualquier otro cultivo

## core/season/close.rs

season-pass-is-partly-recorded = "{ $name }" del { $date } está { $partly }
season-pass-has-no-record = "{ $name }" del { $date } no tiene registro
season-record-what-is-left-if-it = Registre lo que queda si se aplicó; si no, reduzca el terreno de la aplicación, para que la bitácora esté completa.
season-record-it-if-it-was-sprayed = Regístrela si se aplicó; si no, quítela, para que la bitácora esté completa.
season-records-of-the-season-are-not = { $many ->
        [one] Un registro de la temporada no está firmado
       *[other] { $many } registros de la temporada no están firmados
    }
season-a-signed-record-is-amended-not = Un registro firmado se enmienda, no se edita: un inspector ve qué se cambió, cuándo y por qué.

## core/season/field/barred.rs

season-beyond-the-calendar = más allá del calendario
season-the-next-crop = el próximo cultivo
season-after-the-harvest = después de la cosecha
season-see-the-label = vea la etiqueta
season-nobody-enters-without-protection-keeps-h = Nadie debe entrar sin protección: { $name } exige { $hours } h después de terminar de aplicar{ $end ->
        [known] { "" }
       *[day] , contadas desde el final del día
    }
season-whether-people-may-enter-is-not = No se sabe si se puede entrar: no está anotado ningún tiempo de reingreso de { $unknown } del { $date }
season-no-harvest-or-grazing-of-keeps = No se debe cosechar ni pastorear: { $name } del { $date } exige { $days } días
season-it-is-expected-on = { $text }; la cosecha se espera el { $harvest }
season-stands-too-early-of-keeps-months = { $crop } está allí demasiado pronto: { $name } del { $date } exige { $months } meses hasta ese cultivo, y se sembró el { $day }
season-stands-too-early-planting-not-typed = { $crop } está allí demasiado pronto: { $name } del { $date } exige { $months } meses hasta ese cultivo, y su día de siembra no está anotado
season-no-is-planted-of-keeps-months = No se debe sembrar { $next }: { $product } del { $sprayed } exige { $months } meses

## core/season/field/crops.rs

season-as-typed = según lo anotado
season-closed-season = temporada cerrada
season-from-records = registros

## core/season/field/planting.rs


## core/season/field/product.rs

season-of-applications = { $counted } de { $most } aplicaciones { $words }
season-sprayed-on-the-label-keeps-days = aplicado el { $date }; la etiqueta exige { $days_apart } días entre dos
season-and-one-application-takes-at-least = , y una aplicación lleva por lo menos { $least }
season-used-of-limit-words-too-little = { $used } de { $limit } { $words }{ $too_little }
season-active-used-of-limit-words-too-little = { $active } { $used } de { $limit } { $words }{ $too_little }
season-the-harvest-was-expected-on = la cosecha se esperaba el { $harvest }
season-the-harvest-is-expected-today = la cosecha se espera hoy
season-the-harvest-is-expected-tomorrow = la cosecha se espera mañana
season-the-harvest-is-expected-in-days = la cosecha se espera en { $left } días, el { $harvest }
season-its-label-keeps-days-to-harvest = { $name }: su etiqueta exige { $days } días hasta la cosecha; { $expected }

## core/season/mod.rs

season-name-of-date = "{ $name }" del { $date }
season-has-it-as = { $record } lo tiene como { $amount }
season-has-no-area = { $record } no tiene superficie
season-does-not-say-how-much-of = { $record } no dice cuánto de ello había en { $name }
season-counts-it-as = { $record } lo cuenta como { $short }

## core/season/outside.rs

season-air-not-measured = ; el aire no se midió
season-forecast-source = pronóstico
season-of-it-was-sprayed = "{ $name }" del { $date }: se aplicó { $found }; { $allowed }{ $unknown }
season-the-record-stays-as-it-is = El registro queda como está: dice lo que pasó. Si hay que notificarlo lo dice la ley.
season-of-a-humidity-of-is-written = "{ $name }" del { $date }: está anotada una humedad de { $humidity }{ $when }; el aire no contiene más del 100 %, así que ni ella ni Delta T se comparan con un límite
season-mend-the-humidity-of-the-record = Corrija la humedad del registro, o vacíela donde no se midió.
season-of-it-was-sprayed-with-droplets = "{ $name }" del { $date }: se aplicó con gotas { $class }; { $basis } { $asks ->
        [asks] pide
       *[may-ask] puede pedir
    } { $words }{ $conditional ->
        [no] { "" }
       *[yes] { " " }{ $conditions }
    }{ $unknown }
season-usual-is = lo usual es { $limit }
season-the-as-it-is-typed-now = la { $whose ->
        [label] etiqueta de { $place }
       *[rule] norma { $place }
    }, tal como está anotada ahora, pide { $limit }
season-the-basis-as-it-is-typed-now-may-ask = la { $whose ->
        [label] etiqueta de { $place }
       *[rule] norma { $place }
    }, tal como está anotada ahora, puede pedir { $limit }
season-read-at = , medido a las { $strftime }
season-in-later-reading = , en la lectura posterior { $place }
season-an-unknown-value = un valor desconocido
season-at-wind = a { $wind }
season-with-gusts-of = con ráfagas de { $gust }
season-in-wind-of-which-no-gust = con viento de { $wind }, por debajo del cual no queda ninguna ráfaga
season-with-wind-from = con viento del { $wind_from }
season-at-temperature = a { $temperature }
season-at-a-humidity-of = con una humedad de { $humidity }
season-at-a-delta-t-of = con un Delta T de { $delta_t }
season-from-to = de { $start } a { $end }
season-text = { " " }del { $strftime }
season-to = { $source }{ $read }, { $strftime } a { $strftime2 }

## core/season/period.rs

season-in-year = en { $year }
season-on-this-crop = en este cultivo
season-in-12-months = en 12 meses
season-the-label-of-counts-by-the = La etiqueta de { $name } cuenta por el cultivo en { $name2 }; su día de siembra no está anotado, así que se cuenta el año calendario
season-the-label-counts-by-a-crop-planted-later = La etiqueta de { $name } cuenta por el cultivo en { $name2 }; se siembra después de esta aplicación, así que se cuenta el año calendario
season-type-the-day-of-planting-on = Escriba el día de siembra en la página del lote.

## core/season/portion/recorded.rs

season-partly-recorded-of-left = registrado en parte: quedan { $left } de { $of }

## core/season/profile/asked.rs

season-names-no-records = "{ $text }" no nombra registros

## core/season/profile/dates.rs

season-the-record-is-due = vence el registro
season-is-due = vence: { $name }
season-displayed-until = exhibir hasta
season-kept-until = conservar hasta
season-not-known = no se sabe: { $why }
season-40-cfr-170-112-a-3 = 40 CFR 170.112(a)(3), ahora 170.407: cuenta el plazo más largo; los plazos de las etiquetas como están en el registro, si no como en la bodega
season-re-entry-time-ends = termina el tiempo de reingreso
season-the-end-of-the-display-is = no se conoce el final de la exhibición
season-the-end-of-spraying-is-not = el fin de la aplicación no está anotado
season-no-re-entry-time-of-is = no está registrado ningún tiempo de reingreso de { $names }, ni anotado de la etiqueta en la bodega

## core/season/profile/due.rs

season-is-no-time-by-which-something = "{ $text }" no es un plazo en el que algo vence
season-without-delay = sin demora
season-on-the-same-day = el mismo día
season-within-days = dentro de { $days } { $days ->
        [one] día
       *[other] días
    }
season-within-hours = dentro de { $hours } { $hours ->
        [one] hora
       *[other] horas
    }
season-by-the-th-of-the-next = hasta el día { $day } del mes siguiente

## core/season/profile/element.rs

season-element-displayed = puesto en exhibición
season-element-sds = hoja de datos de seguridad
season-element-machine-readable = legible por máquina
season-element-training = capacitación
season-element-receipts = recibos
season-element-label-copy = copia de la etiqueta
season-element-buffer = franja
season-element-sensitive-survey = revisión de sitios sensibles
season-element-emergence = antes o después de la emergencia
season-element-runoff-points = puntos de escurrimiento
season-element-bulletin = boletín
season-element-forecast-temperature = temperatura del pronóstico
season-element-maker = empresa en la etiqueta
season-element-recommended-by = recomendado por
season-element-exchange = a quién se avisó
season-element-planted-area = superficie sembrada
season-element-site-id = número del sitio
season-element-reported = notificado
season-element-mix-site = lugar de mezcla
season-element-supplier = proveedor
season-element-rain = lluvia
season-element-fields = lotes
season-element-area = superficie
season-element-covered-area = superficie
season-element-location = ubicación
season-element-parcel = parcela
season-element-crop = cultivo
season-element-crop-code = código EPPO
season-element-bbch = etapa BBCH
season-element-planted = siembra
season-element-product = productos
season-element-registration = número de registro
season-element-actives = ingredientes activos
season-element-amount = cantidad
season-element-dose = dosis
season-element-field-amounts = cantidad por lote
season-element-entry = tiempo de reingreso
season-element-mix = mezcla de tanque
season-element-type-of-use = tipo de uso
season-element-date = fecha
season-element-start = inicio
season-element-end = fin
season-element-wind = viento
season-element-wind-from = viento desde
season-element-wind-at-end = viento al final
season-element-temperature = temperatura
season-element-temperature-at-end = temperatura al final
season-element-humidity = humedad
season-element-wind-changes = viento posterior
season-element-weather = clima
season-element-pest = plaga
season-element-method = método
season-element-nozzles = boquillas
season-element-pressure = presión
season-element-clean-out = limpieza
season-element-operator = operador
season-element-applicator = aplicador
season-element-certificate = certificado
season-element-uncertified = a quién se supervisó
season-element-involved = quién intervino
season-element-certificates = certificados
season-element-signature = firma
season-element-customer = cliente
season-element-customer-address = domicilio del cliente
season-element-customer-phone = teléfono del cliente
season-element-customer-copy = copia para el cliente
season-element-holder = titular
season-element-holder-address = domicilio del titular
season-element-holder-number = número del titular
season-surface = superficie
season-is-no-element-of-a-record = "{ $key }" no es un elemento de un registro
season-in-the-tank = en el tanque
season-from = { $wind } del { $wind_from }
season-wind = viento { $wind }
season-wind-from = viento { $wind } del { $from }
season-ground-boom = barra terrestre
season-a-later-reading = una lectura posterior
season-at-wind-from-from = { $at } { $wind } del { $from }
season-of-which-in-bands = { $driven }, de eso { $sprayed } en bandas

## core/season/profile/mod.rs

season-not-the-law = Tankard no decide lo que exige la ley. Lo deciden la ley de su lugar y la etiqueta.
season-from-memory-check = de memoria, verifique
season-years-from-the-end-of-the-display = { $years } { $years ->
        [one] año
       *[other] años
    } desde el final de la exhibición
season-years-from-1-january-of-the-next = { $years } { $years ->
        [one] año
       *[other] años
    } desde el 1 de enero del año siguiente
season-years-from-the-application = { $years } { $years ->
        [one] año
       *[other] años
    } desde la aplicación
season-for-how-long-is-not-known = aquí no se sabe por cuánto tiempo
season-the-farm-keeps-to-a-record = La finca se atiene a un perfil de registros "{ $key }" que no se conoce, así que ningún registro se compara con él
season-choose-another-in-the-shed-records = Elija otro en la bodega, Registros.

## core/season/profile/open.rs

season-lacks-fields = lotes
season-lacks-products = productos
season-name-of-names = { $name } de { $names }
season-this-farm = esta finca
season-name-as-typed = { $name }, según lo anotado
season-it-was-due-by = vencía: { $due }
season-due-by = vence: { $due }
season-by-when-it-is-due-is = aquí no se sabe cuándo vence
season-type-it-in-the-shed-records = Anótelo en la bodega, Registros.
season-type-it-in-the-record-what = Anótelo en el registro; lo que es del titular, en la bodega, Registros.
season-type-it-in-the-record = Anótelo en el registro.
season-whether-the-law-asks-for-it = { $hint } Aquí no se decide si la ley lo pide.
season-of-lacks-for = A "{ $name }" del { $date } le falta para { $name2 }: { $names }; { $when }
season-every-record = todo registro
season-records-of-pesticides = registros de plaguicidas
season-records-of-restricted-use-products = registros de productos de uso restringido
season-records-of = registros de { $name }
season-records-of-on = registros de { $name } en { $crops }

## core/season/review/compare.rs

season-no = sin { $class }

## core/season/review/figures.rs

season-no-price = sin precio
season-at-least = por lo menos { $money }

## core/season/review/products.rs

season-kind-not-known = tipo desconocido

## core/season/review/remarks.rs

season-remark-several-classes = El terreno que recibió varias clases cuenta con cada una de ellas
season-remark-hatched-cost = Rayado: una parte no tiene precio, así que costó más
season-remark-hatched-spray = Rayado: algunos registros no dicen cuánto, así que fue más
season-remark-hatched-hours = Rayado: algunos registros no tienen inicio o fin, así que fue más
season-remark-bases = ae es equivalente ácido, ai ingrediente activo; los dos no se suman
season-remark-error = Un error es lo hecho respecto de lo planeado: +2 % son dos centésimas de más
season-remark-no-plan = Ningún registro conserva lo planeado. Los registros hechos de un plan sí; también se puede anotar en la página de un registro
season-remark-weather = Lo que no se midió no se evalúa. Las etiquetas se leen como están anotadas ahora. Si algo se tiene que notificar lo dice la ley
season-remark-again = Se dice que un grupo se repitió, no que una maleza le vaya a resistir. Vale lo que dice la etiqueta
season-remark-water = El agua es el caldo menos los productos líquidos que contiene, como si los volúmenes se sumaran. Lo que no tiene volumen no está en ninguna suma
season-remark-no-group = Ningún producto de un grupo de resistencia conocido se aplicó en un lote.
season-remark-not-rated = Todavía no hay nada evaluado: evalúe un lote en la página de su registro.
season-remark-hours = De inicio a fin: aplicación, vueltas, llenado, camino y pausas
season-remark-products-alone = Solo productos, a los precios de los registros; ni agua ni horas ni la aspersora. La superficie aplicada dos veces cuenta dos veces
season-ground-sprayed-twice-counts-twice-was = La superficie aplicada dos veces cuenta dos veces. Aplicada por lo menos una vez: { $sprayed }
season-the-lesser-figure-takes-passes-on = La cifra menor toma las aplicaciones en un lote como si cayeran en el mismo terreno, la mayor como si cayeran una al lado de otra: no está dibujado en qué parte de un lote aplicó un registro
season-ground-without-an-area = { $count } { $count ->
        [one] registro tiene
       *[other] registros tienen
    } terreno sin superficie
season-no-price-that-fits-and-is = { $uses } { $uses ->
        [one] uso de un producto no tiene
       *[other] usos de productos no tienen
    } un precio que sirva, y no { $uses ->
        [one] está
       *[other] están
    } en ninguna suma; un producto en dos lotes son dos usos
season-where-a-record-does-not-say = Donde un registro no dice el tipo o la clase de un producto, vale lo que hoy dice la bodega
season-in-no-sum-since-the-records = En ninguna suma, porque los registros no dicen cuánto ingrediente activo salió: { $silent }
season-group-numbers-with-how-often-they = Números de grupo con las veces que se usaron en una temporada; un { $sign }: se usó otra vez demasiado pronto, vea abajo. Las partes de una aplicación cuentan una vez
season-held-against-labels-laws-and-practice = { $count } { $count ->
        [one] registro comparado
       *[other] registros comparados
    } con etiquetas, leyes y práctica: { $of_label_or_law } fuera de una etiqueta o una ley, { $of_practice } solo fuera de la práctica
season-counted-in-no-group-since-none = No contado en ningún grupo, porque no se conoce ninguno: { $groupless }
season-where-a-record-does-not-say-the-class-of = Donde un registro no dice la clase de un producto, vale la que hoy tiene en la bodega
season-in-all = En total { $spent }
season-no-adjuvant-and-no-conditioner-went = No salió ningún coadyuvante ni acondicionador: { $figures } se trataron sin ellos.
season-nothing-of-a-plan = { $count } { $count ->
        [one] registro no conserva
       *[other] registros no conservan
    } nada de un plan
season-not-keep-what-was-planned-or = { $uses } { $uses ->
        [one] uso de un producto no conserva
       *[other] usos de productos no conservan
    } lo que se planeó, o sobre qué terreno
season-no-record-says-what-was-left = Ningún registro dice lo que sobró.
season-in-all-of-say-what-was = { $figures } en total; { $told } de { $count } { $count ->
        [one] registro
       *[other] registros
    } { $told ->
        [one] dice
       *[other] dicen
    } lo que sobró.
season-without-a-price = Sin precio: { $without_price }
season-over = , { $over } sobre { $figures }
season-spent-in-all-over = { $spent } en total{ $over }
season-on-the-day-itself-or-more = { $ratings } { $ratings ->
        [one] evaluación es
       *[other] evaluaciones son
    } del mismo día o de más de diez semanas después, y no { $ratings ->
        [one] está
       *[other] están
    } en ninguna fila
season-of-a-field-that-their-record = { $ratings } { $ratings ->
        [one] evaluación es
       *[other] evaluaciones son
    } de un lote que su registro no aplicó, o de un día anterior; revise los registros

## core/season/review/words.rs

season-no-cause = Dice lo que se evaluó en esta finca y no por qué: los lotes, el clima, el tamaño de las malezas y quien miró pueden haber variado junto con lo que se compara. Vale lo que dice la etiqueta, se haya evaluado lo que sea.
season-no-longer-on-the-farm = ya no está en la finca
season-month-1 = ene
season-month-2 = feb
season-month-3 = mar
season-month-4 = abr
season-month-5 = may
season-month-6 = jun
season-month-7 = jul
season-month-8 = ago
season-month-9 = sep
season-month-10 = oct
season-month-11 = nov
season-month-12 = dic
season-below-gap = menos de{ $gap }{ $end }
season-name-times = { $name } { $n ->
        [one] una vez
       *[other] { $n } veces
    }
season-few-pairs = { $of } ({ $n } { $n ->
        [one] par
       *[other] pares
    })
season-to-days-after = { $from } a { $to } días después
season-control-of = control de { $weed }
season-injury-of-the-crop = daño al cultivo
season-injury = daño: { $how }
season-no-adjuvant = sin coadyuvante
season-and = { $most } y { $last }
season-too-few-to-tell = { $of }: muy pocos para saber: { $n } { $n ->
        [one] par
       *[other] pares
    }. Menos de seis no se distinguen del azar al 5 % por sus signos y rangos, muestren lo que muestren
season-all-pairs-differ-alike-by-per = { $of }: los { $n } pares difieren igual, en { $show } puntos porcentuales ({ $one } menos { $other }); las diferencias no varían, así que no se puede dar un intervalo
season-by-ranks = ; por rangos { $ends }
season-95-interval = intervalo del 95 % { $interval }{ $rank }
season-over-pairs = en { $n } pares
season-on-and-pieces-of-ground = en { $ground } y { $ground2 } terrenos
season-too-few-to-tell-with-with = { $of }: muy pocos para saber: { $count } { $count ->
        [one] registro
       *[other] registros
    } con { $one }, { $counts } con { $other }, { $pieces }; con menos de { $fewest } de cada uno no se compara
season-the-records-of-each-side-were = { $of }: los registros de cada lado se evaluaron todos igual y no varían, así que no se puede dar un intervalo
season-and-records = { $counts } y { $counts2 } registros, { $pieces }
season-95-interval-interval = intervalo del 95 % { $interval }
season-too-few-to-tell-few-too-few-pairs = Muy pocos para saber: { $few }. Menos de seis no se distinguen del azar al 5 % por sus signos y rangos, muestren lo que muestren
season-per-cent-points = { $show } puntos porcentuales
season-was-rated-higher-with-than-with = { $of } se evaluó { $by } más alto con { $one } que con { $other } ({ $over }; { $ends })
season-of-was-rated-by-higher-with-other-than-with = { $of } se evaluó { $by } más alto con { $other } que con { $one } ({ $over }; { $ends })
season-the-data-do-not-tell-and = { $of }: los datos no distinguen { $one } de { $other } ({ $over }; diferencia { $show }; { $ends })
season-show-to-show2 = { $show } a { $show2 }
season-comparisons-stand-here-of-comparisons-in = Aquí hay { $comparisons } comparaciones. De las comparaciones en que nada difiere, alrededor de una en 20 parece diferir por puro azar; una que destaca entre muchas es motivo para hacer un ensayo, todavía no una respuesta
season-group = grupo { $group }
season-kind-group-group = grupo { $group } ({ $kind })
season-times-in = { $times ->
        [2] dos veces en { $year }
       *[other] { $times } veces en { $year }
    }
season-in-each-season-from-to = en cada temporada de { $from } a { $to }
season-applications-in-a-row-to = { $times } aplicaciones seguidas, { $from } a { $to }
season-without-uses-that-have-no-price = { $money }, sin { $many } { $many ->
        [one] uso que no tiene precio
       *[other] usos que no tienen precio
    }
season-and-more = y { $of } más
season-crop-not-typed = cultivo no anotado
season-water-not-typed = agua no anotada
season-rig-not-typed = aspersora no anotada
season-no-field-in-the-record = ningún lote en el registro
season-class-not-known = clase desconocida
season-at-gap-and-more = { $at }{ $gap }y más
season-at-gap-to-at2 = { $at }{ $gap }a { $at2 }

## core/season/seal.rs

season-who-does-it-is-not-typed = no está anotado quién lo hace; escriba un nombre
season-why-it-is-changed-is-not = no está anotado por qué se cambia; escriba el motivo en pocas palabras
season-nothing-differs-from-what-stands-there = nada difiere de lo que está allí; primero cambie algo
season-the-record-is-not-signed-so = el registro no está firmado, así que se edita y no se enmienda
season-the-record-is-signed-already-what = el registro ya está firmado; lo que haya que cambiar se enmienda
season-the-day-of-the-record-is-still-to-come = el día del registro, { $date }, aún no llega: fírmelo una vez aplicado
season-the-record-was-changed-outside-of = el registro se cambió fuera de una enmienda; primero acéptelo como está, o vuelva a poner lo que estaba allí
season-the-seals-of-the-record-hold = los sellos del registro son válidos; lo que haya que cambiar se enmienda
season-what-was-signed-cannot-be-told = no se puede saber lo que se firmó: { $it }
season-the-signed-record-of-has-the = El registro firmado "{ $name }" del { $date } tiene el mismo sello que "{ $name2 }" del { $date2 }: uno es copia del otro, y ambos cuentan
season-it-was-sprayed-once-take-out = Se aplicó una vez; quite la copia, o registre aparte lo que de verdad se aplicó otra vez.
season-by-on = { " " }por { $by } el { $date }
season-the-signed-record-was-changed-outside = El registro firmado { $name } se cambió fuera de una enmienda, y se aceptó como está{ $by }
season-the-signed-record-name-was-changed-outside-of-an = El registro firmado { $name } se cambió fuera de una enmienda: { $said }
season-compare-it-with-a-print-or = Compárelo con una impresión o una copia más antigua del archivo. Vuelva a poner lo que estaba allí, o acéptelo como está con una enmienda que lo diga; no se quita nada de él.
season-the-record-cannot-be-written-as = el registro no se puede escribir como JSON
season-the-signature = la firma
season-who-signed-or-when = quién firmó o cuándo
season-amendment = la enmienda { $at }
season-who-when-why-or-what-of = quién, cuándo, por qué o qué de la enmienda { $at }
season-the-signature-was-taken-out-while = se quitó la firma, mientras que aún hay enmiendas
season-is-not-what-was-sealed-the = { $what } no es lo que se selló; el registro mismo está como estaba
season-the-seal-of-was-changed-and = se cambió el sello de { $which }, y nada más
season-says = { $which } dice { $misfit }
season-what-stands-there-or-who-signed = lo que está allí, o quién firmó y cuándo, no es lo que se firmó
season-what-stands-there-or-itself-is = lo que está allí, o { $which } misma, no es lo que se selló con ella

## core/season/too_much.rs

season-of-brings-to-of-the-as = "{ $name }" del { $date } lleva { $name2 } a { $sum } de { $what } { $words }; la { $whose ->
        [law] ley
       *[label] etiqueta
    }, tal como está anotada ahora, { $allows ->
        [allows] permite
       *[may-allow] puede permitir
    } { $most }

## core/season/trials.rs

season-pair-has-ground-that-stands-in = El par { $number } tiene terreno que ya está en el ensayo, así que no se cuenta
season-pair-speaks-of-a-record-that = El par { $number } habla de un registro que ya no está, o de un lote que no está en él; elija de nuevo su terreno
season-of-pairs-are-rated-on-both = { $both } de { $pairs } pares están evaluados en ambos lados: { $words }
season-name-and-name2-year = { $name } y { $name2 }, { $year }
season-name-parts-and-parts2-year = { $name }, { $parts } y { $parts2 }, { $year }

## core/season/worker_protection.rs

season-crop-or-site-treated-is-not = No está anotado el cultivo o sitio tratado
season-write-the-crop-into-the-record = Escriba el cultivo en el registro
season-describe-the-area-where-it-lies = Describa el área: dónde está, o con un mapa junto a la hoja
season-location-of-the-treated-area-is = No está anotada la ubicación del área tratada
season-no-pesticide-is-written-down = No está anotado ningún plaguicida
season-write-down-the-products-that-went = Anote los productos que se aplicaron
season-epa-registration-number-of-is-not = No está anotado el número de registro EPA de { $name }
season-it-stands-on-the-label = Está en la etiqueta
season-active-ingredients-of-are-not-written = No están anotados los ingredientes activos de { $name }
season-they-stand-on-the-label = Están en la etiqueta
season-the-time-at-which-it-began = No está anotada la hora en que comenzó la aplicación
season-the-time-at-which-it-ended = No está anotada la hora en que terminó la aplicación
season-write-it-into-the-record = Escríbala en el registro
season-restricted-entry-interval-of-is-not = No se conoce el intervalo de entrada restringida de { $name }, así que no se dice cuándo termina
season-write-the-hours-of-its-label = Escriba en el registro las horas de su etiqueta, 0 donde no tenga
season-the-exclusion-zone-is-not-known = No se conoce la zona de exclusión para este método ("{ $method }")
season-look-it-up-in-the-rule = Búsquela en la norma y escríbala en la hoja: 100 ft por vía aérea, con aspersora de aire forzado, fumigante, humo, niebla o neblina
season-the-exclusion-zone-cannot-be-told = No se puede determinar la zona de exclusión: la clase de gota no está anotada
season-the-exclusion-zone-hangs-on-whether = La zona de exclusión depende de si las boquillas estaban a menos de 12 in del suelo; un registro tiene su altura sobre lo que se aplicó
season-keep-25-ft-unless-they-were = Mantenga 25 ft, a menos que haya sido así
