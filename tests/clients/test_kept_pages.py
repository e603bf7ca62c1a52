"""The pages of recipes and logs without a browser: what they refuse, who may send them a form, what they let in."""

import re

import httpx
import pytest
from fastapi import FastAPI

import turnspit_web

RECIPE = "Herb butter\nServes 4\n\nIngredients\n1 cup butter\n\nMethod\n1. Mix."


@pytest.fixture(scope="session", autouse=True)
def _pages(app: FastAPI) -> None:
    if not any(getattr(route, "path", "") == "/recipes" for route in app.routes):
        turnspit_web.mount(app)


def problem(page: str, at: str) -> str:
    """What a page says beside that field, or above the form; there is no other trouble on it."""
    alerts = re.findall(r'role="alert"', page)
    assert len(alerts) == 1, page
    beside = rf'<p class="problem" id="{at}-problem" role="alert">([^<]+)</p>'
    found = re.search(beside if at else r'<section class="caution warn" role="alert"><p>([^<]+)</p>', page)
    assert found, re.findall(r'[^<]*role="alert"[^<]*(?:<p>[^<]*)?', page)
    assert not at or f'aria-describedby="{at}-problem"' in page
    return found[1]


@pytest.fixture
def log_path(server: str) -> str:
    body = {"kind": "cooling", "item": "<i>stock</i>", "kitchen": "licensed"}
    return f"/logs/{httpx.post(f'{server}/v1/logs', json=body).json()['id']}"


@pytest.mark.parametrize(
    "path",
    [
        "/recipes",
        "/recipes/gravy",
        "/lists",
        "/lists?covers=14",
        "/logs",
        "/labels",
        "/card",
        "/recipes/none",
    ],
)
def test_a_page_may_load_nothing_from_elsewhere(server: str, path: str) -> None:
    response = httpx.get(server + path)
    assert "default-src 'none'" in response.headers["content-security-policy"]
    assert not re.findall(r"""(?:src|href|action)=["'](?:https?:)?//""", response.text)
    assert not re.findall(r"<script(?! type=\"module\" src=\"/static/)|<style|\sstyle=|\son\w+=", response.text)


@pytest.mark.parametrize(
    ("path", "at", "told"),
    [
        ("/recipes/gravy?to=0&by=servings", "to", "is not above zero"),
        ("/recipes/gravy?to=many&by=servings", "to", "is no number"),
        ("/recipes/gravy?to=nan&by=factor", "to", ""),
        ("/recipes/gravy?to=GN+1/1+65+mm&by=pan", "old", ""),
        ("/recipes/gravy?to=cup&by=vessel", "to", "cup"),
        ("/recipes/gravy?to=5+lb&by=roast", "to", "names no roast"),
        ("/recipes/gravy?to=5+lb&by=short&item=caviar", "item", "is not in the recipe"),
        ("/recipes/gravy?to=2&by=factor&rule=none", "", "is not known"),
        ("/recipes/gravy?units=cubits", "units", ""),
        ("/lists?covers=0", "covers", ""),
        ("/lists?covers=some", "covers", "is no whole number"),
        ("/lists?covers=14&kind=mammoth", "kind", "is not known"),
        ("/lists?covers=14&kind=", "", "give a dinner"),
        ("/lists?covers=14&dish=none", "", "is not kept here"),
        ("/lists?covers=14&serve_on=soon", "serve_on", ""),
        ("/labels?items=stock&initials=", "initials", "Give the initials"),
        ("/labels?items=++&initials=AB", "items", "Write one box on each line"),
        ("/labels?items=stock&initials=AB&timezone=Mars/Olympus", "", "is no time zone"),
    ],
)
@pytest.mark.parametrize("language", ["en", "es"])
def test_what_cannot_be_met_is_told_beside_its_field_or_above_the_form(
    server: str, path: str, at: str, told: str, language: str
) -> None:
    response = httpx.get(server + path, headers={"accept-language": language})
    assert response.status_code == 422, response.text[:500]
    line = problem(response.text, at)
    assert told in line if language == "en" else not re.search(r"\b(is|the|write|say|give)\b", line), line


@pytest.mark.parametrize(
    ("form", "at", "told"),
    [
        ({"temperature": "hot", "who": "AB"}, "temperature", "is no number"),
        ({"temperature": "1400", "degrees": "F", "who": "AB"}, "temperature", "is the highest I can answer for"),
        ({"temperature": "nan", "who": "AB"}, "temperature", ""),
        ({"temperature": "58", "degrees": "C", "who": ""}, "who", ""),
        ({"temperature": "58", "degrees": "C", "who": "AB", "at": "noon"}, "at", "is no time"),
        (
            {"temperature": "58", "degrees": "C", "who": "AB", "corrects": "7"},
            "corrects",
            "is no reading of this log",
        ),
        ({"temperature": "58", "degrees": "C", "who": "AB", "action": "chilled"}, "", "an entry is a reading"),
        ({"action": "forgotten", "who": "AB"}, "action", ""),
        ({"who": "AB"}, "", "an entry is a reading"),
    ],
)
def test_an_entry_that_is_none_is_told_and_not_kept(
    server: str, log_path: str, form: dict[str, str], at: str, told: str
) -> None:
    response = httpx.post(server + log_path, data=form)
    assert response.status_code == 422
    assert told in problem(response.text, at)
    for name in ("temperature", "at", "who") if "action" not in form else ("who",):
        assert f'value="{form.get(name, "")}"' in response.text
    assert httpx.get(f"{server}/v1{log_path}").json()["entries"] == []


