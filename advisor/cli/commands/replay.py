"""`advisor replay CASE`: whether the plan on record comes out the same today, and what changed if it does not."""

from pathlib import Path

import click

from advisor.cli.shared import as_json_option, case_argument, open_case, print_json, print_lines


@click.command()
@case_argument
@as_json_option
def command(case: Path, as_json: bool) -> None:
    """Hold the plan on record in CASE against the plan it gives today.

    The record is made when the interview ends with a plan, by `advisor choose`, and by `advisor plan --record`.
    Nothing is saved. Exit code 1 if the advice is not the same.
    """
    from advisor.advise.plan import make_plan
    from advisor.advise.replay import replayed
    from advisor.advise.world import world_of
    from advisor.errors import CaseError
    from advisor.report.replay import replay_data, replay_lines

    base, opened = open_case(case)
    held = opened.case
    if held.record is None:
        raise CaseError(
            "no plan is on record in this case", where=str(case), hint="`advisor plan CASE --record` puts one there"
        )
    plan = make_plan(base, world_of(held, base.garment(held.garment)), held.choices, held.limits)
    result = replayed(base, held, held.record, plan)
    if as_json:
        print_json(replay_data(base, held, result))
    else:
        print_lines(replay_lines(base, held, plan, result))
    if not result.same:
        raise click.exceptions.Exit(1)
