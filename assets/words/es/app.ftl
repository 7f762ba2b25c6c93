## desk/app.rs

app-verifying-the-seals-of-the-records = Se verifican los sellos de los registros
app-the-seals-were-not-verified = No se verificaron los sellos
app-an-amendment-is-begun-here-keep = Aquí hay una enmienda empezada; primero consérvela o deje el registro como estaba
app-the-farm-is-still-being-read = La finca todavía se está leyendo; hágalo cuando esté aquí
app-could-not-be-taken-what-it = No se pudo tomar { $offer }: aquello a lo que se refería ya no existe o está firmado
app-tankard = { $which ->
        [yes] { $name } (sin guardar) – Tankard
       *[no] { $name } – Tankard
    }
app-record = registro
app-records = registros

## desk/app/backups.rs

app-backups = Copias de respaldo
app-back-to-the-farm = Volver a la finca
app-this-farm-was-never-saved-from = Esta finca nunca se ha guardado. A partir de la segunda vez que se guarde, se conserva lo que el archivo tenía antes.
app-reading-the-backup = Se lee la copia de respaldo { $path }
app-the-backup-was-not-read = No se leyó la copia de respaldo
app-there-is-no-backup-yet-from = Todavía no hay copia de respaldo. A partir de la segunda vez que se guarde, se conserva lo que el archivo tenía antes.
app-it-is-being-read = Se está leyendo…
app-read-it = Leerla
app-it-cannot-be-read = No se puede leer: { $why }
app-it-holds-what-is-open-here = Contiene lo que está abierto aquí
app-what-it-has-otherwise-than-what = En qué difiere de lo que está abierto aquí
app-restore-this-backup = Restaurar esta copia
app-it-takes-the-place-of-what = Ocupa el lugar de lo que está abierto; con deshacer vuelve lo anterior. El archivo queda como está hasta que usted guarde. Las tarjetas emitidas desde entonces se conservan, porque el papel ya salió.
app-is-open-now-undo-takes-that = Ahora está abierto: { $words }; con deshacer vuelve lo anterior, y el archivo cambia cuando usted guarde
app-keep-the-latest = Conservar las últimas
app-how-many-of-the-latest-backups = cuántas de las últimas copias de respaldo se conservan
app-and-the-last-of-each-day = y la última de cada día durante
app-for-how-many-days-the-last = durante cuántos días se conserva la última copia de un día
app-together-they-take-beyond-the-oldest = Juntas ocupan { $all }; por encima de { $most } se borran las más antiguas.
app-at-the-next-save-the-others = La próxima vez que se guarde se borran las demás. Un archivo que usted mismo puso en la carpeta se queda.
app-show-the-folder = Mostrar la carpeta
app-the-folder-was-not-shown = No se mostró la carpeta: { $error }: { $folder }
app-each-save-keeps-what-the-file = Cada vez que se guarda, se conserva lo que el archivo tenía antes.
app-backup-of = copia de respaldo de { $moment }, { $size }
app-the-file-before-the-last-save = El archivo antes de guardarse por última vez, de un Tankard anterior
app-the-farm-as-it-was-before = La finca como estaba antes de guardarse el { $made }
app-no-moment-known = momento desconocido
app-bytes = { $bytes } bytes
app-kb = { $bytes } kB
app-days = días

## desk/app/bar.rs

app-for-reading = solo lectura
app-not-saved = sin guardar
app-look = Aspecto
app-now-at = ahora al { $zoom_factor } %
app-farm = Finca
app-opened-last = Abiertas hace poco
app-saving = guardando…

## desk/app/days.rs

app-looking-for-the-best-order-of = Se busca el mejor orden del día
app-the-order-of-the-day-was = No se terminó de buscar el orden del día
app-order-tried = orden probado
app-orders-tried = órdenes probados

## desk/app/foot.rs

