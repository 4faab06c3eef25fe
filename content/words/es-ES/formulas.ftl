### What Spain says in other words than content/words/es/formulas.ftl, by the trade's terms; its numbers have a decimal comma.

formulas-across = Diámetro = circunferencia ÷ 3,1416 = { $girth } ÷ 3,1416 ={ " " }
formulas-least = Anillo, al menos = { $any } para cualquier árbol, redondeado hacia arriba ={ " " }
formulas-least-species = Anillo, al menos = { $any } para cualquier árbol, { $species } para esta especie, redondeado hacia arriba ={ " " }
formulas-minutes = Minutos = demoras × (fijo + ramas + trabajo en la corteza, más largo si está agarrada) + caminar; trabajo probable antes de demoras { $minutes } min, la corteza se despega en { $slips } de cada 100 ={ " " }
