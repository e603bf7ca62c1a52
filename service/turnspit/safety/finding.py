"""What every check gives: a finding, with the rule it rests on and what to do now."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from typing import Literal, get_args

from turnspit.message import Caution, Message, Severity
from turnspit.reference import KITCHENS, Action, Kitchen, base_of, rule, rules
from turnspit.reference.rules import LIMIT_TOLERANCE

Grade = Literal["ok", "info", "warn", "stop"]
GRADES: tuple[Grade, ...] = get_args(Grade)


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing a check found.

    `ok` keeps the rule, `info` is worth knowing, `warn` wants a decision, `stop` may not be passed. `seen` says what
    was seen, `action` what to do now, `do` the same as one word. `kitchen` is the one whose rule was applied.
    `unknown` names what was not said and was therefore taken at its less safe value.
    """

    rule: str
    severity: Grade
    seen: Message
    action: Message
    do: Action
    kitchen: Kitchen
    citation: str
    unknown: tuple[str, ...] = ()

    @property
    def caution(self) -> Caution:
        """The finding as a caution of an answer, in the words of its rule."""
        severity: Severity = "info" if self.severity == "ok" else self.severity
        return Caution(self.rule, severity, Message(f"rule-{self.rule}"))


def finding(
    kitchen: Kitchen,
    rule_id: str,
    severity: Grade,
    do: Action,
    seen: Message,
    *,
    action: Message | None = None,
    unknown: Iterable[str] = (),
) -> Finding:
    """A finding that cites the rule as it holds in `kitchen`; its action is the sentence of `do` unless given."""
    cited = rule(rule_id, kitchen)
    say = action or Message(f"safety-do-{do}")
    return Finding(rule_id, severity, seen, say, do, kitchen, cited.citation, tuple(unknown))


def limit(rule_id: str, name: str, kitchen: Kitchen) -> float:
    """The limit of a rule as it holds in `kitchen`, or where that document sets none, as another one does."""
    versions = (rule(rule_id, each) for each in (kitchen, *KITCHENS))
    return next(version.limits[name] for version in versions if name in version.limits)


def reaches(value: float, least: float) -> bool:
    """Whether a temperature meets a lower limit; the limit itself meets it."""
    return value >= least - LIMIT_TOLERANCE


def within(value: float, most: float) -> bool:
    """Whether a temperature or a time keeps an upper limit; the limit itself keeps it."""
    return value <= most + LIMIT_TOLERANCE


def grade(findings: Iterable[Finding]) -> Grade:
    """The gravest severity among the findings; `ok` where there are none."""
    return max((found.severity for found in findings), key=GRADES.index, default="ok")


def gravest_first(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """The findings, worst first, otherwise in their order."""
    return tuple(sorted(findings, key=lambda found: -GRADES.index(found.severity)))


def in_kitchen(check: Callable[[Kitchen], tuple[Finding, ...]], kitchen: Kitchen | None) -> tuple[Finding, ...]:
    """The findings of `check` for the kitchen, or for the stricter of both where it is not stated; worst first.

    There must be at least one; the last is always that local codes prevail.
    """
    if kitchen is not None:
        found = check(kitchen)
    else:
        found = max((check(each) for each in KITCHENS), key=lambda made: GRADES.index(grade(made)))
    return (*gravest_first(found), local_codes(found[0].kitchen))


def local_codes(applied: Kitchen) -> Finding:
    """What ends every answer: whose rules were applied, and that local codes and licensed practice prevail."""
    base = base_of(applied)
    by = (
        Message(f"safety-kitchen-{base}") if applied == base else Message("safety-kitchen-local", code=_code(applied))
    )
    return finding(applied, "local-codes", "info", "go_on", by)


def _code(kitchen: Kitchen) -> str:
    """The name of a local code, as its file has it."""
    return rules(kitchen)[0].jurisdiction
