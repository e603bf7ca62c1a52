"""What is kept comes back, survives a restart, can be deleted and expires."""

from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from sqlalchemy import create_engine, event
from sqlalchemy.orm import Session

from turnspit.storage import Store, default_url, open_store
from turnspit.storage.tables import Base

NOW = datetime(2026, 11, 25, 14, 0, tzinfo=UTC)
DAY = timedelta(days=1)


@pytest.fixture
def url(tmp_path: Path) -> str:
    return f"sqlite:///{tmp_path / 'kept 100%.db'}"


def test_a_plan_survives_a_restart(url: str) -> None:
    first = open_store(url)
    first.keep_plan("p1", {"id": "p1", "tasks": [{"title": "Rôti"}]}, NOW + DAY, NOW)
    first.close()
    again = open_store(url)
    plan = again.plan("p1")
    again.close()
    assert plan is not None
    assert plan.document == {"id": "p1", "tasks": [{"title": "Rôti"}]}
    assert (plan.kept_at, plan.serve_at) == (NOW, NOW + DAY)


def test_a_plan_of_the_same_id_is_replaced(store: Store) -> None:
    store.keep_plan("p1", {"version": 1}, NOW, NOW)
    store.keep_plan("p1", {"version": 2}, NOW, NOW)
    plan = store.plan("p1")
    assert plan is not None
    assert plan.document == {"version": 2}


def test_a_plan_replaced_stays_on_the_display(store: Store) -> None:
    store.keep_plan("p1", {"version": 1}, NOW, NOW)
    store.show_plan("p1", NOW)
    store.keep_plan("p2", {}, NOW, NOW)
    store.keep_plan("p1", {"version": 2}, NOW, NOW)
    shown = store.shown_plan()
    assert shown is not None
    assert shown.document == {"version": 2}


def test_another_may_keep_the_same_between_our_look_and_our_write(url: str) -> None:
    opened = open_store(url)

    def intrude(*_: object) -> None:
        opened.keep_plan("p1", {"by": "another"}, NOW, NOW)

    event.listen(Session, "before_flush", intrude, once=True)
    opened.keep_plan("p1", {"by": "us"}, NOW, NOW)
    plan = opened.plan("p1")
    opened.close()
    assert plan is not None
    assert plan.document == {"by": "us"}


def test_the_display_shows_the_last_kept_plan_until_one_is_put_on_it(store: Store) -> None:
    assert store.shown_plan() is None
    for number in range(3):
        store.keep_plan(f"p{number}", {}, NOW + DAY, NOW + number * timedelta(minutes=1))
    latest = store.shown_plan()
    assert latest is not None
    assert latest.id == "p2"
    assert store.show_plan("p0", NOW + timedelta(hours=1))
    store.keep_plan("p3", {}, NOW + DAY, NOW + timedelta(hours=2))
    shown = store.shown_plan()
    assert shown is not None
    assert shown.id == "p0"
    assert not store.show_plan("none", NOW)


def test_a_conversation_survives_a_restart_and_is_deleted_for_good(url: str) -> None:
    first = open_store(url)
    first.keep_conversation("c1", {"lines": ["16 lb bird"]}, NOW)
    first.keep_conversation("c1", {"lines": ["16 lb bird", "make it 20 lb"]}, NOW + DAY)
    first.close()
    again = open_store(url)
    kept = again.conversation("c1", touched_since=NOW)
    assert kept is not None
    assert kept.document == {"lines": ["16 lb bird", "make it 20 lb"]}
    assert kept.touched_at == NOW + DAY
    assert again.delete_conversation("c1")
    assert not again.delete_conversation("c1")
    assert again.conversation("c1", touched_since=NOW) is None
    again.close()


def test_an_old_conversation_is_not_given_out_even_before_it_is_swept(store: Store) -> None:
    store.keep_conversation("c1", {}, NOW)
    assert store.conversation("c1", touched_since=NOW) is not None
    assert store.conversation("c1", touched_since=NOW + timedelta(seconds=1)) is None


