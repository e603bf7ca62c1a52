"""What may hurt somebody: checks of a question, a plan and a log against the published rules, each citing its rule.

Pure functions of plain values; no clock, no database. A prediction never satisfies a rule, a `stop` is never turned
off by an option, and where the kitchen is not stated the stricter of both is applied and named.
"""

from turnspit.safety.finding import GRADES, Finding, Grade, grade
from turnspit.safety.question import TOPICS, SafetyQuestion, Topic

__all__ = ["GRADES", "TOPICS", "Finding", "Grade", "SafetyQuestion", "Topic", "grade"]
