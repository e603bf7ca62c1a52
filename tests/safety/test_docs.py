import runpy
from pathlib import Path

PAGE = Path(__file__).parents[2] / "docs" / "safety.md"


def test_the_page_holds_the_rules_as_they_are():
    table = runpy.run_path(str(Path(__file__).parent / "rules_table.py"))["table"]()
    assert table in PAGE.read_text(encoding="utf-8"), (
        "run python tests/safety/rules_table.py and put it into docs/safety.md"
    )


def test_the_page_counts_the_topics_right():
    from turnspit.safety import TOPICS

    assert f"{len(TOPICS)} topics" in PAGE.read_text(encoding="utf-8")
