"""When the interview is done, nothing that was not asked can change the advice, alone or together with the rest.

The oracle is brute force over the advice itself, on seeds the interview does not use. BODIES=1 tries all cases with
all samples; else a few cases, so that the suite stays short.
"""

import os
from dataclasses import replace
from pathlib import Path
from random import Random

import pytest

from advisor.advise.follow import follow
from advisor.advise.sweep import Signature, grid, signature
from advisor.advise.world import world_of
from advisor.core.case import Case, Known
from advisor.core.model import Key, Value
from advisor.lengths import TAPES, on_tape
from tests.interview.playing import BASE, CASES, full_case, play

ALL = bool(os.environ.get("BODIES"))
FEW = ("chimney_imp", "old_harlequin")
TRIED = [path for path in CASES if ALL or path.stem in FEW]
SAMPLES = 200
SEED = 77_000
MOST_DECIDING, MOST = 24, 30
"""No interview is longer; half of those over the cases are much shorter."""


def mark(case: Case, told: dict[Key, Value]) -> Signature:
    """The signature with these answers added, worked out without the remembered outcomes of sweeps."""
    answers = {**case.answers, **{key: Known(value) for key, value in told.items()}}
    world = world_of(replace(case, answers=answers), BASE.garment(case.garment))
    return signature(follow(BASE, world, case.choices, case.limits, told=False), world)


def values(case: Case, key: Key, rng: Random) -> list[Value]:
    """Every word; of a length the halving grid, and marks of the tape drawn at random."""
    question, tape = BASE.garment(case.garment).questions[key], TAPES[case.tape]
    drawn = [question.least + (question.most - question.least) * rng.randrange(4096) / 4096 for _ in range(8)]
    return [*grid(question, tape), *([] if question.kind == "word" else [on_tape(mm, tape) for mm in drawn])]


def askable(case: Case) -> list[Key]:
    """What was not asked and could still be: what it comes after was not answered otherwise."""
    garment, answers = BASE.garment(case.garment), case.answers
    told = {key: answer.value for key, answer in answers.items() if isinstance(answer, Known)}
    open_keys = [key for key in garment.questions if key not in answers]
    return [
        key
        for key in open_keys
        if all(told.get(gate, words[0]) in words for gate, words in garment.questions[key].after)
    ]


@pytest.mark.parametrize("path", TRIED, ids=lambda path: path.stem)
def test_when_it_is_done_no_unasked_answer_changes_the_advice(path: Path) -> None:
    states = list(play(full_case(path)))
    asked = [due for _, due in states if due is not None]
    deciding = sum(due.decides for due in asked)
    print(f"{path.stem}: {deciding} deciding, {len(asked)} in all")
    assert deciding <= MOST_DECIDING and len(asked) <= MOST
    case = states[-1][0]
    now, rest, rng = mark(case, {}), askable(case), Random(SEED)
    garment = BASE.garment(case.garment)
    for key in rest:
        if all(gate in case.answers for gate, _ in garment.questions[key].after):
            for value in values(case, key, rng):
                assert mark(case, {key: value}) == now, f"{key} = {value} would change the advice"
    for number in range(SAMPLES):
        rng = Random(SEED + number)
        sample = {key: rng.choice(values(case, key, rng)) for key in rest}
        assert mark(case, sample) == now, f"sample {number} would change the advice"
