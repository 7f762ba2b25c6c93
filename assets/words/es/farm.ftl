## core/farm/advice.rs

farm-someone-not-named = alguien sin nombre
farm-no-day-typed = { $whose }, sin día anotado

## core/farm/aim.rs

farm-little-spray-left-over = poco caldo sobrante
farm-no-load-too-small-to-agitate = ninguna carga demasiado pequeña para agitar
farm-few-fillings = pocos llenados
farm-few-containers-opened = pocos envases abiertos
farm-whole-containers-little-measuring = envases enteros, poco medir
farm-amounts-close-to-exact = cantidades casi exactas
farm-another-crop = otro cultivo
farm-a-variety-that-stands-other-products = una variedad que tolera otros productos
farm-a-strip-that-a-label-keeps = una franja que una etiqueta exige hacia un vecino
farm-another-owner = otro propietario

## core/farm/calibration.rs

farm-catch-at-the-nozzles = medición en las boquillas
farm-1-128-acre = 1/128 de acre
farm-speed-over-a-course = velocidad en un tramo
farm-tank-level = nivel del tanque

## core/farm/differs.rs

farm-so-many = { $count } { $kind ->
        [field] { $count ->
            [one] lote
           *[other] lotes
        }
        [surrounding] { $count ->
            [one] elemento del entorno
           *[other] elementos del entorno
        }
        [water] { $count ->
            [one] agua
           *[other] aguas
        }
        [rig] { $count ->
            [one] aspersora
           *[other] aspersoras
        }
        [product] { $count ->
            [one] producto
           *[other] productos
        }
        [advice] { $count ->
            [one] consejo
           *[other] consejos
        }
        [law] { $count ->
            [one] ley
           *[other] leyes
        }
        [day] { $count ->
            [one] día
           *[other] días
        }
        [pass] { $count ->
            [one] aplicación
           *[other] aplicaciones
        }
        [record] { $count ->
            [one] registro
           *[other] registros
        }
        [movement] { $count ->
            [one] movimiento de existencias
           *[other] movimientos de existencias
        }
        [trial] { $count ->
            [one] ensayo
           *[other] ensayos
        }
        [closed] { $count ->
            [one] temporada cerrada
           *[other] temporadas cerradas
        }
       *[card] { $count ->
            [one] tarjeta emitida
           *[other] tarjetas emitidas
        }
    }
farm-added = { $what }, alta: { $names }
farm-gone = { $what }, baja: { $names }
farm-changed = { $what }, cambio: { $names }
farm-and-more = { $names } y { $more } más
farm-in-another-order = { $kind ->
        [field] lotes
        [surrounding] elementos del entorno
        [water] aguas
        [rig] aspersoras
        [product] productos
        [advice] consejos
        [law] leyes
        [day] días
        [pass] aplicaciones
        [record] registros
        [movement] movimientos de existencias
        [trial] ensayos
        [closed] temporadas cerradas
       *[card] tarjetas emitidas
    } en otro orden
farm-of-the-farm-itself = de la finca misma: { $farm }
farm-the-name = el nombre
farm-the-units = las unidades
farm-the-currency = la moneda
farm-the-place = el lugar
farm-the-paper = el papel
farm-the-languages-of-its-cards = los idiomas de sus tarjetas
farm-the-finest-marks-measured-with = las marcas más finas con que se mide
farm-the-emergency-lines = las líneas de emergencia
farm-the-picture-under-the-map = la imagen bajo el mapa
farm-what-the-farm-keeps-to = a lo que se atiene la finca
farm-the-forecast = el pronóstico
farm-the-aims-of-load-sizes = las metas de los tamaños de carga
farm-what-keeps-fields-from-sharing-a = lo que impide que los lotes compartan una carga
farm-the-ground-of-shorter-loads-on = el terreno de cargas más cortas en una tarjeta
farm-the-roads = los caminos
farm-how-records-are-kept = cómo se llevan los registros
farm-before = { $new }, antes { $old }

## core/farm/field.rs

farm-stated = declarada
farm-from-the-boundary = por el lindero

## core/farm/forecast.rs

farm-typed-by-hand = anotado a mano
farm-changed-by-hand = { $source }, cambiado a mano
farm-holds-day = día
farm-holds-air = aire
farm-holds-humidity = humedad
farm-holds-wind = viento
farm-holds-gusts = ráfagas
farm-holds-rain = lluvia
farm-holds-cloud = nubes
farm-day-and-time = día y hora
farm-time-of-day = hora del día
farm-air-higher-up = aire a mayor altura
farm-dew-point = punto de rocío
farm-wind-from = viento desde
farm-chance-of-rain = probabilidad de lluvia

## core/farm/label.rs

