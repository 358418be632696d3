"""`advisor choose CASE FINDING FIX`: take a fix for a finding, against the advice too, with the reason for it."""

from pathlib import Path

import click

from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines


@click.command()
@case_argument
@click.argument("finding")
@click.argument("fix", required=False, default="")
@click.option("--because", default="", metavar="TEXT", help="Why this one: kept in the case, and told in the plan.")
@click.option("--back", is_flag=True, help="Take the choice for FINDING back.")
@as_json_option
def command(case: Path, finding: str, fix: str, because: str, back: bool, as_json: bool) -> None:
    """Take FIX for FINDING in CASE, save it, and tell what that changes.

    `advisor advise` shows the labels: `4 e`, or `4e` alone, is the fifth option of the fourth finding. Titles will
    do, too. What is ruled out, or not the first in rank, can be chosen with a reason.
    """
    from advisor.core.case import Choice
    from advisor.errors import UsageError
    from advisor.interview.session import Session
    from advisor.report.choose import choice_data, choice_lines, meant
    from advisor.report.overrule import refused_words
    from advisor.report.whatif import Change

    base, opened = open_case(case)
    session = Session(base, case, opened.case, opened)
    then, held = session.plan(), opened.case
    about, option = meant(then.advice, held, finding, fix, back)
    if option is not None and (refusal := refused_words(then.advice, option, because)):
        raise UsageError(refusal, hint='add --because "..."' if not because.strip() else "choose another")
    session.choose(about, Choice(option.fix, because.strip()) if option else None)
    now = session.plan()
    session.keep(now)
    change = Change(base, held, then, now)
    if as_json:
        print_json(choice_data(change, about, option, because.strip()))
    else:
        print_lines(choice_lines(change, about, option, because.strip()))
