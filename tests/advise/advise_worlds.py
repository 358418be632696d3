"""The cases of cases/, and seeded worlds that differ from theirs in some answers."""

import random
from pathlib import Path

from advisor.advise.sweep import grid
from advisor.advise.world import World, world_of
from advisor.casefile import read_case
from advisor.core.case import Case
from advisor.core.model import Key, Value
from advisor.lengths import TAPES
from advisor.rulebase.base import the_base

BASE = the_base()
PATHS = sorted((Path(__file__).parents[2] / "cases").glob("*.toml"))
CASES: dict[str, Case] = {path.stem: read_case(path, BASE.questions()).case for path in PATHS}


def supposed(case: Case, keys: int, pick: random.Random) -> dict[Key, Value]:
    """Answers to so many questions, each anything that a sweep might try."""
    questions = BASE.garment(case.garment).questions
    chosen = pick.sample(sorted(questions), min(keys, len(questions)))
    return {key: pick.choice(grid(questions[key], TAPES[case.tape])) for key in chosen}


def world(case: Case, keys: int = 0, pick: random.Random | None = None) -> World:
    """The world of a case, with so many other answers."""
    return world_of(case, BASE.garment(case.garment), supposed(case, keys, pick) if pick else {})
