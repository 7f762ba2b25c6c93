## desk/find/panel.rs

find-a-field-pass-product-day-command = un lote, una aplicación, un producto, un día, un comando o lo que explica la guía…
find-find-anything = Buscar cualquier cosa
find-type-some-letters-down-and-up = Escriba algunas letras; Abajo y Arriba eligen, Enter va ahí, Escape sale.
find-so-far = { " " }hasta ahora
find-nothing-has-these-words-so-far = Nada tiene estas palabras hasta ahora.
find-nothing-has-these-words = Nada tiene estas palabras.
find-found-of-each-kind-the-best = { $count } encontrados{ $not_yet }; de cada clase se listan los mejores { $listed }
find-found = { $count } encontrados{ $not_yet }
