"""Advice told to a person and advice compared in a sweep are one advice: they differ in words and trace only.

Sentences of a card are compared on her tape: a sweep leaves the amounts in them as the card has them.
"""

import random
from dataclasses import replace

import pytest

from advisor.advise.advise import advise, forget
from advisor.advise.follow import Followed
from advisor.advise.sweep import signature
from advisor.core.advice import Advice
from advisor.core.case import Choice
from advisor.core.work import Finding, Option
from advisor.words import Teller
from tests.advise.advise_worlds import BASE, CASES, world
from tests.some_cases import some


def _finding(finding: Finding) -> Finding:
    return replace(finding, words="", node="")


def _option(option: Option, teller: Teller) -> Option:
    rulings = tuple(replace(ruling, words="", node="") for ruling in option.rulings)
    on_tape = teller.fixed
    return replace(
        option,
        node="",
        rulings=rulings,
        reason=on_tape(option.reason),
        why=on_tape(option.why),
        wrong_when=on_tape(option.wrong_when),
        cautions=tuple(map(on_tape, option.cautions)),
    )


def _wordless(advice: Advice, teller: Teller) -> tuple[object, ...]:
    return (
        tuple(map(_finding, advice.findings)),
        tuple(_option(option, teller) for option in advice.options),
        dict(advice.choices),
        advice.idle,
        advice.model,
        tuple(map(_finding, advice.remains)),
        advice.reads,
        advice.suggested,
    )


@pytest.mark.parametrize("name", some(sorted(CASES), 5))
def test_told_and_compared_agree(name: str) -> None:
    case, pick = CASES[name], random.Random(name)
    forget()
    for keys in (0, 1, 4, 12):
        here, choices = world(case, keys, pick), dict(case.choices)
        # And with some choice of hers, good or bad, wherever there is one.
        first = advise(BASE, here, choices, case.limits, told=False)
        for finding in first.findings:
            fixes = [option.fix for option in first.options_for(finding.id)]
            if fixes and pick.random() < 0.4:
                choices[finding.id] = Choice(pick.choice(fixes))
        for fill in (False, True):
            told = advise(BASE, here, choices, case.limits, fill=fill)
            compared = advise(BASE, here, choices, case.limits, fill=fill, told=False)
            teller = Teller(here.tape, here.garment.places)
            assert _wordless(told, teller) == _wordless(compared, teller)
            one, other = Followed(told, told.suggested), Followed(compared, compared.suggested)
            assert signature(one, here)[-1] == signature(other, here)[-1]  # the order of work
            assert all(node in told.trace.nodes for node in _nodes(told)) and not compared.trace.nodes


def _nodes(advice: Advice) -> list[str]:
    findings = [finding.node for finding in (*advice.findings, *advice.remains)]
    options = [node for o in advice.options for node in (o.node, *(ruling.node for ruling in o.rulings))]
    return [*findings, *options]
