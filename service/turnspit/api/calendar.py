"""A plan as iCalendar (RFC 5545): one event a task, in UTC, with an alarm where hands are needed."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import UTC, datetime, timedelta
from typing import Any

from icalendar import Alarm, Calendar, Event

from turnspit.message import Message
from turnspit.storage import KeptPlan
from turnspit.words import Reader, say
from turnspit.words.days import day_name

MEDIA_TYPE = "text/calendar"


def calendar(plan: KeptPlan) -> bytes:
    """The calendar of a kept plan. A task's UID is made of its id and the plan's, and so stays what it is."""
    whole = Calendar()
    whole.add("prodid", "-//turnspit//roast dinner//EN")
    whole.add("version", "2.0")
    whole.add("method", "PUBLISH")
    reader = Reader(plan.kept_at, **plan.document["reader"])
    day = day_name(datetime.fromisoformat(plan.document["serve_at"]), reader)
    whole.add("x-wr-calname", say(Message("api-calendar-name", day=day), reader))
    for task in plan.document["tasks"]:
        whole.add_component(_event(plan, task, reader))
    return bytes(whole.to_ical())


def _event(plan: KeptPlan, task: Mapping[str, Any], reader: Reader) -> Event:
    event = Event()
    event.add("uid", f"{task['id']}.{plan.id}@turnspit")
    event.add("dtstamp", plan.kept_at.astimezone(UTC))
    event.add("dtstart", _utc(task["start"]))
    event.add("dtend", _utc(task["end"]))
    event.add("summary", task["title"])
    event.add("description", "\n".join([task["why"], *task["details"], *(c["text"] for c in task["cautions"])]))
    event.add("location", say(Message(f"api-place-{task['place']}"), reader))
    event.add("transp", "OPAQUE" if task["hands"] else "TRANSPARENT")
    if task["hands"]:
        alarm = Alarm()
        alarm.add("action", "DISPLAY")
        alarm.add("description", task["title"])
        alarm.add("trigger", timedelta(0))
        event.add_component(alarm)
    return event


def _utc(text: str) -> datetime:
    return datetime.fromisoformat(text).astimezone(UTC)
