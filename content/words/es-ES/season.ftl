### What Spain says in other words than content/words/es/season.ftl, by the trade's terms; its numbers have a decimal comma.

season-verdict =
    .bonded = agarrada
season-always-test = Primero abra un trozo del tamaño de la mano. Si se rasga, pare. Raspe la madera y vuelva a mirar en 2 a 6 semanas.
season-oak-wilt-known = La marchitez del roble se conoce en { $place }. Pregunte a { $who }.
season-oak-wilt-near = La marchitez del roble está cerca de { $place }: pregunte si ya llegó; no descarta nada. Pregunte a { $who }.
season-oak-wilt-unknown = La marchitez del roble no se conoce en { $place }.
season-oak-wilt-unknown-ask = La marchitez del roble no se conoce en { $place }. Pregunte a { $who }.
