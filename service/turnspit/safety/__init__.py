"""What may hurt somebody: checks of a question, a plan and a log against the published rules, each citing its rule.

Pure functions of plain values; no clock, no database. A prediction never satisfies a rule, a `stop` is never turned
off by an option, and where the kitchen is not stated the stricter of both is applied and named.
"""

from turnspit.safety.allergy import DishFinding, check_allergens
from turnspit.safety.cooling import CoolingPlan, cooling_stages, depth_that_cools, plan_cooling
from turnspit.safety.cooling_case import PLACES, Place, cooling_case
from turnspit.safety.finding import GRADES, Finding, Grade, grade
from turnspit.safety.lethality import (
    HoldTable,
    Species,
    forecast_log10,
    hold_table,
    log10_reduction,
    predicted_log10,
    species_of,
)
from turnspit.safety.log import CORRECTIVES, LOG_KINDS, Corrective, Log, LogEntry, LogKind
from turnspit.safety.logcheck import INTERVAL_MIN, Gap, LogVerdict, check_log
from turnspit.safety.pasted import read_measured
from turnspit.safety.plan import PlanFacts, PlanVerdict, check_plan
from turnspit.safety.proof import Conditions, Measured, Moisture, Proof, prove
from turnspit.safety.question import TOPICS, SafetyQuestion, Topic
from turnspit.safety.questions import check_question
from turnspit.safety.sheets import CardSection, Label, SheetRow, label, log_csv, sheet_rows, staff_card
from turnspit.safety.thermometer import boiling_point_c, corrected_c, probe_error_k, probe_is_true
from turnspit.safety.whole_roasts import hold_min

__all__ = [
    "CORRECTIVES",
    "GRADES",
    "INTERVAL_MIN",
    "LOG_KINDS",
    "PLACES",
    "TOPICS",
    "CardSection",
    "Conditions",
    "CoolingPlan",
    "Corrective",
    "DishFinding",
    "Finding",
    "Gap",
    "Grade",
    "HoldTable",
    "Label",
    "Log",
    "LogEntry",
    "LogKind",
    "LogVerdict",
    "Measured",
    "Moisture",
    "Place",
    "PlanFacts",
    "PlanVerdict",
    "Proof",
    "SafetyQuestion",
    "SheetRow",
    "Species",
    "Topic",
    "boiling_point_c",
    "check_allergens",
    "check_log",
    "check_plan",
    "check_question",
    "cooling_case",
    "cooling_stages",
    "corrected_c",
    "depth_that_cools",
    "forecast_log10",
    "grade",
    "hold_min",
    "hold_table",
    "label",
    "log10_reduction",
    "log_csv",
    "plan_cooling",
    "predicted_log10",
    "probe_error_k",
    "probe_is_true",
    "prove",
    "read_measured",
    "sheet_rows",
    "species_of",
    "staff_card",
]
