"""Check 9: the order in which the engine gets the rules changes no byte of any advice."""

import json
from itertools import islice
from random import Random
from typing import Any

from advisor.advise.plan import make_plan
from advisor.advise.world import world_of
from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.probes import Probe, of_cases, together
from advisor.report.data import advice_data, plan_data
from advisor.rulebase.base import RuleBase

ORDERS = 2
PROBES = 2


def check(material: Material, book: Book) -> None:
    """Every case and a few worlds of many answers, under shuffled orders."""
    plain = material.plain
    tried = list(of_cases(material))
    for _, garment in sorted(material.garments.items()):
        tried += islice(together(garment, len(material.garments)), PROBES)
    wanted = [_told(plain, probe) for probe in tried]
    ids = sorted(material.sound)
    for seed in range(ORDERS):
        Random(seed).shuffle(ids)
        other = material.base(material.engine_of(tuple(ids)))
        for probe, before in zip(tried, wanted, strict=True):
            after = _told(other, probe)
            if after != before:
                what = f"the advice depends on the order of the rules, first in {_differs(before, after)}"
                where = probe.told if probe.told.startswith("cases/") else "rules"
                book.error(where, what, f"let no rule look at what rules of its own kind conclude ({probe.told})")


def _told(base: RuleBase, probe: Probe) -> dict[str, Any]:
    world = world_of(probe.case, probe.world.garment, probe.answers)
    try:
        plan = make_plan(base, world, probe.choices, probe.limits)
        advice = advice_data(base, probe.case, plan.advice, plan.suggested, ())
        return {"advice": advice, "plan": plan_data(base, probe.case, plan)}
    except Exception as fault:  # told of by the check of stages
        return {"refused": str(fault)}


def _differs(before: Any, after: Any) -> str:
    """The path to the first value that differs."""
    if isinstance(before, dict) and isinstance(after, dict):
        for key in sorted({*before, *after}):
            if before.get(key) != after.get(key):
                return f"{key} {_differs(before.get(key), after.get(key))}".rstrip()
    if isinstance(before, list) and isinstance(after, list):
        for index, (one, other) in enumerate(zip(before, after, strict=False)):
            if one != other:
                return f"{index} {_differs(one, other)}".rstrip()
    return ""


def bytes_of(base: RuleBase, probe: Probe) -> bytes:
    """Advice and plan of a probe as they would be printed."""
    return json.dumps(_told(base, probe), sort_keys=True).encode()
