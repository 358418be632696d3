"""`advisor reckon TOPIC name=value ...`: one calculation alone, with its formula and source."""

import click

from advisor.cli.shared import as_json_option, print_json, print_lines


@click.command()
@click.argument("topic", required=False)
@click.argument("inputs", nargs=-1)
@click.option("--list", "listing", is_flag=True, help="List all calculations with their inputs.")
@click.option("--tape", type=click.Choice(["in", "cm"]), default="in", show_default=True, help="The tape to read on.")
@as_json_option
def command(topic: str | None, inputs: tuple[str, ...], listing: bool, tape: str, as_json: bool) -> None:
    """One calculation alone: TOPIC, and its inputs as name=value (several values with commas)."""
    from advisor.errors import UsageError
    from advisor.lengths import TAPES
    from advisor.report.reckoning import (
        formula_named,
        read_inputs,
        reckoning_data,
        reckoning_lines,
        topic_data,
        topic_lines,
    )
    from advisor.rulebase.locate import rules_folder
    from advisor.rulebase.sources import read_sources
    from advisor.words import Teller

    if listing:
        print_json({"version": 1, "topics": topic_data()}) if as_json else print_lines(topic_lines())
        return
    if topic is None:
        raise UsageError("which calculation?", hint="advisor reckon --list shows them all")
    formula = formula_named(topic)
    teller = Teller(TAPES[tape], {})
    record = formula.record(**read_inputs(formula, inputs, TAPES[tape]))
    if as_json:
        print_json(reckoning_data(record, teller))
    else:
        print_lines(reckoning_lines(record, teller, read_sources(rules_folder() / "sources.toml")))
