"""The safety rules: each a row with its limits and its citation, one file per jurisdiction.

`home` is the federal consumer guidance, `licensed` the FDA Food Code; `plants` holds what the time-temperature tables
rest on. A rule that stands in several files is one rule with several limits; unstated, the stricter is meant. A local
code is one more file, `rules_licensed_<place>.toml`, with the rows that differ; its kitchen is `licensed_<place>`.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from types import MappingProxyType
from typing import Literal, TypeAlias, get_args

from turnspit.errors import Unknown
from turnspit.message import Caution, Message, Severity, Value
from turnspit.reference.tables import Row, names, table

Kitchen: TypeAlias = str
"""`home`, `licensed`, or the name of a local code's file."""
Action = Literal[
    "go_on",
    "measure",
    "cook_on",
    "cook_at_once",
    "rest",
    "carve",
    "heat_up",
    "reheat",
    "chill",
    "clean",
    "tell",
    "stand_back",
    "outdoors",
    "refuse",
    "serve_or_discard",
    "discard",
]
KITCHENS: tuple[Kitchen, ...] = ("home", "licensed")
ACTIONS: tuple[Action, ...] = get_args(Action)

LIMIT_TOLERANCE = 0.006
"""Limits are the printed Fahrenheit figure in C to two decimals; a reading this near meets the limit."""


@dataclass(frozen=True, slots=True)
class Rule:
    """One safety rule of one jurisdiction.

    `limits` in SI with temperatures in C, the bound in the name (`core_min_c`, `elapsed_max_h`). `severity` is
    that of the rule when broken, `action` what to do then. `year` is that of the edition; `obtained` as in `tables`.
    """

    id: str
    source: str
    jurisdiction: str
    applies_to: tuple[str, ...]
    limits: Mapping[str, float]
    document: str
    section: str
    year: int
    severity: Severity
    action: Action
    obtained: str

    @property
    def citation(self) -> str:
        """The document, its section and year, as it is cited under an answer."""
        year = "" if str(self.year) in self.document else f" ({self.year})"
        return f"{self.document}, {self.section}{year}"

    @property
    def text(self) -> Message:
        """The rule in a sentence or two that tell what to do."""
        return Message(f"rule-{self.id}")

    @property
    def reason(self) -> Message:
        """Why the rule is there, in a sentence."""
        return Message(f"rule-{self.id}-reason")


def is_licensed(kitchen: Kitchen) -> bool:
    """Whether a kitchen is run by a food code, of whatever place."""
    return base_of(kitchen) == "licensed"


def base_of(kitchen: Kitchen) -> Kitchen:
    """The kitchen whose rows hold where a local code has none: `licensed` for `licensed_<place>`."""
    return kitchen.partition("_")[0]


def rule(rule_id: str, kitchen: Kitchen | None = None) -> Rule:
    """The rule of that id as it holds in `kitchen`, or the stricter of both where the kitchen is not stated.

    A rule that only another file knows is given from there: its `source` tells. Raises Unknown.
    """
    found = _by_id().get(rule_id)
    if found is None:
        raise Unknown("rule", rule_id, rule_ids())
    if kitchen is not None:
        if kitchen not in _kitchens():
            raise Unknown("kitchen", kitchen, _kitchens())
        return found.get(kitchen) or found.get(base_of(kitchen)) or next(iter(found.values()))
    versions = tuple(version for source, version in found.items() if source == base_of(source))
    return next((v for v in versions if all(_as_strict(v, other) for other in versions)), versions[0])


def rules(kitchen: Kitchen | None = None) -> tuple[Rule, ...]:
    """The rules of one file, or of all files where none is named. Raises Unknown."""
    wanted = sources() if kitchen is None else (kitchen,)
    return tuple(version for source in wanted for version in _file(source))


def rule_ids() -> tuple[str, ...]:
    """Every rule id, sorted."""
    return tuple(sorted(_by_id()))


@cache
def sources() -> tuple[str, ...]:
    """The files of rules there are, by what stands after `rules_`; home and licensed first."""
    found = (name.removeprefix("rules_") for name in names() if name.startswith("rules_"))
    return (*KITCHENS, *(source for source in found if source not in KITCHENS))


def _kitchens() -> tuple[Kitchen, ...]:
    """The files that a kitchen can be run by: home, licensed and the local codes, not what plants go by."""
    return tuple(source for source in sources() if base_of(source) in KITCHENS)


def caution(rule_id: str, severity: Severity | None = None, **values: Value) -> Caution:
    """A caution that rests on the rule: its text with `values`, the row's severity unless another is given.

    Without one it is a reminder, and a reminder is at most a warning: only who saw the rule broken says "stop".
    Raises Unknown for a rule that is not in the files.
    """
    reminder: Severity = "info" if rule(rule_id).severity == "info" else "warn"
    return Caution(rule_id, severity or reminder, Message(f"rule-{rule_id}", **values))


def _as_strict(one: Rule, other: Rule) -> bool:
    """Whether every limit that both name is at least as strict in `one`."""
    shared = one.limits.keys() & other.limits.keys()
    return all(_stricter(name, one.limits[name], other.limits[name]) == one.limits[name] for name in shared)


def _stricter(name: str, one: float, other: float) -> float:
    return max(one, other) if "_min_" in name else min(one, other) if "_max_" in name else one


@cache
def _by_id() -> Mapping[str, Mapping[str, Rule]]:
    found: dict[str, dict[str, Rule]] = {}
    for source in sources():
        for version in _file(source):
            found.setdefault(version.id, {})[source] = version
    return MappingProxyType({rule_id: MappingProxyType(versions) for rule_id, versions in found.items()})


@cache
def _file(source: str) -> tuple[Rule, ...]:
    rows = table(f"rules_{source}")
    return tuple(_rule(source, rows.title, row) for row in rows.by("id").values())


def _rule(source: str, jurisdiction: str, row: Row) -> Rule:
    return Rule(
        id=row["id"],
        source=source,
        jurisdiction=jurisdiction,
        applies_to=tuple(row["applies_to"]),
        limits=MappingProxyType({name: float(value) for name, value in row.get("limits", {}).items()}),
        document=row["document"],
        section=row["section"],
        year=row["year"],
        severity=row["severity"],
        action=row["action"],
        obtained=row["obtained"],
    )
