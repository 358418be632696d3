"""The rule base as a list, and which card a person means by an id."""

from typing import Any

from advisor.errors import UsageError, nearest
from advisor.knowledge.cards import Card, Find
from advisor.knowledge.fix import Fix
from advisor.report.lines import heading, para
from advisor.rulebase.base import RuleBase

KINDS = {"findings": "What may be wrong", "answers": "What answers it", "vetoes": "What is ruled out", "fixes": "Fixes"}


def card_of(base: RuleBase, id: str) -> Card | Fix:
    """The rule or fix with this id."""
    return base.rules[id] if id in base.rules else base.fixes[id]


def file_of(base: RuleBase, id: str) -> str:
    """The file of a card, from the folder above rules/ on."""
    return base.files[id].relative_to(base.folder.parent).as_posix()


def problem_title(base: RuleBase, problem: str) -> str:
    """What a problem is called: the titles of the findings that find it; empty for one nobody finds."""
    cards = [card for _, card in sorted(base.rules.items()) if isinstance(card, Find) and card.problem == problem]
    return " or ".join(dict.fromkeys(card.title for card in cards))


def card_meant(base: RuleBase, text: str) -> str:
    """The id meant by an id or by its end (`seam_low`). UsageError names what is near, or what it might be."""
    wanted = text.strip().casefold().removesuffix(".py").removeprefix("rules/").replace("/", ".")
    if wanted in base.files:
        return wanted
    ends = [id for id in sorted(base.files) if id.endswith(f".{wanted}")]
    if len(ends) == 1:
        return ends[0]
    if ends:
        raise UsageError(f"'{text}' may be any of {len(ends)}", hint=f"say which: {', '.join(ends)}")
    by_end = {id.rpartition(".")[2]: id for id in sorted(base.files)}
    hint = nearest(wanted, base.files if "." in wanted else by_end)
    raise UsageError(f"no rule or fix is called '{text}'", hint=f"{hint}; `advisor rules list` shows all")


def list_lines(base: RuleBase, topic: str) -> list[str]:
    """Topics, and under each its cards by kind."""
    lines: list[str] = []
    for name, kinds in _topics(base, topic).items():
        lines += heading(name.capitalize())
        for kind, ids in kinds.items():
            lines += para(f"{KINDS[kind]}:", 2)
            lines += [line for id in ids for line in para(f"{card_of(base, id).title} ({id})", 4, "- ")]
    count = sum(len(ids) for kinds in _topics(base, topic).values() for ids in kinds.values())
    return [*lines, "", f"{count} rules and fixes. `advisor rules explain ID` tells what one says and why."]


def list_data(base: RuleBase, topic: str) -> dict[str, Any]:
    """The same for programs."""
    entries = [
        {
            "id": id,
            "topic": name,
            "kind": kind,
            "title": card_of(base, id).title,
            "source": card_of(base, id).source,
            "file": file_of(base, id),
        }
        for name, kinds in _topics(base, topic).items()
        for kind, ids in kinds.items()
        for id in ids
    ]
    return {"version": 1, "rules": entries}


def _topics(base: RuleBase, topic: str) -> dict[str, dict[str, list[str]]]:
    """Ids by topic and kind, in the order of KINDS. UsageError for a topic there is not."""
    found: dict[str, dict[str, list[str]]] = {}
    for id in sorted(base.files):
        name, kind, _ = id.split(".")
        found.setdefault(name, {each: [] for each in KINDS})[kind].append(id)
    if topic and topic not in found:
        raise UsageError(f"no topic '{topic}'", hint=nearest(topic, found))
    return {
        name: {kind: ids for kind, ids in kinds.items() if ids} for name, kinds in found.items() if topic in ("", name)
    }
