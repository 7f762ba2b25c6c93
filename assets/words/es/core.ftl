## core/finding.rs

core-note = Nota
core-check = Revisar
core-stop = Alto
core-label-of = etiqueta de { $source }
core-what-this-farm-keeps-to = a lo que se atiene esta finca
core-common-practice-no-source = práctica común, sin fuente
core-arithmetic = aritmética
core-label-of-as-typed = etiqueta de { $source }, según lo anotado
core-as-typed = { $source }, según lo anotado

## core/plan.rs

core-not-judged-pairs = antagonismo y compatibilidad más allá de los pares publicados
core-not-judged-drift = deriva del caldo, y franjas hacia lo que no está dibujado en el mapa
core-spray-volume = Volumen de caldo
core-is-in-the-mix-at-a = { $name } está en la mezcla con una dosis de cero
core-type-its-rate-or-take-it = Escriba su dosis, o sáquelo de la mezcla.
core-the-pass-has-no-field-yet = La aplicación todavía no tiene lote
core-choose-its-fields-in-the-heading = Elija sus lotes en la línea del encabezado.
core-ground-to-spray = Terreno por aplicar
core-the-pass-goes-to-field-which = La aplicación va al lote "{ $id }", que no está en la finca
core-choose-another-field-or-add-it = Elija otro lote, o agréguelo en Lotes.
core-stands-twice-in-the-pass = { $name } está dos veces en la aplicación
core-take-one-of-them-out = Quite uno de ellos.
core-of-are-planned-can-be-sprayed = Están planeados { $area } de { $name }; se pueden aplicar { $sprayable }
core-the-share-that-the-bands-cover = × { $share }, la parte que cubren las bandas
core-the-fields-of-the-pass-have = Los lotes de la aplicación no tienen terreno por aplicar
core-type-their-areas-in-fields = Escriba sus superficies en Lotes.
core-in-all = en total
core-sprayed-in-bands-of-are-treated = Se aplica en bandas: se tratan { $total } de { $covered }, { $show_whole } del terreno; las dosis y el volumen de caldo valen para las bandas
core-read-on-the-label-whether-its = Lea en la etiqueta si su dosis es para la banda o para todo el lote.
core-this-pass-and-are-parts-of = { $name }: esta aplicación y { $names } son partes de una sola y juntas cubren { $whole }; se pueden aplicar { $sprayable }
core-lower-the-ground-of-a-part = Baje el terreno de una parte, o corrija la superficie del lote; una segunda aplicación se planea como una nueva.
core-stay-unsprayed-more-than-its = { $name }: quedan sin aplicar { $unsprayed }, más que sus { $area }
core-mend-the-areas-in-fields = Corrija las superficies en Lotes.
core-no-rig-is-chosen-so-the = No hay aspersora elegida, así que las cargas no se pueden calcular
core-choose-the-rig-in-the-heading = Elija la aspersora en la línea del encabezado.
core-the-pass-takes-rig-which-is = La aplicación usa la aspersora "{ $rig }", que no está en la bodega
core-choose-another-rig-or-add-it = Elija otra aspersora, o agréguela en la bodega.
core-what-the-tank-holds-is-not-typed = No está anotado cuánto cabe en el tanque de { $name }, así que no se puede calcular ninguna carga
core-type-what-the-tank-holds = Escriba cuánto cabe lleno hasta su marca, en la bodega, en Aspersoras.
core-the-spray-volume-over-ground-is = El volumen de caldo por superficie no está anotado
core-open-the-rig-in-the-heading = Abra la aspersora en la línea del encabezado y escríbalo, como "15 gal/ac" o "140 L/ha".
core-the-time-to-spray-is-not = No se conoce el tiempo de aplicación: a { $name } le falta la velocidad, el ancho de la barra o la eficiencia de campo
core-type-them-in-the-shed = Escríbalos en la bodega.
core-time-to-spray = Tiempo de aplicación
core-filling-and-road-are-not-counted = el llenado y el camino no se cuentan
core-the-tank-mix-is-empty = La mezcla de tanque está vacía
core-add-its-products-with-their-rates = Agregue sus productos con sus dosis.
core-the-mix-holds-which-is-not = La mezcla contiene "{ $product }", que no está en la bodega
core-take-it-out-or-add-the = Sáquelo, o agregue el producto en la bodega.
core-stands-twice-in-the-mix-only = { $name } está dos veces en la mezcla; solo cuenta el primero
core-take-one-of-the-two-out = Saque uno de los dos.
core-the-price-of-is-per-so = { $which ->
        [yes] El precio de { $name } es por masa, pero es líquido, así que su costo no se cuenta
       *[no] El precio de { $name } es por volumen, pero es seco, así que su costo no se cuenta
    }
core-mend-the-price-in-the-shed = Corrija el precio en la bodega.

## core/progress.rs

core-it-was-cancelled = se canceló

## core/words.rs

core-and = { $first } y { $last }
core-or = { $first } o { $last }
core-to = { $first } a { $last }

## core/begin.rs

core-new-farm = Finca nueva
core-new-rig = Aspersora nueva
core-new-water = Agua nueva
core-new-product = Producto nuevo
