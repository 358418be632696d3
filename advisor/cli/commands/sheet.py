"""`advisor sheet CASE`: the plan on paper, with boxes to tick and templates at their true size."""

from pathlib import Path

import click

from advisor.cli.shared import case_argument, open_case, print_lines


@click.command()
@case_argument
@click.argument("to", required=False, type=click.Path(path_type=Path))
@click.option(
    "--paper", type=click.Choice(["a4", "letter"]), help="The paper in the printer; else what goes with the tape."
)
@click.option("--replace", is_flag=True, help="Write over a file that is there.")
def command(case: Path, to: Path | None, paper: str | None, replace: bool) -> None:
    """A work sheet for CASE as a PDF: the plan, and its templates at their true size.

    It is saved as TO, or beside you under the name of CASE.
    """
    from advisor.advise.plan import make_plan
    from advisor.advise.world import world_of
    from advisor.ground import export_bytes
    from advisor.report.lines import para
    from advisor.sheet.make import make_sheet

    base, opened = open_case(case)
    told = opened.case
    plan = make_plan(base, world_of(told, base.garment(told.garment)), told.choices, told.limits)
    sheet = make_sheet(base, told, plan, paper)
    path = to if to is not None else Path(f"{case.stem}.pdf")
    export_bytes(path, sheet.data, replace=replace)
    print_lines([*para(f"Saved as {path}."), *para(sheet.told)])
