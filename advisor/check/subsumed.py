"""No rule says only what another says already, and no two answers offer one fix at one time."""

from itertools import combinations, permutations

from advisor.check.comparing import exclude, includes
from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.offered import answers_at, spots_of
from advisor.knowledge.cards import Answer

TRIED = "as far as trying values shows"


def check(material: Material, book: Book) -> None:
    """Findings of one problem, and answers that offer one fix for one problem."""
    for ids in material.problems.values():
        for narrow, wide in permutations(sorted(ids), 2):
            if {narrow, wide} <= material.sound:
                _within(material, book, narrow, wide, "finds", {"place": "place"})
    pairs = {pair for group in _groups(material) for pair in combinations(sorted(group), 2)}
    for one, other in sorted(pairs):
        first, second = material.rules[one], material.rules[other]
        # An answer without conditions beside another is told of by the check of rivals.
        if first.when and second.when:
            told = [
                _within(material, book, narrow, wide, "offers", {"problem": "problem", "place": "place"})
                for narrow, wide in ((one, other), (other, one))
            ]
            if not any(told) and not exclude(material, first, second):
                _together(material, book, one, other)


def _groups(material: Material) -> set[frozenset[str]]:
    """Answers that offer the same fix for the same problem at a role where both may be given."""
    groups: set[frozenset[str]] = set()
    for spot in spots_of(material):
        by_fix: dict[str, set[str]] = {}
        for id, card in answers_at(material, spot):
            by_fix.setdefault(card.fix, set()).add(id)
        groups |= {frozenset(ids) for ids in by_fix.values() if len(ids) > 1}
    return groups


def _within(material: Material, book: Book, narrow: str, wide: str, verb: str, same: dict[str, str]) -> bool:
    """Tell of a card that says nothing another does not. Of two that say the same, the later by id is told of."""
    little, much = material.rules[narrow].conditions(), material.rules[wide].conditions()
    shown = includes(material, much, little, same)
    if not shown or (narrow < wide and includes(material, little, much, same)):
        return bool(shown)
    where, line = material.where(narrow), material.line(narrow, keyword="when")
    if shown == "written":
        what = f"{verb} nothing that {wide} does not: all its conditions are there, as they are or stricter"
        book.error(where, what, f"take it out, or let the other leave its cases alone ({material.where(wide)})", line)
    else:
        hint = f"look at both; if so, take it out ({material.where(wide)})"
        book.note(where, f"{verb} nothing that {wide} does not, {TRIED}", hint, line)
    return True


def _together(material: Material, book: Book, one: str, other: str) -> None:
    card = material.rules[one]
    assert isinstance(card, Answer)
    what = f"offers {card.fix} for '{card.problem}', and so may {other} at the same time"
    hint = f"let their conditions exclude each other by a word or a number ({material.where(other)})"
    book.note(material.where(one), what, hint, material.line(one, keyword="when"))
