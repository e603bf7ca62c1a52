"""How long recipes take: run by hand, `python tests/benchmarks/recipes.py`.

A 30-line recipe scaled in process; 2,000 recipes of 12 lines imported from JSON-LD and scaled, on one core, every one
different so that no cache answers.
"""

import json
import random
import statistics
import time
import tomllib
from pathlib import Path

from turnspit.recipes import read_recipe, scale_recipe, write_json_ld

CORPUS = tomllib.loads((Path(__file__).parents[1] / "recipes" / "recipe_lines.toml").read_text(encoding="utf-8"))
LINES = [line[0] for group in CORPUS.values() for line in group]
METHOD = [
    "Simmer in a saucepan for {} minutes.",
    "Bake at {}°F for 1 1/2 hours in a roasting pan.",
    "Rest {} minutes.",
]


def recipe_text(number, lines, rng):
    chosen = "\n".join(rng.sample(LINES, lines))
    method = "\n".join(step.format(rng.randrange(20, 400)) for step in METHOD)
    return f"Recipe {number}\nServes {rng.randrange(2, 20)}\nIngredients\n{chosen}\nMethod\n{method}"


def milliseconds(call, times):
    spent = []
    for at in range(times):
        start = time.perf_counter()
        call(at)
        spent.append((time.perf_counter() - start) * 1000)
    return statistics.median(spent), sorted(spent)[int(len(spent) * 0.95)]


def main():
    rng = random.Random(1)
    recipe = read_recipe(recipe_text(0, 30, rng))
    median, p95 = milliseconds(lambda at: scale_recipe(recipe, factor=1.5 + at / 997), 500)
    print(f"scale a 30-line recipe: median {median:.2f} ms, p95 {p95:.2f} ms")

    def scaled_text(at):
        return [line.text() for line in scale_recipe(recipe, factor=2.5 + at / 997).lines]

    median, p95 = milliseconds(scaled_text, 500)
    print(f"the same with every line written: median {median:.2f} ms, p95 {p95:.2f} ms")
    pages = [json.dumps(write_json_ld(read_recipe(recipe_text(at, 12, rng)))) for at in range(2000)]
    start = time.process_time()
    for at, page in enumerate(pages):
        scale_recipe(read_recipe(page), factor=1.5 + at / 997)
    print(f"import and scale 2,000 recipes of 12 lines: {time.process_time() - start:.2f} s of one core")


if __name__ == "__main__":
    main()
