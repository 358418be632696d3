"""Whatever is found on a garment has a ladder of options there, down to leaving it, or its card says why not.

Only what was found in some world counts. A finding that shows nothing but work done wrong or left undone is not found
before the work, and has one answer: do it over.
"""

import re

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.offered import Spot, answers_at, spots_of
from advisor.check.trials import trials_of
from advisor.knowledge.cards import Answer

ENOUGH = 2
CANNOT = re.compile(r"\bcannot\b")
HINT = "offer something else there, or let its why say what cannot be done about it and why (with the word 'cannot')"
STAY = "offer to leave it, or let its why say why it cannot stay (with the word 'cannot')"


def check(material: Material, book: Book) -> None:
    """Each problem of each garment, at each of its roles."""
    if {"answers", "fixes"} & material.unread:
        return
    short: dict[tuple[str, tuple[str, ...]], dict[str, list[str]]] = {}
    found = {problem for _, problem in trials_of(material).most}
    for spot in spots_of(material):
        fixes = tuple(sorted({card.fix for _, card in answers_at(material, spot)}))
        if spot.problem in found or not fixes:
            for id in _unexplained(material, spot, fixes):
                short.setdefault((id, fixes), {}).setdefault(spot.role, []).append(spot.garment)
    for (id, fixes), roles in sorted(short.items()):
        where, line = material.where(id), material.line(id, keyword="why")
        if len(fixes) >= ENOUGH:
            book.note(where, f"nobody is offered to leave it as it is, {_at(roles)}", STAY, line)
        elif fixes:
            book.note(where, f"has a single option, {fixes[0]}, {_at(roles)}", HINT, line)
        else:
            # If no card answers it at this role at all, the check of the vocabulary tells.
            answered = {role: garments for role, garments in roles.items() if _answered(material, id, role)}
            if answered:
                book.error(where, f"has no option {_at(answered)}", HINT, line)


def _at(roles: dict[str, list[str]]) -> str:
    return "at " + "; ".join(f"a '{role}' of {', '.join(sorted(garments))}" for role, garments in sorted(roles.items()))


def _unexplained(material: Material, spot: Spot, fixes: tuple[str, ...]) -> list[str]:
    """The findings of a spot whose ladder is short, unless one says what cannot be done."""
    whole = len(fixes) >= ENOUGH and not all(material.fixes[fix].closes for fix in fixes)
    said = any(CANNOT.search(material.rules[id].why) for id in spot.findings)
    return [] if whole or said else list(spot.findings)


def _answered(material: Material, id: str, role: str) -> bool:
    problem = next(name for name, ids in material.problems.items() if id in ids)
    return any(card.problem == problem and card.role in ("", role) for _, card in material.of(Answer))
