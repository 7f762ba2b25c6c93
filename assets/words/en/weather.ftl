## core/weather/hours.rs

weather-so-sunrise-sunset-and-inversions-by = { $text }, so sunrise, sunset and inversions by the sun cannot be told
weather-sunrise-and-sunset-cannot-be-told = Sunrise and sunset cannot be told, and { $basis } goes by them
weather-no-hour-of-is-allowed-in =
    { $doubtful ->
        [0] No hour of { $day } is allowed in the forecast
       *[other] No hour of { $day } is allowed in the forecast, { $doubtful } are doubtful
    }{ $count ->
        [0] { "" }
       *[other] ; most hours fail at: { $limit } ({ $count } of { $hours })
    }
weather-the-pass-takes-the-longest-span = The pass takes { $needs }; the longest span of allowed hours on { $day } is { $span }, enough for { $floor } of it
weather-the-longest-span-may-go-on = The pass takes { $needs }; the longest span of allowed hours on { $day } is { $span }, enough for { $floor } of it; { $goes_on }
weather-the-last-span-ends-with-the-day = the last span ends with the day, and the hours of the next day are not looked at
weather-split-the-pass-or-move-it = Split the pass, or move it. { $later }
weather-allowed-from = Allowed from { $span }.
weather-the-pass-is-to-begin-at = The pass is to begin at { $start }; that hour is not in the forecast
weather-the-pass-begins-in-an-hour-that-is = The pass is to begin at { $start }; that hour is { $verdict }
weather-the-pass-begins-in-an-hour-that-is-because = The pass is to begin at { $start }; that hour is { $verdict }: { $because }
weather-the-forecast-has-a-humidity-of = { $others ->
        [0] The forecast has a humidity of { $humidity } at { $time } on { $day }; air holds no more than 100 %, so it is taken as not known
       *[other] The forecast has a humidity of { $humidity } at { $time } on { $day }, and { $others } more above 100 %; air holds no more than 100 %, so it is taken as not known
    }
weather-mend-it-with-the-hours-of = Mend it with the hours of the forecast.
weather-that-day-is-out-of-reach = That day is out of reach
weather-the-forecast-allows-it-on = The forecast allows it on { $day }, { $span }.
weather-the-forecast-ends-with-this-day = The forecast ends with this day.
weather-no-later-day-of-the-forecast = No later day of the forecast allows it.
weather-takes-with = { $time }, { $counted } counted

## core/weather/limits.rs

weather-which-names-no-gust = { $at }, which names no gust ({ $why }: { $source })
weather-and-the-forecast-has-no-air = { $reason }, and the forecast has no air to tell whether that holds
weather-the-forecast-has-no-wind = the forecast has no wind; { $text }
weather-the-forecast-has-no-gust = the forecast has no gust; { $text }
weather-the-forecast-has-no-air = the forecast has no air; { $text }
weather-wind = wind { $wind }; { $text }
weather-gust = gust { $gust }; { $text }
weather-air = air { $air }; { $text }
weather-wind-from = wind from { $from }; { $text }
weather-the-forecast-has-no-direction-of = the forecast has no direction of the wind; { $text }
weather-humidity = humidity { $show_whole }; { $text }
weather-the-forecast-has-no-humidity-or = the forecast has no humidity, or none that can be; { $text }
weather-delta-t = Delta T { $span }; { $text }
weather-delta-t-cannot-be-told-without = Delta T cannot be told without air and humidity; { $text }
weather-where-the-sun-stands-cannot-be = where the sun stands cannot be told, so neither can an inversion; { $text }
weather-sunrise-and-sunset-cannot-be-told-before-the-farms = sunrise and sunset cannot be told before the farm's place and zone are typed and fit; { $text }
weather-the-sun-rises-at-and-sets = the sun rises at { $strftime } and sets at { $strftime2 }; { $text }
weather-the-sun-does-not-rise-or = the sun does not rise or does not set that day; { $text }
weather-rain-is-in-the-forecast = rain is in the forecast; { $text }
weather-rain-is-likely = rain is likely; { $text }
weather-the-forecast-does-not-tell-of = the forecast does not tell of rain that long; { $text }

## core/weather/mod.rs

weather-verdict-allowed = allowed
weather-verdict-doubtful = doubtful
weather-verdict-forbidden = forbidden
weather-to = { $from } to { $to }

## core/weather/psychro.rs

weather-delta-t-625 = Delta T
weather-air-of-the-working = air
weather-relative-humidity = relative humidity
weather-pressure-of-the-air-at-the = pressure of the air at the farm's height
weather-wet-bulb-ashrae-handbook-of-fundamentals = wet bulb, ASHRAE Handbook of Fundamentals
weather-delta-t-air-less-wet-bulb = Delta T: air less wet bulb
weather-for-comparison-wet-bulb-by-stull = for comparison, wet bulb by Stull (2011), for sea level, within -1 and +0.65 °C
weather-short-delta-t-air = { $short }, Delta T { $air }

## core/weather/sun.rs

weather-the-farms-time-zone-is-not = The farm's time zone is not typed; type it in the shed, such as "America/Chicago"
weather-is-no-time-zone-known-here = "{ $name }" is no time zone known here; type one such as "America/Chicago" or "Europe/Berlin" in the shed
weather-is-no-time-zone-known-here-but = "{ $name }" is no time zone known here; type in the shed which is meant: { $all }
weather-mend-the-longitude-or-the-time = Mend the longitude or the time zone in the shed, on the page of the farm; west is typed with a minus.
weather-latitude-and-longitude-may-stand-in = Latitude and longitude may stand in each other's box; see the page of the farm in the shed.
weather-west-is-typed-with-a-minus = West is typed with a minus: "{ $east }". Mend it in the shed, on the page of the farm.
weather-east-is-typed-without-a-minus = East is typed without a minus: "{ $east }". Mend it in the shed, on the page of the farm.
weather-the-longitude-does-not-fit-the = The longitude { $typed } does not fit the time zone { $zone }: the sun would stand highest at { $noon }:{ $noon2 } by its clock
