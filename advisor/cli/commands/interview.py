"""`advisor interview [CASE]`: the interview, in the full screen or (`--plain`) line by line."""

from pathlib import Path

import click


@click.command()
@click.argument("case", required=False, type=click.Path(path_type=Path))
@click.option("--plain", is_flag=True, help="Ordinary lines, numbered answers, no screen. ACCESSIBLE=1 does the same.")
def command(case: Path | None, plain: bool) -> None:
    """Ask about the garment of CASE and advise. A CASE that does not exist yet is begun."""
    import os

    if not plain and not os.environ.get("ACCESSIBLE"):
        from advisor.tui.app import run_screens

        run_screens(case)
        return
    from advisor.interview.begin import begin
    from advisor.interview.plain import start
    from advisor.rulebase.base import the_base

    start(begin(the_base(), case, input, click.echo))
