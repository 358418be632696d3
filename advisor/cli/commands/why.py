"""`advisor why CASE WHAT`: why something was found, offered or ruled out, and what would change that."""

from pathlib import Path

import click

from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines


@click.command()
@case_argument
@click.argument("what")
@click.option("--all", "deep", is_flag=True, help="Show everything behind it, down to the answers.")
@as_json_option
def command(case: Path, what: str, deep: bool, as_json: bool) -> None:
    """Why WHAT stands in the advice for CASE.

    WHAT is a label (1 for the first finding, 1b for its second option) or a title.
    """
    from advisor.advise.flips import flips
    from advisor.advise.follow import follow
    from advisor.advise.world import world_of
    from advisor.core.work import Option
    from advisor.report.data import why_data
    from advisor.report.labels import pointed_at
    from advisor.report.why import why_lines

    base, opened = open_case(case)
    world = world_of(opened.case, base.garment(opened.case.garment))
    advice = follow(base, world, opened.case.choices, opened.case.limits).advice
    item = pointed_at(advice, what)
    turning = flips(base, opened.case, advice, item) if isinstance(item, Option) and item.rulings else ()
    if as_json:
        print_json(why_data(base, opened.case, advice, item, turning))
    else:
        print_lines(why_lines(base, opened.case, advice, item, turning, deep))
