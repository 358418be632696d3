"""Files of the rule base that are wrong are refused with their name, whoever wrote them."""

from pathlib import Path

import pytest

from advisor.errors import KnowledgeError
from advisor.rulebase.garment import read_garment, read_roles
from advisor.rulebase.load import load_cards

ROLE = """title = "a pocket"

[slots.deep]
name = "depth of {place}"
ask = "How deep is {place}?"
kind = "length"
neutral = "4 in"
"""
GARMENT = 'title = "Apron"\n\n[places.pocket]\nrole = "pocket"\nwords = "the pocket"\n'


def apron(folder: Path, role: str) -> None:
    (folder / "roles").mkdir()
    (folder / "roles" / "pocket.toml").write_text(role, encoding="utf-8")
    (folder / "apron.toml").write_text(GARMENT, encoding="utf-8")
    questions = read_garment(folder / "apron.toml", read_roles(folder / "roles")).questions
    assert questions["pocket.deep"].ask == "How deep is the pocket?"


def test_the_place_is_filled_into_a_question(tmp_path: Path) -> None:
    apron(tmp_path, ROLE)


@pytest.mark.parametrize("braces", ["{pocket}", "{}", "{", "{place.name}", "{place!x}"])
def test_other_braces_in_a_question_are_refused(tmp_path: Path, braces: str) -> None:
    with pytest.raises(KnowledgeError) as refused:
        apron(tmp_path, ROLE.replace("How deep is {place}", f"How deep is {braces}"))
    assert "pocket.deep" in str(refused.value) and "{place}" in refused.value.hint


@pytest.mark.parametrize("path", ["waist/findings/a.b.py", "waist/findings/too-wide.py", "wai st/findings/a.py"])
def test_a_file_whose_name_is_no_id_is_refused(tmp_path: Path, path: str) -> None:
    (tmp_path / path).parent.mkdir(parents=True)
    (tmp_path / path).write_text("rule = 1\n", encoding="utf-8")
    with pytest.raises(KnowledgeError, match="cannot be an id"):
        load_cards(tmp_path)