app-until-then-the-farm-has-there = { $name }: { $problem }. Hasta entonces la finca tiene ahí { $instead }.
app-more-boxes-unread = { $count ->
    [one] Hay una casilla más que no se entiende.
   *[other] Hay { $count } casillas más que no se entienden.
}
app-drop-what-was-typed = Descartar lo escrito
app-exists = { $path } ya existe
app-write-over-it = Reemplazarlo
app-choose-another-name = Elegir otro nombre
app-cancel = Cancelar
app-holds-work-that-is-not-saved = { $cards ->
        [0] { $name } tiene trabajo sin guardar
        [one] { $name } tiene trabajo sin guardar y { $cards } tarjeta emitida
       *[other] { $name } tiene trabajo sin guardar y { $cards } tarjetas emitidas
    }
app-save-it = Guardarlo
app-let-it-go = Descartarlo
app-stay-here = Quedarse aquí
app-close-this-line = Cerrar esta línea
app-nothing = nada
app-exists-and = { $path } ya existe, y { $other }

## desk/app/job.rs

app-the-work-on-it-ended-without = el trabajo terminó sin respuesta{ $said }; inténtelo otra vez

## desk/app/locking.rs

app-this-machine = esta máquina
app-the-farm-was-not-taken-over = No se tomó el control de la finca: { $error }
app-reading-again = Se lee otra vez { $path }
app-the-farm-was-not-opened-again = No se volvió a abrir la finca
app-the-farm-is-yours-to-save = Ahora usted puede guardar la finca
app-the-farm-is-yours-to-save-now-the-file = Ahora usted puede guardar la finca; mientras tanto se cambió el archivo, así que al guardar se pregunta cuál vale
app-the-file-was-changed-by-something = Otro programa cambió el archivo desde que se abrió; al guardar se preguntará cuál vale
app-the-farm-was-taken-over = Otro tomó el control de la finca: { $other }
app-take-it-over-if-you-are = Tome el control si está seguro de que nadie trabaja en ella allá
app-two-who-save-the-same-farm = Dos que guardan la misma finca pierden el trabajo uno del otro: tome el control solo si nadie trabaja en ella allá
app-here-it-is-open-for-reading = { $other }; aquí está abierta solo para leer
app-keep-reading = Seguir leyendo
app-take-it-over = Tomar el control

## desk/app/opening.rs

app-the-farm-was-not-opened = No se abrió la finca
app-new-farm = Finca nueva
app-entry = entrada
app-entries = entradas

## desk/app/recovery.rs

app-what-was-being-saved = lo que se estaba guardando
app-the-work-that-was-not-saved = el trabajo que no se guardó
app-the-backup-of = la copia de respaldo de { $moment }
app-reading-what-was-not-saved-before = Se lee lo que antes no se guardó
app-work-that-was-not-saved-before = No se leyó el trabajo que antes no se guardó
app-work-on-was-not-saved-when = El trabajo en { $path } no se guardó la última vez que estuvo abierto; ábralo desde el menú Finca
app-unsaved-work-is-only-in-memory = El trabajo sin guardar está solo en la memoria: { $error }. Se intentará otra vez; guarde para estar seguro
app-a-save-was-ended-before-it = Guardar se interrumpió antes de terminar; lo que se estaba guardando está completo
app-work-from-an-earlier-run-was = Se encontró trabajo de una sesión anterior que nunca se guardó
app-the-file-has-been-saved-since = ; desde entonces el archivo se guardó desde otro lugar
app-more-to-look-at-after-this = Después de esto hay { $count } más por ver
app-take-it-up = Retomarlo
app-drop-it = Descartarlo
app-what-it-has-otherwise-than-what-is-open = En qué difiere de lo que está abierto
app-it-is-open-now-undo-brings = Ahora está abierto; con deshacer vuelve lo que estaba abierto, y el archivo cambia cuando usted guarde
app-the-farm-was-not-opened-why = No se abrió la finca: { $why }
app-open = Abrir { $copy }
app-the-file-stays-as-it-is = El archivo queda como está hasta que usted guarde; entonces pasa a las copias de respaldo
app-leave-it = Dejarlo
app-reading = Se lee { $what }
app-the-copy-was-not-opened = No se abrió la copia
app-this-is-save-it-to-put = Esto es { $what }; guárdelo para ponerlo en el lugar del archivo
app-the-work-of-that-was-not-saved = el trabajo de { $moment } que no se guardó
app-work-from-an-earlier-run-was-kept = Se encontró trabajo de una sesión anterior que nunca se guardó, conservado el { $moment }

