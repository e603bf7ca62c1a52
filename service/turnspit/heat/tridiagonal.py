"""Many small symmetric tridiagonal systems at once, one to a column."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from turnspit.errors import Impossible

Floats = NDArray[np.float64]

NO_SOLUTION = "the model cannot compute this; ask with a plainer oven, or a mass and temperatures of a kitchen"

_FEW_COLUMNS = 60
"""Below this many columns one LAPACK call over all of them is the faster way; measured in tests/benchmarks."""


def solve(diagonal: Floats, coupling: Floats, right: Floats) -> Floats:
    """Solve each column's system: diagonal[i] x[i] - coupling[i-1] x[i-1] - coupling[i] x[i+1] = right[i].

    `diagonal` and `right` are (cells, columns), `coupling` (cells - 1, columns), all positive definite together.
    `diagonal` and `right` are overwritten; the solution is (cells, columns). Raises Impossible where there is none
    (the sweep does not look: see solver.march).
    """
    if diagonal.shape[1] < _FEW_COLUMNS:
        return _as_one_system(diagonal, coupling, right)
    return _sweep(diagonal, coupling, right)


def _as_one_system(diagonal: Floats, coupling: Floats, right: Floats) -> Floats:
    """Columns end to end as one block-diagonal system, with zero coupling between neighbours."""
    from scipy.linalg.lapack import dptsv  # here: an ensemble never needs it, and it takes long to load

    cells, columns = diagonal.shape
    joined = np.zeros((columns, cells))
    np.negative(coupling.T, out=joined[:, :-1])
    *_, solution, info = dptsv(diagonal.T.ravel(), joined.ravel()[:-1], right.T.ravel(), 1, 1, 1)
    if info != 0:
        raise Impossible("heat", f"row {info}", "of the conduction system has no solution", NO_SOLUTION)
    return np.ascontiguousarray(solution.reshape(columns, cells).T)


def _sweep(diagonal: Floats, coupling: Floats, right: Floats) -> Floats:
    """Elimination from the core outward and back, each operation across all columns."""
    last = len(coupling)
    ratio = np.empty_like(coupling)
    scratch = np.empty_like(diagonal[0])
    multiply, divide, add, subtract = np.multiply, np.divide, np.add, np.subtract
    links, ratios, pivots, values = list(coupling), list(ratio), list(diagonal), list(right)
    for i in range(last):
        divide(links[i], pivots[i], ratios[i])
        multiply(ratios[i], links[i], scratch)
        subtract(pivots[i + 1], scratch, pivots[i + 1])
        multiply(ratios[i], values[i], scratch)
        add(values[i + 1], scratch, values[i + 1])
    right /= diagonal
    for i in range(last - 1, -1, -1):
        multiply(ratios[i], values[i + 1], scratch)
        add(values[i], scratch, values[i])
    return right