def test_expiry_takes_what_is_old_and_leaves_the_rest(store: Store) -> None:
    store.keep_conversation("old", {}, NOW - 40 * DAY)
    store.keep_conversation("new", {}, NOW)
    store.keep_plan("served long ago", {}, NOW - 100 * DAY, NOW - 101 * DAY)
    store.keep_plan("made long ago, still to come", {}, NOW + DAY, NOW - 101 * DAY)
    assert store.expire(touched_before=NOW - 30 * DAY, served_before=NOW - 90 * DAY) == 2
    assert store.conversation("new", touched_since=NOW) is not None
    assert store.plan("served long ago") is None
    assert store.plan("made long ago, still to come") is not None


def test_delete_plan(store: Store) -> None:
    store.keep_plan("p1", {}, NOW, NOW)
    assert store.delete_plan("p1")
    assert not store.delete_plan("p1")
    assert store.plan("p1") is None


def test_the_store_answers(store: Store) -> None:
    assert store.answers()


def test_migrations_make_the_tables_that_the_code_uses(url: str) -> None:
    open_store(url).close()
    engine = create_engine(url)
    with engine.connect() as connection:
        assert compare_metadata(MigrationContext.configure(connection), Base.metadata) == []
    engine.dispose()


def test_the_default_is_a_file_in_the_users_data_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    assert default_url() == f"sqlite:///{tmp_path / 'turnspit' / 'turnspit.db'}"
    assert (tmp_path / "turnspit").is_dir()


def test_a_recipe_survives_a_restart_and_is_deleted_for_good(url: str) -> None:
    first = open_store(url)
    first.keep_recipe("r1", {"given": "Rôti"}, NOW)
    first.keep_recipe("r2", {"given": "Gravy"}, NOW + DAY)
    first.close()
    again = open_store(url)
    assert [kept.id for kept in again.recipes(10)] == ["r2", "r1"]
    assert [kept.id for kept in again.recipes(1)] == ["r2"]
    kept = again.recipe("r1")
    assert kept is not None
    assert (kept.document, kept.kept_at) == ({"given": "Rôti"}, NOW)
    assert again.delete_recipe("r1")
    assert not again.delete_recipe("r1")
    assert again.recipe("r1") is None
    again.close()


def test_a_log_keeps_its_entries_in_order_over_a_restart(url: str) -> None:
    first = open_store(url)
    first.open_log("l1", {"item": "stock"}, NOW)
    for _ in range(3):
        first.add_to_log("l1", lambda log: {"number": len(log.entries) + 1})
    first.close()
    again = open_store(url)
    log = again.log("l1")
    assert log is not None
    assert log.document == {"item": "stock"}
    assert [entry["number"] for entry in log.entries] == [1, 2, 3]
    assert [kept.id for kept in again.logs(5)] == ["l1"]
    assert again.add_to_log("none", lambda _: {}) is None
    again.close()


def test_two_who_add_at_once_both_have_their_entry(url: str) -> None:
    opened = open_store(url)
    opened.open_log("l1", {}, NOW)

    def intrude(*_: object) -> None:
        opened.add_to_log("l1", lambda log: {"by": "another", "number": len(log.entries) + 1})

    event.listen(Session, "before_flush", intrude, once=True)
    log = opened.add_to_log("l1", lambda log: {"by": "us", "number": len(log.entries) + 1})
    opened.close()
    assert log is not None
    assert log.entries == ({"by": "another", "number": 1}, {"by": "us", "number": 2})


def test_an_entry_that_is_refused_leaves_the_log_as_it_was(store: Store) -> None:
    store.open_log("l1", {}, NOW)

    def refuse(_: object) -> dict[str, str]:
        raise ValueError("no such reading")

    with pytest.raises(ValueError, match="no such reading"):
        store.add_to_log("l1", refuse)
    log = store.log("l1")
    assert log is not None
    assert log.entries == ()


def test_nothing_takes_an_entry_of_a_log_away(store: Store) -> None:
    assert {name for name in dir(Store) if "log" in name and not name.startswith("_")} == {
        "add_to_log",
        "log",
        "logs",
        "open_log",
    }
    store.open_log("l1", {}, NOW - 1000 * DAY)
    store.expire(touched_before=NOW, served_before=NOW)
    assert store.log("l1") is not None
