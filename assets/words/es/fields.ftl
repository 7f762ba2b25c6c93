## desk/views/fields/barred.rs

fields-what-may-not-go-on-it = Lo que no se le debe aplicar ni hacer en él
fields-nothing-as-far-as-the-labels = Nada, hasta donde están anotadas las etiquetas: ningún total ni número está agotado, y no corren días.
fields-until = hasta { $until }
fields-as-long-as-this-crop-stands = mientras este cultivo esté en pie
fields-until-after-the-harvest = hasta después de la cosecha
fields-see-the-label-for-how-long = vea en la etiqueta por cuánto tiempo
fields-open-the-record-of = Abrir el registro { $name } del { $date }
fields-what-may-follow-by-the-plant = Lo que puede seguir, según los plazos de siembra de lo que recibió
fields-no-label-of-what-it-got = Ninguna etiqueta de lo que recibió nombra un cultivo siguiente, según lo anotado, y no hay próximo cultivo anotado para el lote.
fields-the-of-not-name-it-as = { $count ->
        [one] la etiqueta de { $names } no lo nombra, según lo anotado
       *[other] las etiquetas de { $names } no lo nombran, según lo anotado
    }
fields-type-the-next-crop-under-as = Anote el próximo cultivo en "Como está anotado" para que aparezca primero.
fields-no-plant-back-time-is-typed = No hay plazo de siembra anotado de { $untyped }, que recibió en los últimos 12 meses
fields-may-be-planted-now = puede sembrarse ya
fields-no-limit-that-is-typed-keeps = ningún límite anotado lo impide
fields-not-before = no antes del { $day }
fields-open-the-record-of-for = Abrir el registro de { $sprayed } para { $crop }
fields-months-label-of-as-typed-sprayed = { $months } meses; etiqueta de { $at }, según lo anotado; aplicado el

## desk/views/fields/export.rs

fields-no-field-has-a-boundary-and = Ningún lote tiene lindero y no hay nada dibujado entre los lotes, así que no hay nada que exportar
fields-the-boundaries-were-not-saved = Los linderos no se guardaron
fields-saved-as = { $count ->
        [one] { $count } lindero o elemento del entorno guardado como { $path }{ $since }
       *[other] { $count } linderos y elementos del entorno guardados como { $path }{ $since }
    }
fields-the-farm-has-no-pass-yet = La finca aún no tiene ninguna aplicación; planee una primero en Cargas de tanque
fields-no-task-data-of = No hay datos de tarea de "{ $name }": { $why }
fields-the-task-data-was-not-saved = Los datos de tarea no se guardaron
fields-name-saved-as-path-since = "{ $name }" guardado como { $path }{ $since }

## desk/views/fields/got.rs

fields-crops-by-year = Cultivos por año
fields-no-crop-is-typed-and-no = No hay cultivo anotado, y ningún registro ni temporada cerrada nombra uno.
fields-crop-not-typed = cultivo no anotado
fields-then = , después{ " " }
fields-no-record = ningún registro
fields-records = { $count ->
        [one] { $count } registro
       *[other] { $count } registros
    }
fields-resistance-groups-by-season = Grupos de resistencia por temporada
fields-no-record-of-it-holds-a = Ningún registro de él contiene un producto con grupo de resistencia.
fields-came = { $name } se usó { $all }
fields-by = Según: { $source }
fields-what-it-got = Lo que recibió
fields-nothing-is-recorded-on-it-yet = Aún no hay nada registrado en él.
fields-older-ones-stand-in-the-season = { $older ->
    [one] { $older } anterior está en la bitácora de la temporada
   *[other] { $older } anteriores están en la bitácora de la temporada
}
fields-again = { $words } otra vez

## desk/views/fields/ground.rs

