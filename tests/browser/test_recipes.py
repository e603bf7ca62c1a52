"""The recipe pages and the lists of a dinner on a phone and on paper, driven by a real Chromium."""

import re
from typing import Any

import httpx
import pytest
from playwright.sync_api import Page, expect

pytestmark = pytest.mark.browser

TEXT = (
    "Herb butter\nServes 4\n\nIngredients\n1 cup butter\n1 tbsp dried thyme\n\nMethod\n1. Mix.\n2. Chill 20 minutes."
)
LOCK = """() => {
  const held = { onrelease: [], addEventListener(_, told) { this.onrelease.push(told); },
                 async release() { this.onrelease.forEach((told) => told()); } };
  window.taken = 0;
  Object.defineProperty(navigator, "wakeLock", { configurable: true, value: {
    async request() { window.taken += 1; if (window.refuse) throw new Error("low"); window.held = held; return held; } } });
}"""


def pages_of(page: Page, paper: str) -> int:
    return len(re.findall(rb"/Type\s*/Page[^s]", page.pdf(format=paper)))


@pytest.fixture
def recipe_id(address: str) -> str:
    given = httpx.post(f"{address}/v1/recipes", json={"recipe": TEXT}).raise_for_status().json()
    return str(given["id"])


def test_a_pasted_recipe_is_kept_and_opened(open_page: Any) -> None:
    page = open_page("/")
    page.get_by_role("link", name="Recipes").click()
    page.get_by_label("Paste a recipe").fill(TEXT)
    page.get_by_role("button", name="Keep it").click()
    expect(page.locator("h1")).to_have_text("Herb butter")
    expect(page.locator(".goods .title")).to_have_count(2)
    expect(page.locator(".steps li")).to_have_text(["Mix.", "Chill 20 minutes."])


def test_it_is_scaled_and_a_rule_is_turned_off(open_page: Any, recipe_id: str) -> None:
    page = open_page(f"/recipes/{recipe_id}")
    page.get_by_label("For").fill("16")
    page.get_by_role("button", name="Scale").click()
    thyme = page.locator(".goods .title").nth(1)
    expect(page.locator(".times")).to_contain_text("Serves 16")
    expect(thyme).to_contain_text("3 tbsp dried thyme")
    expect(thyme).to_contain_text("4 tbsp if all scaled alike")
    rule = page.locator(".rules input[value=herbs-half-steps]").first
    expect(rule).to_be_checked()
    rule.uncheck()
    page.get_by_role("button", name="Apply").click()
    expect(thyme).to_contain_text("4 tbsp dried thyme")
    expect(page.locator(".rules .off")).to_have_count(1)
    expect(page.locator(".times")).to_contain_text("Serves 16")
    rule.check()
    page.get_by_role("button", name="Apply").click()
    expect(thyme).to_contain_text("3 tbsp dried thyme")


@pytest.mark.parametrize(
    ("query", "shown"),
    [
        ("to=2&by=factor", "2 cups butter"),
        ("to=2&by=factor&units=metric", "g butter"),
        ("to=100+g&by=short&item=butter", "butter"),
        ("to=GN+1/2+65+mm&old=GN+1/1+65+mm&by=pan", "tbsp butter"),
    ],
)
def test_other_ways_to_scale(open_page: Any, recipe_id: str, query: str, shown: str) -> None:
    page = open_page(f"/recipes/{recipe_id}?{query}")
    expect(page.locator(".goods .title").first).to_contain_text(shown)
    expect(page.get_by_role("alert")).to_have_count(0)


def test_by_the_weight_of_the_roast(open_page: Any) -> None:
    page = open_page("/recipes/roast-turkey?to=20+lb&by=roast")
    expect(page.locator(".goods .title").first).to_contain_text("20 lb")


def test_the_screen_stays_on_and_the_page_says_so(open_page: Any) -> None:
    page = open_page("/recipes")
    page.context.add_init_script(f"({LOCK})()")
    page.goto(page.url + "/gravy")
    state, button = page.locator(".awake [role=status]"), page.locator("#awake")
    expect(state).to_have_text("The screen stays on.")
    expect(button).to_have_attribute("aria-pressed", "true")
    button.click()
    expect(state).to_have_text("The screen may go off.")
    button.click()
    expect(state).to_have_text("The screen stays on.")
    page.evaluate("window.held.release()")  # as the browser does when another page is looked at
    expect(state).to_have_text("The screen may go off.")
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    expect(state).to_have_text("The screen stays on.")