## desk/app/saving.rs

app-the-farm-was-not-saved-take = No se guardó la finca: { $words }. Tome el control, o guárdela con otro nombre
app-the-farm-is-still-being-saved = La finca todavía se está guardando; guárdela con otro nombre cuando eso termine
app-or-save-under-another-name = { $why }, o guárdela con otro nombre
app-the-farm-was-not-saved-nothing = No se guardó la finca: { $why }. No se pierde nada: su trabajo está abierto aquí
app-saved-but-what-the-file-held = Guardada, pero no se pudo conservar lo que el archivo tenía antes: { $remark }
app-saved-as = Guardada como { $path }
app-saved = Guardada
app-was-changed-by-something-else-it = Otro programa cambió { $file }; se está leyendo
app-is-not-there-any-more-moved = { $file } ya no está ahí: se movió, se borró, o estaba en una memoria o carpeta compartida que se desconectó
app-nothing-is-lost-your-work-is = No se pierde nada: su trabajo está abierto aquí
app-save-it-there-again = Guardarla otra vez ahí
app-was-changed-by-something-else-and = Otro programa cambió { $file } y no se puede leer: { $why }
app-what-stands-there-goes-to-the = Lo que está ahí pasa a las copias de respaldo antes de que la mía ocupe su lugar
app-was-changed-by-something-else-since = Otro programa cambió { $file } desde que se abrió
app-theirs-goes-to-the-backups-if = Si conserva su versión, la otra pasa a las copias de respaldo; si toma la otra, con deshacer vuelve la suya
app-take-theirs = Tomar la otra
app-what-mine-has-otherwise-than-theirs = En qué difiere la mía de la otra
app-theirs-is-open-now-undo-brings = Ahora está abierta la otra; con deshacer vuelve la suya
app-the-farm-was-not-saved-kept-in = No se guardó la finca: { $why }. No se pierde nada: su trabajo está abierto aquí y se conserva en { $side }
app-keep-mine = Conservar la mía
app-save-mine-as-another-file = Guardar la mía como otro archivo…

## desk/app/work.rs

app-reading-path = Se lee { $path }
app-writing = Se escribe { $path }
app-it-was-cancelled = { $failed }: se canceló
app-look-at-it-in = { $what }; véalo en { $view }
app-as-the-farm-was-when-you = , como estaba la finca cuando usted lo pidió
app-cancel-words = Cancelar: { $words }
app-done-of-count = { $done } de { $count }
app-min-s = { $minutes } min { $seconds } s
app-ending = terminando…
app-it-was-cancelled-and-no-file = { $failed }: se canceló, y no queda ningún archivo
app-goes-on-the-window-closes = Sigue en curso: { $words }; la ventana se cierra cuando termine. Cancélelo para no esperar más
app-goes-on-the-farm-stays-open = Sigue en curso: { $words }; la finca queda abierta hasta entonces, y lo que usted pidió sigue cuando termine. Cancélelo para no esperar más

## desk/command.rs

app-fields = Lotes
app-tank-loads = Cargas de tanque
app-season-log = Bitácora de la temporada
app-shed = Bodega
app-open-7bf = Abrir…
app-open-a-copy-of-the-demo = Abrir una copia de la finca de demostración
app-save = Guardar
app-save-as = Guardar como…
app-name-units-paper = Nombre, unidades, papel…
app-backups-770 = Copias de respaldo…
app-import-boundaries = Importar linderos…
app-export-boundaries-as-geojson = Exportar linderos como GeoJSON…
app-record-the-chosen-pass-as-sprayed = Registrar la aplicación elegida como se aplicó
app-export-the-chosen-pass-as-task = Exportar la aplicación elegida como datos de tarea…
app-undo = Deshacer
app-redo = Rehacer
app-nothing-to-undo = No hay nada que deshacer
app-nothing-to-redo = No hay nada que rehacer
app-cancel-what-is-being-done = Cancelar lo que se está haciendo
app-nothing-is-being-done = No se está haciendo nada
app-larger = Más grande
app-smaller = Más pequeño
app-at-100 = Al 100 %
app-light = Claro
app-dark = Oscuro
app-guide = Guía
app-close = Cerrar

