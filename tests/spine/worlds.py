"""Ways to write a case in a test: answers as plain words and lengths on an inch tape."""

from dataclasses import replace

from advisor.advise.world import World, world_of
from advisor.core.case import Case, Choice, Known, Unknown
from advisor.lengths import read_length
from advisor.rulebase.base import RuleBase, the_base

BASE = the_base()


def case_of(garment: str = "one_piece", tape: str = "in", base: RuleBase = BASE, **answers: str) -> Case:
    """A case; `waist__low_by="1 in"` answers waist.low_by, "?" is an answer she cannot give."""
    questions = base.garment(garment).questions
    found: dict[str, Known | Unknown] = {}
    for name, text in answers.items():
        key = name.replace("__", ".")
        if text == "?":
            found[key] = Unknown()
        elif questions[key].kind == "word":
            found[key] = Known(text)
        else:
            found[key] = Known(read_length(text, unit="in"), questions[key].how)
    return Case(garment, "a test", tape=tape, answers=found)  # type: ignore[arg-type]


def choosing(case: Case, **choices: str) -> Case:
    """The case with choices; `waist_low__bodice="waist.fixes.raise_seam"` chooses for waist_low@bodice."""
    made = {name.replace("__", "@"): Choice(fix) for name, fix in choices.items()}
    return replace(case, choices={**case.choices, **made})


def world(case: Case, base: RuleBase = BASE) -> World:
    """The world of a case."""
    return world_of(case, base.garment(case.garment))
