"""A plan on record: the same base replays it equal; of a changed base exactly what was changed is named."""

import shutil
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from advisor.advise.adapter import facts_of
from advisor.advise.plan import make_plan
from advisor.advise.record import record_of, used
from advisor.advise.replay import Behind, Replayed, replayed
from advisor.casefile import read_case, recorded, write_case
from advisor.core.advice import Plan
from advisor.core.case import Case, Choice
from advisor.knowledge.cards import Veto
from advisor.report.replay import replay_data, replay_lines
from advisor.rulebase.base import RuleBase, read_base
from tests.some_cases import some
from tests.spine.worlds import BASE, case_of, choosing, world

CASES = sorted((Path(__file__).parents[2] / "cases").glob("*.toml"))
AT = "2026-11-25T09:30:00"


def planned(case: Case, base: RuleBase = BASE) -> Plan:
    return make_plan(base, world(case, base), case.choices, case.limits)


def opened(name: str) -> Case:
    return read_case(CASES[0].parent / f"{name}.toml", BASE.questions()).case


@cache
def kept(name: str) -> Case:
    case = opened(name)
    return recorded(case, record_of(BASE, case, planned(case), AT))


def replay(case: Case, base: RuleBase = BASE) -> tuple[Replayed, str]:
    assert case.record is not None
    plan = planned(case, base)
    result = replayed(base, case, case.record, plan)
    said = " ".join(" ".join(replay_lines(base, case, plan, result)).split())
    assert replay_data(base, case, result)["same"] == result.same
    return result, said


@pytest.mark.parametrize("path", some(CASES, 4), ids=lambda path: path.stem)
def test_an_untouched_base_replays_every_case_equal(path: Path, tmp_path: Path) -> None:
    copy = tmp_path / path.name
    shutil.copy(path, copy)
    there = read_case(copy, BASE.questions())
    case = recorded(there.case, record_of(BASE, there.case, planned(there.case), AT))
    write_case(there, case, copy, BASE.questions())
    again = read_case(copy, BASE.questions())
    # A record is added, and every line that was there stays: the file is still hers.
    assert again.text.replace("\r\n", "\n").startswith(path.read_text(encoding="utf-8").rstrip("\n"))
    result, said = replay(again.case)
    assert result.same and result.behind == Behind() and result.difference.nothing
    assert "comes out the same" in said


def test_shipped_cases_hold_no_record() -> None:
    assert all("[record" not in path.read_text(encoding="utf-8") for path in CASES)


