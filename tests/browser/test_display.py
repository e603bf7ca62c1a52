"""The kitchen display, driven by a real Chromium whose clock the test sets."""

from typing import Any

import httpx
import pytest
from playwright.sync_api import Page, expect

pytestmark = pytest.mark.browser

DINNER = {
    "roast": {"kind": "turkey", "mass_kg": 7.257, "state": "thawed"},
    "serve_at": "2026-11-26T18:00:00-05:00",
    "now": "2026-11-25T09:00:00-05:00",
    "timezone": "America/New_York",
    "units": "us",
}
SIZES = [(1920, 1080), (1280, 800)]


@pytest.fixture(scope="module")
def plan(address: str) -> dict[str, Any]:
    given: dict[str, Any] = httpx.post(f"{address}/v1/plans", json=DINNER, timeout=30).raise_for_status().json()
    httpx.put(f"{address}/v1/display/{given['id']}").raise_for_status()
    return given


def task(plan: dict[str, Any], task_id: str) -> dict[str, Any]:
    found: dict[str, Any] = next(one for one in plan["tasks"] if one["id"] == task_id)
    return found


def minutes_before(moment: str, minutes: int) -> str:
    from datetime import datetime, timedelta

    return (datetime.fromisoformat(moment) - timedelta(minutes=minutes)).isoformat()


def test_next_leads_with_a_countdown_that_runs(open_page: Any, plan: dict[str, Any]) -> None:
    baste = task(plan, "baste_1")
    page = open_page("/display", 1920, 1080, at=minutes_before(baste["start"], 5))
    expect(page.locator("h1")).to_have_text("Baste")
    before = page.locator("#figure").inner_text()
    page.clock.run_for(3000)
    after = page.locator("#figure").inner_text()
    assert seconds(before) - seconds(after) == pytest.approx(3, abs=1)
    expect(page.locator("#serve")).to_have_text("Dinner 6:00 pm")


def test_what_hands_are_busy_with_leads_while_it_runs(open_page: Any, plan: dict[str, Any]) -> None:
    page = open_page("/display", 1920, 1080, at=minutes_before(task(plan, "carve")["end"], 5))
    expect(page.locator("#at")).to_have_text("Now")
    expect(page.locator("h1")).to_have_text("Carve")
    expect(page.locator("#countdown")).to_contain_text("until")


def test_the_coldest_probe_is_recalled_only_while_the_roast_is_in(open_page: Any, plan: dict[str, Any]) -> None:
    page = open_page("/display", 1920, 1080, at=minutes_before(plan["check_from"], 30))
    expect(page.locator("#probe")).to_contain_text("the coldest counts")
    expect(page.locator("#probe")).to_contain_text("wing joint")
    page = open_page("/display", 1920, 1080, at=minutes_before(plan["oven_in_at"], 30))
    expect(page.locator("#probe")).to_be_hidden()


def test_another_day_is_named(open_page: Any, plan: dict[str, Any]) -> None:
    page = open_page("/display", 1920, 1080, at="2026-11-25T20:00:00-05:00")
    expect(page.locator("#serve")).to_have_text("Dinner Thu 6:00 pm")


def test_times_are_those_of_the_plan_whatever_the_screen_is_set_to(open_page: Any, plan: dict[str, Any]) -> None:
    page = open_page("/display", 1920, 1080, at="2026-11-26T17:00:00-05:00", timezone_id="Asia/Tokyo")
    expect(page.locator("#clock")).to_have_text("5:00 pm")


def test_after_dinner_it_says_that_all_is_done(open_page: Any, plan: dict[str, Any]) -> None:
    page = open_page("/display", 1920, 1080, at="2026-11-27T09:00:00-05:00")
    expect(page.locator("h1")).to_have_text("All done.")


@pytest.mark.parametrize(("width", "height"), SIZES)
def test_it_is_read_at_four_metres_and_never_runs_over(
    open_page: Any, plan: dict[str, Any], width: int, height: int
) -> None:
    """Letters of 3.4 percent of the width are 18 mm tall on a 24 inch screen (53 cm wide): common practice, no source."""
    page: Page = open_page(f"/display/{plan['id']}", width, height, at="2026-11-25T09:00:00-05:00")
    for one in plan["tasks"]:
        page.clock.set_system_time(minutes_before(one["start"], 2))
        page.clock.run_for(1000)
        expect(page.locator("h1")).not_to_be_empty()
        smallest = page.evaluate(
            "Math.min(...[...document.querySelectorAll('body *')].filter(one => one.childNodes.length && "
            "one.innerText?.trim()).map(one => parseFloat(getComputedStyle(one).fontSize)))"
        )
        assert smallest >= 0.034 * width
        assert page.evaluate("document.documentElement.scrollHeight") <= height
        line, around = page.locator("h1").bounding_box(), page.locator("main").bounding_box()
        assert line is not None
        assert around is not None
        assert line["y"] + line["height"] <= around["y"] + around["height"] + 1, one["title"]


def test_nothing_technical_is_on_it(open_page: Any, plan: dict[str, Any]) -> None:
    page = open_page("/display", 1920, 1080, at=minutes_before(plan["check_from"], 1))
    shown = page.locator("body").inner_text().lower()
    for word in ("p10", "p90", "percent", "ensemble", "log", "lethality", "probability"):
        assert word not in shown


def test_it_goes_on_without_the_server(open_page: Any, plan: dict[str, Any]) -> None:
    baste = task(plan, "baste_1")
    page = open_page("/display", 1920, 1080, at=minutes_before(baste["start"], 5))
    expect(page.locator("h1")).to_have_text("Baste")
    page.evaluate("() => { window.fetch = () => Promise.reject(new TypeError('offline')); }")
    page.clock.run_for(60_000)
    expect(page.locator("h1")).to_have_text("Baste")


def test_a_plan_is_put_on_the_display_from_its_sheet(open_page: Any, address: str, plan: dict[str, Any]) -> None:
    other = httpx.post(f"{address}/v1/plans", json={**DINNER, "serve_at": "2026-11-27T13:00:00-05:00"}).json()
    page = open_page(f"/plans/{other['id']}", at="2026-11-25T09:00:00-05:00")
    page.get_by_role("button", name="Show on the kitchen display").click()
    expect(page.locator("#serve")).to_have_text("Dinner Fri 1:00 pm")
    httpx.put(f"{address}/v1/display/{plan['id']}").raise_for_status()
    page.clock.run_for(21_000)
    expect(page.locator("#serve")).to_have_text("Dinner Thu 6:00 pm")


def seconds(figure: str) -> int:
    minutes, _, rest = figure.partition(":")
    return 60 * int(minutes) + int(rest)
