"""The mark that frames of `advisor rules new` hold wherever something is still to be written."""

import re
from collections.abc import Iterator

FILL = "FILL"
_MARK = re.compile(rf"\b{FILL}\b:?\s*([^\"]*)")


def marked(text: str) -> Iterator[tuple[int, str]]:
    """The lines that hold the mark, by number from 1, each with what it says is to be written."""
    if FILL in text:
        for number, line in enumerate(text.splitlines(), 1):
            found = _MARK.search(line)
            if found:
                yield number, found[1].strip(" ,()") or "something"
