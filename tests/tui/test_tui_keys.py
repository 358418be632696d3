"""The keys: one table, shown at the foot, in the help and in the list of actions; none that terminals lose."""

import json
from collections.abc import Callable, Iterable
from pathlib import Path

import pytest
from textual.binding import Binding
from textual.widgets import Input

from advisor.errors import UsageError
from advisor.tui import choices, look, windows
from advisor.tui.app import AdvisorApp
from advisor.tui.keyline import MOST, KeyHint
from advisor.tui.keys import EVERYWHERE, FORBIDDEN, SCREENS, Key, all_ids, keymap_of, remapped, sign
from advisor.tui.palette import NOT_LISTED, Actions
from advisor.tui.screens.help import help_lines
from advisor.tui.screens.questions import QuestionsScreen
from advisor.tui.settings import Settings, keep_colors, last_colors, read_settings, settings_path
from tests.tui.play import Play, playing

ROWS = [(screen, key) for screen, keys in SCREENS.items() for key in keys] + [("", key) for key in EVERYWHERE]
STAGE_KEYS = {"cases": (), "questions": (), "answers": ("a",), "options": ("f4",), "plan": ("f5",)}


def bound(owner: type) -> Iterable[str]:
    for binding in owner.__dict__.get("BINDINGS", ()):
        assert isinstance(binding, Binding)
        yield from binding.key.split(",")


def test_no_key_that_terminals_or_tmux_keep_or_lose() -> None:
    owners = [AdvisorApp, choices.Choices, look.Page, windows.Reading, windows.Sure, windows.Pick, windows.Small]
    keys = {key for _, row in ROWS for key in row.keys} | {key for owner in owners for key in bound(owner)}
    assert not keys & FORBIDDEN
    # Ctrl only with the letters that arrive: C and Q by Textual's own habit, P for its list of actions.
    assert {key for key in keys if key.startswith(("ctrl", "alt"))} == {"ctrl+c", "ctrl+p", "ctrl+q"}


@pytest.mark.parametrize(("screen", "key"), ROWS, ids=lambda value: getattr(value, "id", value or "all"))
def test_every_action_has_a_plain_key_or_stands_in_the_go_to_list(screen: str, key: Key) -> None:
    plain = [k for k in key.keys if len(k) == 1 or k in ("enter", "escape", "tab", "question_mark")]
    by_list = key.action.startswith("app.stage") and any(k.id == "go" for k in EVERYWHERE)
    typing = screen == "field" or key.id == "copy"
    assert plain or by_list or typing, key


@pytest.mark.parametrize("screen", [name for name in SCREENS if name != "field"])
def test_no_key_means_two_things_on_one_screen(screen: str) -> None:
    rows = SCREENS[screen] + (EVERYWHERE if screen not in ("reading", "plans") else ())
    keys = [key for row in rows for key in row.keys]
    assert len(keys) == len(set(keys)), sorted(keys)


@pytest.mark.parametrize("screen", SCREENS)
def test_help_names_every_key_of_the_table_and_where_things_are(screen: str, home: Path) -> None:
    text = " ".join(" ".join(help_lines(screen, {})).split())
    for key in (*SCREENS[screen], *EVERYWHERE):
        assert f"{key.signs} {key.label}: {key.help}" in text
    for words in ("Home", "PgUp", "0 to 9", str(home / "data"), str(home / "config"), "cannot be undone", "Shift"):
        assert words.replace(" ", "") in text.replace(" ", "")  # a long path is broken over lines


async def test_the_table_holds_every_key_that_works_and_the_list_of_actions_shows_them(
    case_file: Callable[..., Path],
) -> None:
    ours = {sign(key) for _, row in ROWS for key in row.keys}
    async with playing(case_file()) as play:
        for name, keys in STAGE_KEYS.items():
            await play.press(*(("f3",) if name != "cases" else ("f2",)), *keys)
            assert name == play.stage.KEYS
            active = {
                active.binding.key
                for active in play.app.screen.active_bindings.values()
                if active.node is play.app or active.node is play.app.screen
            }
            inherited = {"ctrl+c", "super+c", "tab", "shift+tab"}
            assert {sign(key) for key in active - inherited} <= ours
            listed = [words for _, words in Actions(play.app.screen).rows()]
            for key in (*SCREENS[name], *EVERYWHERE):
                works = play.app.screen.check_action(key.action, ()) is not False
                assert (f"{key.label} ({key.signs})" in listed) == (works and key.id not in NOT_LISTED)


