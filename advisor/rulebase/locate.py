"""Where the rule base and the worked cases lie: inside the installed package, or beside it in a checkout."""

from functools import lru_cache
from importlib.util import find_spec
from pathlib import Path

from advisor.errors import KnowledgeError

ROOT = Path(__file__).resolve().parents[2]


@lru_cache(maxsize=1)
def rules_folder() -> Path:
    """The folder of the rule base. KnowledgeError if there is none."""
    return _shipped("rules")


@lru_cache(maxsize=1)
def examples_folder() -> Path:
    """The folder of the worked cases. KnowledgeError if there is none."""
    return _shipped("cases")


def _shipped(name: str) -> Path:
    # A checkout's own files come first, so that an edited rule is the rule that runs.
    if (ROOT / name).is_dir() and (ROOT / "pyproject.toml").is_file():
        return ROOT / name
    spec = find_spec(f"advisor.{name}")
    for place in (spec.submodule_search_locations or []) if spec else []:
        if Path(place).is_dir():
            return Path(place)
    raise KnowledgeError(f"{name}/ is missing", where="advisor", hint="install the package again")