fields-ground = Terreno
fields-stays-unsprayed = queda sin aplicar
fields-area-that-stays-unsprayed = Superficie que queda sin aplicar
fields-buffers-waterways-wet-spots = franjas, cauces, partes anegadas
fields-strips-to-what-is-drawn = franjas junto a lo dibujado
fields-are-part-of-what-stays-unsprayed = son parte de lo que queda sin aplicar
fields-are-left-out-beside-it = se dejan fuera además de ello
fields-strips-to-what-is-drawn-351 = Franjas junto a lo dibujado
fields-silt-loam-2-4-organic-matter = franco limoso, 2.4 % de materia orgánica, pH 6.3
fields-soil = Suelo
fields-stated-area-of = Superficie declarada de { $name }
fields-stated-area = superficie declarada
fields-tilled-insured-claimed = labrada, asegurada, solicitada
fields-from-the-boundary = del lindero
fields-no-boundary-yet-draw-it-on = aún sin lindero: dibújelo en el mapa o importe uno
fields-plans-go-by = los planes se rigen por
fields-which-area-plans-go-by = Por cuál superficie se rigen los planes
fields-the-stated-area = la superficie declarada
fields-the-area-from-the-boundary = la superficie del lindero
fields-or-than-stated = { $word ->
        [more] { $by } o { $ratio } % más que lo declarado
       *[less] { $by } o { $ratio } % menos que lo declarado
    }
fields-as-much-as-stated = tanto como lo declarado
fields-none-yet-set-them-on-the = aún ninguna: póngalas en el mapa o impórtelas
fields-name-of-gateway = Nombre de la entrada { $number }
fields-its-name = su nombre
fields-take-out-gateway = Quitar la entrada { $number }

## desk/views/fields/import/compared.rs

fields-as-much = lo mismo
fields-per-cent-more = { $by } % más
fields-per-cent-less = { $by } % menos
fields-none-stated = ninguna declarada
fields-stated = declarada { $area }: { $by }
fields-with-pieces-together = { $text }, con { $pieces } piezas juntas
fields-in-place-of-a-boundary-of = { $text }; en lugar de un lindero de { $area }

## desk/views/fields/import/mod.rs

fields-the-boundaries-were-not-read = Los linderos no se leyeron
fields-is-read = Se leyó { $source }
fields-boundaries-from = Linderos de { $source }
fields-leave-all-out = Dejar fuera todo
fields-piece = pieza
fields-pieces = piezas
fields-as-suggested = Como se sugiere
fields-of-ground-in-this-file-nothing = { $count ->
        [one] { $count } pieza de terreno en este archivo ({ $kind }). Nada cambia antes de que usted las tome.
       *[other] { $count } piezas de terreno en este archivo ({ $kind }). Nada cambia antes de que usted las tome.
    }
fields-of-ground-in-this-file-refused = { $count ->
        [one] { $count } pieza de terreno en este archivo ({ $kind }), rechazadas: { $refused }. Nada cambia antes de que usted las tome.
       *[other] { $count } piezas de terreno en este archivo ({ $kind }), rechazadas: { $refused }. Nada cambia antes de que usted las tome.
    }
fields-the-file-holds-nothing-that-can = El archivo no contiene nada que se pueda tomar.
fields-pieces-are-refused = { $count ->
        [one] { $count } pieza se rechaza
       *[other] { $count } piezas se rechazan
    }
fields-to = { $first } a { $last }
fields-those-before = Las anteriores
fields-refused-pieces-before-these = Piezas rechazadas anteriores a estas
fields-those-after = Las siguientes
fields-refused-pieces-after-these = Piezas rechazadas posteriores a estas
fields-take = { $count ->
        [one] Tomar { $count } pieza
       *[other] Tomar { $count } piezas
    }
fields-leave-it = Dejarlo
fields-nothing-of-it-is-chosen = No se ha elegido nada de este archivo
fields-leave-the-file = Dejar el archivo
fields-new-fields = { $count ->
        [one] { $count } lote nuevo
       *[other] { $count } lotes nuevos
    }
