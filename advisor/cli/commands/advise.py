"""`advisor advise CASE`: what is wrong, and the options for it in order of rank."""

from pathlib import Path

import click

from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines


@click.command()
@case_argument
@as_json_option
def command(case: Path, as_json: bool) -> None:
    """What is wrong with the garment of CASE, and the options for it in order of rank."""
    from advisor.advise.flips import only_ifs
    from advisor.advise.follow import follow
    from advisor.advise.world import world_of
    from advisor.report.advice import advice_lines
    from advisor.report.data import advice_data

    base, opened = open_case(case)
    world = world_of(opened.case, base.garment(opened.case.garment))
    followed = follow(base, world, opened.case.choices, opened.case.limits)
    hanging = only_ifs(base, opened.case)
    if as_json:
        print_json(advice_data(base, opened.case, followed.advice, followed.suggested, hanging))
    else:
        print_lines(advice_lines(base, opened.case, followed.advice, followed.suggested, hanging))
