## core/ground/directions.rs

ground-any-direction = cualquier dirección
ground-to-to = { $from } a { $to } ({ $to_degrees }° a { $to_degrees2 }°)

## core/ground/mod.rs

ground-mind-the-wind = Cuide el viento mientras aplica: donde el viento gire hacia allí, deje la franja.
ground-stated = declarada
ground-ground-of = Terreno de { $name }
ground-is-to-go-by-its-boundary = { $name } debe regirse por su lindero, y no hay ninguno dibujado; cuenta la superficie declarada
ground-draw-or-import-its-boundary-in = Dibuje o importe su lindero en Lotes, o deje que se rija por la superficie declarada.
ground-its-boundary-holds-are-stated-the = { $name }: su lindero encierra { $measured }, están declarados { $area }{ $than ->
        [less] , es decir { $differs } menos
        [more] , es decir { $differs } más
       *[none] { "" }
    }; { $from ->
        [boundary] el plan se rige por el lindero
       *[stated] el plan se rige por la superficie declarada
    }
ground-mend-the-area-or-the-boundary = Corrija la superficie o el lindero en Lotes, o elija cuál de los dos cuenta.
ground-where-the-wind-blows-toward-it = , donde el viento sopla hacia allí
ground-its-words-are = { " " }(sus palabras son "{ $to }")
ground-keeps-from = { $who } exige dejar { $wide } hasta { $what }{ $by_kind }{ $down }
ground-along-of-its-edge = , a lo largo de { $edge } de su borde
ground-of-stay-unsprayed = { $area } de { $name } quedan sin aplicar{ $along }
ground-the-wind-planned-for-does-not = { $head }; el viento previsto no lleva de { $name } hacia allí
ground-no-wind-is-known-for-the = { $head }; no se conoce el viento para la aplicación, así que { $left } sople hacia donde sople
ground-type-the-wind-expected-for-the = Escriba el viento esperado para la aplicación, o tome un pronóstico.
ground-the-strips-take-more-than-the = { $name }: las franjas toman { $strip_area }, más que los { $unsprayed } que quedan sin aplicar según lo anotado; cuentan las franjas
ground-mend-what-stays-unsprayed-in-fields = Corrija en Lotes lo que queda sin aplicar, o deje que las franjas se excluyan además de ello.
ground-the-strips-leave-nothing-of-to = Las franjas no dejan nada de { $name } para aplicar
ground-take-the-field-out-or-choose = Quite el lote, o elija otros productos.
ground-of-are-planned-beside-the-strips = Están planeados { $part } de { $name }; fuera de las franjas se pueden aplicar { $sprayable }
ground-lower-the-ground-typed-for-the = Reduzca el terreno anotado para la aplicación, o retírelo.
ground-something-that-is-not-named = algo que no se nombra
ground-keeps-from-whether-that-means-closer = { $speaker } exige dejar { $width } hasta { $to }; si eso se refiere a { $names }, a menos de esa distancia de { $name }, no se puede saber por sus palabras
ground-choose-on-the-map-what-it = Elija en el mapa qué es, o nómbrelo con las palabras de la etiqueta; si no, deje usted mismo la franja.
ground-within-the-boundary-on-wgs-84 = dentro del lindero, en WGS 84
ground-the-plan-goes-by-the-area = el plan se rige por la superficie { $from ->
        [boundary] del lindero
       *[stated] declarada
    }
ground-stays-unsprayed = − queda sin aplicar
ground-down-the-wind = , a favor del viento
ground-strip-of-to = − franja de { $width } hasta { $what } ({ $who }{ $wind })
ground-the-strips-together-ground-in-two = las franjas juntas, el terreno que está en dos de ellas una sola vez
ground-the-larger-of-what-stays-unsprayed = lo mayor entre lo que queda sin aplicar y las franjas, que lo incluye
ground-can-be-sprayed = = se puede aplicar

## core/ground/rings/antimeridian.rs

ground-a-point-of-it-is-no = un punto suyo no es un número
ground-a-point-lies-off-the-globe = un punto está fuera del globo,
ground-a-ring-goes-half-round-the = un anillo da media vuelta al globo, así que no es un lote
ground-a-hole-crosses-the-180th-meridian = un hueco cruza el meridiano 180; córtelo allí primero
ground-it-crosses-the-180th-meridian-and = cruza el meridiano 180 y allí se corta en dos
ground-it-crosses-the-180th-meridian-more = cruza el meridiano 180 más de dos veces; córtelo allí primero