fields-boundaries = { $count ->
        [one] { $count } lindero
       *[other] { $count } linderos
    }
fields-things-among-the-fields = { $count ->
        [one] { $count } cosa entre los lotes
       *[other] { $count } cosas entre los lotes
    }
fields-gateways = { $count ->
        [one] { $count } entrada
       *[other] { $count } entradas
    }
fields-nothing = nada
fields-taken-from = Tomado de { $source }: { $words }

## desk/views/fields/import/piece.rs

fields-in-the-file = en el archivo
fields-what-becomes-of-it = qué se hará con ella
fields-mended = { $place }; corregido: { $mended }
fields-a-new-field = un lote nuevo
fields-the-boundary-of = el lindero de
fields-among-the-fields = entre los lotes: { $kind }
fields-a-gateway-of = una entrada de
fields-left-out = se deja fuera
fields-what-becomes-of = Qué se hará con { $named }
fields-field-of = Lote de { $named }
fields-a-field-without-a-name = un lote sin nombre

## desk/views/fields/list.rs

fields-find-a-field-or-crop = Buscar un lote o cultivo
fields-field = { $count ->
        [one] { $count } lote, { $total }
       *[other] { $count } lotes, { $total }
    }
fields-no-field-is-like-that = Ningún lote se parece a eso.
fields-add-a-field = + Agregar un lote
fields-name-of-the-field = Nombre del lote
fields-area-of = Superficie de { $name }
fields-crop-of = Cultivo de { $name }
fields-stage-of = Etapa de { $name }
fields-open = Abrir { $name }
fields-next = { $last }; próxima { $next }
fields-next-next = próxima { $next }
fields-remove = { $passes ->
        [0] ¿Eliminar { $name }?
        [one] ¿Eliminar { $name }? Una aplicación va ahí.
       *[other] ¿Eliminar { $name }? { $passes } aplicaciones van ahí.
    }
fields-remove-it = Eliminarlo
fields-keep-it = Conservarlo
fields-copy = { $name } (copia)

## desk/views/fields/map/canvas.rs

fields-no-field-has-a-boundary-yet = Aún ningún lote tiene lindero
fields-choose-a-field-at-the-left = Elija un lote a la izquierda y dibuje su lindero con Dibujar…, o traiga linderos de un archivo.
fields-map-no-field-has-a-boundary = Mapa; aún ningún lote tiene lindero
fields-map-a-boundary-coloured-by = { $count ->
        [one] Mapa; { $count } lote tiene lindero; coloreado por { $title }: { $classes }
       *[other] Mapa; { $count } lotes tienen lindero; coloreado por { $title }: { $classes }
    }
fields-chosen = { $words }; elegido: { $name }, { $area }, { $said }

## desk/views/fields/map/colouring.rs

fields-growth-stage = etapa de crecimiento
fields-re-entry = reingreso
fields-last-spray = última aplicación
fields-planned-on-a-day = planeado para un día
fields-no-crop-typed = cultivo no anotado
fields-no-stage-typed = etapa no anotada
fields-others = { $count ->
        [one] { $count } más
       *[other] otros { $count }
    }
fields-no-spray-recorded = ninguna aplicación registrada
fields-sprayed-today = aplicado hoy
fields-ago = { $count ->
        [one] hace { $count } día
       *[other] hace { $count } días
    }
fields-within-a-week = en la última semana
fields-8-to-21-days-ago = hace 8 a 21 días
fields-22-to-60-days-ago = hace 22 a 60 días
fields-longer-ago = hace más tiempo
fields-keep-out-until = no entre hasta { $moment } ({ $product })
fields-no-re-entry-time-typed = tiempo de reingreso no anotado: { $product }, { $date }
fields-re-entry-time-is-over = el tiempo de reingreso ya pasó
fields-no-spray-in-30-days = ninguna aplicación en 30 días
fields-keep-out = no entrar
fields-not-known-see-the-label = no se sabe; vea la etiqueta
fields-time-is-over-as-typed = el tiempo ya pasó, según lo anotado
fields-recorded = registrado: { $names }
fields-not-planned = sin planear
fields-planned-on = planeado para el { $day }
fields-planned-and-recorded = planeado y registrado

