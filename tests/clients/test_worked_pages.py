"""The pages that work one thing out, without a browser: what they give, what they refuse and where they say so."""

import re
from typing import Any
from urllib.parse import urlencode

import httpx
import pytest
from fastapi import FastAPI

import turnspit_web
from turnspit.words import LANGUAGES, Reader, keys
from turnspit_web.forms import Form
from turnspit_web.worked import brine, check, convert, cooling, lethality, size, thermometer

FORMS = (size.FORM, brine.FORM, convert.FORM, check.FORM, check.LINE, cooling.FORM, lethality.FORM, thermometer.FORM)
PAGES = ("size", "brine", "convert", "check", "cooling", "lethality", "thermometer")
READINGS = (
    "0 40 breast\n60 100 breast\n70 150 breast\n80 166 breast\n0 40 thigh\n60 100 thigh\n70 140 thigh\n80 160 thigh"
)


@pytest.fixture(scope="session", autouse=True)
def _pages(app: FastAPI) -> None:
    if not any(getattr(route, "path", "") == "/work" for route in app.routes):
        turnspit_web.mount(app)


def asked(server: str, page: str, *, spanish: bool = False, **fields: Any) -> httpx.Response:
    headers = {"accept-language": "es" if spanish else "en-US"}
    return httpx.get(f"{server}/{page}?{urlencode(fields)}", headers=headers, timeout=30)


def shown(response: httpx.Response) -> str:
    """The text of a page, without its marks."""
    return " ".join(re.sub(r"<[^>]+>", " ", response.text).split())


@pytest.mark.parametrize("page", ["work", *PAGES])
@pytest.mark.parametrize("spanish", [False, True])
def test_a_page_stands_before_anything_is_asked(server: str, page: str, spanish: bool) -> None:
    response = asked(server, page, spanish=spanish)
    assert response.status_code == 200
    assert f'lang="{"es" if spanish else "en"}"' in response.text
    assert "default-src 'none'" in response.headers["content-security-policy"]
    assert not re.findall(r"<script|<style|\sstyle=|\son\w+=", response.text)
    assert 'role="alert"' not in response.text


@pytest.mark.parametrize("page", PAGES)
def test_every_page_is_reached_from_the_first_one_and_from_the_index(server: str, page: str) -> None:
    for where in ("/", "/work"):
        assert f'href="/{page}"' in httpx.get(server + where).text


@pytest.mark.parametrize("page", PAGES)
def test_every_field_has_a_label_of_its_own(server: str, page: str) -> None:
    html = asked(server, page).text
    for control in re.findall(r"<(?:input|select|textarea)[^>]*>", html):
        if 'type="hidden"' in control or 'type="checkbox"' in control:
            continue
        named = re.search(r'\bid="(\w+)"', control)
        assert named, control
        assert html.count(f'<label for="{named[1]}"') == 1
    assert len(re.findall(r'type="checkbox"', html)) == html.count('class="tick"')


@pytest.mark.parametrize("form", FORMS, ids=[form.name for form in FORMS])
def test_every_field_and_option_has_a_text(form: Form) -> None:
    from datetime import UTC, datetime

    for language in LANGUAGES:
        reader = Reader(datetime.now(UTC), language)
        for field in form.fields:
            assert form.label(field, reader)
            told = field.told or f"form-{form.name}-{field.name}-"
            named = {told + value.replace(" ", "-") if value else field.unsaid for value in field.options}
            assert named <= keys(language)
            assert len(form.options(field, reader)) == len(field.options)


def test_no_text_of_the_forms_is_left_over() -> None:
    from pathlib import Path

    folder = Path(turnspit_web.__file__).parent
    written = "\n".join(path.read_text("utf-8") for path in (*folder.rglob("*.py"), *folder.rglob("*.html")))
    named = set(re.findall(r"form-[\w-]+", written)) | {
        f"form-{key}" for key in re.findall(r'\bf\("([\w-]+)"', written)
    }
    named |= {f"form-{key}" for key in re.findall(r'"((?:thermometer|lethality|log10|brine)-[\w-]+)"', written)}
    for form in FORMS:
        named |= {f"form-{form.name}-{field.name}" for field in form.fields}
        named |= {f"form-{form.name}-{end}" for end in ("title", "about")}
    begun = (
        "form-food-",
        "form-side-",
        "form-unknown-",
        "form-above-",
        "form-below-",
        "form-degrees-",
        "form-convert-to-",
    )
    begun += tuple(f"form-{form.name}-{field.name}-" for form in FORMS for field in form.fields if field.options)
    begun += ("form-brine-part-", "form-thermometer-ice-", "form-thermometer-boiling-", "form-cooling-")
    left = {key for key in keys("en") if key.startswith("form-") and key not in named and not key.startswith(begun)}
    assert left == set()