## desk/files.rs

app-open-a-farm = Abrir una finca
app-open-0e9 = Abrir
app-save-the-farm-as = Guardar la finca como
app-save-the-load-cards-as = Guardar las tarjetas de carga como
app-save-the-evening-sheet-as = Guardar la hoja de la víspera como
app-save-the-jar-test-as = Guardar la prueba del frasco como
app-save-the-season-review-as = Guardar el repaso de la temporada como
app-save-the-records-as = Guardar los registros como
app-save-the-record-book-as = Guardar el libro de registros como
app-save-the-sheet-for-workers-as = Guardar la hoja para los trabajadores como
app-read-records-from = Leer registros de
app-read = Leer
app-read-a-forecast-from = Leer un pronóstico de
app-read-boundaries-from = Leer linderos de
app-save-the-boundaries-as = Guardar los linderos como
app-save-the-task-data-as = Guardar los datos de tarea como
app-take-a-picture-for-the-map = Usar una imagen para el mapa de
app-take = Usar
app-tankard-farm = Finca de Tankard
app-boundaries = Linderos
app-task-data-iso-11783-10 = Datos de tarea (ISO 11783-10)
app-png-and-jpeg = PNG y JPEG
app-csv-and-other-tables-of-text = CSV y otras tablas de texto
app-waiting-for-the-systems-file-dialog = Se espera el diálogo de archivos del sistema
app-type-the-path-instead = Escribir la ruta en su lugar
app-path-of-the-file = Ruta del archivo

## desk, menú y mandos

app-list-in-place-of-the-page = Lista en lugar de la página
app-find-anything = Buscar cualquier cosa…
app-keys = Teclas
app-list = Lista
app-less-motion = Menos movimiento
app-ctrl = Ctrl+
app-alt = Alt+
app-shift = Mayús+
app-left = Izquierda
app-right = Derecha
app-up = Arriba
app-down = Abajo
app-page-up = Re Pág
app-page-down = Av Pág
app-key-backspace = Retroceso
app-key-delete = Supr
app-key-end = Fin
app-key-equals = Igual
app-key-home = Inicio
app-key-minus = Menos
app-key-period = Punto
app-key-plus = Más
app-key-space = Espacio
app-or = { $all } o { $last }

## desk/app/first_steps.rs

