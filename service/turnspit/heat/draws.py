"""Unit normals for an ensemble: stratified, so that few members cover the spread, and the same for every case."""

from __future__ import annotations

from functools import lru_cache
from statistics import NormalDist

import numpy as np

from turnspit.errors import OutOfRange
from turnspit.heat.material import Floats

MEMBERS_MOST = 4096


@lru_cache(maxsize=32)
def stratified_normals(rows: int, members: int, seed: int) -> Floats:
    """A Latin hypercube of unit normals, (rows, members), rows shuffled independently; one member is all medians.

    Valid for 1 to 4096 members; raises OutOfRange beyond.
    """
    OutOfRange.check("members", members, 1, MEMBERS_MOST, "64 to 256 members are enough")
    generator = np.random.default_rng(seed)
    strata = np.array([NormalDist().inv_cdf((i + 0.5) / members) for i in range(members)])
    normals = np.array([generator.permutation(strata) for _ in range(rows)])
    normals.setflags(write=False)
    return normals