def test_so_many_birds_with_children_apart_and_the_orders_of_a_day(server: str) -> None:
    page = shown(asked(server, "size", covers=30, children=4, kind="turkey", leftovers="yes", serve_on="2026-11-26"))
    assert "3 × turkey of about 14 lb" in page
    assert "2 × 21 lb" in page
    assert "4 children count as half each" in page
    assert "Order by" in page
    assert "turkeys: 1 case of 2" in page
    assert "Order by" not in shown(asked(server, "size", covers=30, kind="veal_loin", serve_on="2026-11-26"))


@pytest.mark.parametrize(
    ("page", "fields", "path", "body", "told"),
    [
        ("brine", {"mass": "18 lb", "vessel": "5 gal", "kind": "turkey", "method": "wet", "salt": "table"}, "/v1/brines",
         {"mass_kg": 18 * 0.45359237, "vessel_l": 5 * 3.785411784}, "headline"),
        ("size", {"covers": 14, "kind": "goose"}, "/v1/sizes", {"covers": 14, "kind": "goose"}, "headline"),
    ],
)  # fmt: skip
def test_a_page_tells_what_its_route_gives(
    server: str, page: str, fields: dict[str, Any], path: str, body: dict[str, Any], told: str
) -> None:
    given = httpx.post(server + path, json=body, timeout=30).json()
    assert given[told] in shown(asked(server, page, **fields))


def test_how_far_the_salt_is_in_is_drawn_for_each_part_and_called_a_model(server: str) -> None:
    for kind, parts in (("turkey", ("White meat", "Dark meat")), ("pork_loin", ("The joint",))):
        page = asked(server, "brine", mass="6 lb", kind=kind)
        assert page.text.count('class="slice"') == len(parts)
        assert all(part in page.text for part in parts)
        assert "not a measurement" in page.text
    assert 'class="slice"' not in asked(server, "brine", mass="6 lb", method="dry").text


def test_a_vessel_too_small_says_by_how_much(server: str) -> None:
    page = asked(server, "brine", mass="18 lb", vessel="3 gal", kind="turkey", method="wet", salt="table")
    assert "That vessel is 1.2 gal (4.5 L) too small" in shown(page)
    assert "It will not fit that vessel" in shown(page)


def test_a_bird_that_is_salted_already_is_stopped(server: str) -> None:
    page = asked(server, "brine", mass="18 lb", kind="turkey", method="wet", salt="table", sold_as="injected")
    assert 'data-rule="injected-no-brine"' in page.text
    assert "No brine and no added salt" in page.text
    assert 'class="figures"' not in page.text


def test_flour_by_the_cup_is_told_with_its_range_and_as_everything_else(server: str) -> None:
    page = shown(asked(server, "convert", amount="2 cups", of="flour"))
    assert "250 g Between 220 and 280 g" in page
    assert "weigh it" in page
    assert "tablespoons 32" in page
    assert "163 °C" in shown(asked(server, "convert", amount="325 F"))
    assert "grams 330" in shown(asked(server, "convert", amount="3", of="onion", to="oz"))
    assert "Between 177 and 180 °C" in shown(asked(server, "convert", amount="gas mark 4"))
    assert "flake kosher salt 135 – 150" in shown(asked(server, "convert", amount="1 cup", of="kosher salt", to="g"))
    assert "0,95 L" in shown(asked(server, "convert", spanish=True, amount="4 tazas", to="L"))