farm-requires = exige
farm-prefers = prefiere
farm-allows = permite
farm-forbids = prohíbe
farm-required = exigido
farm-preferred = preferido
farm-allowed = permitido
farm-discouraged = desaconsejado
farm-forbidden = prohibido
farm-says-rate = dosis
farm-says-applications = aplicaciones
farm-says-droplets = gotas
farm-says-wind = viento
farm-says-humidity = humedad
farm-says-daylight = luz del día
farm-says-cleaning = limpieza
farm-says-temperature = temperatura
farm-says-dates = fechas
farm-says-controls = controla
farm-says-buffer = franja
farm-says-rain-free = sin lluvia
farm-says-adjuvant = coadyuvante
farm-says-wear = equipo de protección
farm-says-caution = precaución
farm-a-year = al año
farm-a-crop = por cultivo
farm-in-12-months = en 12 meses
farm-is-no-day-of-the-year = "{ $text }" no es un día del año; escriba mes y día como "06-20"
farm-advises-against = desaconseja
farm-spray-volume = volumen de caldo
farm-most-a-season = máximo por temporada
farm-most-active-a-season = máximo de ingrediente activo por temporada
farm-crop-stage = etapa del cultivo
farm-harvest-graze = cosecha, pastoreo
farm-keep-out = no entrar
farm-next-crop = próximo cultivo
farm-wind-toward = viento hacia
farm-no-inversion = sin inversión térmica
farm-delta-t = Delta T
farm-boom-height = altura de la barra
farm-ground-speed = velocidad de avance
farm-mixing-order = orden de mezcla
farm-not-together-with = no junto con
farm-when-mixing = al mezclar

## core/farm/law.rs

farm-a-rule-without-a-name = una norma sin nombre

## core/farm/mod.rs

farm-where-the-farm-lies-is-not = No está anotado dónde queda la finca; escriba su latitud y longitud en la bodega
farm-is-no-latitude-and-may-be = "{ $latitude }" no es una latitud, y "{ $longitude }" puede serlo: puede que cada una esté en la casilla de la otra en la bodega
farm-is-no-latitude-write-degrees-from = "{ $latitude }" no es una latitud; escriba grados de -90 a 90, como "41.2"
farm-is-no-longitude-write-degrees-from = "{ $longitude }" no es una longitud; escriba grados de -180 a 180, como "-96.4"

## core/farm/pass.rs

farm-water = agua
farm-fertilizer = fertilizante
farm-uan = UAN
farm-even = equilibrado
farm-at-the-field-from-a-nurse = en el lote, desde un tanque nodriza
farm-in-the-yard = en el patio
farm-urea-ammonium-nitrate = urea nitrato de amonio
farm-liquid-fertilizer = fertilizante líquido
farm-weed-control = control de malezas
farm-crop-safety = seguridad del cultivo

## core/farm/product.rs

farm-herbicide = herbicida
farm-fungicide = fungicida
farm-insecticide = insecticida
farm-adjuvant = coadyuvante
farm-other-kind = otro
farm-non-ionic = no iónico
farm-cationic = catiónico
farm-anionic = aniónico
farm-amphoteric = anfótero
farm-organosilicone = organosiliconado
farm-other-class = otro
farm-jug = bidón
farm-jugs = bidones
farm-bag = bolsa
farm-bags = bolsas
farm-box = caja
farm-boxes = cajas
farm-drum = tambor
farm-drums = tambores
farm-tote = contenedor
farm-totes = contenedores
farm-growth-regulator = regulador de crecimiento
farm-water-conditioner = acondicionador de agua
farm-foliar-feed = fertilizante foliar
farm-charge-not-stated = carga no declarada
farm-spray-grade = grado para aspersión
farm-fertilizer-grade = grado fertilizante
farm-non-ionic-surfactant = surfactante no iónico
farm-crop-oil-concentrate = concentrado de aceite agrícola
farm-methylated-seed-oil = aceite de semilla metilado
farm-high-surfactant-oil-concentrate = concentrado de aceite con alto contenido de surfactante
farm-ammonium-sulfate = sulfato de amonio
farm-conditioner-without-ammonium = acondicionador sin amonio
farm-acidifier-or-buffer = acidificante o amortiguador de pH
farm-volatility-reducer = reductor de volatilidad
farm-drift-retardant = reductor de deriva
farm-compatibility-agent = agente de compatibilidad
farm-antifoaming-agent = antiespumante

## core/farm/rig.rs

farm-fine = finas
farm-medium = medianas
farm-coarse = gruesas
farm-extremely-fine = extremadamente finas
farm-very-fine = muy finas
farm-very-coarse = muy gruesas
farm-extremely-coarse = extremadamente gruesas
farm-ultra-coarse = ultra gruesas

## core/farm/shape.rs

farm-collection = una colección
farm-is-no-well-known-text-of = "{ $it }" no es un texto bien conocido (WKT) de una figura, como "POINT (-96.4 41.2)"
farm-a-shape-is-a-point-a = una figura es un punto, una línea, un polígono o varios de uno de estos, no { $it }
farm-the-shape-has-no-points = la figura no tiene puntos
farm-longitude-latitude-is-off-the-globe = longitud { $it }, latitud { $other } está fuera del globo; una longitud es de -180 a 180, una latitud de -90 a 90, la longitud va primero
farm-bare-figure = una figura simple

## core/farm/sun_time.rs

farm-is-no-time-by-the-sun = "{ $text }" no es una hora por el sol; escríbala como "salida del sol" o "1 h después de la salida del sol"

## core/farm/surrounding.rs

farm-open-water = agua
farm-well = pozo
farm-home = vivienda
farm-school = escuela
farm-hives = colmenas
farm-other-surrounding = otro
farm-sensitive-crop = cultivo sensible
farm-organic-land = terreno orgánico
farm-trees-and-wild-ground = árboles y terreno silvestre

## core/farm/unique.rs

farm-a-map-from-id-to-thing = una correspondencia de id a cosa, cada id una vez

## core/farm/water.rs

farm-clear = clara
farm-cloudy = turbia
farm-dirty = sucia
