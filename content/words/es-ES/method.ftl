### What Spain says in other words than content/words/es/method.ftl, by the trade's terms; its numbers have a decimal comma.

method-method =
    .saw-ring = anillo con sierra de mano
method-act =
    .saw-ring = haga un anillo con sierra de mano
method-rule =
    .followup_saw_tried = se probó un anillo con sierra de mano y sirvió en parte
    .not_alone_saw_tried = se probó un anillo con sierra de mano y sirvió en parte
    .oak_saw_ring_winter = en invierno se anillan encinos y robles con sierra de mano al aclarar el bosque
    .under_1 = con menos de 1 in (2,5 cm) es muy chico para anillarlo
    .of-1_to_2_5 = hasta 2½ in (6,4 cm) apenas vale la pena un anillo
    .stump_under_half = con menos de ½ in (1,3 cm) no es de fiar
    .oak_wilt_months = en estos meses los escarabajos llevan la marchitez del roble a las heridas frescas
    .oak_wilt_near = la marchitez del roble está cerca y estos son sus meses: pregunte si ya llegó
method-step-saw-one-level = Corte con sierra de mano una línea a nivel en toda la vuelta, a través de la corteza y ¾ in (2 cm) en la madera; 2 in (5 cm) como máximo.
