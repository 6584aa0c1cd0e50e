"""Prints, as JSON, what one of each unit is in SI: an exact fraction worked out by pint."""

import json
from fractions import Fraction

import pint

# The code of each row of the unit table, the same unit in pint's words, and the SI unit it is held against.
UNITS = [
    ("ml", "milliliter", "meter**3"),
    ("cl", "centiliter", "meter**3"),
    ("l", "liter", "meter**3"),
    ("floz_us", "fluid_ounce", "meter**3"),
    ("tsp_us", "teaspoon", "meter**3"),
    ("tbsp_us", "tablespoon", "meter**3"),
    ("cup_us", "cup", "meter**3"),
    ("pt_us", "liquid_pint", "meter**3"),
    ("qt_us", "liquid_quart", "meter**3"),
    ("gal_us", "gallon", "meter**3"),
    ("floz_imp", "imperial_fluid_ounce", "meter**3"),
    ("pt_imp", "imperial_pint", "meter**3"),
    ("qt_imp", "imperial_quart", "meter**3"),
    ("gal_imp", "imperial_gallon", "meter**3"),
    ("l_per_min", "liter / minute", "meter**3 / second"),
    ("ml_per_min", "milliliter / minute", "meter**3 / second"),
    ("gal_us_per_min", "gallon / minute", "meter**3 / second"),
    ("floz_us_per_min", "fluid_ounce / minute", "meter**3 / second"),
    ("gal_imp_per_min", "imperial_gallon / minute", "meter**3 / second"),
    ("m2", "meter**2", "meter**2"),
    ("ft2", "foot**2", "meter**2"),
    ("cm", "centimeter", "meter"),
    ("mm", "millimeter", "meter"),
    ("m", "meter", "meter"),
    ("um", "micrometer", "meter"),
    ("mil", "inch / 1000", "meter"),
    ("in", "inch", "meter"),
    ("ft", "foot", "meter"),
    ("km_per_h", "kilometer / hour", "meter / second"),
    ("m_per_min", "meter / minute", "meter / second"),
    ("m_per_s", "meter / second", "meter / second"),
    ("mph", "mile / hour", "meter / second"),
    ("ft_per_min", "foot / minute", "meter / second"),
    ("s", "second", "second"),
    ("min", "minute", "second"),
    ("h", "hour", "second"),
    ("d", "day", "second"),
    ("ml_per_m2", "milliliter / meter**2", "meter"),
    ("gal_us_per_1000ft2", "gallon / foot**2 / 1000", "meter"),
    ("gal_imp_per_1000ft2", "imperial_gallon / foot**2 / 1000", "meter"),
    ("m2_per_l", "meter**2 / liter", "1 / meter"),
    ("ft2_per_gal_us", "foot**2 / gallon", "1 / meter"),
    ("ft2_per_gal_imp", "foot**2 / imperial_gallon", "1 / meter"),
    ("m2_per_h", "meter**2 / hour", "meter**2 / second"),
    ("ft2_per_h", "foot**2 / hour", "meter**2 / second"),
    ("one", "dimensionless", "dimensionless"),
    ("percent", "percent", "dimensionless"),
    ("g", "gram", "kilogram"),
    ("kg", "kilogram", "kilogram"),
    ("oz", "ounce", "kilogram"),
    ("lb", "pound", "kilogram"),
    ("g_per_ml", "gram / milliliter", "kilogram / meter**3"),
    ("lb_per_gal_us", "pound / gallon", "kilogram / meter**3"),
    ("g_per_l", "gram / liter", "kilogram / meter**3"),
    ("mg_per_l", "milligram / liter", "kilogram / meter**3"),
    ("percent_wv", "gram / (100 * milliliter)", "kilogram / meter**3"),
    ("deg_c", "delta_degree_Celsius", "kelvin"),
    ("deg_f", "delta_degree_Fahrenheit", "kelvin"),
    ("oz_per_gal_us", "ounce / gallon", "kilogram / meter**3"),
    ("oz_per_gal_imp", "ounce / imperial_gallon", "kilogram / meter**3"),
    ("mg_per_m2", "milligram / meter**2", "kilogram / meter**2"),
    ("g_per_m2", "gram / meter**2", "kilogram / meter**2"),
    ("oz_per_ft2", "ounce / foot**2", "kilogram / meter**2"),
    ("oz_per_1000ft2", "ounce / foot**2 / 1000", "kilogram / meter**2"),
    # Money has no unit: a plain one stands for it.
    ("money", "dimensionless", "dimensionless"),
    ("money_per_gal_us", "1 / gallon", "1 / meter**3"),
    ("money_per_l", "1 / liter", "1 / meter**3"),
    ("money_per_m3", "1 / meter**3", "1 / meter**3"),
    ("money_per_1000gal_us", "1 / gallon / 1000", "1 / meter**3"),
    ("money_per_gal_imp", "1 / imperial_gallon", "1 / meter**3"),
    ("money_per_h", "1 / hour", "1 / second"),
    ("money_per_1000ft2", "1 / foot**2 / 1000", "1 / meter**2"),
    ("money_per_100m2", "1 / meter**2 / 100", "1 / meter**2"),
    ("per_day", "1 / day", "1 / second"),
    ("per_week", "1 / week", "1 / second"),
    ("per_month", "12 / gregorian_year", "1 / second"),
    ("per_year", "1 / gregorian_year", "1 / second"),
    ("kpa", "kilopascal", "pascal"),
    ("kj_per_kg", "kilojoule / kilogram", "joule / kilogram"),
    ("percent_ww", "percent", "dimensionless"),
    ("mg_per_kg", "milligram / kilogram", "dimensionless"),
]

registry = pint.UnitRegistry(non_int_type=Fraction)
answer = {}
for code, ours, si in UNITS:
    # Straight to SI, by multiplication and division alone, so that the fraction stays exact.
    one = Fraction(1) * registry.parse_expression(ours)
    exact = Fraction((one / registry.parse_expression(si)).to_root_units().magnitude)
    answer[code] = [str(exact.numerator), str(exact.denominator)]
print(json.dumps(answer))
