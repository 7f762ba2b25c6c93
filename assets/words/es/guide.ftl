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
