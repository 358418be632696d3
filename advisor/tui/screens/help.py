"""Help: what the stages are for, every key that works now, the mouse, and where things are kept."""

from textual.app import App
from textual.screen import Screen

from advisor.ground import user_folders
from advisor.report.lines import bullets, heading, para

FLOW = (
    "1 Cases: open one, begin one, or look at an example.",
    "2 Questions: only those whose answer can still change something. Every answer is saved as it is given.",
    "3 Options: what is wrong and what can be done about it, best first. > is suggested, * is chosen by you. "
    "Any other than the first may be chosen; your reason is kept.",
    "4 Plan: the work in order. Steps that cannot be undone are marked before them.",
)


def help_lines(app: App[None], screen: Screen[object]) -> list[str]:
    """Help for `screen`."""
    lines = heading("The four stages") + bullets(FLOW, 0)
    lines += heading("Keys that work here")
    for key, active in sorted(screen.active_bindings.items(), key=lambda item: item[1].binding.description):
        binding = active.binding
        if binding.description and active.enabled:
            shown = binding.key_display or app.get_key_display(binding)
            lines += para(f"{shown}: {binding.description}{_more(binding.action)}", 2)
        del key
    lines += heading("Mouse")
    lines += para(
        "A click takes a line, the wheel scrolls. Hold Shift and drag to mark text. ADVISOR_MOUSE=0 leaves the mouse to the terminal."
    )
    lines += heading("Where things are")
    folders = user_folders(create=False)
    lines += bullets((f"cases begun here: {folders.data / 'cases'}", f"settings: {folders.config}"), 0)
    lines += para("No screen at all: advisor interview --plain")
    return lines


MORE = {
    "undo": ": take the last answer or choice back",
    "leave": ": everything is saved already",
    "unknown": ": the advice then says 'only if'",
    "later": ": asked again the next time",
    "theme": ": dark, light, high contrast",
}


def _more(action: str) -> str:
    return MORE.get(action.removeprefix("app."), "")
