"""`advisor plans CASE`: the plans worth offering, compared; `--take` keeps one in the case."""

from pathlib import Path
from typing import Any

import click

from advisor.cli.limits import limit_options, within
from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines, wrapped_to_terminal


@click.command()
@case_argument
@click.option("--keep", is_flag=True, help="Keep all choices made so far; without it, only those with a reason.")
@click.option("--take", metavar="PLAN", help="Put the choices of one plan into the case: its number or its name.")
@limit_options
@as_json_option
def command(case: Path, keep: bool, take: str | None, as_json: bool, **given: Any) -> None:
    """At most four plans for CASE, each named by what it is for, with what changes between them.

    A plan is quickest, easiest or longest lasting, can be undone, or shows least. Limits given here stand in for those
    in the case; if no plan keeps them, it says which one bites and by how little.
    """
    from advisor.advise.front.offers import compare
    from advisor.report.plans import plan_called, plans_data, plans_lines

    base, opened = open_case(case)
    limited = within(opened.case, given)
    found = compare(base, limited, keep=keep)
    if take is not None:
        from advisor.casefile import chosen_all, write_case
        from advisor.interview.session import now

        offer = plan_called(found, take)
        taken = chosen_all(limited, offer.choices, now(), f"plan taken: {', '.join(offer.names)}")
        write_case(opened, taken, case, base.questions())
        print_lines([f"The plan is in the case: {', '.join(offer.names)}. `advisor plan` prints it."])
    elif as_json:
        print_json(plans_data(base, limited, found))
    else:
        with wrapped_to_terminal():
            print_lines(plans_lines(base, limited, found))