def test_a_phone_that_refuses_or_cannot_is_not_said_to_stay_on(open_page: Any) -> None:
    page = open_page("/recipes")
    page.context.add_init_script(f"({LOCK})(); window.refuse = true;")
    page.goto(page.url + "/gravy")
    expect(page.locator(".awake [role=status]")).to_contain_text("refused")
    expect(page.locator("#awake")).to_have_attribute("aria-pressed", "false")
    page.context.add_init_script("delete Navigator.prototype.wakeLock; delete navigator.wakeLock;")
    page.reload()
    expect(page.locator(".awake [role=status]")).to_contain_text("cannot keep the screen on")
    expect(page.locator("#awake")).to_be_hidden()


def test_letters_are_large_enough_for_arms_length(open_page: Any) -> None:
    page = open_page("/recipes/gravy")
    for selector in (".goods .title", ".steps li"):
        size = page.locator(selector).first.evaluate("one => parseFloat(getComputedStyle(one).fontSize)")
        assert size >= 22


def test_every_starter_prints_on_one_sheet(open_page: Any, address: str) -> None:
    page = open_page("/recipes")
    starters = httpx.get(f"{address}/v1/recipes").json()["starters"]
    for starter in starters:
        page.goto(f"{address}/recipes/{starter['id']}?to=3&by=factor&units=both")
        assert pages_of(page, "Letter") == 1, starter["name"]
    page.emulate_media(media="print")
    for hidden in ("#scale", ".awake", ".ways"):
        expect(page.locator(hidden)).to_be_hidden()


def test_the_lists_of_a_dinner(open_page: Any, recipe_id: str) -> None:
    page = open_page("/lists")
    page.get_by_label("Diners").fill("14")
    page.get_by_label("Herb butter").last.check()
    page.get_by_label("Served on").fill("2026-12-24")
    page.get_by_role("button", name="Make the lists").click()
    expect(page.locator("h1")).to_contain_text("For 14 diners")
    expect(page.locator(".shopping h3").first).to_have_text("Meat and poultry")
    expect(page.locator(".shopping .ticks").first).to_contain_text("turkey")
    expect(page.locator(".prep .day").last).to_have_text("On the day")
    expect(page.locator(".prep")).to_contain_text("Herb butter")
    expect(page.locator(".order h3").first).to_contain_text("Order by")
    assert page.get_by_role("checkbox").count() > 60
    assert pages_of(page, "A4") <= 4


def test_what_was_ticked_stays_ticked_when_the_page_is_loaded_again(open_page: Any) -> None:
    page = open_page("/lists?covers=6")
    page.locator(".shopping input").nth(2).check()
    page.reload()
    expect(page.locator(".shopping input").nth(2)).to_be_checked()
    expect(page.locator(".shopping input").nth(1)).not_to_be_checked()
    page.goto(page.url.replace("covers=6", "covers=7"))
    expect(page.locator(".shopping input").nth(2)).not_to_be_checked()


def test_a_dish_that_a_guest_must_avoid_stands_out(open_page: Any) -> None:
    page = open_page("/lists?covers=6")
    page.get_by_text("A guest must avoid").click()
    page.get_by_label("wheat").check()
    page.get_by_role("button", name="Make the lists").click()
    stops = page.locator(".caution.stop")
    expect(stops).to_have_count(2)
    expect(stops.first).to_contain_text("Not for that guest")
    expect(page.locator(".listed").last).not_to_contain_text("Stop")


@pytest.mark.parametrize(
    "path",
    ["/recipes", "/recipes/gravy?to=40&by=servings&units=both", "/lists?covers=14&brine=on&serve_on=2026-12-24"],
)
@pytest.mark.parametrize("width", [320, 390, 1280])
def test_nothing_runs_off_the_side_and_everything_can_be_tapped(open_page: Any, path: str, width: int) -> None:
    page = open_page(path, width=width)
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    for target in page.locator("button, select, .ways a, .shelf a, summary, .tick, input[type=text]").all():
        if target.is_visible():
            assert (target.bounding_box() or {"height": 0})["height"] >= 44, target.inner_text()


def test_every_control_has_a_name(open_page: Any) -> None:
    for path in ("/recipes", "/recipes/gravy?to=40&by=servings", "/lists?covers=14"):
        page = open_page(path)
        for control in page.locator("input:not([type=hidden]), select, textarea, button, a").all():
            assert control.evaluate(
                "one => one.innerText || one.labels?.[0]?.textContent.trim() || one.textContent.trim()"
            ), control
