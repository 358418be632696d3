"""Fix cards: what a fix is, how it is graded, and what it comes to on this garment. Once per fix.

A fix does not know which problems it answers; Answer cards say that. Grades are those of
rules/grades.toml. Minutes and effects stand on the operations the fix is made of.
"""

from collections.abc import Callable
from dataclasses import dataclass

from advisor.core.work import Op, Work
from advisor.knowledge.view import Trouble, View


@dataclass(frozen=True, kw_only=True, eq=False)
class Fix:
    """One way to put something right.

    title: an order ("Raise the waist seam"). why: what it does to cloth and body. wrong_when: when it is the
    wrong thing. cautions: what to be told before choosing. `closes` is False for a fix that leaves the
    finding standing (leaving it as it is). `sews` is False where no needle touches the cloth (washing, asking,
    pulling at buttons): neither surface nor tired cloth makes that harder or shorter-lived. `work` sizes it:
    numbers and operations.
    """

    title: str
    why: str
    wrong_when: str
    source: str
    difficulty: int
    durability: int
    visibility: int
    work: Callable[[Trouble, View], Work]
    cautions: tuple[str, ...] = ()
    closes: bool = True
    sews: bool = True


def nothing_to_do(trouble: Trouble, view: View) -> Work:
    """The work of leaving something as it is."""
    return Work(figures={}, ops=(), leaves=trouble.mm)


def work_of(ops: tuple[Op, ...], **figures: object) -> Work:
    """Work with its figures by name; the figures of its operations are added."""
    named = dict(figures)
    for op in ops:
        named.update({name: value for name, value in op.figures.items() if name not in named})
    return Work(figures=named, ops=ops)  # type: ignore[arg-type]
