"""choose: a fix taken, against the advice too; the reason kept, told in the plan and in force ever after."""

import json
from collections.abc import Callable
from pathlib import Path

import pytest

from advisor.advise.plan import make_plan
from advisor.casefile import read_case
from advisor.sheet.content import Text, Tick, blocks
from tests.cli.saying import Say
from tests.spine.worlds import BASE, world

Copy = Callable[[str], Path]
FINDING, FIX = "too_wide@trousers", "girth.fixes.center_back"
RULING = "Only the waist is loose. A seam that takes 1 3/8 in there takes from the hip too"


@pytest.mark.parametrize("words", [("4", "e"), ("4e",), ("Too wide at the waist", "Take in the center-back seam")])
def test_what_is_ruled_out_is_taken_with_a_reason_and_stays(say: Say, copy: Copy, words: tuple[str, ...]) -> None:
    path = copy("moth_queen")
    said = say("choose", path, *words, "--because", "the wings hide it")
    assert said.code == 0, said.err
    assert f"Chosen against the advice. {RULING}" in said.out and "Your reason: the wings hide it" in said.out
    assert "15. Fold the left dart through its middle." in said.out, "what it changes is told"
    choice = read_case(path, BASE.questions()).case.choices[FINDING]
    assert (choice.fix, choice.reason) == (FIX, "the wings hide it") and choice.at
    plan = say("plan", path).out
    decided, _, steps = plan.partition("Look over, wash, open and strip")
    assert f"Take in the center-back seam Chosen against the advice. {RULING}" in decided
    assert "Your reason: the wings hide it" in decided
    warned = steps.index("Mind: 'Take in the center-back seam' was chosen against the advice. Only the waist is loose.")
    assert 0 < steps.index("Unpick the center-back seam of the trousers") - warned < 400, "beside its own first step"
    assert steps.count("was chosen against the advice") == 1
    replay = say("replay", path)
    assert replay.code == 0 and "comes out the same" in replay.out
    data = json.loads(say("plan", path, "--json").raw)["choices"][FINDING]
    assert data["reason"] == "the wings hide it" and data["against"][0].startswith("Only the waist is loose.")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("4", "e"), "To choose it all the same, say why."),
        (("4", "e", "--because", "   "), "To choose it all the same, say why."),
        (("3", "b"), "It is not the first in rank; that is: raise the waist seam."),
        (("4",), "which fix?"),
        (("4", "zz"), "there is no fix 'zz' there"),
        (("4e", "a"), "the two name different fixes"),
        (("99", "a"), "nothing here is called '99'"),
        (("4", "--back"), "nothing was chosen there"),
        (("4", "e", "--because", "a \x1b[2J b"), "character"),
    ],
)
def test_refused_in_plain_words_and_nothing_is_saved(say: Say, copy: Copy, words: tuple[str, ...], told: str) -> None:
    path = copy("moth_queen")
    before = path.read_bytes()
    said = say("choose", path, *words)
    assert said.code == 2 and told in said.err and "\x1b" not in said.err
    assert path.read_bytes() == before


def test_the_first_in_rank_needs_no_reason_and_can_be_taken_back(say: Say, copy: Copy) -> None:
    path = copy("moth_queen")
    assert "It is saved." in say("choose", path, "3", "a").out
    assert "waist_low@bodice" in read_case(path, BASE.questions()).case.choices
    said = say("choose", path, "3", "--back")
    assert "the choice is taken back" in said.out and "Nothing changes." in said.out
    assert "waist_low@bodice" not in read_case(path, BASE.questions()).case.choices


def test_what_cannot_be_worked_out_is_no_matter_of_reasons(say: Say, copy: Copy) -> None:
    path = copy("moth_queen")
    text = path.read_text(encoding="utf-8").replace('dart_room = { value = "6 in"', 'dart_room = { value = "0 in"')
    path.write_text(text, encoding="utf-8")
    advice = json.loads(say("advise", path, "--json").raw)
    unsized = [
        option["label"]
        for finding in advice["findings"]
        for option in finding["options"]
        if any(words.startswith("It cannot be worked out here") for words in option["ruled_out"])
    ]
    for label in unsized:
        said = say("choose", path, label, "--because", "I want it")
        assert said.code == 2 and "No reason makes a plan of that." in said.err


def test_a_choice_against_the_suggestion_is_told_with_its_reason(say: Say, copy: Copy) -> None:
    path = copy("moth_queen")
    say("choose", path, "3", "b", "--because", "she is still growing")
    plan = say("plan", path).out
    assert (
        "Hold the waist seam up with an elastic casing Chosen against the suggestion: raise the waist seam. "
        "Your reason: she is still growing" in plan
    )
    assert "was chosen against the advice" not in plan, "nothing warns of it"


def test_the_sheet_to_work_from_tells_it_too(say: Say, copy: Copy) -> None:
    path = copy("moth_queen")
    say("choose", path, "4", "e", "--because", "the wings hide it")
    case = read_case(path, BASE.questions()).case
    plan = make_plan(BASE, world(case), case.choices, case.limits)
    there = list(blocks(BASE, case, plan))
    decided = [block.inner for block in there if isinstance(block, Text) and "the wings hide it" in block.inner]
    assert len(decided) == 1 and f"Chosen against the advice. {RULING}" in decided[0]
    warned = [block for block in there if isinstance(block, Tick) and "was chosen against the advice" in block.first]
    assert len(warned) == 1 and "center-back seam" in warned[0].text
