"""What every route works with: settings, store, clock, meters, and the few threads in which numbers are computed."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime, timedelta
from functools import partial
from importlib.metadata import version
from typing import ParamSpec, TypeVar, cast

from anyio import CapacityLimiter, to_thread
from fastapi import Request

from turnspit.api.meters import Meters
from turnspit.api.settings import Settings
from turnspit.moment import moment
from turnspit.reference import Kitchen
from turnspit.storage import Store

P = ParamSpec("P")
T = TypeVar("T")

VERSION = version("turnspit")


class Service:
    """One running service. Only here does the clock come in; everything below is given `now`."""

    def __init__(self, settings: Settings, store: Store, clock: Callable[[], datetime]) -> None:
        self.settings = settings
        self.store = store
        self.clock = clock
        self.meters = Meters()
        self._limiter = CapacityLimiter(settings.workers)

    async def work(self, call: Callable[P, T], *args: P.args, **kwargs: P.kwargs) -> T:
        """Run blocking or numeric work in a thread; more than `workers` at once wait their turn."""
        return await to_thread.run_sync(partial(call, *args, **kwargs), limiter=self._limiter)

    def now(self, at: datetime | str | None = None, timezone: str | None = None) -> datetime:
        """The asker's now; see `turnspit.moment`."""
        return moment(at, timezone, self.clock(), home=self.settings.timezone)

    def kitchen(self, asked: Kitchen | None) -> Kitchen | None:
        """By whose rules a request is judged: its own word, else the operator's; if licensed, by the local code."""
        kitchen, place = asked or self.settings.kitchen, self.settings.local_code
        return f"licensed_{place}" if kitchen == "licensed" and place else kitchen

    def oldest_talk(self) -> datetime:
        """Conversations last touched before this have expired."""
        return self.clock() - timedelta(days=self.settings.conversation_days)

    def sweep(self) -> int:
        """Delete what has expired; how many conversations and plans went."""
        return self.store.expire(self.oldest_talk(), self.clock() - timedelta(days=self.settings.plan_days))


def service_of(request: Request) -> Service:
    """The service that a request came to."""
    return cast(Service, request.app.state.service)
