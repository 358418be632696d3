"""The one table of keys. The bindings, the line of keys at the foot, the help and the list of actions come from it.

No key here is one that terminals or tmux keep for themselves or cannot send (Ctrl with Enter, Space, a digit or
a punctuation mark; Ctrl+I, J and M, which are Tab and Enter; Ctrl+S, which stops the output), and nothing hangs on
a function key or on Home and End alone. A test holds it to that.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from textual.binding import Binding, BindingType

SIGNS = {
    "question_mark": "?",
    "escape": "Esc",
    "enter": "Enter",
    "tab": "Tab",
    "less_than_sign": "<",
    "greater_than_sign": ">",
    "space": "Space",
    "ctrl+q": "^Q",
    "ctrl+p": "^P",
    "ctrl+c": "^C",
    "pageup": "PgUp",
    "pagedown": "PgDn",
    "backspace": "Backspace",
    "delete": "Del",
}


@dataclass(frozen=True)
class Key:
    """One action and its keys.

    `id` is what the settings call it, `label` stands at the foot if `foot`, `help` says what it does in full.
    `action` is Textual's name for it, with a dot if it belongs to the app rather than to the screen.
    """

    id: str
    keys: tuple[str, ...]
    action: str
    label: str
    help: str
    foot: bool = False

    @property
    def sign(self) -> str:
        """The first of its keys as it is written."""
        return sign(self.keys[0])

    @property
    def signs(self) -> str:
        """All of its keys as they are written."""
        return ", ".join(dict.fromkeys(sign(key) for key in self.keys))


def sign(key: str) -> str:
    """A key as it is written: `question_mark` is ?, `f2` is F2, a letter itself."""
    return SIGNS.get(key, key.upper() if key[:1] == "f" and key[1:].isdecimal() else key)


EVERYWHERE = (
    Key("help", ("question_mark", "h", "f1"), "app.help", "Help", "this help", True),
    Key("quit", ("q", "ctrl+q"), "app.leave", "Quit", "quit; everything given is saved already", True),
    Key("go", ("g",), "app.go", "Go to", "go to another stage; then a number", True),
    Key("cases", ("f2",), "app.stage(1)", "Cases", "go to 1, the cases"),
    Key("questions", ("f3",), "app.stage(2)", "Questions", "go to 2, the questions"),
    Key("options", ("f4",), "app.stage(3)", "Options", "go to 3, the options"),
    Key("plan", ("f5",), "app.stage(4)", "Plan", "go to 4, the plan"),
    Key("back", ("escape",), "back", "Back", "one step back: out of a field, out of a window, to the stage before"),
    Key("undo", ("u",), "app.undo", "Undo", "take the last answer or choice back; what was given before it stays"),
    Key("redo", ("r",), "app.redo", "Redo", "give again what was taken back last"),
    Key("colors", ("t",), "app.theme", "Colors", "other colors: dark, light, high contrast"),
    Key("actions", ("k", "ctrl+p"), "app.command_palette", "All actions", "a list of everything that can be done here"),
    Key("copy", ("ctrl+c",), "app.help_quit", "Copy", "copy the text that is marked; it never quits"),
)

SCREENS: Mapping[str, tuple[Key, ...]] = {
    "cases": (
        Key("open", ("enter",), "take", "Open", "open the case on the line; an example is opened as a copy", True),
        Key("new", ("n",), "begin", "New", "begin a new case", True),
        Key("file", ("o",), "file", "Open file", "open a case by the name of its file", True),
    ),
    "questions": (
        Key(
            "take",
            ("enter",),
            "take",
            "Take",
            "take the answer on the line, or mark what is seen; its number does the same at once",
        ),
        Key(
            "unknown",
            ("x",),
            "unknown",
            "Cannot say",
            "you cannot say: the advice then says 'only if'",
            True,
        ),
        Key("later", ("l",), "later", "Later", "leave the question for later in this sitting", True),
        Key("why", ("w",), "why", "Why", "why it is asked: what its answer can change", True),
        Key("answers", ("a",), "answers", "Answers", "what was answered, to look at and to change"),
        Key("type", ("i",), "type", "Type", "back into the field, to type"),
    ),
    "answers": (
        Key("change", ("enter",), "take", "Change", "answer the question on the line again", True),
        Key("clear", ("x",), "clear", "Clear", "take the answer on the line out; asks first", True),
        Key("more", ("m",), "more", "More", "show the questions that were not asked as well", True),
    ),
    "options": (
        Key("choose", ("enter", "c"), "choose", "Choose", "choose the option on the line", True),
        Key("why", ("w",), "why", "Why", "why it is offered, or what rules it out and what would change that", True),
        Key("drop", ("d",), "drop", "Unchoose", "take the choice back, so that the first in rank stands again"),
        Key("other", ("tab", "o"), "other", "Other list", "between what is wrong and what can be done", True),
        Key("plans", ("p",), "plans", "Plans", "compare the plans for the whole garment, and take one", True),
    ),
    "plans": (
        Key("take", ("enter",), "take", "Take", "take the plan on the line; its number does the same at once", True),
        Key("shut", ("escape", "q"), "back", "Back", "close this window; all stays as it is", True),
        Key("text", ("tab", "o"), "other", "Other part", "between the plans and what changes between them", True),
    ),
    "plan": (
        Key("next", ("n",), "part(1)", "Next part", "to the next part of the plan", True),
        Key("previous", ("p",), "part(-1)", "Part before", "to the part before"),
        Key("parts", ("j",), "jump", "Jump", "choose a part of the plan to jump to", True),
        Key("save", ("s",), "save", "Save text", "save the plan as a text file beside the case", True),
        Key("sheet", ("f",), "sheet", "Save sheet", "save a sheet to print, with templates at true size (PDF)", True),
        Key("send", ("y",), "send", "To clipboard", "send the plan to the terminal's clipboard, if it has one"),
    ),
    "reading": (
        Key("close", ("escape", "enter", "q"), "back", "Back", "close this window", True),
        Key("deeper", ("m",), "deeper", "More", "everything behind it, down to the answers", True),
    ),
    "field": (
        Key("field_help", ("f1",), "app.help", "Help", "this help, while typing", True),
        Key("field_quit", ("ctrl+q",), "app.leave", "Quit", "quit, while typing", True),
        Key("field_take", ("enter",), "take", "Take", "take what is typed; nothing typed never erases anything", True),
        Key("field_free", ("escape",), "back", "Leave field", "leave the field, so that single keys work", True),
    ),
}
"""By screen, what its keys do. "field" is shown, in place of the others, while something is typed."""

IN_A_LIST = (
    ("Up, Down", "one line up or down"),
    ("0 to 9", "take the line with that number, where lines are numbered; in a list of things to see, mark it"),
    ("< or Home, > or End", "first and last line"),
    ("- or PgUp, Space or PgDn", "a page up or down"),
)
DIGITS = tuple(Binding(str(digit), f"number({digit})", show=False) for digit in range(10))
"""For a list, and for the screens that show one, so that a digit works wherever on them one is."""
LISTS = (
    Binding("less_than_sign", "first", "First", show=False),
    Binding("greater_than_sign", "last", "Last", show=False),
    Binding("minus", "page_up", "Page up", show=False),
    Binding("space", "page_down", "Page down", show=False),
)
TEXTS = (
    Binding("less_than_sign", "scroll_home", "Top", show=False),
    Binding("greater_than_sign", "scroll_end", "End", show=False),
    Binding("minus", "page_up", "Page up", show=False),
    Binding("space", "page_down", "Page down", show=False),
)
"""The same keys for a list and for a text to scroll, beside Home, End, PgUp and PgDn, which some terminals lose."""


def bindings(keys: Iterable[Key]) -> list[BindingType]:
    """The table's rows as Textual wants them. Enter is left out where a list or a field takes it itself."""
    return [
        Binding(",".join(key.keys), key.action, key.label, show=False, id=key.id)
        for key in keys
        if key.action != "take"
    ]


