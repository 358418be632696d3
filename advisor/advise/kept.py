"""What was worked out before. All of it is bounded, and threads may share it."""

import threading
from collections import OrderedDict
from collections.abc import Hashable, Mapping
from itertools import count
from typing import Generic, TypeVar

from advisor.core.model import Key, Value

V = TypeVar("V")


class Kept(Generic[V]):
    """The last `most` answers by their tokens; the one not asked for longest goes first."""

    def __init__(self, most: int) -> None:
        self._most = most
        self._found: OrderedDict[Hashable, V] = OrderedDict()
        self._lock = threading.Lock()

    def get(self, token: Hashable) -> V | None:
        """The answer kept under `token`, if any."""
        with self._lock:
            found = self._found.get(token)
            if found is not None:
                self._found.move_to_end(token)
            return found

    def put(self, token: Hashable, answer: V) -> V:
        """Keep `answer` and give it back."""
        with self._lock:
            self._found[token] = answer
            if len(self._found) > self._most:
                self._found.popitem(last=False)
        return answer

    def clear(self) -> None:
        """Forget all."""
        with self._lock:
            self._found.clear()

    def __len__(self) -> int:
        return len(self._found)


class Numbers:
    """Short names for long tokens: equal tokens get equal numbers, as long as both are kept.

    No number is given twice, so a token that was forgotten and met again is at worst taken for a new one.
    """

    def __init__(self, most: int) -> None:
        self._numbers: Kept[int] = Kept(most)
        self._fresh = count(1)

    def of(self, token: Hashable) -> int:
        """The number of a token."""
        return self._numbers.get(token) or self._numbers.put(token, next(self._fresh))


class KeptByReads(Generic[V]):
    """Answers of pure functions of a token and a garment, kept by what each was seen to look at in the garment.

    Which keys a function looks at may hang on what it finds there; so several sets of keys are kept for a token.
    """

    WAYS = 8

    def __init__(self, most: int) -> None:
        self._keys: Kept[tuple[tuple[Key, ...], ...]] = Kept(most)
        self._answers: Kept[V] = Kept(most)

    def get(self, token: Hashable, values: Mapping[Key, Value]) -> V | None:
        """The answer for a garment with these values, if it was met before."""
        for keys in self._keys.get(token) or ():
            found = self._answers.get((token, keys, tuple(map(values.get, keys))))
            if found is not None:
                return found
        return None

    def put(self, token: Hashable, keys: tuple[Key, ...], values: Mapping[Key, Value], answer: V) -> V:
        """Keep an answer that was worked out looking at `keys`, and give it back."""
        known = self._keys.get(token) or ()
        if keys not in known:
            self._keys.put(token, (keys, *known[: self.WAYS - 1]))
        return self._answers.put((token, keys, tuple(map(values.get, keys))), answer)
