"""`advisor sheet CASE`: the plan on paper, with boxes to tick and templates at their true size."""

from pathlib import Path

import click

from advisor.cli.shared import case_argument, open_case, print_lines


def counted(number: int, what: str) -> str:
    """A number of things."""
    return f"{number} {what}" + ("" if number == 1 else "s")


@click.command()
@case_argument
@click.argument("to", required=False, type=click.Path(path_type=Path))
@click.option("--paper", type=click.Choice(["a4", "letter"]), default="a4", help="The paper in the printer.")
@click.option("--replace", is_flag=True, help="Write over a file that is there.")
def command(case: Path, to: Path | None, paper: str, replace: bool) -> None:
    """A work sheet for CASE as a PDF: the plan, and its templates at their true size.

    It is saved as TO, or beside you under the name of CASE.
    """
    from advisor.advise.plan import make_plan
    from advisor.advise.world import world_of
    from advisor.ground import export_bytes
    from advisor.report.advice import teller_of
    from advisor.sheet.content import blocks
    from advisor.sheet.pdf import print_sheet
    from advisor.sheet.templates import templates

    base, opened = open_case(case)
    told = opened.case
    plan = make_plan(base, world_of(told, base.garment(told.garment)), told.choices, told.limits)
    drawings = templates(plan, teller_of(base, told))
    printed = print_sheet(told.title, blocks(base, told, plan), drawings, paper)
    path = to if to is not None else Path(f"{case.stem}.pdf")
    export_bytes(path, printed.data, replace=replace)
    print_lines(
        [
            f"Saved as {path}: {counted(printed.pages, 'page')}, {counted(len(drawings), 'template')}.",
            "Print it at actual size (100 %), and measure the two lines at the foot before you use a template.",
        ]
    )
