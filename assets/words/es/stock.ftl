## core/stock/counting.rs

stock-a-count-of-holds-which-is = Vale un conteo del { $later }, que es posterior; escriba un día posterior o deshaga aquel
stock-some-containers-are-counted-by-weight = Algunos envases se cuentan por peso y otros por volumen; escriba la densidad en la bodega para sumarlos
stock-the-product-is-not-in-the = El producto no está en la bodega
stock-it-differs-from-what-the-accounts = Difiere de lo que daban las cuentas; diga por qué

## core/stock/doubts.rs

stock-the-record = el registro "{ $name }"
stock-a-record = un registro
stock-a-movement = un movimiento
stock-of-is-the-first = { $record } del { $date } es el primero
stock-up-to-more-than-was-counted = { $name }: { $who ->
        [records] los registros usan
       *[other] salieron
    } hasta { $most } más de lo contado y comprado para entonces; lo que entró después lo compensa; { $first }
stock-look-whether-a-purchase-is-dated = Vea si una compra tiene una fecha demasiado tardía, o falta.
stock-more-than-was-counted-and-bought = { $name }: { $who ->
        [records] los registros usan
       *[other] salieron
    } { $now } más de lo contado y comprado: falta una compra o un conteo; { $first }
stock-type-in-the-shed-what-was = Anote en la bodega lo que se compró, o cuente lo que hay; o corrija el registro.
stock-of-takes-from-lot-of-which = { $name }: { $record } del { $date } toma de la partida { $lot }, de la que nada se contó ni se compró
stock-mend-the-lot-there-or-on = Corrija la partida allí, o en el conteo o la compra; hasta entonces se toma de otras partidas.
stock-of-takes-more-of-lot-than = { $name }: { $record } del { $date } toma { $over } más de la partida { $lots } de lo que había; eso se toma de otras partidas
stock-add-the-other-lot-there-or = Agregue allí la otra partida, o corrija el conteo o la compra.
stock-the-count = el conteo
stock-of = { $record } del { $date }
stock-has-so-what-is-on-hand = { $name }: { $who } tiene { $amount }, { $kind ->
        [liquid] un peso de un líquido
       *[dry] un volumen de un producto seco
    }, así que no se conocen las existencias
stock-type-its-density-in-the-shed = Escriba su densidad en la bodega, o corrija la cantidad.
stock-more-empty-of-were-given-back = { $name }: se devolvieron { $count } envases vacíos más ({ $kind } de { $size }) de los que se vaciaron desde el conteo
stock-where-they-are-older-than-the = Donde son más antiguos que el conteo, cuente también los vacíos.
stock-if-they-were-poured-out-write = Si se tiraron, anote en la bodega qué parte salió de otra manera.
stock-type-the-spray-volume-used-on = Anote en el registro el volumen de caldo usado.
stock-of-says-that-were-left-over-and-went = { $name }: { $who } del { $date } dice que sobraron { $left }, que se dan por salidos con un registro posterior de la aplicación
stock-of-says-that-were-left-over = { $name }: { $who } del { $date } dice que sobraron { $left }, pero no cuánto caldo se aplicó al terreno, así que no se descuenta lo que sobró
stock-were-bought-on-the-day-of = { $name }: se compraron { $amount } el { $date }, el día del conteo, y se le suman; ¿ya estaban contados?
stock-if-they-were-counted-date-the = Si estaban contados, ponga a la compra la fecha del día anterior; si no, todo está bien.
stock-took-from-this-shed-for-customers = { $name }: { $records } { $records ->
        [one] registro tomó
       *[other] registros tomaron
    } { $amount } de esta bodega para clientes
stock-where-a-customer-brought-the-product = Donde un cliente trajo el producto, anote en la bodega que entró.
stock-no-day-of-a-count-is = { $name }: no está anotado el día de un conteo, así que los registros no descuentan nada y las compras no suman nada
stock-type-the-day-of-the-count = Escriba el día del conteo para que se descuenten los registros, o cuente de nuevo.

## core/stock/ledger.rs

stock-with-in-of-spray-left-over = con { $over } en { $spray } de caldo sobrante
stock-without-what-was-left-over-which = sin lo que sobró, que no se puede saber
stock-what-was-left-over-goes-on = lo que sobró continúa en un registro posterior de la aplicación
stock-for-a-customer-from-this-shed = para un cliente, de esta bodega
stock-for-from-this-shed = para { $name }, de esta bodega

## core/stock/needs.rs

stock-its-spray-volume-over-ground-is = su volumen de caldo por superficie no está anotado
stock-it-has-no-ground-to-spray = no tiene terreno que aplicar
stock-is-not-in-the-shed = "{ $product }" no está en la bodega

## core/stock/shopping.rs

stock-show-kind-of-size = { $show } { $kind } de { $size }
stock-type-in-the-shed-what-it = anote en la bodega en qué se vende
stock-its-containers-are-too-small-for = sus envases son demasiado pequeños para tanto; revise sus tamaños en la bodega
stock-look-at-the-sizes-of-its = revise los tamaños de sus envases en la bodega

## core/stock/short.rs

stock-none-on-hand = no hay existencias
stock-on-hand = hay { $there } en existencia
stock-for = { $amount } para { $name }
stock-none-after-what-earlier-passes = no hay existencias después de lo que toman aplicaciones anteriores ({ $held } menos { $takers })
stock-on-hand-after-what-earlier-passes = hay { $there } en existencia después de lo que toman aplicaciones anteriores ({ $held } menos { $takers })
stock-come-in-on-or-later = { $after }; { $amount } entran el { $date } o después
stock-buy-lower-the-area-or-type = Compre { $purchase }, reduzca la superficie, o anote en la bodega lo que se compró o contó.
stock-buy-or-more-lower-the-area = Compre { $short } o más, reduzca la superficie, o anote en la bodega lo que se compró o contó; { $why }.
stock-this-pass-needs = { $name }: esta aplicación necesita { $needed }; { $after }
stock-what-is-left-of-this-pass-needs = { $name }: lo que queda de esta aplicación necesita { $needed }; { $after }

## core/stock/walk.rs

stock-kind-of-size = { $kind } de { $size }
stock-count-kind-of-size = { $count } { $kind } de { $size }
