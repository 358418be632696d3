"""Keys in any order, faster than the screen: nothing crashes, and the case file is whole at every moment."""

import shutil
from collections.abc import Callable
from pathlib import Path
from random import Random

import pytest

from advisor.casefile import read_case
from advisor.rulebase.base import RuleBase
from advisor.tui.look import Stage
from tests.tui.play import playing

KEYS = [
    *("f2", "f3", "f4", "f5", "escape", "enter", "tab", "up", "down", "space", "minus"),
    *("less_than_sign", "greater_than_sign", "question_mark"),
    *"gkurtacdwmxlnpjsyio123456789",
]
SIZES = ((80, 24), (120, 40), (40, 15), (40, 12), (30, 8), (1, 1))


@pytest.mark.parametrize("seed", range(2))
async def test_any_keys_in_any_order(seed: int, case_file: Callable[..., Path], base: RuleBase) -> None:
    rng, path = Random(seed), case_file()
    kept = path.with_name("kept.toml")
    async with playing(path) as play:
        for _ in range(50):
            shutil.copy(path, kept)
            play.app.simulate_key(rng.choice(KEYS))
            if rng.random() < 0.4:
                await play.pilot.pause(rng.choice((0, 0, 0.01, 0.05)))
            if rng.random() < 0.1:
                await play.pilot.resize_terminal(*rng.choice(SIZES))
            read_case(kept, base.questions())
        await play.pilot.resize_terminal(80, 24)
        await play.rest()
        assert play.app.is_running and any(isinstance(screen, Stage) for screen in play.app.screen_stack)
    read_case(path, base.questions())
