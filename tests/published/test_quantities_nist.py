"""Conversions against the printed factors of NIST.

NIST Special Publication 811 (2008), Appendix B.8, factors to seven significant digits, and NIST Handbook 44, Appendix C
for the household measures; the figures are from memory of these tables, checked by the exact definitions (gallon of
231 cubic inches, pound of 453.59237 g, imperial gallon of 4.54609 L).
"""

import pytest

from turnspit.quantities import convert, unit

SP_811 = [
    ("cup", "L", "2.365882E-01", "US"),
    ("floz", "mL", "2.957353E+01", "US"),
    ("gal", "L", "3.785412E+00", "US"),
    ("gal", "L", "4.546090E+00", "UK"),
    ("floz", "mL", "2.841306E+01", "UK"),
    ("gill", "L", "1.182941E-01", "US"),
    ("gill", "L", "1.420653E-01", "UK"),
    ("pint", "L", "4.731765E-01", "US"),
    ("quart", "L", "9.463529E-01", "US"),
    ("tbsp", "mL", "1.478676E+01", "US"),
    ("tsp", "mL", "4.928922E+00", "US"),
    ("oz", "g", "2.834952E+01", None),
    ("lb", "kg", "4.535924E-01", None),
    ("in", "cm", "2.540000E+00", None),
    ("ft", "m", "3.048000E-01", None),
]


@pytest.mark.parametrize(("name", "target", "printed", "region"), SP_811)
def test_factors_agree_to_the_printed_digits(name, target, printed, region):
    assert f"{convert(1, name, target, region=region).value:.6E}" == printed


@pytest.mark.parametrize(
    ("f", "c"), [(32, 0.0), (212, 100.0), (325, 162.8), (165, 73.9), (140, 60.0), (41, 5.0), (0, -17.8), (-40, -40.0)]
)
def test_temperatures_agree_with_the_definition(f, c):
    assert round(convert(f, "degF", "degC").value, 1) == c


@pytest.mark.parametrize(
    ("many", "one", "count"),
    [
        ("tsp", "tbsp", 3),
        ("tbsp", "cup", 16),
        ("cup", "pint", 2),
        ("pint", "quart", 2),
        ("quart", "gal", 4),
        ("floz", "cup", 8),
    ],
)
def test_us_household_ladder(many, one, count):
    assert unit(one).si / unit(many).si == pytest.approx(count, rel=1e-12)
