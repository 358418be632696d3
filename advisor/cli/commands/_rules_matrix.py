"""`advisor rules matrix`: which places and which kinds of trouble the rules know an answer to."""

import click

from advisor.cli.shared import as_json_option, print_json, print_lines


@click.command("matrix")
@click.option("--garment", default="", help="Only this garment, by the name of its file in rules/garments.")
@as_json_option
def matrix_command(garment: str, as_json: bool) -> None:
    """A table of each garment: place by kind of trouble, and how many ways there are to meet it."""
    from advisor.report.matrix import matrix_data, matrix_lines
    from advisor.rulebase.base import the_base

    base = the_base()
    garments = (base.garment(garment).id,) if garment else tuple(sorted(base.garments))
    if as_json:
        print_json(matrix_data(base, garments))
    else:
        print_lines(matrix_lines(base, garments))
