"""Harm that no thermometer in the meat shows: raw juices, allergens, fat, smoke, glass, a false probe."""

from __future__ import annotations

from turnspit.message import Message
from turnspit.reference import Kitchen
from turnspit.safety.finding import Finding, finding, limit, within
from turnspit.safety.question import SafetyQuestion
from turnspit.safety.thermometer import ICE_C, Bath, boiling_point_c, probe_error_k, probe_is_true

OPEN_AIR = ("outdoors", "garden", "yard")
LUKEWARM_C = 45.0  # nearer to boiling above, nearer to ice below


def washed(_question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """The raw bird was washed, or is it to be."""
    return finding(kitchen, "no-washing", "warn", "clean", Message("safety-washed"))


def cross_contact(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Raw juices on a board, a knife, or on food."""
    if question.cooked_after:
        seen = Message("safety-juices-cooked")
        return finding(kitchen, "raw-juices", "warn", "clean", seen, action=Message("safety-do-clean-and-cook"))
    unknown = () if question.cooked_after is False else ("cooked_after",)
    seen = Message("safety-juices")
    return finding(
        kitchen,
        "raw-juices",
        "stop",
        "discard",
        seen,
        action=Message("safety-do-discard-ready-to-eat"),
        unknown=unknown,
    )


def giblets(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Giblets or their bag left in the roasted bird."""
    if question.method == "plastic":
        return finding(
            kitchen,
            "giblets",
            "stop",
            "discard",
            Message("safety-giblets-plastic"),
            action=Message("safety-do-discard-if-melted"),
        )
    if question.method == "paper":
        return finding(kitchen, "giblets", "info", "measure", Message("safety-giblets-paper"))
    seen = Message("safety-giblets")
    action = Message("safety-do-discard-if-melted")
    return finding(kitchen, "giblets", "warn", "measure", seen, action=action, unknown=("method",))


def brine_injected(_question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Brine for a bird that is salted already."""
    seen = Message("safety-salted-already")
    return finding(kitchen, "injected-no-brine", "warn", "refuse", seen, action=Message("safety-do-no-brine"))


def brine_reuse(_question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Used brine or marinade, again or in a sauce."""
    return finding(kitchen, "brine-discard", "stop", "discard", Message("safety-used-brine"))


def allergens(_question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """A guest with an allergy."""
    return finding(kitchen, "allergens", "warn", "tell", Message("safety-allergy"))


def frying(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Deep frying a bird."""
    if question.state in ("frozen", "part_frozen"):
        return finding(
            kitchen, "hot-fat", "stop", "refuse", Message("safety-fry-frozen"), action=Message("safety-do-thaw-first")
        )
    if question.stuffed:
        return finding(
            kitchen,
            "hot-fat",
            "stop",
            "refuse",
            Message("safety-fry-stuffed"),
            action=Message("safety-do-bake-apart"),
        )
    if question.place and question.place not in OPEN_AIR:
        return finding(kitchen, "hot-fat", "stop", "outdoors", Message("safety-fry-indoors"))
    oil_c = question.temperature_c
    if oil_c is not None and not within(oil_c, limit("hot-fat", "oil_max_c", kitchen)):
        seen = Message("safety-oil", temperature_c=oil_c)
        return finding(kitchen, "hot-fat", "stop", "stand_back", seen, action=Message("safety-do-cool-oil"))
    unknown = () if question.state else ("state",)
    return finding(kitchen, "hot-fat", "warn", "stand_back", Message("safety-fry"), unknown=unknown)


def charcoal(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """Charcoal, wood or gas."""
    outside = question.place in OPEN_AIR
    seen = Message("safety-charcoal-outdoors") if outside else Message("safety-charcoal")
    unknown = () if question.place else ("place",)
    return finding(kitchen, "carbon-monoxide", "info" if outside else "stop", "outdoors", seen, unknown=unknown)


def glass(_question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """A glass or ceramic dish."""
    return finding(kitchen, "glass-pan", "warn", "stand_back", Message("safety-glass"))


def thermometer(question: SafetyQuestion, kitchen: Kitchen) -> Finding:
    """The probe in ice water or in boiling water; which of the two it was is taken from the reading if not said."""
    rule = "thermometer-check"
    altitude_m = question.altitude_m or 0.0
    boils_c = boiling_point_c(altitude_m)
    bath = _bath(question)
    if bath is None or question.temperature_c is None:
        known = question.altitude_m is not None
        seen = Message("safety-probe-how", temperature_c=boils_c) if known else Message("safety-probe-how-high")
        return finding(kitchen, rule, "info", "measure", seen)
    error_k = probe_error_k(question.temperature_c, bath, altitude_m)
    unknown = ("altitude_m",) if bath == "boiling" and question.altitude_m is None else ()
    expected_c = boils_c if bath == "boiling" else ICE_C
    seen = Message("safety-probe", temperature_c=question.temperature_c, expected_c=expected_c)
    if probe_is_true(error_k):
        return finding(kitchen, rule, "ok", "go_on", seen, unknown=unknown)
    action = Message("safety-do-replace-probe", error_k=abs(error_k), side="high" if error_k > 0 else "low")
    return finding(kitchen, rule, "stop", "measure", seen, action=action, unknown=unknown)


def _bath(question: SafetyQuestion) -> Bath | None:
    if question.method not in ("ice", "boiling") and question.temperature_c is not None:
        return "boiling" if question.temperature_c > LUKEWARM_C else "ice"
    match question.method:
        case "ice" | "boiling" as bath:
            return bath
    return None