@pytest.mark.parametrize(
    ("fields", "grade", "told"),
    [
        ({"depth": "6 in"}, "stop", "It will not make it"),
        ({"depth": "1 in", "place": "ice_bath"}, "ok", "It should make it"),
        ({"amount": "3 L", "container": "GN 1/1 65 mm"}, "warn", "Stands deep 1 in (26 mm)"),
        ({"amount": "20 lb"}, "stop", "It will not make it"),
        ({"depth": "6 in", "food": "mashed potato", "start": "150", "cold": "38 F"}, "stop", "from 150 °F"),
    ],
)
def test_a_cooling_by_depth_by_pan_and_in_a_pot(server: str, fields: dict[str, str], grade: str, told: str) -> None:
    page = asked(server, "cooling", **{"food": "stock", "place": "refrigerator", **fields})
    assert f'class="verdict {grade}"' in page.text
    assert told in shown(page)
    assert 'data-rule="cooling-two-stage"' in page.text
    assert "it proves nothing" in page.text


def test_a_check_names_its_rule_what_to_do_and_what_was_not_said(server: str) -> None:
    page = asked(server, "check", topic="left_out", hours="3 h", kitchen="home")
    assert 'class="verdict stop"' in page.text
    assert 'data-rule="two-hours"' in page.text
    assert "Throw it away" in page.text
    pink = shown(asked(server, "check", topic="pink"))
    assert "Not said, so taken at the less safe: what it reads." in pink


def test_a_line_is_answered_and_the_form_begins_at_its_topic(server: str) -> None:
    page = asked(server, "check", text="pink near the bone", kitchen="home")
    assert "Colour proves nothing" in page.text
    assert '<option value="pink" selected>' in page.text
    assert 'value="pink near the bone"' in page.text
    assert 'data-rule="colour-no-proof"' in page.text
    assert "Lo rosado" not in page.text


def test_readings_are_counted_at_the_coldest_place_and_only_with_the_conditions_met(server: str) -> None:
    fields = {"readings": READINGS, "degrees": "F", "kind": "turkey"}
    bare = asked(server, "lethality", **fields)
    assert "Not proved by the tables" in bare.text
    assert "Credited: 0.0 of 7.0" in bare.text
    assert "how it was kept moist" in bare.text
    sent = httpx.post(
        f"{server}/lethality",
        data={**fields, "mass": "16 lb", "oven": "325", "readings": READINGS + "\n90 166 thigh\n100 166 thigh"},
    )
    assert "The reduction asked for was measured" in sent.text
    for page in (bare, sent):
        assert "a prediction never counts" in page.text


def test_a_probe_is_judged_at_its_altitude(server: str) -> None:
    page = shown(asked(server, "thermometer", ice="33", boiling="207", degrees="F", altitude="5000 ft"))
    assert "Water boils here at 202.8 °F (94.9 °C)" in page
    assert "Ice water: it may be trusted" in page
    assert "Boiling water: it is off" in page
    assert "Take 4.2 °F" in page
    low = shown(asked(server, "thermometer", ice="-3", degrees="C"))
    assert "Add 5.4 °F (3 °C)" in low