def screen_bindings(screen: str) -> list[BindingType]:
    """The bindings of one screen; "back" and the list of actions belong to all."""
    ours = SCREENS[screen]
    back = () if any(key.action == "back" for key in ours) else tuple(k for k in EVERYWHERE if k.id == "back")
    return bindings((*ours, *back))


def app_bindings() -> list[BindingType]:
    """The bindings of the app. Ctrl+Q comes before all others, for windows keep the app's other keys from it."""
    rows = (replace(key, action=key.action.removeprefix("app.")) for key in EVERYWHERE if key.id != "back")
    return [*bindings(rows), Binding("ctrl+q", "leave", "Quit", show=False, priority=True)]


def remapped(keys: Iterable[Key], keymap: Mapping[str, str]) -> tuple[Key, ...]:
    """The rows with the keys the settings give them: in place of the letters, the longer names stay."""
    return tuple(
        replace(key, keys=(keymap[key.id], *(k for k in key.keys if len(k) > 1))) if key.id in keymap else key
        for key in keys
    )


def keymap_of(chosen: Mapping[str, str]) -> dict[str, str]:
    """The keys chosen in the settings as Textual wants them."""
    rows = [key for keys in SCREENS.values() for key in keys] + list(EVERYWHERE)
    return {key.id: ",".join(key.keys) for key in remapped(rows, chosen) if key.id in chosen}


def all_ids() -> tuple[str, ...]:
    """What the settings may give other keys, sorted."""
    rows = [key for keys in SCREENS.values() for key in keys] + list(EVERYWHERE)
    return tuple(sorted({key.id for key in rows if key.action != "take"}))


FORBIDDEN = frozenset({"ctrl+enter", "ctrl+question_mark", "ctrl+space", "ctrl+at", "ctrl+i", "ctrl+j", "ctrl+m"}) | {
    "ctrl+s", "ctrl+z", "ctrl+b", "ctrl+h", "ctrl+left_square_bracket", "f10", "f11",
    *(f"ctrl+{digit}" for digit in range(10)),
}  # fmt: skip
"""Keys that never arrive, arrive as others, or belong to the terminal, to tmux or to the line discipline."""
