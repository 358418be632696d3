"""`advisor rules` as a person meets it: list, explain, check; on the small rule base and on the one that ships."""

import json
from collections.abc import Iterator
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from advisor.check.run import run_checks
from advisor.cli.app import advisor
from advisor.errors import UsageError
from advisor.report.explain import explain_lines
from advisor.report.rules import card_meant
from advisor.rulebase import base as shipped
from advisor.rulebase import locate
from advisor.rulebase.base import read_base, the_base
from tests.check.mini import FIND, Mini
from tests.some_cases import some


@pytest.fixture
def small(mini: Mini, monkeypatch: pytest.MonkeyPatch) -> Iterator[Mini]:
    """The commands look at the small rule base."""
    monkeypatch.setattr(locate, "rules_folder", lambda: mini.folder / "rules")
    monkeypatch.setattr(shipped, "the_base", lambda: read_base(mini.folder / "rules"))
    yield mini


def run(*args: str) -> Result:
    return CliRunner().invoke(advisor, ["rules", *args])


def flat(result: Result) -> str:
    return " ".join(result.stdout.split())


def test_a_sound_rule_base_ends_with_no_error_and_says_what_it_cannot_see(small: Mini) -> None:
    done = run("check", "--times")
    assert done.exit_code == 0
    told = flat(done)
    assert "8 rules (3 findings, 4 answers, 1 vetoes) and 3 fixes, with 8 examples and 10 near misses" in told
    assert "whether a reason, a sentence or a grade is true of cloth and body" in told
    assert " s near misses" in told
    assert done.stdout.splitlines()[-1].startswith("No error, 0 notes, in ")


def test_notes_alone_do_not_fail(small: Mini) -> None:
    small.write("rules/sources.toml", '[MADE-UP]\ntitle = "A page made up for this test"\nseen = "whole"\n')
    done = run("check")
    assert done.exit_code == 0
    assert "rules/sources.toml: 1 sources no value names; MADE-UP" in done.stdout


def test_an_error_fails_and_data_says_the_same(small: Mini) -> None:
    small.change(FIND, "hangs out below it", "hides the colour")
    done, data = run("check"), run("check", "--json")
    assert (done.exit_code, data.exit_code) == (1, 1)
    assert done.stdout.splitlines()[0] == f"{FIND}:9: why says 'colour'; American spelling: 'color'"
    found = json.loads(data.stdout)
    assert found["errors"] == [
        {"check": "wording", "file": FIND, "line": 9, "what": "why says 'colour'", "hint": "American spelling: 'color'"}
    ]
    assert found["counts"]["findings"] == 3 and found["cannot_see"]


def test_a_file_name_cannot_steer_the_terminal(small: Mini) -> None:
    small.change(FIND, "hangs out below it", "hides the \\x1b]0;owned\\x07colour")
    assert "\x1b" not in run("check").stdout + run("list").stdout + run("explain", "lining_long").stdout


def test_list_by_topic(small: Mini) -> None:
    told = flat(run("list"))
    assert "What may be wrong: - Hem not sewn (length.findings.hem_open)" in told
    assert "11 rules and fixes." in told
    entries = json.loads(run("list", "--topic", "length", "--json").stdout)["rules"]
    assert len(entries) == 11
    assert {
        "id": "length.fixes.sew",
        "topic": "length",
        "kind": "fixes",
        "title": "Sew the hem",
        "source": "common-practice",
        "file": "rules/length/fixes/sew.py",
    } in entries
    wrong = run("list", "--topic", "lenght")
    assert isinstance(wrong.exception, UsageError) and "did you mean 'length'?" in str(wrong.exception)


def test_a_finding_explained(small: Mini) -> None:
    told = flat(run("explain", "lining_long"))
    for part in (
        "Lining too long Something that may be wrong, decided at: lengths and hems.",
        "A lining that is longer than the cape hangs out below it.",
        "- the lining is measured against the cape - it is longer",
        "The lining is 1 in too long.",
        "What answers it --------------- - Cut the lining shorter - Leave it as it is",
        "It does not count, for instance ------------------------------- "
        "- as long as it should be - it is sewn, not worn",
        "common practice, no source",
        "Written in rules/length/findings/lining_long.py, as length.findings.lining_long.",
    ):
        assert part in told, part


