"""Every veto may apply: some answer offers its fix at a role, and on a garment, where it can hold."""

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.offered import answers_at, idle_vetoes, spots_of
from advisor.knowledge.cards import Veto


def check(material: Material, book: Book) -> None:
    """Each veto against each offer that each garment makes possible."""
    if {"answers", "findings"} & material.unread:
        return
    for id in sorted(idle_vetoes(material)):
        veto = material.rules[id]
        fixes = veto.fixes if isinstance(veto, Veto) else ()
        roles = sorted(
            {
                spot.role
                for spot in spots_of(material)
                for _, card in answers_at(material, spot)
                if not fixes or card.fix in fixes
            }
        )
        where = f"at a {' or '.join(roles)}" if roles else "anywhere"
        offered = " or ".join(fixes) or "any fix"
        what = f"never applies: no garment has what it asks for where {offered} is offered, {where}"
        hint = "mend its role, its problem or its fix, or take it out"
        book.error(material.where(id), what, hint, material.line(id, keyword="when"))
