"""Many small symmetric tridiagonal systems at once, one to a column."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.linalg.lapack import dptsv

Floats = NDArray[np.float64]

_FEW_COLUMNS = 250
"""Below this many columns one LAPACK call over all of them is the faster way; measured in tests/benchmarks."""


def solve(diagonal: Floats, coupling: Floats, right: Floats) -> Floats:
    """Solve each column's system; `diagonal` and `right` are (cells, columns), `coupling` (cells - 1, columns).

    The systems are positive definite. `diagonal` and `right` are overwritten; the solution is (cells, columns).
    """
    if diagonal.shape[1] < _FEW_COLUMNS:
        return _as_one_system(diagonal, coupling, right)
    return _sweep(diagonal, coupling, right)


def _as_one_system(diagonal: Floats, coupling: Floats, right: Floats) -> Floats:
    """Columns end to end as one block-diagonal system, with zero coupling between neighbours."""
    cells, columns = diagonal.shape
    joined = np.zeros((columns, cells))
    joined[:, :-1] = coupling.T
    *_, solution, info = dptsv(diagonal.T.ravel(), joined.ravel()[:-1], right.T.ravel(), 1, 1, 1)
    if info != 0:
        raise FloatingPointError(f"conduction system is not positive definite (row {info})")
    return np.ascontiguousarray(solution.reshape(columns, cells).T)


def _sweep(diagonal: Floats, coupling: Floats, right: Floats) -> Floats:
    """Elimination from the core outward and back, each operation across all columns."""
    ratio = np.empty_like(coupling)
    scratch = np.empty_like(diagonal[0])
    for i in range(len(coupling)):
        np.divide(coupling[i], diagonal[i], out=ratio[i])
        np.multiply(ratio[i], coupling[i], out=scratch)
        diagonal[i + 1] -= scratch
        np.multiply(ratio[i], right[i], out=scratch)
        right[i + 1] -= scratch
    right /= diagonal
    for i in range(len(coupling) - 1, -1, -1):
        np.multiply(ratio[i], right[i + 1], out=scratch)
        right[i] -= scratch
    return right
