"""`advisor what-if CASE KEY=VALUE ...`: what another answer would change, and nothing else. Nothing is saved."""

from pathlib import Path

import click

from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines


@click.command()
@case_argument
@click.argument("changes", metavar="KEY=VALUE...", nargs=-1, required=True)
@as_json_option
def command(case: Path, changes: tuple[str, ...], as_json: bool) -> None:
    """What the plan for CASE would be otherwise if these were the answers. Nothing is saved.

    KEY is what a question is about ("cloth pinned out at the waist") or its key in the file (waist.pinned);
    VALUE a length, one of the answers, or ? for what cannot be said.
    """
    from advisor.advise.plan import make_plan
    from advisor.advise.world import world_of
    from advisor.cli.supposing import read_supposed, supposing
    from advisor.report.advice import teller_of
    from advisor.report.whatif import Change, whatif_data, whatif_lines

    base, opened = open_case(case)
    held = opened.case
    supposed = read_supposed(base, held, teller_of(base, held), changes)
    other, garment = supposing(held, supposed), base.garment(held.garment)
    then, now = (make_plan(base, world_of(c, garment), c.choices, c.limits) for c in (held, other))
    change = Change(base, held, then, now)
    if as_json:
        print_json(whatif_data(change, supposed))
    else:
        print_lines(whatif_lines(change, supposed))
