"""Questions: answering, leaving, unknown, why, changing an earlier answer, taking back; nothing is lost on the way."""

from collections.abc import Callable, Iterator
from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from types import MappingProxyType

import pytest
from textual.widgets import Input

from advisor.core.case import Case, Known, Unknown
from advisor.core.question import Question
from advisor.interview.agenda import Due
from advisor.rulebase.base import RuleBase
from advisor.tui.choices import Choices
from advisor.tui.look import Flow
from advisor.tui.screens import questions
from advisor.tui.screens.answers import AnswersScreen
from advisor.tui.screens.questions import QuestionsScreen
from tests.tui.play import SIZES, Play, playing

IN = Fraction(254, 10)


def answers(play: Play) -> dict[str, object]:
    assert play.app.session is not None
    return {key: getattr(answer, "value", "unknown") for key, answer in play.app.session.case.answers.items()}


def asked(play: Play) -> Question:
    screen = play.stage
    assert isinstance(screen, QuestionsScreen) and screen.due is not None
    return screen.due.question


async def ask(play: Play, key: str) -> None:
    """Have this question on the screen."""
    screen = play.stage
    assert isinstance(screen, QuestionsScreen)
    screen.ask_about(key)
    await play.rest()


async def test_a_length_is_typed_and_read_strictly(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        steps = (("1 1/4", Fraction(5, 4)), ("1 3/8", Fraction(11, 8)), ("2", Fraction(2)), ("2 1/8", Fraction(17, 8)))
        for size, (old, before), (new, after) in zip(SIZES, steps, steps[1:], strict=False):
            await play.resize(size)
            await ask(play, "waist.low_by")
            assert f"Your answer now: {old} in" in play.text()
            await play.type("27 1/2 furlongs")
            assert play.app.screen.query_one("#length", Input).value == "27 1/2 furlongs"
            assert "furlongs" in str(play.app.screen.query_one("#fault", Flow).visual)
            assert answers(play)["waist.low_by"] == before * IN
            play.app.screen.query_one("#length", Input).value = ""
            await play.type(new)
            assert answers(play)["waist.low_by"] == after * IN


async def test_a_pinch_asks_what_its_depth_is(case_file: Callable[..., Path], base: RuleBase) -> None:
    key = next(key for key, q in base.garment("one_piece").questions.items() if q.kind == "pinch")
    async with playing(case_file()) as play:
        await ask(play, key)
        await play.type("1/2")
        assert "at each of two places" in play.text()
        await play.press("escape")
        assert play.app.screen.query_one("#length", Input).value == "1/2"
        await play.press("enter", "2")
        # A fold of depth d takes 2d of cloth, at two places 4d: plain geometry.
        assert answers(play)[key] == 2 * IN
        await ask(play, key)
        await play.type("0")
        assert answers(play)[key] == 0


async def test_cannot_say_later_and_why_work_by_key_and_in_the_field(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        first = asked(play)
        await play.press("w")
        assert play.name == "Reading" and "Working" not in play.text()
        await play.press("escape", "x")
        assert isinstance(play.app.session.case.answers[first.key], Unknown)  # type: ignore[union-attr]
        second = asked(play)
        await play.press("l")
        assert second.key not in answers(play) and asked(play).key != second.key
        assert "Put off" in play.text()
        await ask(play, "waist.pinned")
        await play.type("why")
        assert play.name == "Reading"
        await play.press("escape")
        await play.type("?")
        assert isinstance(play.app.session.case.answers["waist.pinned"], Unknown)  # type: ignore[union-attr]


async def test_escape_frees_the_keys_and_i_goes_back_with_what_was_typed(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        screen = play.stage
        assert isinstance(screen, QuestionsScreen)
        length = play.app.session.questions["waist.pinned"]  # type: ignore[union-attr]
        screen.due = Due(length, True)
        screen.show_question(length, "")
        await play.rest()
        await play.pilot.press("3")
        await play.press("escape", "w")
        assert play.name == "Reading"
        await play.press("escape", "i")
        assert play.app.screen.query_one("#length", Input).value == "3"
        # Another stage and back: what was typed is still there.
        await play.press("escape", "f4", "f3")
        await ask(play, "waist.pinned")
        assert play.app.screen.query_one("#length", Input).value == "3"


async def test_blank_never_erases(case_file: Callable[..., Path]) -> None:
    path = case_file()
    before = path.read_bytes()
    async with playing(path) as play:
        for key in ("waist.low_by", "waist.sits", "snaps.state"):
            await ask(play, key)
            await play.press("tab", "shift+tab")
            await play.press("enter")
            await play.press("a")
            await play.press("escape")
        assert answers(play)["waist.low_by"] == Fraction(5, 4) * IN
    assert path.read_bytes() == before


async def test_an_earlier_answer_is_changed_and_later_ones_stay(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(40, 15)) as play:
        await play.press("1", "1", "1")
        before = answers(play)
        await play.press("a")
        assert isinstance(play.stage, AnswersScreen)
        rows = play.stage.query_one(Choices)
        at = next(i for i, row in enumerate(rows.rows) if row.id == "waist.sits")
        rows.highlighted = at
        await play.press("enter")
        assert asked(play).key == "waist.sits" and "Your answer now" in play.text()
        words = list(asked(play).words)
        assert play.stage.query_one(Choices).highlighted == words.index("low")
        await play.press(str(words.index("right") + 1))
        after = answers(play)
        assert after.pop("waist.sits") == "right"
        assert after == {key: value for key, value in before.items() if key != "waist.sits"}
        await play.press("a")
        texts = [row.text for row in play.stage.query_one(Choices).rows]
        assert any("no longer matters" in text for text in texts)


async def test_unknown_and_put_off_are_seen_among_the_answers(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        await play.press("x", "l", "a")
        text = play.text()
        assert "cannot say" in text and "put off" in text and "not asked" not in text
        assert "made for a taller keeper" in text
        await play.press("m")
        assert "not asked" in play.text()


async def test_clearing_takes_another_key_and_undo_brings_it_back(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        before = answers(play)
        await play.press("a", "x", "x", "escape")
        assert answers(play) == before
        await play.press("x", "enter")
        assert answers(play) == before
        await play.press("x", "y")
        assert len(answers(play)) == len(before) - 1
        await play.press("u")
        assert answers(play) == before


async def test_undo_names_the_step_asks_again_and_redo_gives_it_back(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        first = asked(play)
        start = answers(play)
        await play.press("2", "1")
        given = answers(play)
        await play.press("u", "u")
        assert answers(play) == start
        assert f"Taken back: {first.name}" in play.text() and asked(play).key == first.key
        await play.press("u")
        assert "nothing to take back" in play.text()
        await play.press("r", "r")
        assert answers(play) == given
        assert "Given again" in play.text()


async def test_when_nothing_is_left_enter_leads_on(
    case_file: Callable[..., Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    def nothing(base: RuleBase, case: Case, skip: frozenset[str]) -> Iterator[Due | None]:
        yield from (None,) * 3

    monkeypatch.setattr(questions, "search", nothing)
    async with playing(case_file()) as play:
        assert "No question left can change the advice" in play.text()
        play.app.session.later("waist.pinned")  # type: ignore[union-attr]
        await play.press("f2", "f3")
        assert "Answer what was put off (1)" in play.text() and "No question left" not in play.text()
        assert "apart from the 1 put off" in play.text()
        await play.press("1")
        assert not play.app.session.put_off  # type: ignore[union-attr]
        await play.press("enter")
        assert play.stage.STAGE == 3


async def test_the_count_of_deciding_questions_is_the_true_one(
    case_file: Callable[..., Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    """1 decides, 0 is looked at in vain, 2 only sizes: the sentence counts the ones, less the one that is asked."""
    found: tuple[int, ...] = ()

    def search(base: RuleBase, case: Case, skip: frozenset[str]) -> Iterator[Due | None]:
        open_ones = [q for q in base.garment(case.garment).questions.values() if q.key not in case.answers]
        for kind, question in zip(found, open_ones, strict=False):
            yield None if kind == 0 else Due(question, kind == 1)

    monkeypatch.setattr(questions, "search", search)
    async with playing(case_file()) as play:
        for found in ((1, 1, 1, 0), (1, 0, 0, 0), (0, 0, 1, 1), (0, 0, 0, 2)):
            await play.press("f3")
            text, more = play.text(), found.count(1) - 1
            if more < 0:
                assert "No answer could change the advice any more." in text
                assert "This one is for the numbers of the plan." in text
            elif more == 0:
                assert "the only question that could change the advice" in text
            else:
                assert f"After this one {('no', 'one', 'two')[more]} more question" in text
            assert "Answered: 3." in text


@pytest.mark.searches
async def test_the_question_shown_is_one_that_can_change_the_advice(
    case_file: Callable[..., Path], base: RuleBase
) -> None:
    from advisor.interview.agenda import next_question
    from advisor.interview.stand import decides

    async with playing() as play:
        play.app.open_case(case_file())
        for _ in range(400):
            await play.pilot.pause(0.02)
            if isinstance(play.stage, QuestionsScreen) and play.stage.due is not None:
                break
        session = play.app.session
        assert session is not None
        due = next_question(base, session.case)
        assert due is not None and asked(play).key == due.question.key
        assert decides(base, session.case, asked(play))


async def test_more_than_nine_words_and_long_ones_can_all_be_taken(case_file: Callable[..., Path]) -> None:
    words = {f"w{n}": f"the word number {n}, " + "which goes on and on " * 6 for n in range(14)}
    async with playing(case_file(), size=(40, 15)) as play:
        session = play.app.session
        assert session is not None
        garment = session.base.garment(session.case.garment)
        question = replace(garment.questions["waist.sits"], words=MappingProxyType(words))
        screen = play.stage
        assert isinstance(screen, QuestionsScreen)
        screen.due = Due(question, True)
        screen.show_question(question, "")
        await play.press("greater_than_sign")
        assert any("number 13" in line for line in play.lines())
        taken: list[Known] = []
        screen.take = lambda make: taken.append(make(question))  # type: ignore[method-assign,assignment,arg-type]
        await play.press("enter")
        assert taken[0].value == "w13"
