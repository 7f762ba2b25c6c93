## core/typed/day.rs

typed-is-not-a-day = "{ $text }" no es un día; escríbalo como 2031-06-12 o 12 jun 2031
typed-may-be-two-days = "{ $text }" puede ser el { $month_first } o el { $day_first }; tome uno de ellos, o escriba el mes en letras
typed-the-year-has-two-figures = El año de "{ $text }" tiene dos cifras; escriba las cuatro
typed-the-year-is-missing = "{ $text }" no tiene año; escríbalo como 12 jun 2031

## core/typed/time.rs

typed-is-not-a-time-of-day = "{ $text }" no es una hora del día; escríbala como 05:40 o 5:40 am
typed-is-an-hour-without-minutes = "{ $text }" es solo una hora; escríbala como 05:40 o 5:40 am
typed-that-hour-goes-without-am-and-pm = "{ $text }" cuenta hasta 24 y además lleva am o pm; escriba lo uno o lo otro
