## desk/guide/mod.rs

guide-guide = Guide
guide-guide-heading = Guide: { $heading }

## desk/guide/pages.rs

guide-the-evening-before = The evening before
guide-the-farm = The farm
guide-after-spraying = After spraying
guide-your-file = Your file
guide-the-numbers = The numbers

## desk/guide/panel.rs

guide-back = Back
guide-back-in-the-guide = Back in the guide
guide-all-pages = All pages
guide-put-it-away = Put it away
guide-put-the-guide-away = Put the guide away
guide-find-in-the-guide = Find in the guide
guide-nothing-in-the-guide-has-all = Nothing in the guide has all these words.
guide-places-have-all-these-words = { $many ->
        [one] { $many } place has all these words
       *[other] { $many } places have all these words
    }
guide-on = On { $view }
guide-on-what-is-shown = { $title }, on what is shown
