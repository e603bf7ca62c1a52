"""The pages that work one thing out, on a phone, on a wide screen and on paper, driven by a real Chromium."""

import re
from typing import Any

import pytest
from playwright.sync_api import Page, expect

pytestmark = pytest.mark.browser

ANSWERED = {
    "size": "/size?covers=30&children=4&kind=turkey&leftovers=yes&serve_on=2026-11-26",
    "brine": "/brine?mass=18+lb&vessel=5+gal&kind=turkey&method=wet&salt=table",
    "convert": "/convert?amount=2+cups&of=flour",
    "check": "/check?topic=left_out&hours=3+h",
    "cooling": "/cooling?food=stock&depth=6+in&place=refrigerator",
    "lethality": "/lethality?readings=0+40+breast%0A60+150+breast%0A70+166+breast&degrees=F&kind=turkey&mass=16+lb",
    "thermometer": "/thermometer?ice=33&boiling=207&degrees=F&altitude=5000+ft",
}


def work_out(page: Page) -> None:
    page.get_by_role("button", name="Work it out").click()
    expect(page.locator(".found")).to_be_visible()


def sheets(page: Page, paper: str) -> int:
    return len(re.findall(rb"/Type\s*/Page[^s]", page.pdf(format=paper)))


def test_how_many_birds_of_which_size(open_page: Any) -> None:
    page = open_page("/")
    page.get_by_role("link", name="How big a roast?").click()
    page.get_by_label("Diners").fill("30")
    page.get_by_label("Children").fill("4")
    page.get_by_label("with leftovers").check()
    page.get_by_label("Served on").fill("2026-11-26")
    work_out(page)
    expect(page.locator(".headline")).to_contain_text("3 × turkey of about 14 lb")
    expect(page.locator(".compared tbody tr")).to_have_count(3)
    expect(page.locator(".order")).to_contain_text("turkey")
    expect(page.get_by_label("Diners")).to_have_value("30")
    page.get_by_role("link", name="All lists of this dinner").click()
    expect(page.locator("h1")).to_contain_text("For 30 diners")


def test_a_brine_that_does_not_fit_and_then_one_that_does(open_page: Any) -> None:
    page = open_page("/brine")
    page.get_by_label("Weight of one").fill("18 lb")
    page.get_by_label("Vessel").fill("3 gal")
    work_out(page)
    expect(page.locator(".fit")).to_contain_text("1.2 gal (4.5 L) too small")
    expect(page.locator(".vessel .wanted")).to_have_count(1)
    page.get_by_label("Vessel").fill("5 gal")
    work_out(page)
    expect(page.locator(".fit")).to_contain_text("It fits")
    expect(page.locator(".figures")).to_contain_text("564 g")
    expect(page.locator(".steps li").nth(1)).to_contain_text("dissolve 564 g")


def test_cups_of_flour(open_page: Any) -> None:
    page = open_page("/convert")
    page.get_by_label("Amount").fill("2 cups")
    page.get_by_label("Of what").fill("flour")
    work_out(page)
    expect(page.locator(".headline")).to_have_text("250 g")
    expect(page.locator(".range")).to_contain_text("Between 220 and 280 g")


def test_a_question_in_a_line_and_then_by_its_facts(open_page: Any) -> None:
    page = open_page("/check")
    page.get_by_label("Ask in a line").fill("turkey left out 3 hours")
    page.get_by_role("button", name="Ask", exact=True).click()
    expect(page.locator(".verdict h2")).to_contain_text("Throw it away")
    expect(page.get_by_label("What about")).to_have_value("left_out")
    page.get_by_label("How long").fill("30 min")
    work_out(page)
    expect(page.locator(".verdict h2")).not_to_have_text("Stop")


def test_a_pot_that_will_not_be_cold_in_time(open_page: Any) -> None:
    page = open_page("/cooling")
    page.get_by_label("Or how much").fill("20 lb")
    work_out(page)
    expect(page.locator(".verdict h2")).to_have_text("It will not make it")
    expect(page.locator(".plot .cross")).to_have_count(2)
    page.get_by_label("Or how much").fill("")
    page.get_by_label("How deep it stands").fill("1 in")
    page.get_by_label("Where, uncovered").select_option("ice_bath")
    work_out(page)
    expect(page.locator(".verdict h2")).to_have_text("It should make it")


