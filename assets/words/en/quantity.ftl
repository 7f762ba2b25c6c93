## core/quantity/bearing.rs

quantity-a-compass-has-0-to-360 = a compass has 0 to 360 degrees
quantity-is-no-direction = "{ $other }" is no direction
quantity-called-a-direction = a direction

## core/quantity/kind.rs

quantity-is-below-zero = { $rest } is below zero
quantity-the-unit-after-is-missing = the unit after { $show } is missing
quantity-is-not-a-unit-known-here = "{ $after }" is not a unit known here
quantity-more-than-numbers-are-added-up = more than { $most_parts } numbers are added up in it
quantity-the-unit-is-missing-f-or = the unit is missing: °F or °C
quantity-is-not-f-or-c = "{ $other }" is not °F or °C
quantity-no-field-is-that-cold-or = no field is that cold or that hot
quantity-it-lies-between-0-and-60 = it lies between 0 and 60 °C
quantity-does-not-belong-to-a-ph = "{ $rest }" does not belong to a pH
quantity-a-ph-lies-between-0-and = a pH lies between 0 and 14
quantity-ph = pH { $show }
quantity-it-is = it is { $kind }
quantity-called-an-area = an area
quantity-called-a-volume = a volume
quantity-called-a-mass = a mass
quantity-called-a-carrier-volume-per-area = a spray volume over ground
quantity-called-a-rate-by-volume = a rate by volume
quantity-called-a-rate-by-mass = a rate by mass
quantity-called-a-mass-per-volume = a mass per volume
quantity-called-a-density = a density
quantity-called-a-hardness = a hardness
quantity-called-an-ion-content = an ion content
quantity-called-a-conductivity = a conductivity
quantity-called-a-length = a length
quantity-called-a-speed = a speed
quantity-called-a-pressure = a pressure
quantity-called-a-flow = a flow
quantity-called-a-time = a time
quantity-called-a-share = a share
quantity-called-a-temperature = a temperature
quantity-called-a-difference-of-temperatures = a difference of temperatures
quantity-called-a-ph = a pH

## core/quantity/mod.rs

quantity-is-not-write-it-like = "{ $text }" is not { $name }: { $problem }; write it like "{ $example }"

## core/quantity/number.rs

quantity-a-fraction-over-0-is-no = a fraction over 0 is no number
quantity-is-too-large-to-be-meant = { $value } is too large to be meant
quantity-a-number-and-a-unit-are = a number and a unit are missing
quantity-does-not-begin-with-a-number = "{ $trim_end }" does not begin with a number
quantity-is-not-a-number = "{ $digits }" is not a number
quantity-the-marks-in-do-not-make = the marks in "{ $digits }" do not make one number
quantity-may-mean-or-write-one-of = "{ $digits }" may mean { $whole }{ $part } or { $whole }.{ $part }; write one of these

## core/quantity/price.rs

quantity-a-price-is-not-below-zero = a price is not below zero
quantity-per-what-a-unit-of-volume = per what? a unit of volume or mass is missing
quantity-is-not-a-unit-of-volume = "{ $name }" is not a unit of volume or mass
quantity-the-number-does-not-fit = the number does not fit
quantity-called-a-price = a price

## core/quantity/rate.rs

quantity-a-volume-over-ground = a volume over ground
quantity-a-mass-over-ground = a mass over ground
quantity-a-share-of-the-spray-volume = a share of the spray volume
quantity-a-mass-in-the-spray-volume = a mass in the spray volume
quantity-a-mass-of-active-over-ground = a mass of active over ground
quantity-a-mass-of-active-in-the = a mass of active in the spray volume
quantity-an-active-is-weighed-so-cannot = an active is weighed, so "{ $text }" cannot be a volume
quantity-the-unit-before-the-stroke-is = the unit before the stroke is missing
quantity-a-may-be-an-acre-or = "a" may be an acre or an are; write ac or ha
quantity-below-the-stroke-is-nothing-or = "{ $text }" below the stroke is nothing, or next to nothing
quantity-is-not-an-area-or-a = "{ $text }" is not an area or a volume
quantity-text-is-below-zero = { $text } is below zero
quantity-a-bare-may-be-by-volume = a bare % may be by volume or by weight; write % v/v
quantity-does-not-say-over-what-ground = "{ $name }" does not say over what ground or in what spray
quantity-is-a-mass-a-rate-goes = "{ $bottom }" is a mass; a rate goes over ground or into spray
quantity-that-is-more-product-than-spray = that is more product than spray
quantity-that-is-more-than-the-whole = that is more than the whole
quantity-is-not-a-mass-in-a = "{ $name }" is not a mass in a volume
quantity-name-is-not-a-mass-in-a-volume-or = "{ $name }" is not a mass in a volume or in a mass
quantity-called-a-rate = a rate
quantity-called-a-content = a content
quantity-called-an-amount = an amount

## core/quantity/typed.rs

quantity-a-string = a string
