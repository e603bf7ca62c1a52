import pytest

from turnspit.errors import Unknown
from turnspit.reference import BadTable, names, parse, table

GOOD = """
title = "Two salts"
source = "A handbook, table 1"
obtained = "print"
[[row]]
key = "table"
g_per_cup = 292
[[row]]
key = "coarse"
g_per_cup = 240
source = "A page"
obtained = "memory"
"""


def test_a_row_has_the_source_of_its_table_or_its_own():
    salts = parse("salts", GOOD).by("key")
    assert salts["table"]["source"] == "A handbook, table 1"
    assert (salts["coarse"]["source"], salts["coarse"]["obtained"]) == ("A page", "memory")


@pytest.mark.parametrize(
    ("text", "fault"),
    [
        (GOOD.replace('source = "A handbook, table 1"', ""), "row 1: no source"),
        (GOOD.replace('source = "A page"', 'source = " "'), "row 2: no source"),
        (GOOD.replace('"memory"', '"hearsay"'), "row 2: obtained 'hearsay' is none of"),
        (GOOD.replace('key = "coarse"', 'key = ""'), "row 2: key is empty"),
        (GOOD.replace('title = "Two salts"', ""), "a title"),
        ("title = ", "salts.toml"),
    ],
)
def test_a_bad_row_stops_the_load_and_is_named(text, fault):
    with pytest.raises(BadTable, match=r"salts\.toml") as error:
        parse("salts", text)
    assert fault in str(error.value)


def test_a_key_that_stands_twice_is_refused():
    with pytest.raises(BadTable, match="row 2: key 'table' stands twice"):
        parse("salts", GOOD.replace('"coarse"', '"table"')).by("key")


def test_an_unknown_table_is_named():
    with pytest.raises(Unknown, match="horoscope"):
        table("horoscope")


@pytest.mark.parametrize("name", names())
def test_every_shipped_table_loads(name):
    assert table(name).rows
