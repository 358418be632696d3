"""Where the rule base lies: inside the installed package, or beside it in a checkout."""

from functools import lru_cache
from importlib.util import find_spec
from pathlib import Path

from advisor.errors import KnowledgeError

CHECKOUT = Path(__file__).resolve().parents[2] / "rules"


@lru_cache(maxsize=1)
def rules_folder() -> Path:
    """The folder of the rule base. KnowledgeError if there is none."""
    # A checkout's own rules come first, so that an edited rule is the rule that runs.
    if (CHECKOUT / "roles").is_dir() and (CHECKOUT.parent / "pyproject.toml").is_file():
        return CHECKOUT
    spec = find_spec("advisor.rules")
    for place in (spec.submodule_search_locations or []) if spec else []:
        if (Path(place) / "roles").is_dir():
            return Path(place)
    raise KnowledgeError("the rule base is missing", where="rules/", hint="install the package again")
