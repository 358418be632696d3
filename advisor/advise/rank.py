"""Ranking: difficulty against durability, visibility weighed in; every term can be shown, and the order is total."""

from dataclasses import replace
from fractions import Fraction

from advisor.core.case import Limits
from advisor.core.work import Option


def score(option: Option, limits: Limits) -> Fraction:
    """The weighed sum: ease (6 - difficulty), durability, and discretion (6 - visibility). Higher is better."""
    grades = option.grades
    return (
        limits.weigh_difficulty * (6 - grades.difficulty)
        + limits.weigh_durability * grades.durability
        + limits.weigh_visibility * (6 - grades.visibility)
    )


def dominates(a: Option, b: Option) -> bool:
    """Whether `a` is at least as good as `b` on every axis, minutes too, and better on one."""
    ours = (-a.grades.difficulty, a.grades.durability, -a.grades.visibility, -a.minutes.likely)
    theirs = (-b.grades.difficulty, b.grades.durability, -b.grades.visibility, -b.minutes.likely)
    return all(x >= y for x, y in zip(ours, theirs, strict=True)) and ours != theirs


def within(option: Option, limits: Limits) -> bool:
    """Whether the person takes on something this hard, and something that lasts no longer."""
    if not option.closes:
        return True
    return option.grades.difficulty <= limits.hardest and option.grades.durability >= limits.weakest


def rank(options: list[Option], limits: Limits) -> list[Option]:
    """Best first: allowed before ruled out, within limits before past them, closing before leaving.

    Then undominated before dominated, then by score; ties by easier, longer lasting, less seen, quicker, name.
    """
    rivals = [o for o in options if o.open and o.closes and not o.work.leaves]
    marked = [
        replace(o, dominated_by=min((r.id for r in rivals if dominates(r, o)), default="")) if o in rivals else o
        for o in options
    ]
    return sorted(
        marked,
        key=lambda o: (
            not o.open,
            not o.closes,
            not within(o, limits),
            o.work.leaves > 0,
            o.dominated_by != "",
            -score(o, limits),
            o.grades.difficulty,
            -o.grades.durability,
            o.grades.visibility,
            o.minutes.likely,
            o.id,
        ),
    )
