## desk/guide/mod.rs

guide-guide = Guía
guide-guide-heading = Guía: { $heading }

## desk/guide/pages.rs

guide-the-evening-before = La víspera
guide-the-farm = La finca
guide-after-spraying = Después de aplicar
guide-your-file = Su archivo
guide-the-numbers = Los números

## desk/guide/panel.rs

guide-back = Atrás
guide-back-in-the-guide = Atrás en la guía
guide-all-pages = Todas las páginas
guide-put-it-away = Cerrarla
guide-put-the-guide-away = Cerrar la guía
guide-find-in-the-guide = Buscar en la guía
guide-nothing-in-the-guide-has-all = Nada en la guía tiene todas estas palabras.
guide-places-have-all-these-words = { $many ->
        [one] { $many } lugar tiene todas estas palabras
       *[other] { $many } lugares tienen todas estas palabras
    }
guide-on = Sobre { $view }
guide-on-what-is-shown = { $title }, sobre lo que se muestra

## desk/guide/keyboard.rs

guide-find-anything-looks-for-parts-of = { "\u000A" }**Buscar cualquier cosa…** busca partes de palabras en lotes, aplicaciones, productos, aguas, aspersoras, registros por su día, comandos y esta{ "\u000A" }guía; los acentos y las mayúsculas no importan. Mientras escribe en una casilla, deshacer y rehacer son los de la casilla. Escape, en una{ "\u000A" }pregunta al pie de la ventana, es la respuesta que no cambia nada.{ "\u000A" }
guide-every-point-on-the-map-can = { "\u000A" }Cada punto del mapa se puede escribir en cambio como latitud y longitud.{ "\u000A" }{ "\u000A" }## Aspecto{ "\u000A" }{ "\u000A" }El menú **Aspecto** tiene **Claro**, **Oscuro** y tamaños de 80 a 200 %. En una ventana pequeña, o a un tamaño grande, una lista y su página{ "\u000A" }no están una junto a otra: **Lista**, en la barra, muestra la una o la otra. **Menos movimiento** pone en su lugar de una vez lo que se abre y se{ "\u000A" }desplaza; está activado donde su sistema lo pide a los programas.{ "\u000A" }
guide-keyboard = Teclado
guide-everything-is-reached-with-tab = A todo se llega con Tab, y Mayús+Tab regresa. Enter o Espacio oprime lo que tiene el anillo color latón. En una Mac, Cmd hace las veces de{ "\u000A" }Ctrl.
guide-everywhere = En todas partes
