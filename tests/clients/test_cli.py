"""The command line: same answers on both roads, plain tables in a pipe, one line on stderr for what cannot be met."""

import json
import os
import subprocess
import sys
from typing import Any

import pytest

NOW = "2026-11-25T09:00:00-05:00"
ZONE = "America/New_York"
LINES = (
    "16 lb bird, dinner at 6",
    "how big a turkey for 14 with leftovers",
    "2 cups table salt in grams",
    "is 160 in the thigh ok?",
    "cuánto tarda un pavo de 7 kg",
    "",
    "xyzzy",
)


def turnspit(*args: str, stdin: str = "") -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-c", "import turnspit_cli; turnspit_cli.main()", *args],
        input=stdin,
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
        env={**os.environ, "TZ": ZONE, "NO_COLOR": "1"},
    )


def answered(*args: str) -> dict[str, Any]:
    done = turnspit("ask", *args, "--json", "--now", NOW, "--timezone", ZONE)
    assert (done.returncode, done.stderr) == (0, "")
    response: dict[str, Any] = json.loads(done.stdout)
    return response


@pytest.mark.parametrize("line", LINES)
def test_both_roads_give_the_same_json(line: str, server: str) -> None:
    here, there = answered(line), answered(line, "--server", server)
    assert here.pop("conversation")
    assert there.pop("conversation")
    assert here == there


def test_words_need_no_quotes(server: str) -> None:
    assert answered("16", "lb", "bird,", "dinner", "at", "6")["intent"] == "plan"


def test_a_plan_in_a_pipe_is_plain_text_with_one_line_a_task() -> None:
    done = turnspit("ask", LINES[0], "--now", NOW, "--timezone", ZONE)
    assert (done.returncode, done.stderr) == (0, "")
    assert "\x1b" not in done.stdout
    assert not set("│┃─━╭╮") & set(done.stdout)
    first = done.stdout.splitlines()[0]
    assert "16 lb" in first
    assert "6 pm" in first
    assert any(line.startswith("6 pm") for line in done.stdout.splitlines())
    assert max(map(len, done.stdout.splitlines())) <= 110


def test_explain_shows_which_words_gave_which_value() -> None:
    done = turnspit("ask", LINES[0], "--explain", "--now", NOW)
    assert "roast.mass_kg" in done.stdout


def test_a_chat_goes_on_with_what_was_said() -> None:
    done = turnspit(
        "ask", "--json", "--now", NOW, "--timezone", ZONE, stdin="16 lb bird, dinner at 6\nmake it 20 lb\n"
    )
    assert (done.returncode, done.stderr) == (0, "")
    decoder, text, replies = json.JSONDecoder(), done.stdout, []
    while text.strip():
        reply, end = decoder.raw_decode(text := text.lstrip())
        replies.append(reply)
        text = text[end:]
    first, second = replies
    assert first["conversation"] == second["conversation"]
    assert second["understood"]["roast"]["mass_kg"] == pytest.approx(20 * 0.45359237, abs=0.01)
    assert second["understood"]["serve_at"] == first["understood"]["serve_at"]


@pytest.mark.parametrize(
    ("args", "told"),
    [
        (("ask", "hello", "--timezone", "Mars/Olympus"), "turnspit: timezone Mars/Olympus is no time zone"),
        (("ask", "hello", "--now", "nine"), "turnspit: now nine is no time"),
        (("ask", "hello", "--server", "http://127.0.0.1:1"), "turnspit: no answer from http://127.0.0.1:1"),
        (("ask", "hello", "--units", "furlongs"), "--units"),
        (("roast",), "roast"),
        (("serve", "--host", "999.1.1.1"), "turnspit: address 999.1.1.1:8000 cannot be listened on"),
    ],
)
def test_what_cannot_be_met_is_one_line_on_stderr_and_exit_code_2(args: tuple[str, ...], told: str) -> None:
    done = turnspit(*args)
    assert done.returncode == 2
    assert told in done.stderr
    assert "Traceback" not in done.stderr
    assert done.stdout == ""


def test_odd_bytes_and_poor_terminals_get_their_answer(server: str) -> None:
    command = [
        os.fsencode(part) for part in (sys.executable, "-c", "import turnspit_cli; turnspit_cli.main()", "ask")
    ]
    line = [b"\xff 325 F in C"]
    for road in ([], [b"--server", server.encode()]):
        done = subprocess.run(
            [*command, *line, *road],
            input=b"",
            capture_output=True,
            timeout=60,
            check=False,
            env={**os.environ, "PYTHONIOENCODING": "ascii"},
        )
        assert (done.returncode, done.stderr) == (0, b"")
        assert b"163 ?C" in done.stdout


def test_a_server_that_refuses_says_why(server: str) -> None:
    done = turnspit("ask", "x" * 20_001, "--server", server)
    assert done.returncode == 2
    assert done.stderr.startswith("turnspit: text ")


def test_a_cold_question_loads_neither_server_nor_database_nor_http_client() -> None:
    code = (
        "import sys; sys.argv = ['turnspit', 'ask', '16 lb bird, dinner at 6', '--json', '--now', '" + NOW + "']\n"
        "import turnspit_cli\n"
        "try: turnspit_cli.main()\n"
        "except SystemExit: pass\n"
        "print([n for n in ('fastapi', 'sqlalchemy', 'alembic', 'httpx', 'uvicorn', 'jinja2') if n in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=True)
    assert done.stdout.splitlines()[-1] == "[]"
