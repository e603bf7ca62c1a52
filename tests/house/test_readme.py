"""What the README shows is run."""

import re
import subprocess
import sys
from pathlib import Path

TOP = Path(__file__).parents[2]


def test_the_scripts_in_the_readme_run():
    text = (TOP / "README.md").read_text(encoding="utf-8")
    plan, heat = (
        subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, timeout=60, check=True).stdout
        for script in re.findall(r"```python\n(.*?)```", text, re.DOTALL)
    )
    assert plan.count("2026-11-25 ") == 4
    assert heat.count("Spread(") == 2
    assert "Sensitivity(" in heat
