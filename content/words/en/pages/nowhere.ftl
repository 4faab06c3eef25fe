### The page for an address that leads nowhere. It stands in every language at once.

nowhere-title = No such page
nowhere-description = There is no page at this address.
nowhere-heading = There is no page here
nowhere-lede = The address may be old, or typed wrong.