@pytest.fixture(scope="module")
def copied(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("base") / "rules"
    shutil.copytree(BASE.folder, folder, ignore=shutil.ignore_patterns("__pycache__"))
    return folder


class Edited:
    """The copied base with one file changed for a while."""

    def __init__(self, folder: Path, file: str, old: str, new: str) -> None:
        self.folder, self.path, self.old, self.new = folder, folder / file, old, new

    def __enter__(self) -> RuleBase:
        self.text = self.path.read_text(encoding="utf-8") if self.path.exists() else None
        if self.text is None:
            self.path.write_text(self.new, encoding="utf-8")
        else:
            assert self.text.count(self.old) >= 1, self.old
            self.path.write_text(self.text.replace(self.old, self.new), encoding="utf-8")
        return read_base(self.folder)

    def __exit__(self, *_: object) -> None:
        if self.text is None:
            self.path.unlink()
        else:
            self.path.write_text(self.text, encoding="utf-8")


EDITS = [
    (
        "girth/vetoes/center_back_waist_only.py",
        'MOST = length("1 in")',
        'MOST = length("2 in")',
        "girth.vetoes.center_back_waist_only",
        ["a reason against a fix, 'Only the waist is loose'", "no longer ruled out: Take in the center-back seam"],
    ),
    (
        "girth/fixes/back_darts.py",
        "difficulty=3",
        "difficulty=5",
        "girth.fixes.back_darts",
        ["a fix, 'Sew darts into the back, in pairs'"],
    ),
    (
        "waist/answers/raise_seam.py",
        'problem="waist_low"',
        'problem="waist_high"',
        "waist.answers.raise_seam",
        ["a rule for what helps, '", "no longer offered: Raise the waist seam"],
    ),
    (
        "grades.toml",
        'role = "cloth"\nslot = "kind"\nwords = ["coated"]',
        'role = "cloth"\nslot = "kind"\nwords = ["coated", "cotton"]',
        "tables.grades",
        ["how the fixes are graded", "Hardest part: 5 of 5, and it was 4"],
    ),
]


@pytest.mark.parametrize(("file", "old", "new", "id", "told"), EDITS, ids=[edit[3] for edit in EDITS])
def test_exactly_the_card_that_was_changed_is_named(
    copied: Path, file: str, old: str, new: str, id: str, told: list[str]
) -> None:
    case = kept("moth_queen")
    with Edited(copied, file, old, new) as base:
        result, said = replay(case, base)
    assert result.behind == Behind(changed=(id,)) and not result.same
    assert all(words in said for words in told), said
    assert id not in said and "@" not in said, "no code words"


def test_a_comment_in_every_card_changes_nothing(copied: Path, tmp_path: Path) -> None:
    folder = tmp_path / "rules"
    shutil.copytree(copied, folder)
    for path in folder.rglob("*.py"):
        path.write_text(f"# Looked over.\n{path.read_text(encoding='utf-8')}", encoding="utf-8")
    result, _ = replay(kept("moth_queen"), read_base(folder))
    assert result.same and not result.behind.anything


def test_a_card_without_a_say_is_not_blamed(copied: Path) -> None:
    with Edited(copied, "collar/fixes/turn.py", "difficulty=", "difficulty=1 + 0 * ") as base:
        result, said = replay(kept("moth_queen"), base)
    assert result.same and result.behind == Behind(others=True)
    assert "without any effect" in said and "Rules that have no say in this case." in said


def test_a_new_card_that_speaks_is_named(copied: Path) -> None:
    old = (copied / "girth/vetoes/center_back_waist_only.py").read_text(encoding="utf-8")
    new = old.replace("girth.fixes.center_back", "girth.fixes.back_darts").replace(
        'title="Only the waist is loose"', 'title="Darts past an inch"'
    )
    with Edited(copied, "girth/vetoes/darts_past_an_inch.py", "", new) as base:
        result, said = replay(kept("moth_queen"), base)
    assert result.behind == Behind(speaks=("girth.vetoes.darts_past_an_inch",), others=True) and not result.same
    assert "a reason against a fix, 'Darts past an inch'" in said


def test_a_card_that_is_gone_is_named_in_words(copied: Path) -> None:
    path = copied / "girth/vetoes/side_seams_waist_only.py"
    text = path.read_text(encoding="utf-8")
    path.unlink()
    try:
        result, said = replay(kept("moth_queen"), read_base(copied))
    finally:
        path.write_text(text, encoding="utf-8")
    assert result.behind == Behind(gone=("girth.vetoes.side_seams_waist_only",))
    assert "Is no more: a reason against a fix, 'side seams waist only', under 'girth'" in said


def test_a_new_answer_and_a_new_version_are_told_apart() -> None:
    case = kept("moth_queen")
    assert case.record is not None
    older = replace(case, record=replace(case.record, advisor="0.0.9", formulas="0" * 16))
    result, said = replay(older)
    assert result.same and result.behind.versions == ("0.0.9", case.record.advisor) and result.behind.formulas
    assert "it was version 0.0.9" in said and "The calculations." in said
    other = replace(case, answers={key: a for key, a in case.answers.items() if key != "waist.pinned"})
    result, said = replay(other)
    assert not result.same and result.behind == Behind(answers=True)
    assert "What you answered" in said and "No longer found: Too wide at the waist (the trousers)" in said


def test_a_choice_against_the_advice_stays_in_force_on_replay() -> None:
    case = choosing(opened("moth_queen"), too_wide__trousers="girth.fixes.center_back")
    case = replace(case, choices={**case.choices, "too_wide@trousers": Choice("girth.fixes.center_back", "wings", AT)})
    case = recorded(case, record_of(BASE, case, planned(case), AT))
    result, _ = replay(case)
    assert result.same and result.now.findings["too_wide@trousers"].took == "girth.fixes.center_back"
    assert "girth.fixes.center_back" in result.now.findings["too_wide@trousers"].out


def test_the_same_plan_is_not_put_on_record_twice() -> None:
    case = kept("moth_queen")
    assert case.record is not None
    assert recorded(case, replace(case.record, at="2027-01-01T00:00:00")) is case
    assert [entry.what for entry in case.log] == ["the plan was put on record"]


def test_every_rule_that_spoke_is_among_those_used() -> None:
    # From the other side: what the engine itself says fired on the garment as it came, before any work. A veto that
    # washing lifts before its fix is decided has no say in the end.
    for name in ("moth_queen", "miller", "lamplighter"):
        case = opened(name)
        fired = {firing.rule for firing in BASE.engine.run(facts_of(world(case).model, BASE.read)).firings}
        silent = fired - set(used(BASE, case, planned(case).advice))
        assert fired and all(isinstance(BASE.rules[id], Veto) for id in silent), silent


def test_a_case_without_answers_has_a_record_too() -> None:
    case = case_of()
    kept_case = recorded(case, record_of(BASE, case, planned(case), AT))
    assert replay(kept_case)[0].same
