"""`advisor plan CASE`: the work in order, every number, what cannot be undone, what remains."""

from pathlib import Path

import click

from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines


@click.command()
@case_argument
@click.option("--record", is_flag=True, help="Put the plan on record in CASE, for `advisor replay`.")
@as_json_option
def command(case: Path, record: bool, as_json: bool) -> None:
    """The plan of work for CASE; where nothing was chosen, the first option in rank stands in."""
    from advisor.advise.plan import make_plan
    from advisor.advise.world import world_of
    from advisor.report.data import plan_data
    from advisor.report.plan import plan_lines

    base, opened = open_case(case)
    world = world_of(opened.case, base.garment(opened.case.garment))
    plan = make_plan(base, world, opened.case.choices, opened.case.limits)
    if record:
        from advisor.interview.session import Session

        Session(base, case, opened.case, opened).keep(plan)
    if as_json:
        print_json(plan_data(base, opened.case, plan))
    else:
        print_lines(plan_lines(base, opened.case, plan))
