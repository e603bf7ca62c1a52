"""What may go wrong between a client and its service."""

from __future__ import annotations

from turnspit_client.shapes import ProblemDocument


class NoService(ConnectionError):
    """Nothing that speaks this API answers at the address."""


class Refused(ValueError):
    """The service refused a request; `problem` is the document it gave, `str()` its one line."""

    def __init__(self, problem: ProblemDocument) -> None:
        super().__init__(problem["detail"])
        self.problem = problem

    @property
    def status(self) -> int:
        """The HTTP status."""
        return self.problem["status"]
