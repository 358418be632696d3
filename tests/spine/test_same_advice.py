"""Same case, same advice, always: whatever the order of the rules, the hash seed or the process."""

import os
import random
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from advisor.advise.plan import make_plan
from advisor.casefile import read_case
from advisor.report.data import advice_data, plan_data
from advisor.rulebase.base import RuleBase, read_base
from tests.some_cases import some
from tests.spine.worlds import BASE, world

ROOT = Path(__file__).resolve().parents[2]
CASES = sorted((ROOT / "cases").glob("*.toml"))
DUMP = """
import json, sys
from pathlib import Path
from advisor.advise.plan import make_plan
from advisor.advise.world import world_of
from advisor.casefile import read_case
from advisor.report.data import advice_data, plan_data
from advisor.rulebase.base import the_base
base = the_base()
for path in sys.argv[1:]:
    case = read_case(Path(path), base.questions()).case
    plan = make_plan(base, world_of(case, base.garment(case.garment)), case.choices, case.limits)
    print(json.dumps([plan_data(base, case, plan), advice_data(base, case, plan.advice, plan.suggested, ())]))
"""


@pytest.mark.parametrize("seed", range(3))
def test_shuffled_rules_give_equal_advice(seed: int) -> None:
    ids = sorted(BASE.rules)
    random.Random(seed).shuffle(ids)
    shuffled = read_base(BASE.folder, order=tuple(ids))
    for path in CASES:
        assert told(shuffled, path) == told(BASE, path), path.stem


def told(base: RuleBase, path: Path) -> tuple[Any, Any]:
    """Plan and advice of a case, as data."""
    case = read_case(path, base.questions()).case
    plan = make_plan(base, world(case, base), case.choices, case.limits)
    return plan_data(base, case, plan), advice_data(base, case, plan.advice, plan.suggested, ())


def test_processes_and_hash_seeds_give_equal_bytes() -> None:
    def dump(seed: str) -> bytes:
        env = {**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT)}
        paths = [str(path) for path in some(CASES, 4)]
        return subprocess.run([sys.executable, "-c", DUMP, *paths], env=env, capture_output=True, check=True).stdout

    first = dump("0")
    assert first.count(b"\n") == len(some(CASES, 4))
    assert dump("1") == first
    assert dump("4242") == first
