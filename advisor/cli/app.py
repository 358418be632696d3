"""The command `advisor`: finds its commands by their files, and turns every refusal into a plain message.

Exit codes: 0 done; 1 a check found something wrong; 2 a refusal; 130 interrupted.
"""

import io
import os
import sys
from importlib import import_module
from pathlib import Path

import click

from advisor import __version__
from advisor.errors import AdvisorError

COMMANDS = Path(__file__).parent / "commands"


class ByFile(click.Group):
    """A group whose commands are the files of `commands/`, imported only when one is run."""

    def list_commands(self, ctx: click.Context) -> list[str]:
        return sorted(path.stem.replace("_", "-") for path in COMMANDS.glob("*.py") if not path.stem.startswith("_"))

    def get_command(self, ctx: click.Context, cmd_name: str) -> click.Command | None:
        if cmd_name not in self.list_commands(ctx):
            return None
        command: click.Command = import_module(f"advisor.cli.commands.{cmd_name.replace('-', '_')}").command
        return command

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        try:
            return super().resolve_command(ctx, args)
        except click.UsageError as fault:
            from advisor.errors import nearest

            raise click.UsageError(
                f"no command '{args[0]}'; {nearest(args[0], self.list_commands(ctx))}", ctx
            ) from fault


@click.group(cls=ByFile, invoke_without_command=True, context_settings={"help_option_names": ["-h", "--help"]})
@click.version_option(__version__, prog_name="advisor")
@click.pass_context
def advisor(ctx: click.Context) -> None:
    """Advice on altering a garment: what is wrong, which fixes there are, every number, the order of work.

    Without a command the full screen opens. `advisor interview --plain` asks line by line instead.
    """
    if ctx.invoked_subcommand is None:
        from advisor.tui.app import run_screens

        run_screens(None)


def main() -> None:
    """Run the command line; never returns."""
    try:
        advisor.main(prog_name="advisor", standalone_mode=False)
        code = 0
    except click.exceptions.Exit as done:
        code = done.exit_code
    except (click.Abort, KeyboardInterrupt):
        code = 130
    except click.ClickException as fault:
        shown = io.StringIO()
        fault.show(shown)
        click.echo(_gated(shown.getvalue()), err=True, nl=False)
        code = 2
    except AdvisorError as fault:
        click.echo(f"advisor: {_gated(str(fault))}", err=True)
        code = 2
    except BrokenPipeError:
        # The reader went away (a pager was closed): say nothing, and let nothing flush into the void.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        code = 0
    sys.exit(code)


def _gated(text: str) -> str:
    from advisor.ground import clean

    return clean(text, newlines=True)
