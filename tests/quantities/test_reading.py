from fractions import Fraction

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from turnspit.errors import Impossible
from turnspit.quantities import Amount, plain, read_amount, take_amount, take_range


@pytest.mark.parametrize(
    ("text", "low", "high"),
    [
        ("1 1/2", Fraction(3, 2), None),
        ("1½", Fraction(3, 2), None),
        ("1-1/2", Fraction(3, 2), None),
        ("2-3", 2, 3),
        ("2 – 3", 2, 3),
        ("2 to 3", 2, 3),
        ("1/2-3/4", Fraction(1, 2), Fraction(3, 4)),
        ("1,5", Fraction(3, 2), None),
        ("1,000", 1000, None),
        ("1,250.5", Fraction(2501, 2), None),
        ("0,125", Fraction(1, 8), None),
        (".5", Fraction(1, 2), None),
        ("one and a half", Fraction(3, 2), None),
        ("three quarters of a", Fraction(3, 4), None),
        ("half a dozen", 6, None),
        ("two dozen", 24, None),
        ("two hundred", 200, None),
        ("between 2 and 3", 2, 3),
        ("1–1 1/2", 1, Fraction(3, 2)),
    ],
)
def test_a_number_or_range_is_read(text, low, high):
    assert take_range(plain(text))[:2] == (low, high)


@pytest.mark.parametrize("text", ["9" * 13, "", "and", "aubergine", "1/0", "½½", "1//2", "/", "half-and-half"])
def test_what_is_no_number_is_not_read(text):
    assert take_range(plain(text)) is None


def test_a_larger_number_first_is_no_range():
    assert take_range("3-2")[:2] == (3, None)


@pytest.mark.parametrize(
    ("text", "amount"),
    [
        ("2 1/2 cups", Amount(Fraction(5, 2), "cup")),
        ("3 lb 4 oz", Amount(Fraction(13, 4), "lb")),
        ("3 lb, 4 oz", Amount(Fraction(13, 4), "lb")),
        ("1/2 cup + 2 tbsp", Amount(Fraction(5, 8), "cup")),
        ("a pinch", Amount(Fraction(1), "pinch")),
        ("1 tsp to 1 tbsp", Amount(Fraction(1), "tsp", Fraction(3))),
        ("1.500 g", Amount(Fraction(1500), "g")),
        ("1.250 ml", Amount(Fraction(1250), "mL")),
        ("0.125 g", Amount(Fraction(1, 8), "g")),
        ("1.375 lb", Amount(Fraction(11, 8), "lb")),
        ("about 300 g", Amount(Fraction(300), "g", approximate=True)),
        ("2 x 400 g tins", Amount(Fraction(2), "tin", each=Amount(Fraction(400), "g"))),
        ("1 (14 oz) can", Amount(Fraction(1), "can", each=Amount(Fraction(14), "oz"))),
        ("2 cups (250 g)", Amount(Fraction(2), "cup", equals=Amount(Fraction(250), "g"))),
        ("350 °F", Amount(Fraction(350), "degF")),
        ("2", Amount(Fraction(2))),
    ],
)
def test_an_amount_is_read(text, amount):
    assert read_amount(text) == amount


def test_a_region_goes_with_the_amount():
    assert read_amount("2 tbsp", "AU").litres() == pytest.approx(0.04)
    assert read_amount("2 tbsp").litres() == pytest.approx(0.02957, abs=1e-5)


@pytest.mark.parametrize("text", ["", "some", "2 cups flour", "1/0 cup", "cup"])
def test_what_is_not_an_amount_is_refused(text):
    with pytest.raises(Impossible, match="is not an amount"):
        read_amount(text)


def test_masses_come_from_what_is_given_first_then_from_the_food():
    assert read_amount("2 cups (240 g)").kilograms("flour") == pytest.approx(0.24)
    assert read_amount("2 cups").kilograms("flour") == pytest.approx(0.25)
    assert read_amount("2 x 400 g tins").kilograms() == pytest.approx(0.8)
    assert read_amount("3").kilograms("eggs") == pytest.approx(0.15)
    assert read_amount("2 cups").kilograms("unobtainium") is None
    assert read_amount("2 (12 fl oz) bottles").litres() == pytest.approx(0.70976, abs=1e-5)


@given(st.text(max_size=60))
@example("1 (14 oz can")
@example("9" * 400 + " cups")
@example("1/" + "9" * 50)
def test_no_text_raises(text):
    taken = take_amount(plain(text))
    assert taken is None or taken[0].value >= 0


@given(
    st.lists(
        st.sampled_from(
            [
                "1",
                "½",
                "/",
                "-",
                "x",
                "(",
                ")",
                "oz",
                "cup",
                "14",
                ",",
                ".",
                "a",
                "half",
                "to",
                "lb",
                "can",
                " ",
                "\t",
                "T",
            ]
        ),
        max_size=14,
    )
)
def test_no_shuffled_recipe_words_raise(words):
    for text in ("".join(words), " ".join(words)):
        taken = take_amount(plain(text))
        assert taken is None or taken[1] in plain(text)