## desk/views/fields/map/edit.rs

fields-left-as-it-was = Se deja como estaba: { $why }

## desk/views/fields/map/furniture.rs

fields-and-more-fields = { $left_out ->
    [one] y { $left_out } lote más
   *[other] y { $left_out } lotes más
}

## desk/views/fields/map/labels.rs

fields-no-name = sin nombre

## desk/views/fields/map/mod.rs

fields-page-of-the-field = Página del lote
fields-map = Mapa
fields-last-and-next-pass = última y próxima aplicación
fields-the-picture-lies-over-what-is = La imagen cubre lo que se ve; escriba o haga clic en sus dos esquinas
fields-as-on = { $colouring }, al { $day }

## desk/views/fields/map/panel.rs

fields-among-the-fields-083 = entre los lotes…
fields-gateway = entrada { $at }
fields-gateway-name = entrada { $name }
fields-drawing-the = Dibujando: { $what }
fields-drawing-the-of = Dibujando: { $what } de { $name }
fields-click-where-it-lies-or-type = Haga clic donde está, o escríbalo. Escape lo descarta.
fields-click-point-after-point-or-type = Haga clic punto tras punto, o escríbalos. Retroceso quita el último, Enter o un doble clic termina, Escape lo descarta.
fields-latitude-longitude = latitud, longitud
fields-latitude-and-longitude-of-the-point = Latitud y longitud del punto
fields-add-the-point = Agregar el punto
fields-take-the-last-back = Quitar el último
fields-finish = Terminar
fields-not-enough-points-yet = Aún no hay bastantes puntos
fields-drop-it = Descartarlo
fields-point-of = punto { $at } de { $all }
fields-moving-points-of = Moviendo puntos de { $name }
fields-drag-a-point-click-an-edge = Arrastre un punto; haga clic en un borde para poner uno; Supr quita el elegido. Escape termina.
fields-point-before = Punto anterior
fields-next-point = Punto siguiente
fields-latitude-and-longitude-of-the-chosen = Latitud y longitud del punto elegido
fields-put-one-in-after-it = Poner uno después
fields-take-it-out = Quitarlo
fields-done = Listo
fields-planned-for-wind-from = planeado para viento del
fields-wind-that-the-pass-is-planned = Viento para el que está planeada la aplicación
fields-as-forecast = según el pronóstico
fields-no-field-is-chosen = No hay ningún lote elegido.
fields-a-field-without-a-name-736 = Un lote sin nombre
fields-plans-go-by-the-stated-area = los planes se rigen por la superficie declarada
fields-plans-go-by-the-boundary = los planes se rigen por el lindero
fields-stated-from-the-boundary = declarada { $stated }, del lindero { $area }; { $from }
fields-stated-it-has-no-boundary-yet = declarada { $stated }; aún no tiene lindero, así que no está en el mapa
fields-draw-its-boundary = Dibujar su lindero
fields-open-its-page = Abrir su página
fields-remove-its-boundary = Eliminar su lindero
fields-remove-the-boundary-the-field-stays = ¿Eliminar el lindero? El lote se queda, con su superficie declarada.
fields-what-it-is = Qué es
fields-name-of-the-surrounding = Nombre del elemento del entorno
fields-name-such-as-mill-creek = nombre, como arroyo del Molino
fields-note-on-the-surrounding = Nota sobre el elemento del entorno
fields-note-such-as-whom-to-call = nota, como a quién llamar
fields-move-its-points = Mover sus puntos
fields-remove-it-from-the-map = Eliminarlo del mapa
fields-back-to-the-field = Volver al lote
fields-remove-it-strips-along-it-go = ¿Eliminarlo? También se van las franjas junto a él.
fields-gateway-of = Entrada { $at } de { $name }
fields-name-of-the-gateway = Nombre de la entrada
fields-name-such-as-road-gate = nombre, como portón del camino
fields-latitude-and-longitude-of-the-gateway = Latitud y longitud de la entrada
fields-remove-the-gateway = Eliminar la entrada
fields-remove-the-gateway-a65 = ¿Eliminar la entrada?
fields-picture-under-the-map = Imagen bajo el mapa
fields-none-yet-a-png-or-jpeg = aún ninguna; PNG o JPEG con el norte arriba
fields-choose-a-picture = Elegir una imagen…
fields-strength = intensidad
fields-strength-of-the-picture = Intensidad de la imagen
fields-take-the-picture-out = Quitar la imagen
fields-north-west-corner = esquina noroeste
fields-south-east-corner = esquina sureste
fields-latitude-and-longitude-of-the = Latitud y longitud de la { $name }
fields-click-it = Marcarla
fields-click-the-on-the-map = Marcar la { $name } en el mapa
fields-from = { $width } desde { $what }
fields-stay-unsprayed = { $date }: { $area } quedan sin aplicar: { $to }

