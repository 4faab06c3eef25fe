### The page for an address that leads nowhere.

nowhere-title = No existe esa página
nowhere-description = En esta dirección no hay ninguna página.
nowhere-heading = Aquí no hay ninguna página
nowhere-lede = Puede que la dirección sea vieja o esté mal escrita.
