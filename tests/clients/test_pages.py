"""The pages without a browser: what they refuse, and what they allow others to load."""

import re
from pathlib import Path

import httpx
import pytest
from fastapi import FastAPI

import turnspit_web
from turnspit.words import keys


@pytest.fixture(scope="session", autouse=True)
def _pages(app: FastAPI) -> None:
    turnspit_web.mount(app)


@pytest.mark.parametrize("path", ["/", "/?text=16+lb+bird,+dinner+at+6", "/display", "/plans/none", "/display/none"])
def test_a_page_may_load_nothing_from_elsewhere(server: str, path: str) -> None:
    response = httpx.get(server + path)
    assert "default-src 'none'" in response.headers["content-security-policy"]
    assert response.headers["content-type"].startswith("text/html")
    assert not re.findall(r"""(?:src|href|action)=["'](?:https?:)?//""", response.text)
    assert not re.findall(r"<script(?! type=\"module\" src=\"/static/)|<style|\sstyle=|\son\w+=", response.text)


@pytest.mark.parametrize(
    ("query", "told"),
    [
        ("text=hello&timezone=Mars/Olympus", "is no time zone"),
        ("text=hello&units=furlongs", "us"),
        (f"text={'x' * 20_001}", "at most 20000"),
    ],
)
def test_what_cannot_be_met_is_told_on_the_page(server: str, query: str, told: str) -> None:
    response = httpx.get(f"{server}/?{query}")
    assert response.status_code == 422
    assert told in response.text
    assert 'role="alert"' in response.text


def test_another_site_cannot_change_the_display(server: str, app: FastAPI) -> None:
    service = app.state.service
    service.store.keep_plan("p1", {"id": "p1"}, service.clock(), service.clock())
    elsewhere = httpx.post(f"{server}/display/p1", headers={"sec-fetch-site": "cross-site"})
    assert elsewhere.status_code == 403
    here = httpx.post(f"{server}/display/p1", headers={"sec-fetch-site": "same-origin"})
    assert (here.status_code, here.headers["location"]) == (303, "/display")
    service.store.delete_plan("p1")


def test_every_text_of_the_pages_is_there_and_used() -> None:
    folder = Path(turnspit_web.__file__).parent
    sources = [*folder.rglob("*.py"), *folder.rglob("templates/**/*.html")]
    written = "\n".join(path.read_text(encoding="utf-8") for path in sources)
    named = {f"page-{key}" for key in re.findall(r"""(?:\bt|\blabel)\(f?[\"']([a-z-]+)""", written)}
    there = {key for key in keys("en") if key.startswith("page-")}
    for key in named:
        assert key in there or any(one.startswith(key) for one in there), key
    beginnings = {key for key in named if key not in there}
    display = {f"page-display-{name}" for name in re.findall(r'"([a-z-]+)"', written)}
    unused = {key for key in there - named - display if not any(key.startswith(one) for one in beginnings)}
    chosen = tuple(re.findall(r'"(page-[a-z-]+)"', written))
    assert {key for key in unused if not key.startswith(chosen)} == set()


def test_an_impossible_dinner_is_a_page_too(server: str) -> None:
    response = httpx.get(f"{server}/?text=16+lb+bird,+dinner+in+10+minutes&timezone=America/New_York")
    assert response.status_code == 200
