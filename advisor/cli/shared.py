"""What the commands share: opening a case, printing lines or JSON."""

import json
import os
import shutil
import sys
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from advisor.errors import SaveError

if TYPE_CHECKING:
    from advisor.casefile import Opened
    from advisor.rulebase.base import RuleBase

as_json_option = click.option("--json", "as_json", is_flag=True, help="Print data for programs instead of text.")
LEAST_WIDTH = 30
case_argument = click.argument("case", type=click.Path(path_type=Path))


def open_case(path: Path) -> "tuple[RuleBase, Opened]":
    """The rule base and the case in `path`."""
    from advisor.casefile import read_case
    from advisor.rulebase.base import the_base

    base = the_base()
    return base, read_case(path, base.questions())


def print_lines(lines: Iterable[str]) -> None:
    """Lines that already went through the gate. SaveError if what they are written to is full."""
    _print("\n".join(lines))


def print_json(data: Any) -> None:
    """Data, sorted by key, ASCII only. SaveError if what it is written to is full."""
    _print(json.dumps(data, indent=2, sort_keys=True, ensure_ascii=True))


@contextmanager
def wrapped_to_terminal() -> Iterator[None]:
    """Lines as wide as the terminal, but no wider than they are made elsewhere."""
    from advisor.report.lines import WIDTH, wrapped_at

    with wrapped_at(max(LEAST_WIDTH, min(WIDTH, shutil.get_terminal_size((WIDTH, 24)).columns))):
        yield


def _print(text: str) -> None:
    try:
        click.echo(text)
    except BrokenPipeError:
        raise
    except OSError as fault:
        # What is left in the buffer would fail again at exit, with a traceback.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        raise SaveError(f"cannot be written: {fault.strerror}", where="the output", hint="make room first") from fault
