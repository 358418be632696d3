"""Ranking: difficulty against durability, visibility weighed in; every term can be shown, and the order is total."""

from collections.abc import Iterable
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache

from advisor.core.case import Limits
from advisor.core.work import Option


def score(option: Option, limits: Limits) -> Fraction:
    """The weighed sum: ease (6 - difficulty), durability, and discretion (6 - visibility). Higher is better."""
    grades = option.grades
    return _score(grades.difficulty, grades.durability, grades.visibility, limits)


@lru_cache(maxsize=1024)
def _score(difficulty: int, durability: int, visibility: int, limits: Limits) -> Fraction:
    return (
        limits.weigh_difficulty * (6 - difficulty)
        + limits.weigh_durability * durability
        + limits.weigh_visibility * (6 - visibility)
    )


def dominates(a: Option, b: Option) -> bool:
    """Whether `a` is at least as good as `b` on every axis, minutes too, and better on one."""
    ours, theirs = _axes(a), _axes(b)
    return all(x >= y for x, y in zip(ours, theirs, strict=True)) and ours != theirs


def _axes(option: Option) -> tuple[int, int, int, int]:
    """What may be traded against each other; higher is better."""
    grades = option.grades
    return -grades.difficulty, grades.durability, -grades.visibility, -option.minutes.likely


def within(option: Option, limits: Limits) -> bool:
    """Whether nothing about the option goes past what the person set; leaving as it is never does."""
    if not option.closes:
        return True
    grades = option.grades
    graded = (
        grades.difficulty <= limits.hardest
        and grades.durability >= limits.weakest
        and grades.visibility <= limits.visible
    )
    return graded and (limits.cutting or not cuts(option)) and (limits.buttonholes or not machine_holes(option))


def cuts(option: Option) -> bool:
    """Whether some of its work cannot be undone."""
    return not all(op.reversible for op in option.work.ops)


def machine_holes(option: Option) -> bool:
    """Whether it takes a machine that makes buttonholes."""
    return any(op.setup == "buttonhole" for op in option.work.ops)


def _full(option: Option) -> bool:
    """Whether it may be chosen and closes the finding whole: only such options are weighed against each other."""
    return option.open and option.closes and not option.work.leaves


def _marked(option: Option, rivals: Iterable[Option]) -> Option:
    better = min((rival.id for rival in rivals if dominates(rival, option)), default="") if _full(option) else ""
    return replace(option, dominated_by=better) if better else option


def rank(options: Iterable[Option], limits: Limits) -> list[Option]:
    """Best first: allowed before ruled out, within limits before past them, closing before leaving.

    Then undominated before dominated, then by score; ties by easier, longer lasting, less seen, quicker, name.
    """
    options = list(options)
    rivals = [option for option in options if _full(option)]
    return sorted(
        (_marked(option, rivals) for option in options),
        key=lambda o: (
            not o.open,
            not within(o, limits),
            not o.closes,
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
