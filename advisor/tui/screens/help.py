"""Help: what the stages are for, every key, the mouse, what the words at the options mean, where things are kept."""

from collections.abc import Mapping

from advisor.ground import user_folders
from advisor.report.lines import bullets, heading, para
from advisor.tui.keys import EVERYWHERE, IN_A_LIST, SCREENS, Key, all_ids, remapped
from advisor.tui.settings import settings_path
from advisor.tui.shelf import own_folder

FLOW = (
    "1 Cases: open one, begin one, or look at an example.",
    "2 Questions: only those whose answer can still change something. Every answer is saved as it is given.",
    "3 Options: what is wrong, and what can be done about it, best first.",
    "4 Plan: the work in order, with every number.",
)
WORDS = (
    "suggested: you chose nothing, so the first in rank stands.",
    "chosen: you chose it. Any option may be chosen; if it is not the first, your reason is kept.",
    "ruled out: something speaks against it here. It may be chosen all the same, with a reason. w tells why, and "
    "what would change that.",
    "cannot be undone: after such a step there is no way back, cutting for one. The plan says before each what to "
    "make sure of. Choosing is no step: any choice can be taken back.",
    "cannot say: a good answer. The advice then tells what hangs on it.",
)
MOUSE = (
    "It is never needed. A click takes a line, a stage at the top, a key at the foot; the wheel scrolls. Drag marks "
    "text, Ctrl+C copies it; Shift and drag leaves marking to the terminal. ADVISOR_MOUSE=0 leaves all of it to the "
    "terminal."
)


def help_lines(screen: str, keymap: Mapping[str, str]) -> list[str]:
    """Help for the screen of that name in the table of keys."""
    lines = heading("Keys on this screen") + key_lines(SCREENS.get(screen, ()), keymap)
    lines += heading("In lists and long texts")
    lines += [row for keys, words in IN_A_LIST for row in para(words, 2, f"{keys}: ")]
    lines += heading("Keys everywhere") + key_lines(EVERYWHERE, keymap)
    lines += heading("While typing") + key_lines(SCREENS["field"], keymap)
    lines += heading("In a window over the screen") + key_lines(SCREENS["reading"], keymap)
    lines += heading("The four stages") + bullets(FLOW, 0)
    lines += heading("What the words mean") + bullets(WORDS, 0)
    lines += heading("Mouse") + para(MOUSE)
    folders = user_folders(create=False)
    lines += heading("Where things are")
    lines += bullets(
        (
            f"cases begun here: {own_folder()}",
            f"settings: {settings_path()}",
            f"answers that could not be saved: {folders.state / 'journal'}",
            "without any screen: advisor interview --plain",
        ),
        0,
    )
    lines += para("In the settings, mouse = false leaves the mouse to the terminal; [keys] gives these other letters:")
    lines += para(", ".join(all_ids()), 2)
    return lines


def key_lines(keys: tuple[Key, ...], keymap: Mapping[str, str]) -> list[str]:
    """One paragraph for each key of the table."""
    lines = []
    for key in remapped(keys, keymap):
        lines += para(f"{key.label}: {key.help}", 2, f"{key.signs}  ")
    return lines
