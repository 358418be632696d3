"""`advisor stable CASE`: how firmly the plan stands; which amounts and answers it hangs on."""

from pathlib import Path

import click

from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines


@click.command()
@case_argument
@click.option("--all", "everything", is_flag=True, help="Tell all of them, not only the most fragile.")
@as_json_option
def command(case: Path, everything: bool, as_json: bool) -> None:
    """Which answers, were they otherwise, would make another plan for CASE, and how far off each amount may be."""
    from advisor.advise.follow import follow
    from advisor.advise.stable import stability
    from advisor.advise.world import world_of
    from advisor.report.stable import stable_data, stable_lines

    base, opened = open_case(case)
    held = opened.case
    found = stability(base, held)
    if as_json:
        print_json(stable_data(base, held, found))
    else:
        advice = follow(base, world_of(held, base.garment(held.garment)), held.choices, held.limits).advice
        print_lines(stable_lines(base, held, advice, found, everything))
