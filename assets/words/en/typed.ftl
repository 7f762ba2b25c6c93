## core/typed/day.rs

typed-is-not-a-day = "{ $text }" is not a day; write it like 2031-06-12 or Jun 12 2031
typed-may-be-two-days = "{ $text }" may be { $month_first } or { $day_first }; take one of them, or write the month as a word
typed-the-year-has-two-figures = The year of "{ $text }" has two figures; write all four
typed-the-year-is-missing = "{ $text }" has no year; write it like Jun 12 2031

## core/typed/time.rs

typed-is-not-a-time-of-day = "{ $text }" is not a time of day; write it like 05:40 or 5:40 am
typed-is-an-hour-without-minutes = "{ $text }" is an hour alone; write it like 05:40 or 5:40 am
typed-that-hour-goes-without-am-and-pm = "{ $text }" counts to 24 and has am or pm too; write one or the other
