"""The corpus of recipe lines: how many fields are read right. Run this file to see the report and every miss."""

import tomllib
from fractions import Fraction
from pathlib import Path

from turnspit.quantities import Amount
from turnspit.recipes import read_ingredient

LEAST_RIGHT = 0.98
LINES = tomllib.loads(Path(__file__).with_name("recipe_lines.toml").read_text(encoding="utf-8"))


def expected(line):
    _, amount, item, rest = line
    return {
        "amount": _bare(amount),
        "item": item,
        "prep": rest.get("prep", ""),
        "size": rest.get("size", ""),
        "each": _bare(rest.get("each", "")),
        "equals": _bare(rest.get("equals", "")),
        "about": rest.get("about", False),
        "notes": rest.get("notes", []),
        "optional": rest.get("optional", False),
        "to_taste": rest.get("to_taste", False),
        "purpose": rest.get("purpose", ""),
        "extra": rest.get("extra", ""),
        "or": rest.get("or", []),
        "unread": rest.get("unread", False),
    }


def read(line):
    found = read_ingredient(line[0])
    amount = found.amount
    return {
        "amount": _shown(amount),
        "item": found.item,
        "prep": found.preparation,
        "size": amount.size if amount else "",
        "each": _shown(amount.each if amount else None),
        "equals": _shown(amount.equals if amount else None),
        "about": bool(amount and amount.approximate),
        "notes": list(found.notes),
        "optional": found.optional,
        "to_taste": found.to_taste,
        "purpose": found.purpose,
        "extra": found.extra,
        "or": [one.item for one in found.alternatives],
        "unread": not found.read,
    }


def compared():
    """For each line the fields that are expected or were read (not those empty on both sides), and those that differ."""
    for group, lines in LINES.items():
        for line in lines:
            want, got = expected(line), read(line)
            fields = [name for name in want if want[name] or got[name]]
            wrong = [(name, want[name], got[name]) for name in fields if want[name] != got[name]]
            yield group, line[0], len(fields), wrong


def _bare(text):
    return text.strip()


def _shown(amount: Amount | None) -> str:
    if amount is None:
        return ""
    number = str(Fraction(amount.value)) if amount.high is None else f"{amount.value}..{amount.high}"
    return f"{number} {amount.unit}".strip()


def test_there_are_at_least_three_hundred_lines():
    assert sum(len(lines) for lines in LINES.values()) >= 300
    assert len({line[0] for lines in LINES.values() for line in lines}) == sum(len(lines) for lines in LINES.values())


def test_an_endless_number_is_not_read():
    assert not read_ingredient(f"{'9' * 500} cups flour").read


def test_the_fields_are_read_right():
    total = sum(fields for _, _, fields, _ in compared())
    missed = [(line, wrong) for _, line, _, wrong in compared() if wrong]
    wrong = sum(len(fields) for _, fields in missed)
    assert 1 - wrong / total >= LEAST_RIGHT, missed


if __name__ == "__main__":
    totals: dict[str, list[int]] = {}
    for group, line, fields, wrong in compared():
        counts = totals.setdefault(group, [0, 0, 0, 0])
        counts[0] += 1
        counts[1] += fields
        counts[2] += len(wrong)
        counts[3] += bool(wrong)
        for name, want, got in wrong:
            print(f"{group}: {line!r}: {name} is {got!r}, should be {want!r}")
    for group, (lines, fields, wrong, _) in totals.items():
        print(f"{group:12} {lines:4} lines {fields:5} fields {1 - wrong / fields:7.2%} right")
    lines, fields, wrong, bad = (sum(column) for column in zip(*totals.values(), strict=True))
    print(f"{'all':12} {lines:4} lines {fields:5} fields {1 - wrong / fields:7.2%} right, {lines - bad} lines wholly")
