"""Logs, labels and the card on a phone and on paper, driven by a real Chromium."""

import re
from typing import Any

import pytest
from playwright.sync_api import Page, expect

pytestmark = pytest.mark.browser


def begin(page: Page, kind: str, item: str) -> None:
    page.get_by_label("What is logged").select_option(label=kind)
    page.get_by_label("Food (turkey").fill(item)
    page.get_by_label("Kitchen").select_option("licensed")
    page.get_by_role("button", name="Begin a log").click()
    expect(page.locator("h1")).to_have_text(f"{kind}: {item}")


def write(page: Page, temperature: str, at: str = "", degrees: str = "F") -> None:
    form = page.locator("#entry")
    form.get_by_label("Temperature").fill(temperature)
    form.get_by_label("Degrees").select_option(degrees)
    if not form.get_by_label("Initials").input_value():
        form.get_by_label("Initials").fill("AB")
    if at:
        form.locator("summary").click()
        form.get_by_label("Measured at").fill(at)
    form.get_by_role("button", name="Write it down").click()
    expect(form.get_by_label("Temperature")).to_have_value("")


def sheets(page: Page, paper: str) -> int:
    return len(re.findall(rb"/Type\s*/Page[^s]", page.pdf(format=paper)))


def test_readings_a_gap_a_stop_and_what_ends_it(open_page: Any) -> None:
    page = open_page("/logs")
    begin(page, "Cooling", "turkey stock")
    write(page, "140", "05:30")  # the clock of the tests stands at nine
    write(page, "120", "06:20")
    write(page, "34", "08:55", degrees="C")
    verdict = page.locator(".verdict")
    expect(verdict.locator("h2")).to_have_text("Stop")
    expect(page.locator(".plot circle")).to_have_count(3)
    expect(page.locator(".plot polyline")).to_have_count(1)  # broken at the gap
    expect(verdict).to_contain_text("Throw it away")
    expect(verdict).to_contain_text("3-501.14")
    expect(page.locator(".readings .gap")).to_contain_text("Nothing measured from 6:20 am to 8:55 am")
    rows = page.locator(".readings tbody tr:not(.print-only):not(.gap)")
    expect(rows).to_have_count(3)
    expect(rows.nth(0)).to_contain_text("140 °F (60 °C)")
    expect(rows.nth(0)).to_contain_text("written down")
    expect(rows.nth(2)).to_contain_text("93 °F (34 °C)")
    page.locator("#entry summary").click()
    page.get_by_label("Corrects reading").select_option("3")
    write(page, "20", degrees="C")
    expect(rows).to_have_count(4)
    expect(page.locator(".readings .replaced")).to_have_count(1)
    expect(verdict.locator("h2")).to_have_text("Stop")
    done = page.locator("form").last
    expect(done.get_by_label("Initials")).to_have_value("AB")
    done.get_by_label("What was done").select_option("chilled")
    done.get_by_role("button", name="Write it down").click()
    expect(verdict.locator("h2")).to_have_text("Stop")
    done.get_by_role("button", name="Served or stored").click()
    expect(verdict.locator("h2")).to_have_text("Stop")
    done.get_by_label("What was done").select_option("discarded")
    done.get_by_role("button", name="Write it down").click()
    expect(verdict.locator("h2")).to_have_text("Thrown away")
    page.get_by_role("link", name="Logs").click()
    expect(page.locator(".shelf li").first).to_contain_text("Thrown away")


def test_a_bird_is_logged_place_by_place(open_page: Any) -> None:
    page = open_page("/logs")
    begin(page, "Roast", "turkey")
    for station in ("breast", "inner thigh", "wing joint"):
        page.get_by_label("Where").select_option(label=station)
        write(page, "167")
    expect(page.locator(".readings tbody tr").nth(1)).to_contain_text("inner thigh")
    expect(page.locator(".verdict h2")).to_have_text("In order")
    page.locator("form", has_text="Something was done").locator("summary").click()
    page.get_by_role("button", name="Served or stored").click()
    expect(page.locator(".readings")).to_contain_text("served or stored")
    expect(page.locator(".verdict h2")).not_to_have_text("Stop")
    proof = page.locator("#proof")
    expect(proof).to_contain_text("Not proved by the tables")
    proof.locator("summary", has_text="Say how it was roasted").click()
    proof.get_by_label("Weight of one").fill("16")
    proof.get_by_role("button").click()
    expect(page.get_by_label("Weight of one")).to_have_attribute("aria-invalid", "true")
    page.get_by_label("Weight of one").fill("16 lb")
    proof.get_by_role("button").click()
    expect(proof).to_contain_text("a prediction never counts")
    page.emulate_media(media="print")
    expect(proof.locator(".earned")).to_be_visible()
    expect(proof.locator("form")).to_be_hidden()


def test_the_sheet_prints_with_lines_left_for_the_hand(open_page: Any) -> None:
    page = open_page("/logs")
    begin(page, "Hot holding", "gravy")
    write(page, "150")
    for paper in ("A4", "Letter"):
        assert sheets(page, paper) == 1
    page.emulate_media(media="print")
    expect(page.locator("#entry")).to_be_hidden()
    expect(page.locator(".by-hand").first).to_be_visible()
    expect(page.locator(".signed")).to_have_text("Verified by, date:")
    expect(page.locator(".verdict")).to_be_visible()


def test_labels_are_made_and_printed(open_page: Any) -> None:
    page = open_page("/")
    page.get_by_role("link", name="Labels").click()
    page.get_by_label("One box on each line").fill("turkey stock\nsliced breast\n\n<b>gravy</b>")
    page.get_by_label("Initials").fill("AB")
    page.get_by_role("button", name="Make the labels").click()
    expect(page.locator(".sticker h2")).to_have_text(["turkey stock", "sliced breast", "<b>gravy</b>"])
    expect(page.locator(".use-by").first).to_have_text("Sun, Nov 29")
    assert sheets(page, "A4") == 1
    page.emulate_media(media="print")
    expect(page.locator("form")).to_be_hidden()
    expect(page.locator(".sticker").first).to_be_visible()


@pytest.mark.parametrize("locale", ["en-US", "es-ES"])
@pytest.mark.parametrize("kitchen", ["", "?kitchen=home", "?kitchen=licensed"])
def test_the_card_is_one_page(open_page: Any, locale: str, kitchen: str) -> None:
    page = open_page(f"/card{kitchen}", locale=locale)
    expect(page.locator("main")).to_contain_text("165" if locale == "en-US" else "74")
    for paper in ("A4", "Letter"):
        assert sheets(page, paper) == 1


@pytest.mark.parametrize("path", ["/logs", "/labels?items=stock&initials=AB", "/card"])
@pytest.mark.parametrize("width", [320, 390, 1280])
def test_nothing_runs_off_the_side_and_everything_can_be_tapped(open_page: Any, path: str, width: int) -> None:
    page = open_page(path, width=width)
    if path == "/logs":
        begin(page, "Cooling", "stock")
        write(page, "140")
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    for target in page.locator("button, select, .ways a, summary, input[type=text]").all():
        if target.is_visible():
            assert (target.bounding_box() or {"height": 0})["height"] >= 44, target.inner_text()


@pytest.mark.parametrize("scheme", ["light", "dark"])
def test_a_log_works_without_scripts_and_in_the_dark(open_page: Any, scheme: str) -> None:
    page = open_page("/logs", java_script_enabled=False, color_scheme=scheme)
    begin(page, "Hot holding", "gravy")
    write(page, "150")
    expect(page.locator(".verdict h2")).to_have_text("In order")
