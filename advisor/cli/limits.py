"""The limits a command may be given for one run, in place of those in the case."""

from collections.abc import Callable
from dataclasses import replace
from fractions import Fraction
from typing import Any, TypeVar

import click

from advisor.core.case import Case

Command = TypeVar("Command", bound=Callable[..., Any])

GRADE = click.IntRange(1, 5)


class MoneyType(click.ParamType):  # type: ignore[type-arg]  # generic only in newer versions
    """An amount of money in whole hundredths."""

    name = "amount"

    def convert(self, value: Any, param: click.Parameter | None, ctx: click.Context | None) -> Fraction:
        try:
            amount = Fraction(value)
        except (ValueError, ZeroDivisionError):
            amount = Fraction(-1)
        if not 0 <= amount <= 1_000_000 or (amount * 100).denominator != 1:
            self.fail(f"'{value}' is no amount of money; write it like 12 or 4.50", param, ctx)
        return amount


OPTIONS = (
    click.option("--minutes", type=click.IntRange(1, 100_000), help="At most so many (likely) minutes of work."),
    click.option("--no-cutting", is_flag=True, help="Nothing that cannot be undone."),
    click.option("--no-buttonholes", is_flag=True, help="The machine makes no buttonholes."),
    click.option("--hardest", type=GRADE, help="The most difficult work you take on, 1 to 5."),
    click.option("--weakest", type=GRADE, help="How long every fix must last, 1 to 5."),
    click.option("--visible", type=GRADE, help="The most that any fix may show, 1 to 5."),
    click.option("--money", type=MoneyType(), help="The most that may be spent, as far as prices are known."),
)


def limit_options(command: Command) -> Command:
    """The options, handed on together as `limits`: what was given, by name."""
    for option in reversed(OPTIONS):
        command = option(command)
    return command


def within(case: Case, given: dict[str, Any]) -> Case:
    """`case` with the limits that were given in place of its own."""
    names = ("minutes", "hardest", "weakest", "visible", "money")
    put: dict[str, Any] = {name: given[name] for name in names if given[name] is not None}
    put |= {name: False for name in ("cutting", "buttonholes") if given[f"no_{name}"]}
    return replace(case, limits=replace(case.limits, **put))