def test_another_site_cannot_send_our_forms(server: str, log_path: str) -> None:
    elsewhere = {"sec-fetch-site": "cross-site"}
    for path, form in (
        (log_path, {"temperature": "58", "degrees": "C", "who": "AB"}),
        ("/logs", {"kind": "cooling", "item": "stock"}),
        ("/recipes", {"recipe": RECIPE}),
    ):
        assert httpx.post(server + path, data=form, headers=elsewhere).status_code == 403
    assert httpx.get(f"{server}/v1{log_path}").json()["entries"] == []


def test_a_form_that_was_sent_is_gone_on_from_with_get(server: str, log_path: str) -> None:
    sent = httpx.post(server + log_path, data={"temperature": "136.4", "degrees": "F", "who": "AB"})
    assert (sent.status_code, sent.headers["location"]) == (303, log_path)
    (entry,) = httpx.get(f"{server}/v1{log_path}").json()["entries"]
    assert entry["temperature_c"] == pytest.approx(58.0)
    kept = httpx.post(f"{server}/recipes", data={"recipe": RECIPE})
    assert kept.status_code == 303
    assert "Herb butter" in httpx.get(server + kept.headers["location"]).text


def test_what_people_write_is_shown_as_text(server: str, log_path: str) -> None:
    page = httpx.get(server + log_path).text
    assert "&lt;i&gt;stock" in page
    assert "<i>" not in page
    form = {"recipe": "<script>alert(1)</script>\nServes 4\n\nIngredients\n1 cup <b>butter</b>\n\nMethod\n1. Mix."}
    shown = httpx.post(f"{server}/recipes", data=form, follow_redirects=True).text
    assert "<script>alert" not in shown
    assert "<b>butter" not in shown


def test_a_paste_without_a_recipe_comes_back_with_its_text(server: str) -> None:
    response = httpx.post(f"{server}/recipes", data={"recipe": "nothing here"})
    assert response.status_code == 422
    assert "nothing here</textarea>" in response.text
    assert httpx.post(f"{server}/recipes", data={}).status_code == 422


@pytest.mark.parametrize("path", ["/recipes/none", "/logs/none"])
def test_what_is_not_kept_is_a_page_too(server: str, path: str) -> None:
    assert httpx.get(server + path).status_code == 404
    assert httpx.post(f"{server}/logs/none", data={"who": "AB", "note": "x"}).status_code == 404


@pytest.mark.parametrize("name", ["recipes", "lists", "work", "logs", "labels", "card"])
def test_the_line_of_ways_names_the_page_one_is_on(server: str, name: str) -> None:
    assert f'<a href="/{name}" aria-current="page">' in httpx.get(f"{server}/{name}").text


def test_spanish_pages(server: str) -> None:
    for path in ("/recipes", "/recipes/gravy?to=30&by=servings", "/lists?covers=14", "/logs", "/labels", "/card"):
        page = httpx.get(server + path, headers={"accept-language": "es"}).text
        assert 'lang="es"' in page
        assert "Recetas" in page


@pytest.fixture
def roast_path(server: str) -> str:
    """A turkey measured at two places, hot enough for the tables by the end."""
    begun = httpx.post(f"{server}/v1/logs", json={"kind": "roast", "item": "the big Turkey"}).json()
    for minute, breast_c, thigh_c in ((0, 4, 4), (60, 60, 58), (70, 75, 70), (80, 76, 72)):
        for station, core_c in (("breast", breast_c), ("thigh", thigh_c)):
            at = f"2026-11-25T{5 + minute // 60:02d}:{minute % 60:02d}:00-05:00"
            entry = {"who": "AB", "temperature_c": core_c, "station": station, "at": at}
            assert httpx.post(f"{server}/v1/logs/{begun['id']}/entries", json=entry).status_code == 201
    return f"/logs/{begun['id']}"


def test_a_logged_roast_shows_what_its_readings_prove_and_that_a_prediction_never_does(
    server: str, roast_path: str
) -> None:
    bare = httpx.get(server + roast_path, headers={"accept-language": "en-US"}).text
    assert "What these readings prove" in bare
    assert "Credited: 0.0 of 7.0" in bare
    said = httpx.get(f"{server}{roast_path}?kind=turkey&mass=16+lb&oven=325&degrees=F").text
    assert "The reduction asked for was measured" in said
    assert "Credited: 7.0 of 7.0" in said
    for page in (bare, said):
        assert "a prediction never counts" in page
    wrong = httpx.get(f"{server}{roast_path}?kind=turkey&mass=16")
    assert wrong.status_code == 422
    assert 'id="mass-problem"' in wrong.text


def test_nothing_is_proved_of_what_is_no_roast_or_was_thrown_away(
    server: str, log_path: str, roast_path: str
) -> None:
    httpx.post(f"{server}/v1{log_path}/entries", json={"who": "AB", "temperature_c": 58.0})
    assert 'id="proof"' not in httpx.get(server + log_path).text
    httpx.post(f"{server}/v1{roast_path}/entries", json={"who": "AB", "action": "discarded"})
    assert 'id="proof"' not in httpx.get(server + roast_path).text


def test_a_roast_whose_kind_nobody_said_is_asked_for_it(server: str) -> None:
    begun = httpx.post(f"{server}/v1/logs", json={"kind": "roast", "item": "tonight"}).json()
    httpx.post(f"{server}/v1/logs/{begun['id']}/entries", json={"who": "AB", "temperature_c": 60.0})
    page = httpx.get(f"{server}/logs/{begun['id']}").text
    assert 'id="proof"' in page
    assert "Credited" not in page