app-name-units-and-place-come-first = Primero el nombre, las unidades y el lugar: de ellos dependen las cantidades, el sol y el clima.
app-type-the-name = Escribir el nombre
app-where-the-farm-lies-its-latitude = Dónde está la finca: su latitud, como 41.2.
app-type-the-latitude = Escribir la latitud
app-where-the-farm-lies-its-longitude = Dónde está la finca: su longitud, como -96.4; al oeste de Greenwich es menor que cero.
app-type-the-longitude = Escribir la longitud
app-the-time-zone-of-the-farm = La zona horaria de la finca, como America/Chicago o Europe/Berlin.
app-type-the-time-zone = Escribir la zona horaria
app-your-first-field-typed-or-from = Su primer lote, escrito o de un archivo de linderos.
app-type-a-field = Escribir un lote
app-your-first-field-its-name = Su primer lote: su nombre.
app-type-its-name = Escribir su nombre
app-your-first-field-its-area-then = Su primer lote: su superficie, y luego el cultivo y la etapa.
app-type-its-area = Escribir su superficie
app-your-sprayer-its-tank-its-boom = Su aspersora: su tanque, su barra y a qué velocidad va.
app-add-the-sprayer = Agregar la aspersora
app-your-sprayer-its-name-the-tank = Su aspersora: su nombre; después el tanque hasta su marca, la barra y las boquillas.
app-your-sprayer-what-its-tank-holds = Su aspersora: cuánto cabe en su tanque lleno hasta su marca.
app-type-the-tank = Escribir el tanque
app-your-sprayer-how-wide-its-boom-is = Su aspersora: el ancho de trabajo de su barra.
app-type-the-boom = Escribir la barra
app-your-sprayer-its-nozzle-set = Su aspersora: su juego de boquillas, de la tabla del fabricante.
app-add-a-nozzle-set = Agregar un juego de boquillas
app-the-water-that-you-spray-with = El agua con que aplica, según el análisis del laboratorio.
app-add-the-water = Agregar el agua
app-your-water-calcium-and-magnesium-or = Su agua: calcio y magnesio, o su dureza. Sin análisis, siga con la aplicación.
app-type-its-calcium = Escribir su calcio
app-your-first-product-typed-in-the = Su primer producto, escrito en el orden de su etiqueta.
app-add-a-product = Agregar un producto
app-your-first-product-its-name-as = Su primer producto: su nombre como está en el panel frontal.
app-your-first-product-its-actives = Su primer producto: tipo, formulación e ingrediente activo, como están en el panel frontal.
app-type-its-active = Escribir su activo
app-your-first-product-its-rate-and = Su primer producto: su dosis, y lo demás que dicen sus instrucciones.
app-type-its-rate = Escribir su dosis
app-your-first-pass-which-fields-get = Su primera aplicación: qué lotes reciben qué productos.
app-plan-a-pass = Planear una aplicación
app-your-first-pass-which-fields-it = Su primera aplicación: por qué lotes va.
app-choose-the-fields = Elegir los lotes
app-your-first-pass-which-water-it = Su primera aplicación: qué agua lleva.
app-choose-the-water = Elegir el agua
app-your-first-pass-which-sprayer-it = Su primera aplicación: qué aspersora usa.
app-choose-the-sprayer = Elegir la aspersora
app-your-first-pass-how-much-spray = Su primera aplicación: cuánto caldo por superficie.
app-type-the-spray-volume = Escribir el volumen de caldo
app-your-first-pass-what-goes-into = Su primera aplicación: qué va en el tanque.
app-add-a-product-to-it = Agregarle un producto
app-your-first-pass-the-rate-of = Su primera aplicación: la dosis de cada producto.
app-type-the-rate = Escribir la dosis
app-your-first-load-card-look-at = Su primera tarjeta de carga: mírela y luego emítala.
app-go-to-the-card = Ir a la tarjeta
app-type-it-anew = Escribirlo de nuevo
app-your-first-load-card-waits-for = Su primera tarjeta de carga espera por un Alto; un clic en él lleva a lo que señala.
app-your-first-load-card-waits-for-stops-stops-a = Su primera tarjeta de carga espera por { $stops } Altos; un clic en uno lleva a lo que señala.
app-go-to-the-pass = Ir a la aplicación
app-step-of = Paso { $number } de { $all }
app-hide = Ocultar
app-menu-farm-shows-it-again = El menú Finca lo vuelve a mostrar
app-hide-the-first-steps = Ocultar los primeros pasos
app-from-a-file = De un archivo…
app-your-first-load-card-is-issued = Su primera tarjeta de carga está emitida. Una vez aplicada, regístrela con "Registrar como se aplicó", junto a las páginas de la aplicación; la siguiente va igual. La guía (F1) cuenta qué más hay.
app-good = Bien
app-good-put-the-first-steps-away = Bien, guardar los primeros pasos
app-show = Mostrar

## desk/app/start.rs

app-look-around-in-the-demo-farm = Mirar la finca de demostración
app-where-would-you-like-to-begin = ¿Por dónde quiere empezar?
app-an-invented-farm-with-everything-in = Una finca inventada con de todo: cambie lo que quiera, nada se conserva si no lo guarda.
app-begin-my-own-farm = Empezar mi propia finca
app-an-empty-farm-and-a-line = Una finca vacía y una línea que dice qué sigue hasta que se imprime su primera tarjeta de carga.
app-open-a-file = Abrir un archivo…
app-a-farm-that-you-or-somebody = Una finca que usted u otra persona guardó.
app-the-label-and-local-law-always = Rigen siempre la etiqueta y la ley local. Tankard calcula con lo que usted escribe y no necesita red.

## desk/command.rs

app-what-comes-next = Qué sigue
app-first-steps-of-a-new-farm = Primeros pasos de una finca nueva

## desk/app/about.rs

app-about-tankard = Acerca de Tankard
app-tankard-version = Tankard { $version }
app-licence-of-tankard = Licencia de Tankard
app-what-it-is-built-from = De qué está hecho
app-licences-of-these = Licencias de estos
