"""Prints the table of rules as it stands in docs/safety.md. Run it after a rule has changed: python tests/safety/rules_table.py"""

from turnspit.reference import rules

HEAD = ("rule", "where", "limits", "document", "standing")


def limits(rule):
    return ", ".join(f"{name} {value:g}" for name, value in rule.limits.items()) or "-"


def table():
    rows = [HEAD, tuple("---" for _ in HEAD)]
    rows += [(f"`{each.id}`", each.source, limits(each), each.citation, each.obtained) for each in rules()]
    return "\n".join(f"| {' | '.join(row)} |" for row in rows)


if __name__ == "__main__":
    print(table())
