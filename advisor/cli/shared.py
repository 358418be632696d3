"""What the commands share: opening a case, printing lines or JSON."""

import json
from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

if TYPE_CHECKING:
    from advisor.casefile import Opened
    from advisor.rulebase.base import RuleBase

as_json_option = click.option("--json", "as_json", is_flag=True, help="Print data for programs instead of text.")
case_argument = click.argument("case", type=click.Path(path_type=Path))


def open_case(path: Path) -> "tuple[RuleBase, Opened]":
    """The rule base and the case in `path`."""
    from advisor.casefile import read_case
    from advisor.rulebase.base import the_base

    base = the_base()
    return base, read_case(path, base.questions())


def print_lines(lines: Iterable[str]) -> None:
    """Lines that already went through the gate."""
    click.echo("\n".join(lines))


def print_json(data: Any) -> None:
    """Data, sorted by key, ASCII only."""
    click.echo(json.dumps(data, indent=2, sort_keys=True, ensure_ascii=True))
