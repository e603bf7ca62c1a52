"""The phone page and the wall sheet, driven by a real Chromium."""

import re
from typing import Any

import httpx
import pytest
from playwright.sync_api import Page, expect

pytestmark = pytest.mark.browser

LINE = "16 lb bird, dinner at 6"


def ask(page: Page, line: str) -> None:
    page.get_by_role("textbox").fill(line)
    page.get_by_role("button", name="Ask").click()
    expect(page.locator(".asked")).to_have_text(line)


def test_a_line_gives_headline_timetable_and_drawing(open_page: Any) -> None:
    page = open_page("/")
    ask(page, LINE)
    headline = page.locator("#headline")
    expect(headline).to_contain_text("16 lb")
    expect(headline).to_contain_text("serve at 6 pm")
    expect(headline).to_be_focused()
    expect(page).to_have_title(headline.inner_text())
    tasks = page.locator(".timetable > li")
    assert tasks.count() > 8
    expect(page.locator(".timetable time").filter(has_text=re.compile("^6 pm$"))).to_have_count(1)
    times = page.locator(".timetable time").evaluate_all("all => all.map(one => one.dateTime)")
    assert times == sorted(times)
    drawing = page.get_by_role("img")
    expect(drawing).to_have_attribute("aria-label", re.compile("Ready between .* pm and .* pm"))
    assert drawing.locator(".curve").count() >= 2
    expect(drawing.locator(".ready")).to_have_count(1)


def test_a_tapped_line_goes_on_with_the_conversation(open_page: Any) -> None:
    page = open_page("/")
    ask(page, LINE)
    page.locator(".next .chip").filter(has_text="make it").first.click()
    expect(page.locator("#headline")).to_contain_text("20 lb")
    expect(page.locator("#headline")).to_contain_text("6 pm")
    page.go_back()
    expect(page.locator("#headline")).to_contain_text("16 lb")


def test_a_choice_answers_the_question(open_page: Any) -> None:
    page = open_page("/")
    ask(page, "brine for an 18 lb bird in a 5 gallon bucket")
    choices = page.locator(".question .chip")
    assert choices.count() >= 2
    choices.filter(has_text="it is injected").click()
    expect(page.locator(".asked")).to_have_text("it is injected")


def test_what_could_hurt_someone_is_seen_at_once(open_page: Any) -> None:
    page = open_page("/")
    ask(page, "left it out 3 hours")
    stop = page.locator(".caution.stop").first
    expect(stop).to_be_in_viewport()
    expect(stop).to_contain_text("Stop.")
    assert stop.get_attribute("data-rule") == "two-hours"


def test_it_asks_in_the_zone_of_the_phone(open_page: Any) -> None:
    page = open_page("/", timezone_id="Europe/Madrid")
    ask(page, "7 kg turkey, dinner at 22:00")
    served = page.locator(".timetable time").evaluate_all("all => all.map(one => one.dateTime)")
    assert "2026-11-25T22:00:00+01:00" in served


def test_spanish_by_the_language_of_the_phone(open_page: Any) -> None:
    page = open_page("/", locale="es-ES")
    expect(page.locator("html")).to_have_attribute("lang", "es")
    page.get_by_role("textbox").fill("pavo de 7 kg, cena a las 20:00")
    page.get_by_role("button", name="Preguntar").click()
    expect(page.locator("#headline")).to_contain_text("7 kg")
    expect(page.locator(".plan h2").first).to_have_text("Horario")


def test_it_works_without_scripts(open_page: Any) -> None:
    page = open_page("/", java_script_enabled=False)
    ask(page, LINE)
    expect(page.locator("#headline")).to_contain_text("16 lb")
    page.locator(".next .chip").first.click()
    expect(page.locator("#headline")).to_contain_text("20 lb")


@pytest.mark.parametrize("line", ["<script>alert(1)</script>", "\"'&<b>bird", "🦃🦃🦃", "   "])
def test_a_hostile_line_is_shown_as_text(open_page: Any, line: str) -> None:
    page = open_page("/")
    page.get_by_role("textbox").fill(line)
    page.get_by_role("button", name="Ask").click()
    expect(page.locator("#headline")).to_be_visible()
    assert page.locator(".asked").inner_text().strip() == line.strip()
    assert page.locator("main script, main b").count() == 0


def test_a_service_that_is_gone_is_said(open_page: Any) -> None:
    page = open_page("/")
    page.evaluate("() => { window.fetch = () => Promise.reject(new TypeError('offline')); }")
    page.get_by_role("textbox").fill(LINE)
    page.get_by_role("button", name="Ask").click()
    expect(page.get_by_role("status")).to_contain_text("does not answer")


@pytest.mark.parametrize("width", [320, 390, 1280])
def test_nothing_runs_off_the_side_and_everything_can_be_tapped(open_page: Any, width: int) -> None:
    page = open_page("/", width=width)
    ask(page, LINE)
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    for target in page.locator("button, .chip, select, .doors a, .settings summary").all():
        if target.is_visible():
            assert (target.bounding_box() or {"height": 0})["height"] >= 44


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_text_stands_out_from_its_paper(open_page: Any, scheme: str) -> None:
    """Contrast of WCAG 2.2, criterion 1.4.3: at least 4.5 to 1 for text."""
    page = open_page("/", color_scheme=scheme)
    ask(page, "left it out 3 hours")
    for selector in ("#headline", ".asked", ".caution.stop p", ".caution.stop strong", ".chip", "button", "summary"):
        assert page.locator(selector).first.evaluate(CONTRAST) >= 4.5, selector


def test_every_control_has_a_name(open_page: Any) -> None:
    page = open_page("/")
    ask(page, LINE)
    page.locator(".settings summary").click()
    for control in page.locator("input:not([type=hidden]), select, button, a").all():
        assert control.evaluate("one => one.innerText || one.labels?.[0]?.innerText"), control


def test_the_wall_sheet_reopens_ticks_and_prints_on_one_page(open_page: Any, address: str) -> None:
    page = open_page("/")
    ask(page, "16 lb bird, brined overnight, dinner tomorrow at 6")
    page.get_by_role("link", name="Open as a wall sheet").click()
    expect(page.locator("h1")).to_contain_text("Thursday, November 26, 6 pm")
    boxes = page.get_by_role("checkbox")
    assert boxes.count() == page.locator(".ticks > li").count() > 8
    boxes.first.check()
    expect(boxes.first).to_be_checked()
    for paper in ("A4", "Letter"):
        assert len(re.findall(rb"/Type\s*/Page[^s]", page.pdf(format=paper))) == 1
    page.emulate_media(media="print")
    expect(page.locator(".doors")).to_be_hidden()
    expect(page.locator(".ticks time").first).to_be_visible()
    calendar = httpx.get(address + (page.locator(".doors a[href$='.ics']").get_attribute("href") or ""))
    assert calendar.text.count("BEGIN:VEVENT") == boxes.count()


def test_a_sheet_that_is_not_kept_says_so(open_page: Any, address: str) -> None:
    assert httpx.get(f"{address}/plans/none").status_code == 404
    assert "is not kept here" in httpx.get(f"{address}/plans/none").text


CONTRAST = """one => {
  const channels = (colour) => colour.match(/[\\d.]+/g).map(Number);
  const light = ([r, g, b]) => [r, g, b].map((c) => c / 255)
    .map((c) => (c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4))
    .reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
  let paper = one;
  while ((channels(getComputedStyle(paper).backgroundColor)[3] ?? 1) === 0) paper = paper.parentElement;
  const [a, b] = [getComputedStyle(one).color, getComputedStyle(paper).backgroundColor].map(channels).map(light);
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}"""