async def test_the_list_of_actions_finds_by_words_and_runs(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        await play.press("k")
        await play.pilot.pause(0.3)
        assert play.name == "CommandPalette"
        await play.pilot.press(*"high")
        await play.pilot.pause(0.5)
        assert "Colors" in play.text()
        await play.press("down", "enter")
        await play.pilot.pause(0.2)
        assert play.app.theme != "evening"


def whole_hints(play: Play, width: int) -> dict[str, KeyHint]:
    hints = {hint.key.id: hint for hint in play.app.screen.query(KeyHint)}
    assert all(hint.region.right <= width and hint.region.width for hint in hints.values())
    return hints


async def test_help_and_quit_are_at_the_foot_whole_at_any_width(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        for name, keys in STAGE_KEYS.items():
            await play.press(*(("f3",) if name != "cases" else ("f2",)), *keys)
            for width, height in ((80, 24), (40, 12)):
                await play.pilot.resize_terminal(width, height)
                await play.pilot.pause(0.05)
                hints = whole_hints(play, width)
                assert list(hints)[:2] == ["help", "quit"]
                assert len(hints) <= MOST and (width < 80 or len(hints) >= 4), name
                assert "? Help  q Quit" in play.lines()[height - 1]
        await play.press("f2")
        for width in (60, 40):
            await play.pilot.resize_terminal(width, 15)
            await play.pilot.pause(0.05)
            assert list(whole_hints(play, width))[:2] == ["help", "quit"]
        await play.press("n")
        assert list(whole_hints(play, 40))[:2] == ["field_help", "field_quit"]


async def test_while_typing_letters_are_letters_and_the_foot_says_what_works(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(80, 24)) as play:
        await play.press("f2", "n", "q", "h")
        assert play.app.screen.query_one(Input).value == "qh"
        assert "^Q Quit" in play.lines()[-1] and "? Help" not in play.lines()[-1]
        await play.press("f1")
        assert play.name == "Reading"
        await play.press("escape", "escape")
        assert "? Help" in play.lines()[-1]


@pytest.mark.parametrize("window", ["question_mark", "g", "k", "escape"])
async def test_ctrl_q_quits_from_everywhere(window: str) -> None:
    async with playing() as play:
        await play.press("n")  # a field
        if window != "escape":
            await play.press("escape", window)
        await play.pilot.press("ctrl+q")
        await play.pilot.pause()
        assert not play.app.is_running


async def test_ctrl_c_tells_how_to_quit_and_copies_what_is_marked(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        await play.press("ctrl+c")
        assert play.app.is_running and "q quits" in play.text()
        await play.press("f2", "o")
        field = play.app.screen.query_one(Input)
        field.value = "keeper"
        field.select_all()
        await play.press("ctrl+c")
        assert play.app.is_running and play.app.clipboard == "keeper"
        # Text marked with the mouse goes the same way: Textual's own binding is still there.
        await play.press("escape")
        assert any(b.binding.action == "screen.copy_text" for b in play.app.screen.active_bindings.values())


async def test_first_and_last_without_home_and_end() -> None:
    async with playing() as play:
        await play.press("greater_than_sign")
        rows = play.app.screen.query_one(choices.Choices)
        assert rows.highlighted == len(rows.rows) - 1 > 0
        await play.press("less_than_sign")
        assert rows.highlighted == 0
        await play.press("space", "minus", "end", "home", "pagedown", "pageup")
        assert rows.highlighted == 0


async def test_everything_can_be_clicked(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        for stage in (3, 4, 1, 2):
            await play.pilot.click(f"StageName.s{stage}")
            await play.rest()
            assert stage == play.stage.STAGE
        first = play.stage
        assert isinstance(first, QuestionsScreen) and first.due is not None
        key = first.due.question.key
        await play.pilot.click(choices.Choices, offset=(8, 1))
        await play.rest()
        assert key in play.app.session.case.answers  # type: ignore[union-attr]
        hint = next(hint for hint in play.app.screen.query(KeyHint) if hint.key.id == "why")
        await play.pilot.click(hint)
        await play.rest()
        assert play.name == "Reading"


def settings(text: str) -> None:
    path = settings_path()
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text(text, encoding="utf-8")


async def test_settings_give_an_action_another_letter(case_file: Callable[..., Path]) -> None:
    settings('mouse = false\n[keys]\nundo = "z"\n')
    given = read_settings(all_ids())
    assert given == Settings(False, {"undo": "z"})
    async with playing(case_file(), settings=given) as play:
        await play.press("1", "z")
        assert "Taken back" in play.text()
        await play.press("1", "u")
        assert "Taken back" not in play.text()
        await play.press("question_mark")
        rows = {key.id: key for key in remapped(EVERYWHERE, given.keys)}
        assert rows["undo"].signs == "z"
    assert keymap_of({"quit": "e"}) == {"quit": "e,ctrl+q"}


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("mouse = maybe\n", "line 1"),
        ("mous = true\n", "did you mean 'mouse'?"),
        ("mouse = 1\n", "true or false"),
        ('[keys]\nundoo = "z"\n', "did you mean 'undo'?"),
        ('[keys]\nundo = "ctrl+j"\n', "one letter"),
    ],
)
def test_wrong_settings_are_told_with_the_file(text: str, words: str) -> None:
    settings(text)
    with pytest.raises(UsageError) as refusal:
        read_settings(all_ids())
    assert "settings.toml" in str(refusal.value) and words in str(refusal.value)


async def test_the_colors_chosen_are_kept(home: Path) -> None:
    assert last_colors() == ""
    async with playing() as play:
        await play.press("t")
        chosen = play.app.theme
    async with playing() as play:
        assert play.app.theme == chosen != "evening"
    keep_colors("no such colors")
    async with playing() as play:
        assert play.app.theme == "evening"
    assert (
        json.dumps(sorted(p.name for p in (home / "state").iterdir() if not p.name.endswith(".lock"))) == '["colors"]'
    )
