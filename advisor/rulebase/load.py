"""Finding the cards of rules/ by walking its folders. The path of a file is the id of its card.

rules/<topic>/findings/<name>.py   rule = Find(...)
rules/<topic>/answers/<name>.py    rule = Answer(...)
rules/<topic>/vetoes/<name>.py     rule = Veto(...)
rules/<topic>/fixes/<name>.py      fix = Fix(...)
"""

import sys
from dataclasses import dataclass
from importlib.util import module_from_spec, spec_from_file_location
from pathlib import Path
from types import ModuleType

from advisor.errors import KnowledgeError, nearest
from advisor.knowledge.cards import Answer, Card, Find, Veto
from advisor.knowledge.fix import Fix

KINDS: dict[str, tuple[str, type]] = {
    "findings": ("rule", Find),
    "answers": ("rule", Answer),
    "vetoes": ("rule", Veto),
    "fixes": ("fix", Fix),
}
NOT_TOPICS = {"roles", "garments"}


@dataclass(frozen=True)
class Loaded:
    """All cards by id, and the file of each."""

    rules: dict[str, Card]
    fixes: dict[str, Fix]
    files: dict[str, Path]


def load_cards(folder: Path) -> Loaded:
    """Every card below `folder`. KnowledgeError names the file that is wrong."""
    loaded = Loaded({}, {}, {})
    for path in card_files(folder):
        id = card_id(path, folder)
        kind = path.parent.name
        name, card_type = KINDS[kind]
        card = getattr(load_module(path, id), name, None)
        if not isinstance(card, card_type):
            raise KnowledgeError(
                f"holds no {card_type.__name__} called '{name}'",
                where=str(path),
                hint=f"a file in {kind}/ says `{name} = {card_type.__name__}(...)` once",
            )
        loaded.files[id] = path
        if isinstance(card, Fix):
            loaded.fixes[id] = card
        elif isinstance(card, Card):
            loaded.rules[id] = card
    return loaded


def card_files(folder: Path) -> list[Path]:
    """The files that must hold a card, sorted. KnowledgeError for one that lies where no card belongs."""
    found: list[Path] = []
    for path in sorted(folder.rglob("*.py")):
        parts = path.relative_to(folder).parts
        if "__pycache__" in parts or path.name == "__init__.py":
            continue
        if len(parts) != 3 or parts[0] in NOT_TOPICS or parts[1] not in KINDS:
            raise KnowledgeError(
                "lies where no card belongs",
                where=str(path),
                hint=f"rules/<topic>/<kind>/<name>.py; {nearest(parts[1] if len(parts) > 1 else '', KINDS)}",
            )
        if not all(part.isidentifier() for part in (parts[0], path.stem)):
            raise KnowledgeError(
                "has a name that cannot be an id",
                where=str(path),
                hint="small letters, digits and _ for the topic and for the file",
            )
        found.append(path)
    return found


def card_id(path: Path, folder: Path) -> str:
    """The id of the card in `path`: its path with dots."""
    return ".".join(path.relative_to(folder).with_suffix("").parts)


def load_module(path: Path, id: str) -> ModuleType:
    """The module of one card file. KnowledgeError names file and line of what went wrong."""
    name = f"advisor.rules.{id}"
    spec = spec_from_file_location(name, path)
    assert spec is not None and spec.loader is not None
    module = module_from_spec(spec)
    sys.modules[name] = module
    try:
        spec.loader.exec_module(module)
    except Exception as fault:
        del sys.modules[name]
        line = _line_in(path, fault)
        raise KnowledgeError(
            f"cannot be loaded: {type(fault).__name__}: {fault}", where=f"{path}{line}", hint="mend the file"
        ) from fault
    return module


def _line_in(path: Path, fault: Exception) -> str:
    if isinstance(fault, SyntaxError) and fault.lineno:
        return f":{fault.lineno}"
    trace, line = fault.__traceback__, ""
    while trace is not None:
        if trace.tb_frame.f_code.co_filename == str(path):
            line = f":{trace.tb_lineno}"
        trace = trace.tb_next
    return line