## desk/views/fields/map/pattern.rs

fields-slanting-lines = líneas inclinadas
fields-level-lines = líneas horizontales
fields-lines-slanting-back = líneas inclinadas hacia atrás
fields-upright-lines = líneas verticales
fields-crossing-lines = líneas cruzadas
fields-a-grid = una cuadrícula
fields-plain = liso

## desk/views/fields/map/picture.rs

fields-the-picture-is-not-shown = La imagen no se muestra, { $why }: { $file }
fields-the-picture-could-not-be-read = La imagen no se pudo leer
fields-the-picture-is-not-there-put = La imagen no está ahí; vuelva a ponerla o elija otra: { $shown }
fields-the-picture-could-not-be-read-error-shown = La imagen no se pudo leer ({ $error }): { $shown }
fields-the-picture-is-too-large-save = La imagen es demasiado grande; guárdela con menos puntos: { $shown }
fields-the-picture-is-neither-png-nor = La imagen no es PNG ni JPEG: { $shown }

## desk/views/fields/map/points.rs

fields-it-has-only-points-here-and = aquí solo tiene { $least } puntos, y los necesita

## desk/views/fields/map/sketch.rs

fields-further-part = otra parte
fields-boundary = lindero
fields-hole = hueco
fields-a-way-in = entrada
fields-point-among-the-fields = punto entre los lotes
fields-line-among-the-fields = línea entre los lotes
fields-area-among-the-fields = área entre los lotes
fields-north-west-corner-of-the-picture = esquina noroeste de la imagen
fields-south-east-corner-of-the-picture = esquina sureste de la imagen
fields-the-point-was-not-taken-its = El punto no se tomó: su borde cruzaría el borde del punto { $from } al punto { $to }; un lindero no puede cruzarse a sí mismo
fields-no-point-yet = aún ningún punto
fields-many-points = { $count ->
        [one] { $count } punto
       *[other] { $count } puntos
    }
fields-it-needs-points-or-more = Necesita { $least } puntos o más
fields-it-cannot-be-closed-here-the = Aquí no se puede cerrar: el último borde cruzaría el borde del punto { $from } al punto { $to }
fields-it-was-not-taken = No se tomó: { $why }
fields-the-field-is-gone = El lote ya no está
fields-the-picture-is-gone = La imagen ya no está
fields-the-north-west-corner-must-lie = La esquina noroeste debe quedar al norte y al oeste de la esquina sureste
fields-it-was-not-taken-a-hole = No se tomó: un hueco debe quedar dentro del lote
fields-is-no-place-write-latitude-longitude = "{ $text }" no es un lugar; escriba latitud, longitud: 41.2, -96.4
fields-latitude-longitude-is-off-the-globe = latitud { $y }, longitud { $x } está fuera del globo; la latitud va primero

