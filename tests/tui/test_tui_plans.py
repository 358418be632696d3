"""The plans compared over the options: what is shown at every size, taking one, taking it back, limits that bite."""

from collections.abc import Callable
from pathlib import Path

from advisor.casefile import read_case
from advisor.rulebase.base import RuleBase
from advisor.tui.screens.plans import Plans
from tests.tui.play import SIZES, Play, playing


def window(play: Play) -> Plans:
    assert isinstance(play.app.screen, Plans)
    return play.app.screen


async def test_plans_are_compared_at_every_size(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        await play.press("f4", "p")
        found = window(play).found
        assert found is not None and len(found.offers) > 1
        for size in SIZES:
            await play.resize(size)
            text = play.text()
            assert "1 Quickest" in text and "hardest" in text and "Esc Back" in text
            assert "_" not in text and "@" not in text
        await play.press("tab", "greater_than_sign")
        assert "No way back: steps that cannot be" in play.text()
        await play.press("escape")
        assert play.name == "OptionsScreen"


async def test_a_plan_is_taken_whole_and_taken_back_whole(case_file: Callable[..., Path], base: RuleBase) -> None:
    path = case_file()
    async with playing(path) as play:
        await play.press("f4", "p")
        found = window(play).found
        assert found is not None
        offer = found.offers[1]
        before = read_case(path, base.questions()).case.choices
        await play.press("2")
        assert play.name == "OptionsScreen" and f"Taken: {offer.names[0]}" in play.text()
        assert read_case(path, base.questions()).case.choices == {**before, **offer.choices}
        await play.press("p")
        assert "(as it stands now)" in play.text()
        await play.press("escape", "u")
        assert read_case(path, base.questions()).case.choices == before


async def test_the_limit_that_keeps_all_plans_out_is_told(case_file: Callable[..., Path]) -> None:
    path = case_file()
    path.write_text(path.read_text(encoding="utf-8") + "\n[limits]\nminutes = 5\n", encoding="utf-8")
    async with playing(path) as play:
        await play.press("f4", "p")
        text = play.text()
        assert "No plan keeps your limits" in text and "time: 5 minutes, and it takes" in text
        await play.press("1", "enter")
        assert play.name == "Plans"
        await play.press("q")
        assert play.name == "OptionsScreen"
