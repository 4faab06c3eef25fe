### Names of states, provinces and countries, by their codes (ISO 3166-1 and 3166-2, from memory).

# Those that a language calls by another name; the rest have the same name in all.
# $of (Key)
region-name =
    .US-HI = Hawaii
    .US-LA = Louisiana
    .US-MS = Mississippi
    .US-MO = Missouri
    .US-NH = New Hampshire
    .US-NJ = New Jersey
    .US-NM = New Mexico
    .US-NY = New York
    .US-NC = North Carolina
    .US-ND = North Dakota
    .US-OR = Oregon
    .US-PA = Pennsylvania
    .US-SC = South Carolina
    .US-SD = South Dakota
    .US-WV = West Virginia
    .US-DC = District of Columbia
    .CA-BC = British Columbia
    .CA-NB = New Brunswick
    .CA-NL = Newfoundland and Labrador
    .CA-NT = Northwest Territories
    .CA-NS = Nova Scotia
    .CA-PE = Prince Edward Island
    .CA = Canada
    .FR = France
    .DE = Germany
    .IE = Ireland
    .NZ = New Zealand
    .CH = Switzerland
    .GB = United Kingdom
    .US = United States
# A state or province whose name is not listed
# $country (Text): as inside a sentence
region-part-of = this part of { $country }
# Those that some language gives an article, or takes it from, inside a sentence: behind "in".
# $of (Key)
region-in-sentence =
    .US = the United States
    .GB = the United Kingdom
    .US-DC = the District of Columbia
    .CA-NT = the Northwest Territories
    .CA-PE = Prince Edward Island
