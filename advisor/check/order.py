"""The order in which the engine gets the rules changes no byte of the advice in the worlds it is tried on."""

import json
from itertools import islice
from random import Random
from typing import Any

from advisor.advise.plan import make_plan
from advisor.advise.world import world_of
from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.probes import Probe, of_cases, together
from advisor.check.trials import trials_of
from advisor.check.watching import Noted, Watching
from advisor.report.data import advice_data, plan_data
from advisor.rulebase.base import RuleBase

ORDERS = 2  # each world is tried under one of them, in turn
PROBES = 5  # worlds of many answers, shared out among the garments
MOST = 8  # of all those and the cases; which ones is left to chance, the same each time


def check(material: Material, book: Book) -> None:
    """Cases and a few worlds of many answers, each under another order."""
    trials = trials_of(material)
    tried = list(of_cases(material))
    for _, garment in sorted(material.garments.items()):
        tried += islice(together(garment, len(material.garments)), max(PROBES // len(material.garments), 1))
    chosen = sorted(Random(MOST).sample(range(len(tried)), min(MOST, len(tried))))
    tried = [tried[index] for index in chosen]
    wanted = [_told(trials.base, probe) for probe in tried]
    ids = sorted(material.sound)
    for seed in range(ORDERS):
        Random(seed).shuffle(ids)
        other = material.base(Watching(material, Noted(material.rules), ids))
        for probe, before in list(zip(tried, wanted, strict=True))[seed::ORDERS]:
            after = _told(other, probe)
            if after != before:
                what = f"the advice depends on the order of the rules, first in {_differs(before, after)}"
                where = probe.told if probe.told.startswith("cases/") else "rules"
                book.error(where, what, f"let no rule look at what rules of its own kind conclude ({probe.told})")


def _told(base: RuleBase, probe: Probe) -> dict[str, Any]:
    """Advice and plan as data."""
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
