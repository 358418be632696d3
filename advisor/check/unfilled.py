"""A frame of `advisor rules new` is no card before everything in it was filled in.

Until then it is neither loaded nor run, and nothing else is said of it.
"""

from advisor.check.fault import Book
from advisor.check.marks import FILL, marked
from advisor.check.material import Material

HINT = f"write it in place of {FILL}, or take it out"


def check(material: Material, book: Book) -> None:
    """Every line of a rule, role, garment or case that holds the mark."""
    for path in material.all_files():
        for number, what in marked(material.text(path)):
            book.error(material.where(path), f"'{what}' is still to be filled in", HINT, number)
