"""The way through: an example or a new case, questions, options, plan; by keys alone."""

from collections.abc import Callable
from pathlib import Path

import pytest

from advisor.casefile import read_case
from advisor.core.case import Known, Unknown
from advisor.rulebase.base import RuleBase
from advisor.tui.app import AdvisorApp
from advisor.tui.choices import Choices
from advisor.tui.screens.plan import PlanScreen
from advisor.tui.screens.questions import QuestionsScreen
from tests.tui.play import EXAMPLE, SIZES, Play, playing


@pytest.mark.parametrize("size", SIZES)
async def test_an_example_leads_to_a_plan_in_under_ten_keys(size: tuple[int, int], home: Path) -> None:
    keys = ["down", "enter", "g", "4"]
    async with playing(size=size) as play:
        assert "Begin a new case" in play.text()
        assert "Example: The lighthouse" in play.text()
        await play.press(*keys)
        assert isinstance(play.stage, PlanScreen)
        assert "What is done about what" in play.text()
        await play.press("s")
        saved = list(home.glob("data/cases/*.plan.txt"))
    assert len(keys) + 1 < 10
    assert len(saved) == 1 and "Raise the waist seam" in saved[0].read_text(encoding="utf-8")


async def test_an_example_is_not_written_to(examples: Path, home: Path, base: RuleBase) -> None:
    async with playing() as play:
        await play.press("down", "enter", "x")
    assert (examples / EXAMPLE.name).read_bytes() == EXAMPLE.read_bytes()
    (copy,) = home.glob("data/cases/*.toml")
    case = read_case(copy, base.questions()).case
    assert sum(isinstance(answer, Unknown) for answer in case.answers.values()) == 1


async def test_an_example_taken_before_the_rules_are_read_is_a_copy_too(examples: Path) -> None:
    app = AdvisorApp()
    async with app.run_test() as pilot:
        app.base = None
        app.open_case(examples / EXAMPLE.name, example=True)
        play = Play(app, pilot)
        while app.session is None:
            await pilot.pause(0.02)
        await play.press("1")
        assert app.session.path.parent != examples
    assert (examples / EXAMPLE.name).read_bytes() == EXAMPLE.read_bytes()


async def test_looking_at_an_example_leaves_no_file(home: Path) -> None:
    async with playing() as play:
        await play.press("down", "enter", "f4", "f5", "f2")
    assert not list(home.glob("data/cases/*.toml"))


async def test_a_case_is_begun_by_keys_alone(home: Path, base: RuleBase) -> None:
    async with playing() as play:
        await play.press("n")
        await play.type("The miller [act 1/2]")
        if len(base.garments) > 1:
            assert "Which garment" in play.text()
            await play.press("1")
        assert "Which tape" in play.text()
        await play.press("2")
        assert isinstance(play.stage, QuestionsScreen)
    (path,) = home.glob("data/cases/*.toml")
    case = read_case(path, base.questions()).case
    assert (case.title, case.tape) == ("The miller [act 1/2]", "cm")


async def test_beginning_can_be_left_step_by_step(home: Path) -> None:
    async with playing() as play:
        await play.press("n")
        await play.type("The miller")
        await play.press("escape")
        assert play.app.screen.query_one("#typed").value == "The miller"  # type: ignore[attr-defined]
        await play.press("escape")
        assert "Begin a new case" in play.text()
    assert not list(home.glob("data/cases/*"))


async def test_a_file_is_opened_by_name_and_a_missing_one_begun(case_file: Callable[..., Path]) -> None:
    path = case_file()
    async with playing() as play:
        await play.press("o")
        await play.type(str(path))
        assert isinstance(play.stage, QuestionsScreen)
        assert play.app.session is not None and play.app.session.path == path
        await play.press("f2", "o")
        await play.type("not_there.toml")
        assert "What shall the case be called?" in play.text()


async def test_a_broken_file_is_told_with_its_line(case_file: Callable[..., Path]) -> None:
    path = case_file(rusted="polished")
    async with playing(path, size=(120, 40)) as play:
        assert play.name == "Reading"
        assert "keeper.toml" in play.text() and "polished" in play.text() and "line" in play.text()
        await play.press("escape")
        assert "Begin a new case" in play.text()


async def test_a_digit_takes_a_word_at_once(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        for size in SIZES:
            await play.resize(size)
            screen = play.stage
            assert isinstance(screen, QuestionsScreen) and screen.due is not None
            question = screen.due.question
            assert question.kind == "word"
            await play.press("2")
            held = play.app.session.case.answers[question.key]  # type: ignore[union-attr]
            assert isinstance(held, Known) and held.value == list(question.words)[1]
            # The digit went to the answer, not to a stage.
            assert isinstance(play.stage, QuestionsScreen)


async def test_saving_after_each_answer_and_the_same_next_question(case_file: Callable[..., Path]) -> None:
    path = case_file()
    async with playing(path) as play:
        for _ in range(3):
            await play.press("1")
        assert isinstance(play.stage, QuestionsScreen) and play.stage.due is not None
        due = play.stage.due.question.key
    async with playing(path) as play:
        assert isinstance(play.stage, QuestionsScreen) and play.stage.due is not None
        assert play.stage.due.question.key == due


async def test_stages_without_a_case_say_what_to_do() -> None:
    async with playing() as play:
        for key in ("f3", "f4", "f5"):
            await play.press(key)
            assert "Open a case first, or begin one." in play.text()


async def test_escape_goes_one_step_back_everywhere(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        await play.press("f5")
        seen = []
        for _ in range(4):
            seen.append(play.stage.STAGE)
            await play.press("escape")
        assert seen == [4, 3, 2, 1]
        assert "q quits" in play.text()


async def test_the_go_to_list_has_the_next_stage_ready(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        for stage in (3, 4):
            await play.press("g", "enter")
            assert stage == play.stage.STAGE
        await play.press("g", "escape")
        assert play.stage.STAGE == 4
        await play.press("g", "1")
        assert play.stage.STAGE == 1


async def test_own_cases_are_listed_with_title_and_story(home: Path) -> None:
    folder = home / "data" / "cases"
    folder.mkdir(parents=True)
    (folder / "a.toml").write_bytes(EXAMPLE.read_bytes())
    (folder / "broken.toml").write_text("garment = \n", encoding="utf-8")
    Path("pyproject.toml").write_text("[project]\nname = 'no case'\n", encoding="utf-8")
    async with playing(size=(120, 40)) as play:
        names = [row.text for row in play.app.screen.query_one(Choices).rows]
        assert names.count("The lighthouse keeper's overall, act one") == 1
        assert "broken.toml" in names and not any("pyproject" in name for name in names)
        at = names.index("The lighthouse keeper's overall, act one")
        await play.press(*["down"] * at)
        assert "made for a taller keeper" in play.text()
