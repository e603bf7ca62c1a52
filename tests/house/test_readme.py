"""What the README shows is run."""

import re
import subprocess
import sys
from pathlib import Path

TOP = Path(__file__).parents[2]


def test_the_script_in_the_readme_runs():
    text = (TOP / "README.md").read_text(encoding="utf-8")
    (script,) = re.findall(r"```python\n(.*?)```", text, re.DOTALL)
    done = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, timeout=60, check=True)
    assert done.stdout.count("2026-11-25 ") == 4