@pytest.mark.parametrize(
    ("page", "fields", "at", "told"),
    [
        ("size", {"covers": ""}, "covers", "This must be said"),
        ("size", {"covers": "some"}, "covers", "“some” cannot be read here. Write it like 14."),
        ("size", {"covers": "14.5"}, "covers", "cannot be read"),
        ("size", {"covers": "0"}, "covers", "0"),
        ("size", {"covers": "9000"}, "covers", "5,000 is the most I can answer for"),
        ("size", {"covers": "4", "children": "9"}, "children", "9"),
        ("size", {"covers": "14", "serve_on": "soon"}, "serve_on", "2026-11-26"),
        ("size", {"covers": "14", "kind": "mammoth"}, "kind", "“mammoth” is not known"),
        ("size", {"covers": "14", "largest": "16"}, "largest", "16 lb, 7 kg"),
        ("brine", {"mass": f"1 a{' ' * 5000}b"}, "mass", "too long: at most 200"),
        ("brine", {"mass": "18"}, "mass", "Write it like 18 lb, 8 kg"),
        ("brine", {"mass": "900 lb"}, "mass", "is the most I can answer for"),
        ("brine", {"mass": "18 lb", "vessel": "5 lb"}, "vessel", "5 gal, 20 L"),
        ("brine", {"mass": "18 lb", "strength": "40"}, "strength", "40"),
        ("brine", {"mass": "18 lb", "hours": "a while"}, "hours", "12 h"),
        ("brine", {"mass": "18 lb", "method": "magic"}, "method", "magic"),
        ("convert", {"amount": "many"}, "amount", "2 cups"),
        ("convert", {"amount": "2 furlongs"}, "amount", "“furlongs” is not known"),
        ("convert", {"amount": "2 cups", "to": "g"}, "of", "Say what it is"),
        ("convert", {"amount": "2 cups", "of": "plutonium", "to": "g"}, "of", "“plutonium” is not known"),
        ("convert", {"amount": "2 cups", "to": "cubits"}, "to", "cubits"),
        ("cooling", {"food": "stock"}, "depth", "Say how deep"),
        ("cooling", {"food": "stock", "depth": "2"}, "depth", "2 in, 5 cm"),
        ("cooling", {"food": "stock", "depth": "2 in", "place": "attic"}, "place", "attic"),
        ("cooling", {"food": "stock", "amount": "9 L", "container": "GN 1/1 65 mm"}, "amount", "use 2 of them"),
        ("cooling", {"food": "stock", "amount": "9 L", "container": "trough"}, "container", "trough"),
        ("cooling", {"food": "stock", "depth": "2 in", "start": "hot"}, "start", "160 F, 70 C"),
        ("check", {"topic": "sunshine"}, "topic", "sunshine"),
        ("check", {"topic": "left_out", "hours": "long"}, "hours", "3 h, 90 min"),
        ("check", {"topic": "reading", "temperature": "900"}, "temperature", "is the highest I can answer for"),
        ("check", {"text": ""}, "text", "This must be said"),
        ("lethality", {"readings": ""}, "readings", "This must be said"),
        ("lethality", {"readings": "10 hot"}, "readings", "10 hot is no reading"),
        ("lethality", {"readings": "10 66", "moisture": "tears"}, "moisture", "tears"),
        ("lethality", {"readings": "10 900", "degrees": "F"}, "readings", "221 °F (105 °C) is the highest"),
        ("lethality", {"readings": "10 151", "degrees": "C"}, "readings", "Is that Fahrenheit?"),
        ("thermometer", {"boiling": "900"}, "boiling", "266 °F (130 °C) is the highest"),
        ("cooling", {"food": "stock", "depth": "2 in", "cold": "60 F"}, "cold", "41 °F (5 °C) is the highest"),
        ("thermometer", {"ice": "cold"}, "ice", "32, 0"),
        ("thermometer", {"ice": "0", "altitude": "1500"}, "altitude", "5000 ft, 1500 m"),
        ("thermometer", {"ice": "0", "altitude": "90000 m"}, "altitude", "5,500 m is the highest"),
    ],
)  # fmt: skip
@pytest.mark.parametrize("spanish", [False, True])
def test_what_cannot_be_is_told_beside_its_field_and_keeps_what_was_typed(
    server: str, page: str, fields: dict[str, str], at: str, told: str, spanish: bool
) -> None:
    response = asked(server, page, spanish=spanish, **fields)
    assert response.status_code == 422
    problem = re.search(rf'<p class="problem" id="{at}-problem" role="alert">([^<]+)</p>', response.text)
    assert problem, re.findall(r'<p class="problem"[^<]+|role="alert"[^/]+', response.text)
    assert re.search(rf'aria-describedby="{at}-problem" autofocus', response.text)
    if not spanish:
        assert told in problem[1].replace("&#34;", '"')
    else:
        assert not re.search(r"\b(is|the|write|above|cannot)\b", problem[1]), problem[1]
    for name, text in fields.items():
        if (
            text
            and len(text) < 200
            and name not in ("kind", "method", "to", "place", "topic", "moisture", "readings", "food", "degrees")
        ):
            assert f'name="{name}" value="{text}"' in response.text


def test_what_people_type_is_shown_as_text(server: str) -> None:
    for page, name in (("convert", "of"), ("check", "text"), ("lethality", "readings")):
        response = asked(server, page, **{"amount": "2 cups", name: "<b>salt</b>"})
        assert "<b>" not in response.text
