import pytest

from turnspit.recipes import Recipe, Step, equipment_at_once, prep_list, read_starter, starters
from turnspit.recipes.prep import station_of

LONG_TABLE = [
    read_starter(key).recipe for key in ("roast-turkey", "dressing", "gravy", "neck-stock", "mashed-potatoes")
]


def test_every_step_stands_once_on_its_day_and_station():
    recipes = [one.recipe for one in starters()]
    days = prep_list(recipes)
    assert [day.days_before for day in days] == [3, 2, 1, 0]
    tasks = [(task.recipe, task.number) for day in days for tasks in day.stations.values() for task in tasks]
    steps = [(recipe.name, number) for recipe in recipes for number in range(1, len(recipe.steps) + 1)]
    assert sorted(tasks) == sorted(steps)


def test_a_stations_tasks_start_with_the_earliest():
    for day in prep_list(LONG_TABLE):
        for tasks in day.stations.values():
            starts = [task.from_min for task in tasks]
            assert starts == sorted(starts, reverse=True)


def test_a_recipes_steps_follow_one_another_to_the_table():
    today = prep_list([read_starter("roast-turkey").recipe])[-1]
    tasks = sorted((task for tasks in today.stations.values() for task in tasks), key=lambda task: task.number)
    assert [(task.from_min, task.to_min) for task in tasks] == [(305, 285), (285, 270), (270, 45), (45, 0)]
    assert today.busy_min == 305


def test_bird_and_dressing_want_the_oven_at_once():
    needs = {need.equipment: need for need in equipment_at_once(LONG_TABLE)}
    assert needs["oven"].count == 2
    assert set(needs["oven"].recipes) == {"Roast turkey, herb butter", "Bread and sage dressing, baked apart"}
    assert needs["oven"].from_min == 60  # the dressing goes in an hour before the table, the bird is out at 45 min
    assert needs["stock pot"].count == 1
    stock = {need.equipment: need.count for need in equipment_at_once(LONG_TABLE, days_before=2)}
    assert stock["stock pot"] == 1


@pytest.mark.parametrize(
    ("text", "equipment", "station"),
    [
        ("Roast until done", (), "oven"),
        ("Simmer for an hour", (), "stove"),
        ("Chop it", ("cutting board",), "board"),
        ("Keep it covered", ("refrigerator",), "cold"),
        ("Think about it", (), "board"),
    ],
)
def test_a_step_without_a_station_goes_where_its_words_say(text, equipment, station):
    assert station_of(Step(text, equipment=equipment)) == station


def test_a_step_without_a_time_takes_a_little():
    day = prep_list([Recipe("a dish", None, (), (Step("Chop it"), Step("Serve it")))])[0]
    assert day.busy_min == 20
