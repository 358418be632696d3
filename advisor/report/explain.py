"""One rule or fix told to somebody who does not program: what it is, why, when, what it leads to, on whose word."""

from collections.abc import Iterable
from typing import Any

from advisor.core.model import Place
from advisor.core.stages import STAGE_WORDS
from advisor.engine import Firing
from advisor.knowledge.cards import Answer, Card, Example, Find, Veto
from advisor.knowledge.fix import Fix
from advisor.lengths import INCH_TAPE
from advisor.report.lines import bullets, heading, para
from advisor.report.rules import card_of, file_of, problem_title
from advisor.report.speaks import speaks_of
from advisor.rulebase.base import RuleBase
from advisor.rulebase.grades import AXES
from advisor.rulebase.sources import source_line
from advisor.rulebase.specs import call
from advisor.words import Teller

WHAT = {
    Find: "Something that may be wrong",
    Answer: "What may be done about something wrong",
    Veto: "A reason against a fix",
    Fix: "A fix: something that may be done",
}
SPARED = 6
OPENS = {
    "when": "When it applies",
    "says": "What it says",
    "answers": "What it answers",
    "answered_by": "What answers it",
    "fix": "The fix it offers",
    "rules_out": "What it rules out",
    "ruled_out_by": "What rules it out",
    "wrong_when": "When it is the wrong thing",
    "cautions": "To know before choosing it",
    "grades": "How it is graded",
    "holds": "It counts, for instance",
    "does_not_hold": "It does not count, for instance",
}


def explain_lines(base: RuleBase, id: str) -> list[str]:
    """Title, reason, and each thing known of it under a heading of its own."""
    data = explain_data(base, id)
    lines = [data["title"], *para(f"{data['what']}."), "", *para(data["why"])]
    for name, title in OPENS.items():
        if data.get(name):
            lines += heading(title)
            lines += para(data[name], 2) if isinstance(data[name], str) else bullets(data[name])
    lines += heading("On whose word")
    lines += para(data["source"]["line"], 2)
    if data["source"]["address"]:
        lines += [f"  {data['source']['address']}"]
    return [*lines, "", *para(f"Written in {data['file']}, as {data['id']}.")]


def explain_data(base: RuleBase, id: str) -> dict[str, Any]:
    """The same for programs; whatever a kind of card does not have is left out."""
    card = card_of(base, id)
    source = base.sources.get(card.source)
    own = _fix(base, id, card) if isinstance(card, Fix) else _rule(base, id, card)
    return {
        "version": 1,
        "id": id,
        "file": file_of(base, id),
        "title": card.title,
        "what": _what(card),
        "why": card.why,
        "source": {
            "key": card.source,
            "line": source_line(card.source, base.sources),
            "address": source.address if source else "",
            "quality": source.quality if source else "",
        },
        **own,
    }


def _what(card: Card | Fix) -> str:
    if isinstance(card, Find):
        return f"{WHAT[Find]}, decided at: {STAGE_WORDS[card.stage]}"
    return WHAT[type(card)]


def _fix(base: RuleBase, id: str, fix: Fix) -> dict[str, Any]:
    answers = [(other, card) for other, card in _rules(base, Answer) if card.fix == id]
    vetoes = _vetoes(base, id, {card.problem for _, card in answers})
    grades = [f"{axis} {getattr(fix, axis)} of 5: {base.grades.meaning(axis, getattr(fix, axis))}" for axis in AXES]
    return {
        "answers": _unique(f"{problem_title(base, card.problem)}: {card.why}" for _, card in answers),
        "ruled_out_by": [f"{veto.title}: {_if(veto)}" for veto in vetoes],
        "wrong_when": fix.wrong_when,
        "cautions": list(fix.cautions),
        "grades": grades if fix.closes else [],
    }


def _rule(base: RuleBase, id: str, card: Card) -> dict[str, Any]:
    data: dict[str, Any] = {
        "when": [condition.words for condition in card.when],
        "holds": [_holds(base, id, card, example) for example in card.fires],
        "does_not_hold": [near.words for near in card.near],
    }
    if isinstance(card, Find):
        answers = [answer for _, answer in _rules(base, Answer) if answer.problem == card.problem]
        # From the easiest to the hardest, then what leaves it as it is.
        answers.sort(key=lambda answer: _rung(base.fixes[answer.fix]))
        data["answered_by"] = _unique(offer_of(base, answer) for answer in answers)
        data["says"] = _said(base, id, card, card.fires[0])
    elif isinstance(card, Answer):
        vetoes = _vetoes(base, card.fix, {card.problem})
        data["answers"] = problem_title(base, card.problem)
        data["fix"] = [f"{base.fixes[card.fix].title} ({card.fix})"]
        data["ruled_out_by"] = [f"{veto.title}: {_if(veto)}" for veto in vetoes]
    elif isinstance(card, Veto):
        data["rules_out"] = _ruled_out(base, card)
        data["says"] = _said(base, id, card, card.fires[0])
    return data


def _rules(base: RuleBase, kind: type[Any]) -> list[tuple[str, Any]]:
    return [(id, card) for id, card in sorted(base.rules.items()) if isinstance(card, kind)]


def _vetoes(base: RuleBase, fix: str, problems: Iterable[str]) -> list[Veto]:
    """The vetoes that may rule out this fix for one of these problems."""
    names = sorted(problems)
    return [veto for _, veto in _rules(base, Veto) if any(speaks_of(base, veto, fix, name) for name in names or [""])]


def _ruled_out(base: RuleBase, veto: Veto) -> list[str]:
    """The fixes a veto speaks of; where it spares only a few, those it spares."""
    titles = {id: f"{fix.title} ({id})" for id, fix in sorted(base.fixes.items())}
    spared = [title for id, title in titles.items() if not speaks_of(base, veto, id)]
    if len(spared) <= min(SPARED, len(titles) // 2):
        return ["Every fix there is" + (f", but for: {'; '.join(spared)}" if spared else "")]
    return [title for id, title in titles.items() if speaks_of(base, veto, id)]


def _rung(fix: Fix) -> tuple[bool, int, int]:
    return not fix.closes, fix.difficulty, -fix.durability


def offer_of(base: RuleBase, answer: Answer) -> str:
    """The fix an answer offers, and when."""
    condition = f", if {_if(answer)}" if answer.when else ""
    return f"{base.fixes[answer.fix].title}{condition}"


def _if(card: Card) -> str:
    told = ""
    for condition in card.when:
        words = condition.words
        told += words if not told else f", {words}" if words.startswith(("and ", "but ")) else f", and {words}"
    return told or "always"


def _unique(texts: Iterable[str]) -> list[str]:
    return list(dict.fromkeys(texts))


def _holds(base: RuleBase, id: str, card: Card, example: Example) -> str:
    said = _said(base, id, card, example)
    return f"{example.words}: {said}" if said and example is not card.fires[0] else example.words


def _said(base: RuleBase, id: str, card: Card, example: Example) -> str:
    """The sentence of a card with the values of an example."""
    firing = next((firing for firing in base.engine.run(example.facts).firings if firing.rule == id), None)
    return _sentence(base, card, firing) if card.says and firing else ""


def _sentence(base: RuleBase, card: Card, firing: Firing) -> str:
    places: dict[str, Place] = {}
    for garment in base.garments.values():
        places |= garment.places
    values = {**firing.bindings, **{name: call(reckon, firing.bindings) for name, reckon in card.reckons.items()}}
    return Teller(INCH_TAPE, places).say(card.says, values)
