## core/stock/counting.rs

stock-a-count-of-holds-which-is = A count of { $later } holds, which is later; type a later day or undo that one
stock-some-containers-are-counted-by-weight = Some containers are counted by weight and some by volume; type the density in the shed to add them up
stock-the-product-is-not-in-the = The product is not in the shed
stock-it-differs-from-what-the-accounts = It differs from what the accounts had come to; say why

## core/stock/doubts.rs

stock-the-record = the record "{ $name }"
stock-a-record = a record
stock-a-movement = a movement
stock-of-is-the-first = { $record } of { $date } is the first
stock-up-to-more-than-was-counted = { $name }: { $who ->
        [records] records use
       *[other] more went out:
    } up to { $most } more than was counted and bought by then; what came in later makes up for it; { $first }
stock-look-whether-a-purchase-is-dated = Look whether a purchase is dated too late, or is missing.
stock-more-than-was-counted-and-bought = { $name }: { $who ->
        [records] records use
       *[other] more went out:
    } { $now } more than was counted and bought: a purchase or a count is missing; { $first }
stock-type-in-the-shed-what-was = Type in the shed what was bought, or count what is there; or mend the record.
stock-of-takes-from-lot-of-which = { $name }: { $record } of { $date } takes from lot { $lot }, of which nothing was counted or bought
stock-mend-the-lot-there-or-on = Mend the lot there, or on the count or the purchase; until then it is taken from other lots.
stock-of-takes-more-of-lot-than = { $name }: { $record } of { $date } takes { $over } more of lot { $lots } than there was of it; that is taken from other lots
stock-add-the-other-lot-there-or = Add the other lot there, or mend the count or the purchase.
stock-the-count = the count
stock-of = { $record } of { $date }
stock-has-so-what-is-on-hand = { $name }: { $who } has { $amount }, { $kind ->
        [liquid] a weight of a liquid
       *[dry] a volume of a dry product
    }, so what is on hand is not known
stock-type-its-density-in-the-shed = Type its density in the shed, or mend the amount.
stock-more-empty-of-were-given-back = { $name }: { $count } more empty { $kind } of { $size } were given back than were emptied since the count
stock-where-they-are-older-than-the = Where they are older than the count, count the empty ones too.
stock-if-they-were-poured-out-write = If they were poured out, write down in the shed what of it went out otherwise.
stock-type-the-spray-volume-used-on = Type the spray volume used on the record.
stock-of-says-that-were-left-over-and-went = { $name }: { $who } of { $date } says that { $left } were left over, which are taken to have gone out with a later record of the pass
stock-of-says-that-were-left-over = { $name }: { $who } of { $date } says that { $left } were left over, but not how much spray went on the ground, so what of it was left over is not taken off
stock-were-bought-on-the-day-of = { $name }: { $amount } were bought on { $date }, the day of the count, and are added to it; were they counted already?
stock-if-they-were-counted-date-the = If they were counted, date the purchase to the day before; if not, all is right.
stock-took-from-this-shed-for-customers = { $name }: { $records } { $records ->
        [one] record
       *[other] records
    } took { $amount } from this shed for customers
stock-where-a-customer-brought-the-product = Where a customer brought the product, write down in the shed that it came in.
stock-no-day-of-a-count-is = { $name }: no day of a count is typed, so records take nothing off, and purchases add nothing
stock-type-the-day-of-the-count = Type the day of the count so that records are taken off, or count it anew.

## core/stock/ledger.rs

stock-with-in-of-spray-left-over = with { $over } in { $spray } of spray left over
stock-without-what-was-left-over-which = without what was left over, which cannot be told
stock-what-was-left-over-goes-on = what was left over goes on in a later record of the pass
stock-for-a-customer-from-this-shed = for a customer, from this shed
stock-for-from-this-shed = for { $name }, from this shed

## core/stock/needs.rs

stock-its-spray-volume-over-ground-is = its spray volume over ground is not typed
stock-it-has-no-ground-to-spray = it has no ground to spray
stock-is-not-in-the-shed = "{ $product }" is not in the shed

## core/stock/shopping.rs

stock-show-kind-of-size = { $show } { $kind } of { $size }
stock-type-in-the-shed-what-it = type in the shed what it is sold in
stock-its-containers-are-too-small-for = its containers are too small for so much; look at their sizes in the shed
stock-look-at-the-sizes-of-its = look at the sizes of its containers in the shed

## core/stock/short.rs

stock-none-on-hand = none is on hand
stock-on-hand = { $there } are on hand
stock-for = { $amount } for { $name }
stock-none-after-what-earlier-passes = none is on hand after what earlier passes take ({ $held } less { $takers })
stock-on-hand-after-what-earlier-passes = { $there } are on hand after what earlier passes take ({ $held } less { $takers })
stock-come-in-on-or-later = { $after }; { $amount } come in on { $date } or later
stock-buy-lower-the-area-or-type = Buy { $purchase }, lower the area, or type in the shed what was bought or counted.
stock-buy-or-more-lower-the-area = Buy { $short } or more, lower the area, or type in the shed what was bought or counted; { $why }.
stock-this-pass-needs = { $name }: this pass needs { $needed }; { $after }
stock-what-is-left-of-this-pass-needs = { $name }: what is left of this pass needs { $needed }; { $after }

## core/stock/walk.rs

stock-kind-of-size = { $kind } of { $size }
stock-count-kind-of-size = { $count } { $kind } of { $size }
