"""The list of actions: every row of the table that works on the screen, found by its words, with its key."""

from collections.abc import Iterator
from functools import partial

from textual.command import DiscoveryHit, Hit, Hits, Provider

from advisor.tui.host import host
from advisor.tui.keys import EVERYWHERE, SCREENS, Key, remapped

NOT_LISTED = ("actions", "copy")


class Actions(Provider):
    """What can be done here, from the table of keys."""

    async def discover(self) -> Hits:
        for key, words in self.rows():
            yield DiscoveryHit(words, partial(self.run, key), text=words, help=key.help)

    async def search(self, query: str) -> Hits:
        matcher = self.matcher(query)
        for key, words in self.rows():
            score = matcher.match(f"{words} {key.help}")
            if score > 0:
                yield Hit(score, words, partial(self.run, key), text=words, help=key.help)

    def rows(self) -> Iterator[tuple[Key, str]]:
        """Each action that works now, and how it is listed."""
        own = SCREENS.get(str(getattr(self.screen, "KEYS", "")), ())
        for key in remapped((*own, *EVERYWHERE), host(self.screen).keys):
            if key.id not in NOT_LISTED and self.screen.check_action(key.action, ()) is not False:
                yield key, f"{key.label} ({key.signs})"

    async def run(self, key: Key) -> None:
        """Do it. What a list does with Enter is left to the list."""
        if key.action == "take":
            self.app.simulate_key("enter")
        else:
            await self.app.run_action(key.action, self.screen)
