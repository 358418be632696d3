"""Amounts that stand in the sentences of the rule base are told on the tape the person holds."""

import re
from dataclasses import replace
from fractions import Fraction

import pytest

from advisor.advise.plan import make_plan
from advisor.advise.world import world_of
from advisor.casefile import read_case
from advisor.core.advice import Plan
from advisor.core.case import Case
from advisor.lengths import INCH_TAPE, METRIC_TAPE, read_length
from advisor.report.advice import advice_lines
from advisor.report.plan import plan_lines
from advisor.words import retold
from tests.rules.mutate import base
from tests.rules.test_case_files import CASES, NAMES

# A rate of stitches keeps its name, with the length of a stitch beside it; "5 in 100" is a share.
INCHES = re.compile(r"\d[ -]in\b(?! \d)|(?<!to the )\binch")


def metric(name: str) -> Case:
    return replace(read_case(CASES / f"{name}.toml", base().questions()).case, tape="cm")


def told(case: Case, plan: Plan) -> list[str]:
    """Everything a person may read of this case: answers apart, which stay as she gave them."""
    advice = plan.advice
    texts = [*plan_lines(base(), case, plan), *advice_lines(base(), case, advice, plan.suggested, ())]
    texts += [node.words for node in advice.trace.nodes.values() if node.kind != "answer"]
    texts += [text for f in advice.findings for text in (f.title, f.words)]
    for option in advice.options:
        texts += [option.title, option.reason, option.why, option.wrong_when, *option.cautions]
        texts += [ruling.words for ruling in option.rulings]
    for question in base().asked(case).values():
        texts += [question.name, question.ask, question.help, question.alone, *question.words.values()]
    return texts


@pytest.mark.parametrize("name", NAMES)
def test_nobody_with_a_metric_tape_reads_inches(name: str) -> None:
    case = metric(name)
    plan = make_plan(base(), world_of(case, base().garment(case.garment)), case.choices, case.limits)
    texts = told(replace(case, story=""), plan)
    assert len(texts) > 100
    assert [text for text in texts if INCHES.search(text)] == []


def test_every_sentence_of_every_card_can_be_told_on_a_metric_tape() -> None:
    texts = [text for card in base().rules.values() for text in (card.title, card.why, card.says)]
    for fix in base().fixes.values():
        texts += [fix.title, fix.why, fix.wrong_when, *fix.cautions]
    assert sum(bool(INCHES.search(text)) for text in texts) > 100, "the rules are written in inches"
    assert [text for text in texts if INCHES.search(retold(text, METRIC_TAPE))] == []


@pytest.mark.parametrize(
    ("written", "metric"),
    [
        ("Keep 3/8 in.", "Keep 1 cm."),  # 9.525 mm, to the millimeter
        ("1 1/2 to 2 in wide", "3.8 to 5.1 cm wide"),
        ("1/2, 3/4 or 1 in", "1.3, 1.9 or 2.5 cm"),
        ("Run in faster than 1/2 in over 5 in it dents.", "Run in faster than 1.3 cm over 12.7 cm it dents."),
        ("a 4-in zone", "a 10.2 cm zone"),
        ("a 5 in 100 solution", "a 5 in 100 solution"),
        ("two in front, 3 in pairs of 2", "two in front, 7.6 cm pairs of 2"),  # so no card may write it like that
    ],
)
def test_amounts_are_converted_at_25_4_mm_to_the_inch(written: str, metric: str) -> None:
    assert retold(written, METRIC_TAPE) == metric
    assert retold(written, INCH_TAPE) == written


def test_a_converted_amount_is_the_written_one_to_half_a_millimeter() -> None:
    for sixteenths in range(1, 200):
        whole, part = divmod(sixteenths, 16)
        text = " ".join(filter(None, (str(whole) if whole else "", str(Fraction(part, 16)) if part else "")))
        shown = retold(f"{text} in", METRIC_TAPE)
        assert abs(read_length(shown, unit="cm") - Fraction(sixteenths, 16) * Fraction("25.4")) <= Fraction(1, 2)
