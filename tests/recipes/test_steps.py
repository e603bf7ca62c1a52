import pytest

from turnspit.recipes.steps import read_step


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("Roast for 1 1/2 hours, then rest 20–30 minutes.", (110, 120)),
        ("Roast 50 mins - 1 hr, turning twice.", (50, 60)),
        ("1 hour 15 minutes on a rack", (75, 75)),
        ("Cook for half an hour.", (30, 30)),
        ("Brine overnight.", (480, 720)),
        ("Rest two days in the refrigerator.", (2880, 2880)),
        ("Whisk 30 seconds.", (0.5, 0.5)),
        ("Roast about 15 minutes per pound.", None),
        ("Hornear 2 horas.", (120, 120)),
        ("Add 2 cups stock and 3 eggs.", None),
        ("Cut into 1-inch pieces.", None),
    ],
)
def test_times_are_read(text, minutes):
    assert read_step(text).minutes == minutes


@pytest.mark.parametrize(
    ("text", "temperatures"),
    [
        ("Roast at 350°F (180°C).", (176.7, 180.0)),
        ("Heat oven to 180C/160C fan/gas 4.", (180.0, 160.0)),
        ("Gas mark 6, then gas 4", (200.0, 180.0)),
        ("at 325 degrees F until the breast reads 165 F", (162.8, 73.9)),
        ("Use 2 C of flour, 12 cloves and vitamin C.", ()),
    ],
)
def test_temperatures_are_read(text, temperatures):
    assert read_step(text).temperatures_c == temperatures


def test_equipment_is_read_in_its_order_by_our_names():
    step = read_step(
        "Set a wire rack in a roasting tin; keep a saucepan and a thermometer ready, and the rack again."
    )
    assert step.equipment == ("roasting rack", "roasting pan", "saucepan", "meat thermometer")
