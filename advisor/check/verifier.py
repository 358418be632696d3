"""A spoiled plan is noticed. An operation left out, or a number off by one mark, must show as a finding."""

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.trials import trials_of

HINT = "let a state it puts or a measure it changes be looked at by a finding or a join, in both directions"


def check(material: Material, book: Book) -> None:
    """Every operation of every fix that some probe chose."""
    ways: dict[tuple[str, str], list[str]] = {}
    worlds: dict[tuple[str, str], str] = {}
    for (fix, op, way), told in trials_of(material).spoiling.missed.items():
        ways.setdefault((fix, op), []).append(way)
        worlds.setdefault((fix, op), told)
    for (fix, op), missed in sorted(ways.items()):
        where = material.where(fix) if fix in material.files else fix
        book.error(where, f"nobody would notice '{op}' done wrong: {', '.join(missed)}", f"{HINT} ({worlds[fix, op]})")