def test_readings_pasted_and_the_conditions_said_later(open_page: Any) -> None:
    page = open_page("/lethality")
    page.get_by_label("Readings").fill("5:00 40\n6:00 140\n6:10 160\n6:20 166\n6:30 166")
    work_out(page)
    expect(page.locator(".earned h2")).to_have_text("Not proved by the tables")
    page.get_by_label("Weight of one").fill("16 lb")
    page.get_by_label("Oven, at its coolest").fill("325")
    work_out(page)
    expect(page.locator(".earned h2")).to_have_text("The reduction asked for was measured")
    expect(page.locator(".found")).to_contain_text("a prediction never counts")


def test_a_probe_in_ice_and_in_boiling_water(open_page: Any) -> None:
    page = open_page("/thermometer")
    page.get_by_label("In ice water it reads").fill("33")
    page.get_by_label("In boiling water it reads").fill("207")
    page.get_by_label("Altitude").fill("5000 ft")
    work_out(page)
    expect(page.locator(".verdict h2")).to_have_text(["Ice water: it may be trusted", "Boiling water: it is off"])


def test_what_is_wrong_stands_beside_its_field_and_the_field_has_the_focus(open_page: Any) -> None:
    page = open_page("/work")
    page.get_by_role("link", name="Brine that fits").click()
    page.get_by_label("Weight of one").fill("18")
    page.get_by_label("Vessel").fill("5 gal")
    with page.expect_navigation() as went:
        page.get_by_role("button", name="Work it out").click()
    assert went.value.status == 422
    field = page.get_by_label("Weight of one")
    expect(field).to_be_focused()
    expect(field).to_have_value("18")
    expect(field).to_have_accessible_description(re.compile("Write it like 18 lb, 8 kg"))
    expect(page.get_by_label("Vessel")).to_have_value("5 gal")


@pytest.mark.parametrize("path", ANSWERED.values(), ids=ANSWERED)
@pytest.mark.parametrize(("width", "locale"), [(320, "es-ES"), (390, "en-US"), (1920, "en-US")])
def test_nothing_runs_off_the_side_and_everything_can_be_tapped(
    open_page: Any, path: str, width: int, locale: str
) -> None:
    page = open_page(path, width=width, locale=locale)
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    for target in page.locator("button, select, .ways a, summary, input[type=text], .tick, .doors a").all():
        if target.is_visible():
            assert (target.bounding_box() or {"height": 0})["height"] >= 44, target.inner_text()


@pytest.mark.parametrize("name", ANSWERED)
def test_the_answer_comes_before_the_form_for_the_eye_and_for_the_keyboard(open_page: Any, name: str) -> None:
    phone = open_page(ANSWERED[name])
    found, form = phone.locator(".found").bounding_box(), phone.locator("form.filled").last.bounding_box()
    assert found["y"] < form["y"]
    wide = open_page(ANSWERED[name], width=1920, height=1080)
    found, form = wide.locator(".found").bounding_box(), wide.locator("form.filled").first.bounding_box()
    assert found["x"] < form["x"]
    assert form["y"] < 400


@pytest.mark.parametrize("name", ANSWERED)
def test_an_answer_prints_on_one_sheet_without_its_form(open_page: Any, name: str) -> None:
    page = open_page(ANSWERED[name])
    for paper in ("A4", "Letter"):
        assert sheets(page, paper) == 1
    page.emulate_media(media="print")
    expect(page.locator(".found")).to_be_visible()
    expect(page.locator("form.filled").first).to_be_hidden()


@pytest.mark.parametrize("name", ANSWERED)
def test_a_page_works_without_scripts_in_the_dark_and_in_spanish(open_page: Any, name: str) -> None:
    page = open_page(ANSWERED[name], java_script_enabled=False, color_scheme="dark", locale="es-ES")
    expect(page.locator(".found")).to_be_visible()
    expect(page.locator("html")).to_have_attribute("lang", "es")
    page.get_by_role("button", name="Calcular").click()
    expect(page.locator(".found")).to_be_visible()
