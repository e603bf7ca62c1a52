"""Published tables and safety rules as data files, each row with its source, and the loader that reads them."""

from turnspit.reference.rules import (
    ACTIONS,
    KITCHENS,
    Action,
    Kitchen,
    Rule,
    base_of,
    caution,
    is_licensed,
    rule,
    rule_ids,
    rules,
)
from turnspit.reference.tables import STANDINGS, BadTable, Row, Table, names, parse, table

__all__ = [
    "ACTIONS",
    "KITCHENS",
    "STANDINGS",
    "Action",
    "BadTable",
    "Kitchen",
    "Row",
    "Rule",
    "Table",
    "base_of",
    "caution",
    "is_licensed",
    "names",
    "parse",
    "rule",
    "rule_ids",
    "rules",
    "table",
]
