"""No answer is ruled out by a veto in every case in which it is given: one of the two would say nothing.

Seen from the answer's own conditions; that its problem is never found without what the veto forbids is not seen.
"""

from advisor.check.comparing import Names, includes
from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.sampling import passes
from advisor.check.shape import asked
from advisor.knowledge.cards import Answer, Veto


def check(material: Material, book: Book) -> None:
    """Every answer against every veto of its fix."""
    vetoes = [(id, veto) for id, veto in material.of(Veto) if id in material.sound]
    for id, answer in material.of(Answer):
        for other, veto in vetoes if id in material.sound else ():
            if veto.names(answer.fix) and _speaks_of(veto, answer):
                _against(material, book, (id, answer), (other, veto))


def _against(material: Material, book: Book, answer: tuple[str, Answer], veto: tuple[str, Veto]) -> None:
    (id, given), (other, against) = answer, veto
    shown = includes(material, against.when, given.conditions(), _names(given))
    where, line = material.where(id), material.line(id, keyword="fix")
    hint = f"give the veto a condition that this leaves open, or take this out ({material.where(other)})"
    if shown == "written":
        book.error(where, f"offers {given.fix}, which {other} always rules out then", hint, line)
    elif shown == "tried":
        what = f"offers {given.fix}, which {other} always rules out then, as far as trying values shows"
        book.note(where, what, hint, line)


def _speaks_of(veto: Veto, answer: Answer) -> bool:
    """Whether the tests of a veto that ask for nothing but fix and problem let this answer through."""
    known = {"fix": answer.fix, "name": answer.problem}
    tests = [condition.test for condition in veto.when if condition.test is not None]
    return all(passes(test, known) for test in tests if known.keys() >= set(asked(test)))


def _names(answer: Answer) -> Names:
    """What the names of a veto mean where this answer is given."""
    role = frozenset({answer.role}) if answer.role else "role"
    fixed = {"name": frozenset({answer.problem}), "fix": frozenset({answer.fix}), "role": role}
    return {"problem": "problem", "place": "place", "amount": "amount", **fixed}
