"""A choice against the advice, in words: when it is made, when it is refused, and in the plan."""

from advisor.advise.overrule import against
from advisor.core.advice import Advice
from advisor.core.case import Choice
from advisor.core.work import Option

ENOUGH = "a few words will do"


def against_words(advice: Advice, option: Option) -> str:
    """What choosing it goes against, as a sentence; empty if nothing."""
    kind = against(advice, option)
    if kind == "order":
        return f"It is not the first in rank; that is: {_small(advice.options_for(option.finding)[0].title)}."
    if kind in ("ruling", "size"):
        return f"It is ruled out: {option.rulings[0].words}"
    return ""


def refused_words(advice: Advice, option: Option, reason: str) -> str:
    """Why it cannot be chosen with this reason, as a sentence; empty if it can."""
    kind = against(advice, option)
    if kind == "size":
        return f"{against_words(advice, option)} No reason makes a plan of that."
    if kind and not reason.strip():
        return f"{against_words(advice, option)} To choose it all the same, say why."
    return ""


def chosen_lines(advice: Advice, option: Option, choice: Choice) -> list[str]:
    """In the plan: what a choice of hers was made against, and her reason."""
    kind, reason = against(advice, option), f"Your reason: {choice.reason}" if choice.reason else ""
    told = []
    if kind in ("ruling", "size"):
        told = [f"Chosen against the advice. {ruling.words}" for ruling in option.rulings]
    elif kind == "order" and reason:
        told = [f"Chosen against the suggestion: {_small(advice.options_for(option.finding)[0].title)}."]
    return [*told, reason] if reason else told


def warning(option: Option) -> str:
    """Beside the first step of an option chosen against a ruling: what that ruling warns of; else empty."""
    if not option.rulings:
        return ""
    said = " ".join(ruling.words for ruling in option.rulings)
    return f"Mind: '{option.title}' was chosen against the advice. {said}"


def _small(text: str) -> str:
    return text[:1].lower() + text[1:]