## desk/views/fields/map/sound.rs

fields-it-needs-three-points-that-do = necesita tres puntos que no estén en un mismo lugar
fields-its-edge-would-cross-itself-like = su borde se cruzaría a sí mismo, como un moño
fields-the-edge-of-the-hole-would = el borde del hueco se cruzaría a sí mismo, como un moño
fields-a-point-is-no-place-on = un punto no es un lugar del globo
fields-a-hole-must-lie-inside-its = un hueco debe quedar dentro de su lote
fields-a-hole-would-cross-another-edge = un hueco cruzaría otro borde o correría a lo largo de él
fields-its-parts-would-cover-one-another = sus partes se cubrirían una a otra
fields-two-of-its-parts-would-share = dos de sus partes compartirían un borde; mueva mejor los puntos de la que ya está

## desk/views/fields/map/tools.rs

fields-move-points = Mover puntos
fields-snap = Ajustar
fields-new-points-go-to-points-and = Los puntos nuevos van a puntos y bordes cercanos
fields-picture = Imagen
fields-fit-all = Ver todo
fields-fit-chosen = Ver lo elegido
fields-choose-a-boundary-first = Elija primero un lote con lindero
fields-zoom-in = Acercar
fields-zoom-out = Alejar
fields-coloured-by = coloreado por
fields-coloured-by-ea9 = Coloreado por
fields-day-of-the-map = Día del mapa
fields-draw = Dibujar…
fields-the-field = el lote
fields-a-new-boundary-in-its-place = Un lindero nuevo en su lugar
fields-a-further-part = Otra parte
fields-a-hole = Un hueco
fields-a-gateway = Una entrada
fields-its-boundary = Su lindero
fields-among-the-fields-water-homes-hives = entre los lotes: agua, casas, colmenas…
fields-a-point = Un punto
fields-a-line = Una línea
fields-an-area = Un área
fields-for-the-pass = para la aplicación
fields-pass-of-the-map = Aplicación del mapa
fields-among-the-fields-45d = Entre los lotes

## desk/views/fields/map/wind.rs

fields-wind-from = viento del { $point }
fields-as-planned-for = como se planeó para el { $date }
fields-wind-from-point-speed = viento del { $point }, { $speed }
fields-forecast = pronóstico, { $date } { $time }

## desk/views/fields/mod.rs

fields-no-field-yet = Aún no hay lotes
fields-add-the-first-one-at-the = Agregue el primero a la izquierda con su nombre y superficie, como "74.6 ac" o "30.2 ha"; después su cultivo y etapa.

## desk/views/fields/neighbours.rs

fields-neighbours-that-matter = Vecinos que importan
fields-what-the-neighbour-is = Qué es el vecino
fields-side-of-the-field = Lado del lote
fields-label-from-the-edge = del borde
fields-distance-from-the-edge = Distancia del borde
fields-none-is-typed-creeks-wells-homes = Ninguno anotado. Aquí van arroyos, pozos, casas, colmenas y cultivos sensibles.
fields-none-is-typed-beside-what-is = Ninguno anotado además de lo dibujado.
fields-at-its-edge = en su borde
fields-from-the-edge = a { $distance } del borde
fields-drawn = { $kind }, { $side }, { $distance }; dibujado
fields-add-a-neighbour = + Agregar un vecino

## desk/views/fields/page.rs

fields-as-typed = Como está anotado
fields-what-it-may-not-get = { $count ->
        [0] Lo que no puede recibir
       *[other] Lo que no puede recibir ({ $count })
    }
fields-what-it-got-got = { $count ->
        [0] Lo que recibió
       *[other] Lo que recibió ({ $count })
    }
