### Accessibility.

accessibility-description = What this site does so that everyone can use it, and how that is checked.
accessibility-lede = The aim is WCAG 2.2, level AA, at any width from 280 pixels and with text at twice its size.
accessibility-keyboard = Everything works with the keyboard alone. Nothing needs dragging, hovering or holding.
accessibility-drawings = Each drawing has its numbers beside it in words or in a table.
accessibility-colour = Colour never says anything alone: there is always a shape and a word.
accessibility-sun = The Sun button gives black on white with thick lines, for glare.
accessibility-still = Nothing moves, and nothing takes the focus while you type.
accessibility-checked = Each release is checked with an automatic checker and at narrow widths in a real browser. No person who relies on a screen reader has tested it yet.
