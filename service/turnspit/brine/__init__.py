"""Salt in water and in meat: strength, amounts for a bird and a vessel, cold, hours, uptake."""

from turnspit.brine.cases import BrineCase, BrinePlan, SaltKind, SoldAs

__all__ = ["BrineCase", "BrinePlan", "SaltKind", "SoldAs"]
