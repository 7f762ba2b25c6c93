## desk/find/panel.rs

find-a-field-pass-product-day-command = a field, pass, product, day, command, or what the guide explains…
find-find-anything = Find anything
find-type-some-letters-down-and-up = Type some letters; Down and Up choose, Enter goes there, Escape leaves.
find-so-far = { " " }so far
find-nothing-has-these-words-so-far = Nothing has these words so far.
find-nothing-has-these-words = Nothing has these words.
find-found-of-each-kind-the-best = { $count } found{ $not_yet }; of each kind the best { $listed } are listed
find-found = { $count } found{ $not_yet }
