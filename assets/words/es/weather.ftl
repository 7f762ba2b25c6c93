## core/weather/hours.rs

weather-so-sunrise-sunset-and-inversions-by = { $text }, así que no se puede saber la salida ni la puesta del sol, ni las inversiones térmicas según el sol
weather-sunrise-and-sunset-cannot-be-told = No se puede saber la salida ni la puesta del sol, y { $basis } se rige por ellas
weather-no-hour-of-is-allowed-in =
    { $doubtful ->
        [0] Ninguna hora del { $day } está permitida según el pronóstico
       *[other] Ninguna hora del { $day } está permitida según el pronóstico, { $doubtful } son dudosas
    }{ $count ->
        [0] { "" }
       *[other] ; la mayoría de las horas fallan en: { $limit } ({ $count } de { $hours })
    }
weather-the-pass-takes-the-longest-span = La aplicación dura { $needs }; el lapso más largo de horas permitidas el { $day } es de { $span }, suficiente para { $floor } de ella
weather-the-longest-span-may-go-on = La aplicación dura { $needs }; el lapso más largo de horas permitidas el { $day } es de { $span }, suficiente para { $floor } de ella; { $goes_on }
weather-the-last-span-ends-with-the-day = el último lapso termina con el día, y las horas del día siguiente no se revisan
weather-split-the-pass-or-move-it = Divida la aplicación o pásela a otro día. { $later }
weather-allowed-from = Permitido de { $span }.
weather-the-pass-is-to-begin-at = La aplicación debe empezar a las { $start }; esa hora no está en el pronóstico
weather-the-pass-begins-in-an-hour-that-is = La aplicación debe empezar a las { $start }; esa hora está { $verdict }
weather-the-pass-begins-in-an-hour-that-is-because = La aplicación debe empezar a las { $start }; esa hora está { $verdict }: { $because }
weather-the-forecast-has-a-humidity-of = { $others ->
        [0] El pronóstico tiene una humedad de { $humidity } a las { $time } del { $day }; el aire no contiene más de 100 %, así que se toma como no conocida
       *[other] El pronóstico tiene una humedad de { $humidity } a las { $time } del { $day }, y { $others } más por encima de 100 %; el aire no contiene más de 100 %, así que se toma como no conocida
    }
weather-mend-it-with-the-hours-of = Corríjala con las horas del pronóstico.
weather-that-day-is-out-of-reach = Ese día está fuera de alcance
weather-the-forecast-allows-it-on = El pronóstico la permite el { $day }, { $span }.
weather-the-forecast-ends-with-this-day = El pronóstico termina con este día.
weather-no-later-day-of-the-forecast = Ningún día posterior del pronóstico la permite.
weather-takes-with = { $time }, contando { $counted }

## core/weather/limits.rs

weather-which-names-no-gust = { $at }, que no nombra ráfagas ({ $why }: { $source })
weather-and-the-forecast-has-no-air = { $reason }, y el pronóstico no tiene aire para saber si eso se cumple
weather-the-forecast-has-no-wind = el pronóstico no tiene viento; { $text }
weather-the-forecast-has-no-gust = el pronóstico no tiene ráfagas; { $text }
weather-the-forecast-has-no-air = el pronóstico no tiene temperatura del aire; { $text }
weather-wind = viento { $wind }; { $text }
weather-gust = ráfagas { $gust }; { $text }
weather-air = aire { $air }; { $text }
weather-wind-from = viento del { $from }; { $text }
weather-the-forecast-has-no-direction-of = el pronóstico no tiene dirección del viento; { $text }
weather-humidity = humedad { $show_whole }; { $text }
weather-the-forecast-has-no-humidity-or = el pronóstico no tiene humedad, o ninguna que pueda ser; { $text }
weather-delta-t = Delta T { $span }; { $text }
weather-delta-t-cannot-be-told-without = Delta T no se puede saber sin aire y humedad; { $text }
weather-where-the-sun-stands-cannot-be = no se puede saber dónde está el sol, y por eso tampoco si hay inversión térmica; { $text }
weather-sunrise-and-sunset-cannot-be-told-before-the-farms = no se puede saber la salida ni la puesta del sol mientras el lugar y la zona horaria de la finca no estén anotados y concuerden; { $text }
weather-the-sun-rises-at-and-sets = el sol sale a las { $strftime } y se pone a las { $strftime2 }; { $text }
weather-the-sun-does-not-rise-or = ese día el sol no sale o no se pone; { $text }
weather-rain-is-in-the-forecast = hay lluvia en el pronóstico; { $text }
weather-rain-is-likely = es probable que llueva; { $text }
weather-the-forecast-does-not-tell-of = el pronóstico no dice nada de la lluvia por tanto tiempo; { $text }

## core/weather/mod.rs

weather-verdict-allowed = permitida
weather-verdict-doubtful = dudosa
weather-verdict-forbidden = prohibida
weather-to = { $from } a { $to }

## core/weather/psychro.rs

weather-delta-t-625 = Delta T
weather-air-of-the-working = aire
weather-relative-humidity = humedad relativa
weather-pressure-of-the-air-at-the = presión del aire a la altura de la finca
weather-wet-bulb-ashrae-handbook-of-fundamentals = bulbo húmedo, ASHRAE Handbook of Fundamentals
weather-delta-t-air-less-wet-bulb = Delta T: aire menos bulbo húmedo
weather-for-comparison-wet-bulb-by-stull = para comparar, bulbo húmedo según Stull (2011), para el nivel del mar, entre -1 y +0.65 °C
weather-short-delta-t-air = { $short }, Delta T { $air }

## core/weather/sun.rs

weather-the-farms-time-zone-is-not = La zona horaria de la finca no está anotada; escríbala en la bodega, como "America/Chicago"
weather-is-no-time-zone-known-here = "{ $name }" no es una zona horaria conocida aquí; escriba en la bodega una como "America/Chicago" o "Europe/Berlin"
weather-is-no-time-zone-known-here-but = "{ $name }" no es una zona horaria conocida aquí; escriba en la bodega cuál quiere decir: { $all }
weather-mend-the-longitude-or-the-time = Corrija la longitud o la zona horaria en la bodega, en la página de la finca; el oeste se escribe con un signo menos.
weather-latitude-and-longitude-may-stand-in = La latitud y la longitud pueden estar cada una en la casilla de la otra; vea la página de la finca en la bodega.
weather-west-is-typed-with-a-minus = El oeste se escribe con un signo menos: "{ $east }". Corríjalo en la bodega, en la página de la finca.
weather-east-is-typed-without-a-minus = El este se escribe sin signo menos: "{ $east }". Corríjalo en la bodega, en la página de la finca.
weather-the-longitude-does-not-fit-the = La longitud { $typed } no concuerda con la zona horaria { $zone }: el sol estaría en lo más alto a las { $noon }:{ $noon2 } de su reloj
