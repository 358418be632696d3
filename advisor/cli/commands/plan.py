"""`advisor plan CASE`: the work in order, every number, what cannot be undone, what remains."""

from pathlib import Path
from typing import Any

import click

from advisor.cli.limits import limit_options, within
from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines
from advisor.errors import UsageError


@click.command()
@case_argument
@click.option(
    "--as", "called", metavar="PLAN", help="One of the plans that `advisor plans` compares, such as quickest."
)
@click.option("--keep", is_flag=True, help="With --as: keep all choices made so far, not only those with a reason.")
@limit_options
@click.option("--record", is_flag=True, help="Put the plan on record in CASE, for `advisor replay`.")
@click.option("--more", is_flag=True, help="Tell every caution, not only the first three.")
@as_json_option
def command(
    case: Path, called: str | None, keep: bool, record: bool, more: bool, as_json: bool, **given: Any
) -> None:
    """The plan of work for CASE; where nothing was chosen, the first option in rank stands in.

    With --as, one of the plans that `advisor plans` compares, within the same limits.
    """
    from advisor.advise.plan import make_plan
    from advisor.advise.world import world_of
    from advisor.report.data import plan_data
    from advisor.report.plan import plan_lines

    base, opened = open_case(case)
    limited = within(opened.case, given)
    if record and (called is not None or limited != opened.case):
        raise UsageError(
            "only the plan of the case as it stands goes on record",
            where="--record",
            hint="take the plan first with `advisor plans CASE --take`, or write the limits into the case",
        )
    world = world_of(limited, base.garment(limited.garment))
    if called is None:
        plan = make_plan(base, world, limited.choices, limited.limits)
    else:
        from advisor.advise.front.offers import compare
        from advisor.report.plans import plan_called

        plan = plan_called(compare(base, limited, keep=keep), called).plan
    if record:
        from advisor.interview.session import Session

        Session(base, case, opened.case, opened).keep(plan)
    if as_json:
        print_json(plan_data(base, limited, plan))
    else:
        print_lines(plan_lines(base, limited, plan, more))