def test_a_fix_and_a_veto_explained(small: Mini) -> None:
    fix, veto, answer = (flat(run("explain", name)) for name in ("fixes.shorten", "thin_cloth", "shorten_long"))
    assert "Lining too long: That is what can be done about it here." in fix
    assert "No cutting in thin cloth: the cloth is thin" in fix
    assert "The cape itself may still be let down." in fix
    assert "difficulty 2 of 5: one seam or hem opened and closed; needs a level line" in fix
    assert "Cut the lining shorter (length.fixes.shorten)" in veto
    assert "The cloth of the lining is too thin to be cut." in veto
    assert "What it answers --------------- Lining too long" in answer
    data = json.loads(run("explain", "thin_cloth", "--json").stdout)
    assert data["id"] == "length.vetoes.thin_cloth" and data["when"] == ["the cloth is thin"]
    assert data["source"] == {
        "key": "common-practice",
        "line": "common practice, no source",
        "address": "",
        "quality": "",
    }


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("length.findings.lining_long", "length.findings.lining_long"),
        ("lining_long", "length.findings.lining_long"),
        ("findings.lining_long", "length.findings.lining_long"),
        ("rules/length/findings/lining_long.py", "length.findings.lining_long"),
        (" Lining_Long ", "length.findings.lining_long"),
    ],
)
def test_what_a_person_may_type_for_an_id(mini: Mini, typed: str, meant: str) -> None:
    assert card_meant(read_base(mini.folder / "rules"), typed) == meant


def test_what_is_not_an_id_gets_the_nearest(mini: Mini) -> None:
    mini.copy("rules/length/fixes/leave.py", "rules/other/fixes/leave.py")
    base = read_base(mini.folder / "rules")
    for typed, told in (
        ("lining_lng", "did you mean 'lining_long'?; `advisor rules list` shows all"),
        ("length.findings.lining_lng", "did you mean 'length.findings.lining_long'?; `advisor rules list` shows all"),
        ("leave", "say which: length.fixes.leave, other.fixes.leave"),
    ):
        with pytest.raises(UsageError) as refused:
            card_meant(base, typed)
        assert refused.value.hint == told


def test_every_rule_that_ships_can_be_explained() -> None:
    base = the_base()
    for id in some(sorted(base.files), 4):
        lines = explain_lines(base, id)
        assert (lines[0] and lines[-1].endswith(f"{id}.")) or id in lines[-1], id
        assert not any("{" in line for line in lines), id
        assert max(map(len, (line for line in lines if "http" not in line))) <= 78, id


def test_the_rule_base_that_ships_passes(tmp_path: Path) -> None:
    report = run_checks(locate.rules_folder())
    assert [fault.told() for fault in report.errors] == []


def test_reasons_against_a_fix_are_those_that_can_be() -> None:
    base = the_base()
    snaps, hem = (flat_lines(explain_lines(base, id)) for id in ("closure.fixes.new_snaps", "hems.fixes.turn_all_up"))
    # A row of snaps has no hem that could be too full, and moves no seam of the hip.
    assert "Flares too much for this hem" in hem and "Flares too much for this hem" not in snaps
    assert "No work on perished cloth" in hem and "No work on perished cloth" in snaps
    assert "The seam is in work for the hip" not in hem + snaps


def test_answers_are_told_from_the_easiest_to_the_hardest() -> None:
    told = explain_lines(the_base(), "body.findings.too_wide")
    answers = told[told.index("What answers it") + 2 :]
    assert answers[0] == "  - Button a tab across the back"
    assert answers[: answers.index("")][-1] == "  - Leave it as it is"


def flat_lines(lines: list[str]) -> str:
    return " ".join(" ".join(lines).split())
