## core/quantity/bearing.rs

quantity-a-compass-has-0-to-360 = una brújula tiene de 0 a 360 grados
quantity-is-no-direction = "{ $other }" no es una dirección
quantity-called-a-direction = una dirección

## core/quantity/kind.rs

quantity-is-below-zero = { $rest } es menor que cero
quantity-the-unit-after-is-missing = falta la unidad después de { $show }
quantity-is-not-a-unit-known-here = "{ $after }" no es una unidad conocida aquí
quantity-more-than-numbers-are-added-up = se suman más de { $most_parts } números
quantity-the-unit-is-missing-f-or = falta la unidad: °F o °C
quantity-is-not-f-or-c = "{ $other }" no es °F ni °C
quantity-no-field-is-that-cold-or = ningún lote está tan frío o tan caliente
quantity-it-lies-between-0-and-60 = está entre 0 y 60 °C
quantity-does-not-belong-to-a-ph = "{ $rest }" no pertenece a un pH
quantity-a-ph-lies-between-0-and = un pH está entre 0 y 14
quantity-ph = pH { $show }
quantity-it-is = es { $kind }
quantity-called-an-area = una superficie
quantity-called-a-volume = un volumen
quantity-called-a-mass = una masa
quantity-called-a-carrier-volume-per-area = un volumen de caldo por superficie
quantity-called-a-rate-by-volume = una dosis en volumen
quantity-called-a-rate-by-mass = una dosis en masa
quantity-called-a-mass-per-volume = una masa por volumen
quantity-called-a-density = una densidad
quantity-called-a-hardness = una dureza
quantity-called-an-ion-content = un contenido de iones
quantity-called-a-conductivity = una conductividad
quantity-called-a-length = una longitud
quantity-called-a-speed = una velocidad
quantity-called-a-pressure = una presión
quantity-called-a-flow = un caudal
quantity-called-a-time = un tiempo
quantity-called-a-share = un porcentaje
quantity-called-a-temperature = una temperatura
quantity-called-a-difference-of-temperatures = una diferencia de temperaturas
quantity-called-a-ph = un pH

## core/quantity/mod.rs

quantity-is-not-write-it-like = "{ $text }" no es { $name }: { $problem }; escríbalo como "{ $example }"

## core/quantity/number.rs

quantity-a-fraction-over-0-is-no = una fracción sobre 0 no es un número
quantity-is-too-large-to-be-meant = { $value } es demasiado grande para ser lo que se quiso decir
quantity-a-number-and-a-unit-are = faltan un número y una unidad
quantity-does-not-begin-with-a-number = "{ $trim_end }" no empieza con un número
quantity-is-not-a-number = "{ $digits }" no es un número
quantity-the-marks-in-do-not-make = los signos en "{ $digits }" no forman un solo número
quantity-may-mean-or-write-one-of = "{ $digits }" puede querer decir { $whole }{ $part } o { $whole }.{ $part }; escriba uno de estos

## core/quantity/price.rs

quantity-a-price-is-not-below-zero = un precio no es menor que cero
quantity-per-what-a-unit-of-volume = ¿por cada qué? falta una unidad de volumen o de masa
quantity-is-not-a-unit-of-volume = "{ $name }" no es una unidad de volumen ni de masa
quantity-the-number-does-not-fit = el número no cabe
quantity-called-a-price = un precio

## core/quantity/rate.rs

quantity-a-volume-over-ground = un volumen por superficie
quantity-a-mass-over-ground = una masa por superficie
quantity-a-share-of-the-spray-volume = una parte del volumen de caldo
quantity-a-mass-in-the-spray-volume = una masa en el volumen de caldo
quantity-a-mass-of-active-over-ground = una masa de ingrediente activo por superficie
quantity-a-mass-of-active-in-the = una masa de ingrediente activo en el volumen de caldo
quantity-an-active-is-weighed-so-cannot = un ingrediente activo se pesa, así que "{ $text }" no puede ser un volumen
quantity-the-unit-before-the-stroke-is = falta la unidad antes de la diagonal
quantity-a-may-be-an-acre-or = "a" puede ser un acre o un área; escriba ac o ha
quantity-below-the-stroke-is-nothing-or = "{ $text }" debajo de la diagonal es cero, o casi cero
quantity-is-not-an-area-or-a = "{ $text }" no es una superficie ni un volumen
quantity-text-is-below-zero = { $text } es menor que cero
quantity-a-bare-may-be-by-volume = un % solo puede ser en volumen o en peso; escriba % v/v
quantity-does-not-say-over-what-ground = "{ $name }" no dice sobre qué terreno ni en qué caldo
quantity-is-a-mass-a-rate-goes = "{ $bottom }" es una masa; una dosis va por superficie o en el caldo
quantity-that-is-more-product-than-spray = eso es más producto que caldo
quantity-that-is-more-than-the-whole = eso es más que el todo
quantity-is-not-a-mass-in-a = "{ $name }" no es una masa en un volumen
quantity-name-is-not-a-mass-in-a-volume-or = "{ $name }" no es una masa en un volumen ni en una masa
quantity-called-a-rate = una dosis
quantity-called-a-content = un contenido
quantity-called-an-amount = una cantidad

## core/quantity/typed.rs

quantity-a-string = un texto
