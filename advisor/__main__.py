"""`python -m advisor`, and what the installed command runs."""

import os
import sys


def main() -> None:
    """Run the command line without the folder one stands in: a case folder may hold a file called pint.py."""
    here = os.path.realpath(os.getcwd())
    sys.path[:] = [entry for entry in sys.path if (entry and os.path.realpath(entry) != here) or _is_ours(entry)]
    from advisor.cli.app import main as run

    run()


def _is_ours(entry: str) -> bool:
    # `python -m advisor` in a checkout needs the checkout itself.
    return bool(entry) and os.path.realpath(entry) == os.path.dirname(os.path.dirname(os.path.realpath(__file__)))


if __name__ == "__main__":
    main()
