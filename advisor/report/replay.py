"""A record replayed, in words and as data."""

from typing import Any

from advisor.advise.replay import Behind, Replayed
from advisor.core.advice import Plan
from advisor.core.case import Case
from advisor.report.advice import head_lines, teller_of
from advisor.report.differences import Namer, difference_data, findings_told, sums_told
from advisor.report.lines import bullets, heading, para
from advisor.report.plan import instruction
from advisor.report.rules import card_of
from advisor.rulebase.base import RuleBase

KINDS = {
    "findings": "a rule for what is wrong",
    "answers": "a rule for what helps",
    "vetoes": "a reason against a fix",
    "fixes": "a fix",
}


def replay_lines(base: RuleBase, case: Case, plan: Plan, replayed: Replayed) -> list[str]:
    """Whether the advice is the same; else what changed behind it, and what differs."""
    when = replayed.then.at.replace("T", " at ") or "a day that was not noted"
    behind, lines = behind_told(base, case, replayed.behind), head_lines(base, case)
    if replayed.same:
        lines += ["", *para(f"The plan on record, of {when}, comes out the same: every fix, step and number.")]
        return lines + (_part("Changed since, without any effect on it", behind) if behind else [])
    lines += ["", *para(f"The plan on record, of {when}, comes out otherwise now.")]
    nothing = "Nothing that is kept on record. Then the advisor's own working was changed."
    lines += _part("What has changed since", behind or [nothing])
    return lines + _part("What differs in the plan", differs_told(base, case, plan, replayed))


def _part(title: str, told: list[str]) -> list[str]:
    return [*heading(title), *bullets(told)]


def behind_told(base: RuleBase, case: Case, behind: Behind) -> list[str]:
    """What changed, one sentence each."""
    told = []
    if behind.answers:
        told.append("What you answered, chose or set as a limit.")
    if behind.versions:
        told.append("The advisor: it was version {}, and is version {}.".format(*behind.versions))
    told += [f"Says something else now: {card_words(base, case, id)}." for id in behind.changed]
    told += [f"Is no more: {card_words(base, case, id)}." for id in behind.gone]
    told += [f"Has a say now, and had none: {card_words(base, case, id)}." for id in behind.speaks]
    if behind.formulas:
        told.append("The calculations.")
    if behind.operations:
        told.append("How the operations of the work are done.")
    if behind.others and not behind.speaks:
        told.append("Rules that have no say in this case.")
    return told


def card_words(base: RuleBase, case: Case, id: str) -> str:
    """A file of the rule base in words: its kind and title; one that is gone by its topic and name."""
    topic, _, name = id.rpartition(".")
    if id in base.rules or id in base.fixes:
        return f"{KINDS[topic.rpartition('.')[2]]}, '{card_of(base, id).title}'"
    if topic == "roles":
        places = base.garment(case.garment).places.values()
        words = next((place.words for place in places if place.role == name), name.replace("_", " "))
        return f"what is asked and known about {words}"
    if topic == "garments":
        return f"how the garment is made up ({base.garment(case.garment).title})"
    if topic == "tables":
        return "how the fixes are graded"
    kind = KINDS.get(topic.rpartition(".")[2], "a rule")
    return f"{kind}, '{name.replace('_', ' ')}', under '{topic.partition('.')[0]}'"


def differs_told(base: RuleBase, case: Case, plan: Plan, replayed: Replayed) -> list[str]:
    """What differs in the advice, one sentence each."""
    difference, advice = replayed.difference, plan.advice
    namer, teller = Namer(base, case, advice), teller_of(base, case)
    words = {finding.id: finding.words for finding in advice.findings}
    told = findings_told(difference, namer, words.__getitem__) + sums_told(replayed.then.totals, replayed.now.totals)
    steps = {step.op.id: f"{number}: {instruction(teller, step)}" for number, step in enumerate(plan.steps, 1)}
    told += [f"New, step {steps[id]}" for id in difference.added]
    told += [f"No longer a step: {words}." for words in dict.fromkeys(map(namer.step, difference.dropped))]
    told += [f"Not as it was, step {steps[id]}" for id in difference.changed]
    if difference.reordered:
        told.append("The steps come in another order.")
    return told or ["Only cautions, or what the plan leaves undone."]


def replay_data(base: RuleBase, case: Case, replayed: Replayed) -> dict[str, Any]:
    """The same for programs."""
    behind = replayed.behind
    cards = {name: getattr(behind, name) for name in ("changed", "gone", "speaks")}
    return {
        "version": 1,
        "title": case.title,
        "recorded": replayed.then.at,
        "same": replayed.same,
        "advice": {"then": replayed.then.advice, "now": replayed.now.advice},
        "behind": {
            **{name: [{"id": id, "words": card_words(base, case, id)} for id in ids] for name, ids in cards.items()},
            "others": behind.others,
            "formulas": behind.formulas,
            "operations": behind.operations,
            "answers": behind.answers,
            "advisor": list(behind.versions) if behind.versions else None,
        },
        "differs": difference_data(replayed.difference),
    }
