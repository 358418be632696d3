"""Options: choosing, overruling with a reason, what is ruled out and what would change that, risks in sight."""

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

from textual.widgets import Input

from advisor.casefile import read_case
from advisor.core.case import Choice
from advisor.core.work import Option
from advisor.rulebase.base import RuleBase
from advisor.tui.choices import Choices
from advisor.tui.screens.detail import WARNINGS, risk_lines
from advisor.tui.screens.options import OptionsScreen
from tests.tui.play import SIZES, Play, playing


def screen(play: Play) -> OptionsScreen:
    assert isinstance(play.stage, OptionsScreen)
    return play.stage


def options(play: Play) -> tuple[Option, ...]:
    followed = screen(play).followed
    assert followed is not None
    return followed.advice.options


async def point_at(play: Play, wanted: Callable[[Option], bool]) -> Option:
    """Bring the first option that is wanted to the line, the options having the keys."""
    option = next(o for o in options(play) if wanted(o))
    findings, listing = screen(play).query_one("#findings", Choices), screen(play).query_one("#options", Choices)
    findings.highlighted = next(i for i, row in enumerate(findings.rows) if row.id == option.finding)
    await play.rest()
    listing.highlighted = next(i for i, row in enumerate(listing.rows) if row.id == option.id)
    listing.focus()
    await play.rest()
    return option


def first_of_its_finding(play: Play, option: Option) -> bool:
    return next(o for o in options(play) if o.finding == option.finding).id == option.id


async def test_findings_and_options_are_told_with_their_standing(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        for size in SIZES:
            await play.resize(size)
            await play.press("f3", "f4")
            assert "Rusted or bent metal" in play.text() and "suggested" in play.text()
            await point_at(play, lambda o: o.fix == "waist.fixes.raise_seam")
            text = play.text()
            assert "Raise the waist seam" in text and "cannot be undone" in text
            # No rule ids or code names on the screen.
            assert "waist.fixes" not in text and "waist_low@" not in text and "_" not in text


async def test_choosing_the_first_and_taking_it_back(case_file: Callable[..., Path], base: RuleBase) -> None:
    path = case_file()
    async with playing(path) as play:
        await play.press("f4", "enter", "enter")
        assert "Chosen." in play.text() and "chosen: " in play.text()
        chosen = read_case(path, base.questions()).case.choices
        assert len(chosen) == 1
        await play.press("d")
        assert not read_case(path, base.questions()).case.choices
        await play.press("u")
        assert "Taken back" in play.text()
        assert read_case(path, base.questions()).case.choices == chosen


async def test_overruling_asks_for_a_reason_and_keeps_it(case_file: Callable[..., Path], base: RuleBase) -> None:
    path = case_file()
    async with playing(path, size=(40, 15)) as play:
        await play.press("f4")
        option = await point_at(play, lambda o: o.open and not first_of_its_finding(play, o))
        await play.press("enter")
        assert "Why this one all the same?" in play.text()
        await play.press("escape")
        assert not read_case(path, base.questions()).case.choices
        await play.press("c")
        await play.type("it is for the stage [only]")
        choices = read_case(path, base.questions()).case.choices
        assert {finding: replace(choice, at="") for finding, choice in choices.items()} == {
            option.finding: Choice(option.fix, "it is for the stage [only]")
        }
        for size in ((80, 24), (120, 40)):
            await play.resize(size)
            assert "Your reason: it is for the stage [only]" in play.text()


async def test_what_is_ruled_out_says_why_what_would_flip_it_and_takes_a_reason(
    case_file: Callable[..., Path], base: RuleBase
) -> None:
    path = case_file()
    async with playing(path, size=(120, 40)) as play:
        await play.press("f4")
        option = await point_at(play, lambda o: bool(o.rulings))
        assert "(ruled out)" in play.text()
        assert f"Ruled out: {option.rulings[0].words[:25]}" in play.text()
        await play.press("w")
        assert "Why not:" in play.text()
        assert "It would be offered" in play.text() or "would have it offered" in play.text()
        await play.press("escape", "enter", "enter")
        assert "give a reason" in play.text()
        assert not read_case(path, base.questions()).case.choices
        await play.type("the director wants it")
        assert read_case(path, base.questions()).case.choices[option.finding].reason == "the director wants it"


async def test_why_opens_two_levels_first_and_all_of_it_on_demand(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        await play.press("f4")
        await point_at(play, lambda o: o.fix == "waist.fixes.raise_seam")
        await play.press("w")
        assert "more behind these" in play.text() and "m More" in play.text()
        await play.press("m")
        assert "more behind these" not in play.text() and "m More" not in play.text()
        await play.press("q", "escape", "w")
        assert "Why: Waist seam too low" in play.text()


async def test_what_she_cannot_say_is_named_at_the_options_that_hang_on_it(case_file: Callable[..., Path]) -> None:
    path = case_file()
    path.write_text(path.read_text() + "\n[answers.front]\nkind = { unknown = true }\n", encoding="utf-8")
    async with playing(path, size=(120, 40)) as play:
        await play.press("f4")
        hanging = screen(play).hanging
        assert hanging
        seen = [item for item in hanging if item.option in {o.id for o in options(play)}]
        await point_at(play, lambda o: o.id == seen[0].option)
        assert "You cannot say:" in play.text() and "only if it is" in play.text()


def test_at_most_three_warnings_on_a_screen_and_none_twice(base: RuleBase) -> None:
    from advisor.advise.follow import follow
    from tests.spine.worlds import case_of, world

    case = case_of(waist__sits="low", waist__low_by="1 1/4 in", snaps__state="rusted")
    for option in follow(base, world(case), {}).advice.options:
        lines = risk_lines(option)
        heads = [line for line in lines if line.startswith("- ")]
        assert len(heads) <= WARNINGS and len(set(heads)) == len(heads)
        if any(not op.reversible for op in option.work.ops):
            assert "cannot be undone" in " ".join(lines)


async def test_nothing_wrong_says_what_to_do(case_file: Callable[..., Path]) -> None:
    path = case_file(**{'"low"': '"right"', 'rusted"': 'none"', "1 1/4 in": "0 in"})
    async with playing(path) as play:
        await play.press("f4")
        assert "Nothing is wrong" in play.text() and "questions" in play.text()
        # Every key is harmless where there is nothing to act on.
        await play.press("enter", "c", "w", "d", "tab", "space", "minus", "9")
        assert play.name == "OptionsScreen"
        await play.press("f5")
        assert "there is nothing to plan" in play.text()


async def test_a_choice_that_is_not_needed_now_is_kept_and_said(case_file: Callable[..., Path]) -> None:
    path = case_file()
    path.write_text(
        path.read_text() + '\n[choices]\n"too_wide@sails" = { fix = "no.such.fix", reason = "kept" }\n',
        encoding="utf-8",
    )
    async with playing(path, size=(120, 40)) as play:
        await play.press("f4")
        assert "Kept, but not needed now: 1 choice" in play.text()
        await play.press("enter", "enter")
    assert "no.such.fix" in path.read_text()


async def test_the_reason_is_kept_while_the_window_is_resized(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        await play.press("f4")
        await point_at(play, lambda o: o.open and not first_of_its_finding(play, o))
        await play.press("enter")
        await play.pilot.press(*"abc")
        for size in ((40, 15), (30, 8), (80, 24), (120, 40)):
            await play.pilot.resize_terminal(*size)
            await play.rest()
        field = play.app.screen.query_one(Input)
        assert field.value == "abc" and field.has_focus
