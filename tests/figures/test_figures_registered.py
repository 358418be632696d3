"""Importing the package registers every module's formulas: a calculation nobody imports could not be reckoned."""

from pathlib import Path

import advisor.figures

FOLDER = Path(advisor.figures.__file__).parent
NOT_TOPICS = {"__init__", "exact", "formula", "tables"}


def test_every_module_is_imported_by_the_package() -> None:
    on_disk = {path.stem for path in FOLDER.glob("*.py")} - NOT_TOPICS
    assert on_disk == {name for name in on_disk if hasattr(advisor.figures, name)}