## core/ground/rings/mod.rs

ground-at = { $why } en { $at }
ground-its-rings-cross-or-touch-so = sus anillos se cruzan o se tocan tantas veces que no se puede revisar; dibújelo de nuevo
ground-latitude-longitude = latitud { $y }, longitud { $x }
ground-a-hole-has-a-hole-in = un hueco tiene dentro otro hueco; dibuje el interior como una parte propia
ground-the-wrong-way-round-and-turned = { $turned } { $turned ->
        [one] anillo exterior va en sentido contrario y se invierte
       *[other] anillos exteriores van en sentido contrario y se invierten
    }
ground-it-has-no-rings = no tiene anillos
ground-parts-twice-and-taken-once = { $count } { $count ->
        [one] parte está dos veces y se toma una vez
       *[other] partes están dos veces y se toman una vez
    }
ground-holes-twice-and-taken-once = { $count } { $count ->
        [one] hueco está dos veces y se toma una vez
       *[other] huecos están dos veces y se toman una vez
    }
ground-a-hole-crosses-the-edge-or = un hueco cruza el borde u otro hueco
ground-a-hole-runs-along-the-edge = un hueco va a lo largo del borde o de otro hueco
ground-cut-at-the-180th-meridian-its = cortado en el meridiano 180 sus anillos se cruzan; córtelo allí primero
ground-two-parts-that-overlap-by-a = dos partes que se traslapan en una franja mínima se unen en { $at }
ground-two-parts-overlap = dos partes se traslapan

## core/ground/rings/nest.rs

ground-a-hole-lies-within-another-hole = un hueco está dentro de otro hueco
ground-a-hole-crosses-the-edge = un hueco cruza el borde
ground-a-hole-does-not-lie-within = un hueco no está dentro de su polígono
ground-a-part-lies-within-another-part = una parte está dentro de otra parte

## core/ground/rings/place.rs

ground-the-second-numbers-are-no-latitudes = los segundos números no son latitudes, así que lo son los primeros
ground-it-lies-about-whether-latitude-and = está cerca de { $middle }; no se puede saber si latitud y longitud están una en lugar de la otra, porque no está anotado dónde queda la finca
ground-as-they-stand-it-would-lie = como están quedaría lejos de la finca, al revés queda junto a ella
ground-it-lies-about-km-from-the = está cerca de { $middle }, a { $to_metres } km de la finca

## core/ground/rings/ring.rs

ground-an-open-ring-is-closed-over = un anillo abierto se cierra en los últimos { $show } m
ground-that-the-one-before-taken-out = { $count } { $count ->
        [one] punto que repite el anterior se quita
       *[other] puntos que repiten el anterior se quitan
    }
ground-a-spike-without-area-is-cut = se corta una punta sin superficie en { $tip }
ground-spikes-without-area-are-cut-off = se cortan { $spikes } puntas sin superficie, la primera en { $tip }
ground-a-ring-has-no-area = un anillo no tiene superficie
ground-a-ring-has-no-points = un anillo no tiene puntos
ground-a-ring-crosses-itself = un anillo se cruza a sí mismo
ground-a-ring-touches-itself = un anillo se toca a sí mismo
ground-a-ring-runs-along-itself = un anillo va a lo largo de sí mismo
ground-a-ring-that-touches-itself-at = un anillo que se toca a sí mismo en { $touch } se divide en { $parts } { $parts ->
        [one] parte
       *[other] partes
    }{ $holes ->
        [0] { "" }
        [one] { " " }con 1 hueco
       *[other] { " " }con { $holes } huecos
    }

## core/ground/shift.rs

ground-anywhere = cualquier lado
ground-to = { $floor }° a { $ceil }°
ground-the-planned-wind-breaks-it-so = El viento previsto no lo cumple; tampoco ninguno del { $from }: { $asked }
ground-a-turn-of-to-breaks-it = Un giro de { $floor }° hacia { $point } no lo cumple; tampoco ningún viento del { $from }: { $asked }
ground-wind-from-breaks-it = El viento del { $from } no lo cumple: { $asked }
