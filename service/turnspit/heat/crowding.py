"""Several pieces in one oven: how much of its walls each still sees, and how many a household oven holds."""

from __future__ import annotations

from turnspit.reference import table

POUND_KG = 0.45359237
HIDDEN = 0.10
"""What the nearest neighbour hides of the walls: 0.11 of long bodies half a diameter apart (crossed strings), 0.03 of
balls, and a little of the air besides. Of many pieces the farther stand behind the nearer."""


def shown(count: int) -> float:
    """Share of the walls' radiation that reaches the most hidden of `count` pieces, 1 for one, 0.48 for twelve."""
    return 1.0 / (1.0 + HIDDEN * (count - 1))


def household_pieces(mass_kg: float) -> int:
    """How many pieces of `mass_kg` a household oven holds with air between them (common practice), at least one.

    What fits does not overload it: two birds of 14 lb take 1.2 kW at first, and such an oven has 2 kW to spare.
    """
    pounds = mass_kg / POUND_KG
    fitting = [int(row["pieces"]) for row in table("oven_room") if pounds <= row["most_lb"] + 1e-9]
    return max(fitting, default=1)