fields-as-on-the-evening-of-the = Como en la noche del { $day }, el día del último registro de esta finca.
fields-as-on-day-strftime = Al { $day }, { $time }.
fields-as-typed-from-the-labels-the = { $words } Como está anotado de las etiquetas; rigen la etiqueta y la ley local.
fields-more-stays-unsprayed-than-there-is = queda sin aplicar más de lo que hay; corrija las superficies
fields-of-which-can-be-sprayed = { $ground }; se pueden aplicar { $sprayable }
fields-all-of-it-to-be-sprayed = { $ground }, todo por aplicar

## desk/views/fields/roads.rs

fields-roads-to-other-fields = Caminos a otros lotes
fields-road-to = Camino a { $name }
fields-by-the-yard = por el patio
fields-from-gate-to-gate = de entrada a entrada
fields-take-out-the-road = Quitar el camino a { $name }
fields-none-is-typed-from-field-to = Ninguno anotado: de lote a lote la aspersora pasa por el patio.
fields-add-a-road-to = + Agregar un camino a…
fields-add-a-road-to-another-field = Agregar un camino a otro lote
fields-not-on-the-farm = { $id } (no está en la finca)

## desk/views/fields/typed.rs

fields-variety-and-traits = variedad y rasgos
fields-variety-and-traits-adf = Variedad y rasgos
fields-owner = Propietario
fields-day-of-planting = Día de siembra
fields-harvest-or-grazing-from = cosecha o pastoreo desde
fields-expected-day-of-harvest = Día previsto de cosecha
fields-harvest-intervals-are-judged-against-it = los intervalos a la cosecha se comparan con él
fields-road-from-the-yard = camino desde el patio
fields-road-from-the-yard-to-the = Camino desde el patio hasta la entrada
fields-not-known = no se sabe
fields-to-its-gate-for-the-time = hasta su entrada; para el tiempo que dura una aplicación
fields-section-township-range-or-latitude-longitude = sección, municipio (township), rango (range); o latitud, longitud
fields-location = Ubicación
fields-parcel = Parcela
fields-reference-in-the-aid-claim = referencia en la solicitud de apoyo
fields-next-crop = próximo cultivo
fields-next-crop-8c6 = Próximo cultivo
fields-next-crop-from-the-list = Próximo cultivo de la lista
fields-note-on-the-field = Nota sobre el lote
fields-weeds-that-stand-up-to-a = Malezas que resisten a un grupo
fields-resistant-weed = Maleza resistente { $number }
fields-to-group = al grupo
fields-group-of-resistant-weed = Grupo de la maleza resistente { $number }
fields-take-out-resistant-weed = Quitar la maleza resistente { $number }
fields-none-is-typed-a-group-that = Ninguna anotada. Un grupo al que resiste una maleza de aquí no cuenta como eficaz contra ella.
fields-add-a-resistant-weed = + Agregar una maleza resistente

## desk/views/fields: heads of columns, words before boxes

fields-head-field = lote
fields-head-area = superficie
fields-head-crop = cultivo
fields-head-stage = etapa
fields-head-name = nombre
fields-head-soil = suelo
fields-head-owner = propietario
fields-head-planted = siembra
fields-head-location = ubicación
fields-head-parcel = parcela
fields-head-note = nota
fields-head-gateways = entradas
fields-head-group = grupo
fields-head-groups = grupos
fields-head-side = lado
fields-head-none = ninguna
fields-take-out = Quitar
fields-take-out-what = Quitar { $what }

## desk/views/fields/map/pattern.rs

fields-close-slanting-lines = líneas inclinadas juntas
fields-close-level-lines = líneas horizontales juntas
fields-close-lines-slanting-back = líneas inclinadas hacia atrás, juntas
fields-close-upright-lines = líneas verticales juntas
fields-close-crossing-lines = líneas cruzadas juntas
fields-a-close-grid = una cuadrícula apretada
