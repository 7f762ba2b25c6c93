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

## desk/guide/keyboard.rs

guide-find-anything-looks-for-parts-of = { "\u000A" }**Find anything…** looks for parts of words in fields, passes, products, waters, rigs, records by their day, commands and this{ "\u000A" }guide; accents and capitals do not matter. While you type in a box, undo and redo are those of the box. Escape at a question in{ "\u000A" }the foot of the window is the answer that changes nothing.{ "\u000A" }
guide-every-point-on-the-map-can = { "\u000A" }Every point on the map can be typed as latitude and longitude instead.{ "\u000A" }{ "\u000A" }## Look{ "\u000A" }{ "\u000A" }The menu **Look** has **Light**, **Dark** and sizes from 80 to 200 %. In a small window, or at a large size, a list and its page do{ "\u000A" }not stand beside one another: **List** in the bar shows the one or the other. **Less motion** has what opens and scrolls in its{ "\u000A" }place at once; it is on where your system asks programs for it.{ "\u000A" }
guide-keyboard = Keyboard
guide-everything-is-reached-with-tab = Everything is reached with Tab, and Shift+Tab goes back. Enter or Space presses what has the brass ring. On a Mac, Cmd stands for{ "\u000A" }Ctrl.
guide-everywhere = Everywhere
