"""`advisor rules`: the rule base as a person reads it, and as software that is checked."""

import click

from advisor.cli.commands._rules_matrix import matrix_command
from advisor.cli.shared import as_json_option, print_json, print_lines


@click.group()
def command() -> None:
    """The rules behind the advice: list them, explain one, check them all."""


command.add_command(matrix_command)


@command.command("list")
@click.option("--topic", default="", help="Only this topic: a folder of rules/, such as waist.")
@as_json_option
def list_command(topic: str, as_json: bool) -> None:
    """Every rule and fix with its title, by topic."""
    from advisor.report.rules import list_data, list_lines
    from advisor.rulebase.base import the_base

    base = the_base()
    if as_json:
        print_json(list_data(base, topic))
    else:
        print_lines(list_lines(base, topic))


@command.command("explain")
@click.argument("rule", metavar="ID")
@as_json_option
def explain_command(rule: str, as_json: bool) -> None:
    """What the rule or fix ID says, why, when, and on whose word. Its last part alone will do."""
    from advisor.report.explain import explain_data, explain_lines
    from advisor.report.rules import card_meant
    from advisor.rulebase.base import the_base

    base = the_base()
    id = card_meant(base, rule)
    if as_json:
        print_json(explain_data(base, id))
    else:
        print_lines(explain_lines(base, id))


@command.command("check")
@click.option("--times", is_flag=True, help="Print how long each check took.")
@click.option("--notes", is_flag=True, help="Print every note, not only the first.")
@as_json_option
def check_command(times: bool, notes: bool, as_json: bool) -> None:
    """Check the whole rule base. Exit code 1 if anything must be mended, 0 if there are only notes."""
    from advisor.check.run import run_checks
    from advisor.check.told import report_data, report_lines
    from advisor.rulebase.locate import rules_folder

    report = run_checks(rules_folder())
    if as_json:
        print_json(report_data(report))
    else:
        print_lines(report_lines(report, times, notes))
    if report.errors:
        raise click.exceptions.Exit(1)
