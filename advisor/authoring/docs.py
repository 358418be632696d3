"""rules/README.md: what rules there are, by topic, made from the cards. The same rule base gives the same page."""

from collections import Counter
from collections.abc import Iterable, Mapping

from advisor.authoring.minutes import minutes_of
from advisor.core.stages import STAGE_WORDS
from advisor.core.work import Spread
from advisor.figures import FORMULAS, TABLES
from advisor.knowledge.cards import Answer, Find, Veto
from advisor.report.explain import explain_data, offer_of
from advisor.rulebase.base import RuleBase
from advisor.rulebase.grades import AXES
from advisor.rulebase.sources import MARKS

NAME = "README.md"
HEAD = """# The rules

What this advisor knows, told for readers who sew and do not program. It looks at a garment for what may be wrong;
for each thing wrong it offers fixes, from the quickest to the most lasting, down to leaving it; and it rules fixes
out where they would do harm. All of that is listed here by topic, with the grades of each fix and the source of each
rule. `advisor rules explain NAME` tells everything about one rule; NAME is the last part of its address.

This page is made by `advisor rules docs` from the files below this folder: edit those, not this page.
"""
MINUTES = """Minutes are the likely ones, the least and the most in brackets, for a careful home sewer, as the fix comes
out on the example of the first rule that offers it. A dash: it does nothing, or depends on more than that example says.
"""


def page(base: RuleBase) -> str:
    """The whole page, Markdown."""
    minutes = minutes_of(base)
    topics = sorted({id.partition(".")[0] for id in base.files})
    lines = [HEAD, *_numbers(base), "", *_contents(base, topics), ""]
    lines += ["## What the grades mean", "", *_grades(base), "", MINUTES]
    for topic in topics:
        lines += [f"## {topic.capitalize()}", ""]
        lines += _findings(base, _of(base.rules, topic, "findings"))
        lines += _fixes(base, _of(base.fixes, topic, "fixes"), minutes)
        lines += _vetoes(base, _of(base.rules, topic, "vetoes"))
    return "\n".join([*lines, *_sources(base)]) + "\n"


def _of(cards: Iterable[str], topic: str, kind: str) -> list[str]:
    return sorted(id for id in cards if id.split(".")[:2] == [topic, kind])


def _numbers(base: RuleBase) -> list[str]:
    counts = Counter(type(card) for card in base.rules.values())
    told = f"In all {_count(counts[Find], 'thing')} that may be wrong, {_count(counts[Answer], 'answer')} to them, "
    told += f"{len(base.fixes)} {'fix' if len(base.fixes) == 1 else 'fixes'} and {_count(counts[Veto], 'reason')} "
    told += f"against a fix, for {_count(len(base.garments), 'kind')} of garment:"
    return [told, "", *(f"- {garment.title}" for _, garment in sorted(base.garments.items()))]


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}" + ("" if number == 1 else "s")


def _contents(base: RuleBase, topics: list[str]) -> list[str]:
    rows = []
    for topic in topics:
        counts = Counter(id.split(".")[1] for id in base.files if id.partition(".")[0] == topic)
        name = f"[{topic.capitalize()}](#{topic})"
        rows.append([name, *(str(counts[kind]) for kind in ("findings", "answers", "fixes", "vetoes"))])
    return _table(["topic", "may be wrong", "answers", "fixes", "reasons against"], rows)


def _grades(base: RuleBase) -> list[str]:
    rows = [[str(grade), *(base.grades.meaning(axis, grade) for axis in AXES)] for grade in range(1, 6)]
    return _table(["grade", *AXES], rows)


def _findings(base: RuleBase, ids: list[str]) -> list[str]:
    lines = ["### What may be wrong", ""] if ids else []
    for id in ids:
        card = base.rules[id]
        assert isinstance(card, Find)
        told = f"Decided at: {STAGE_WORDS[card.stage]}; source: {_source(card.source)}."
        lines += [f"**{_link(id, card.title)}.** {_plain(card.why)} {told}", "", *_ladder(base, card.problem), ""]
    return lines


def _ladder(base: RuleBase, problem: str) -> list[str]:
    """What answers a problem, from the easiest to the hardest; what leaves it as it is stands last."""
    rungs = set()
    for _, card in sorted(base.rules.items()):
        if isinstance(card, Answer) and card.problem == problem:
            fix = base.fixes[card.fix]
            grades = ", ".join(f"{axis} {getattr(fix, axis)}" for axis in AXES)
            told = f"- {_plain(offer_of(base, card))}" + (f" ({grades})" if fix.closes else "")
            rungs.add((not fix.closes, fix.difficulty, -fix.durability, told))
    return [told for *_, told in sorted(rungs)]


def _fixes(base: RuleBase, ids: list[str], minutes: Mapping[str, Spread]) -> list[str]:
    rows = []
    for id in ids:
        fix = base.fixes[id]
        grades = [str(getattr(fix, axis)) if fix.closes else "-" for axis in AXES]
        rows.append([_link(id, fix.title), *grades, _spread(minutes.get(id)), fix.wrong_when, _source(fix.source)])
    return _section("Fixes", ["fix", *AXES, "minutes", "wrong when", "source"], rows)


def _vetoes(base: RuleBase, ids: list[str]) -> list[str]:
    rows = []
    for id in ids:
        card = base.rules[id]
        assert isinstance(card, Veto)
        told = explain_data(base, id)
        # Each fix ends with its id in brackets, which the table of fixes tells already.
        fixes = "; ".join(each.partition(" (")[0] for each in told["rules_out"])
        rows.append([_link(id, card.title), fixes, "; ".join(told["when"]), _source(card.source)])
    return _section("What is ruled out", ["reason", "fixes", "when", "source"], rows)


def _sources(base: RuleBase) -> list[str]:
    named = Counter([*(card.source for card in base.rules.values()), *(fix.source for fix in base.fixes.values())])
    named.update(formula.source for formula in FORMULAS.values())
    named.update(row.source for table in TABLES.values() for rows in table.rows.values() for row in rows)
    rows = [
        [f"`{key}`", source.line, source.quality or "not stated", source.seen, str(named[key])]
        for key, source in sorted(base.sources.items())
    ]
    rows += [[f"`{mark}`", words, "-", "-", str(named[mark])] for mark, words in sorted(MARKS.items()) if named[mark]]
    text = "How often each is named, by a rule, a formula or a row of a table, stands last."
    return ["## Sources", "", text, "", *_table(["key", "what it is", "quality", "seen", "named"], rows)]


def _section(title: str, heads: list[str], rows: list[list[str]]) -> list[str]:
    return [f"### {title}", "", *_table(heads, rows), ""] if rows else []


def _table(heads: list[str], rows: Iterable[list[str]]) -> list[str]:
    lines = [heads, ["---"] * len(heads), *rows]
    return [f"| {' | '.join(_cell(text) for text in line)} |" for line in lines]


def _cell(text: str) -> str:
    return _plain(text).replace("|", "\\|")


def _plain(text: str) -> str:
    """A text as Markdown shows it, on one line."""
    return " ".join(text.replace("\\", "\\\\").replace("<", "&lt;").replace("*", "\\*").split())


def _link(id: str, title: str) -> str:
    return f"[{title.replace('[', '(').replace(']', ')')}]({id.replace('.', '/')}.py)"


def _source(key: str) -> str:
    return MARKS.get(key, f"`{key}`")


def _spread(minutes: Spread | None) -> str:
    return f"{minutes.likely} ({minutes.least} to {minutes.most})" if minutes else "-"
