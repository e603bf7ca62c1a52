import pytest

from turnspit.recipes import allergens, read_ingredient


@pytest.mark.parametrize(
    ("line", "flags"),
    [
        ("2 tbsp butter", {"milk": "contains"}),
        ("1 tbsp peanut butter", {"peanuts": "contains"}),
        ("1 can coconut milk", {}),
        ("1 cup almond milk", {"tree nuts": "contains"}),
        ("3 eggs", {"egg": "contains"}),
        ("1 eggplant", {}),
        ("1 tsp nutmeg", {}),
        ("1 butternut squash", {}),
        ("1 tsp cream of tartar", {}),
        ("2 tbsp soy sauce", {"wheat": "contains", "soybeans": "contains"}),
        ("1 tsp Worcestershire sauce", {"fish": "contains", "wheat": "may contain", "soybeans": "may contain"}),
        ("200 g prawns", {"crustacean shellfish": "contains"}),
        ("12 oysters", {}),
        ("1 tbsp tahini", {"sesame": "contains"}),
        ("1 cup rice flour", {}),
        ("1 cup gluten-free all-purpose flour", {}),
        ("1 cup flour", {"wheat": "contains"}),
        (
            "1 loaf bread",
            {"wheat": "contains", "milk": "may contain", "soybeans": "may contain", "sesame": "may contain"},
        ),
        ("2 tbsp margarine or butter", {"milk": "contains", "soybeans": "may contain"}),
        ("2 cups turkey stock", {}),
    ],
)
def test_the_nine_are_flagged_by_the_words_of_a_line(line, flags):
    assert {flag.allergen: flag.standing for flag in allergens([read_ingredient(line)])} == flags


def test_an_unread_line_is_searched_too():
    assert allergens([read_ingredient("½½ cups cream")])[0].allergen == "milk"
