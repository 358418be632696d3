"""The keys at the foot: help and quit always, then as many of the screen's own as fit whole. Each can be clicked."""

from collections.abc import Iterable

from textual.app import ComposeResult
from textual.containers import Horizontal
from textual.events import Click, Resize
from textual.screen import ModalScreen
from textual.widgets import Input, Static

from advisor.tui.host import host
from advisor.tui.keys import EVERYWHERE, SCREENS, Key, remapped

MOST = 6
ALWAYS = ("help", "quit", "field_help", "field_quit")


class KeyHint(Static):
    """One key with its label; a click does what the key does."""

    def __init__(self, key: Key) -> None:
        super().__init__(shown(key), markup=False)
        self.key = key

    def on_click(self, event: Click) -> None:
        event.stop()
        self.app.simulate_key(self.key.keys[0])


def shown(key: Key) -> str:
    """A key and its label as they stand at the foot."""
    return f"{key.sign} {key.label}"


def fitting(keys: Iterable[Key], width: int) -> tuple[Key, ...]:
    """As many of `keys` as fit whole in `width` cells, two apart and one in from the edge; at most MOST."""
    kept: list[Key] = []
    room = width - 1
    for key in keys:
        room -= len(shown(key)) + (2 if kept else 0)
        if room < 0 or len(kept) == MOST:
            break
        kept.append(key)
    return tuple(kept)


class KeyLine(Horizontal):
    """The line of keys for one screen of the table. While something is typed it shows what works then."""

    DEFAULT_CSS = """
    KeyLine { height: 1; dock: bottom; background: $panel; color: $foreground; padding: 0 0 0 1; }
    KeyLine KeyHint { width: auto; margin: 0 2 0 0; }
    KeyLine KeyHint:hover { text-style: underline; }
    """

    def __init__(self, keys: str) -> None:
        super().__init__()
        self.keys = keys
        self.now: tuple[Key, ...] = ()

    def compose(self) -> ComposeResult:
        for key in self.now:
            yield KeyHint(key)

    def on_mount(self) -> None:
        self.screen.bindings_updated_signal.subscribe(self, lambda _: self.look_again())
        self.look_again()

    def on_resize(self, event: Resize) -> None:
        self.look_again()

    def look_again(self) -> None:
        """Show the keys that work now."""
        if not self.is_attached:
            return
        keys = fitting(self.offered(), self.size.width or self.app.size.width)
        if keys != self.now:
            self.now = keys
            self.refresh(recompose=True)

    def offered(self) -> list[Key]:
        """The keys that could be shown, help and quit first."""
        screen = self.screen
        if isinstance(screen.focused, Input):
            rows = SCREENS["field"]
        elif isinstance(screen, ModalScreen):
            # Over a screen, q goes back to it; quitting takes the other key.
            rows = (*SCREENS[self.keys], *(key for key in SCREENS["field"] if key.id == "field_quit"))
        else:
            rows = (*EVERYWHERE, *SCREENS[self.keys])
        rows = remapped(rows, host(screen).keys)
        works = [key for key in rows if key.foot and screen.check_action(key.action, ()) is not False]
        first = [key for key in works if key.id in ALWAYS]
        # "Go to" comes last: it is the same everywhere, and so the first to be left out.
        last = [key for key in works if key.id == "go"]
        return [*first, *(key for key in works if key not in first and key not in last), *last]
