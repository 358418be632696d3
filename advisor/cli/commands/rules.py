"""`advisor rules`: the rule base as a person reads it, and as software that is checked."""

import click

from advisor.cli.shared import as_json_option, print_json, print_lines


@click.group()
def command() -> None:
    """The rules: list them, explain one, check them all."""


@command.command("check")
@as_json_option
@click.option("--times", is_flag=True, help="Print how long each check took.")
def check(as_json: bool, times: bool) -> None:
    """Check the whole rule base. Exit code 1 if anything must be mended."""
    from advisor.check.run import run_checks
    from advisor.report.rules import check_data, check_lines
    from advisor.rulebase.locate import rules_folder

    report = run_checks(rules_folder())
    if as_json:
        print_json(check_data(report))
    else:
        print_lines(check_lines(report, times))
    if report.errors:
        raise click.exceptions.Exit(1)
