"""What was checked, in figures, and what a check of this kind cannot see."""

import re
from collections import Counter
from dataclasses import dataclass

from advisor.check.material import Material
from advisor.check.trials import trials_of
from advisor.figures import FORMULAS, TABLES
from advisor.knowledge.cards import Answer, Find, Veto
from advisor.rulebase.sources import MARKS

BLIND = (
    "whether a reason, a sentence or a grade is true of cloth and body: it reads words, not meaning",
    "whether a number taken from a source is the number printed there, or the source is right",
    "answers in combinations that nothing tried: every answer is tried alone, and a few dozen handfuls together",
    "whether a plain word is the right one, or a sentence hides an id that looks like a plain word",
    "a condition with several tests in one: it is proved as a whole, not part by part; nor a number moved a little",
    "which facts go together: what each condition alone allows on a garment counts as possible there",
    "amounts that several facts decide: gaps are looked for along one amount and one state at a time",
    "rules that say the same otherwise: conditions are compared as written, tests on values near their numbers",
    "minutes and materials: nothing compares them with any workroom",
    "whether the measures a finding watches are the ones that matter on a real garment",
)


@dataclass(frozen=True)
class Counts:
    """The rule base in figures. `qualities`: values by the quality of the source they name."""

    findings: int
    answers: int
    vetoes: int
    fixes: int
    garments: int
    roles: int
    cases: int
    formulas: int
    sources: int
    named: int
    qualities: dict[str, int]
    marked: dict[str, int]
    examples: int
    near_misses: int
    worlds: int
    plans: int
    spoiled: int


def counts_of(material: Material) -> Counts:
    """The figures of one rule base, tried."""
    trials = trials_of(material)
    keys = [card.source for _, card in material.cards()]
    keys += [formula.source for formula in FORMULAS.values()]
    keys += [entry.source for garment in material.garments.values() for entry in garment.by_word.values()]
    keys += [row.source for table in TABLES.values() for rows in table.rows.values() for row in rows]
    named = [key for key in keys if key in material.sources]
    return Counts(
        findings=len(list(material.of(Find))),
        answers=len(list(material.of(Answer))),
        vetoes=len(list(material.of(Veto))),
        fixes=len(material.fixes),
        garments=len(material.garments),
        roles=len(material.roles),
        cases=len(material.read_cases),
        formulas=len(FORMULAS),
        sources=len(material.sources),
        named=len(set(named)),
        qualities=dict(sorted(Counter(_plain(material.sources[key].quality) for key in named).items())),
        marked=dict(sorted(Counter(MARKS[key] for key in keys if key in MARKS).items())),
        examples=sum(len(card.fires) for card in material.rules.values()),
        near_misses=sum(len(card.near) for card in material.rules.values()),
        worlds=trials.worlds,
        plans=trials.plans,
        spoiled=trials.spoiling.ways,
    )


def _plain(quality: str) -> str:
    """`standard, quoted` and `blog (trade)` count as what stands before the remark."""
    return re.split(r"[,(]", quality)[0].strip() or "not stated"
