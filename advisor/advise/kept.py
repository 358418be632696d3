"""What was worked out before. All of it is bounded, and threads may share it."""

import threading
from collections.abc import Hashable, Mapping
from itertools import count
from typing import Generic, TypeVar

from advisor.core.model import Key, Value

V = TypeVar("V")


class Kept(Generic[V]):
    """Answers by their tokens: the last `most / 2` put or asked for, and of those before no more than as many.

    Two shelves: what is asked for again comes to the new one; when that is full it becomes the old one, and
    what was left on the old one is forgotten. So an answer that is at hand costs one look.
    """

    def __init__(self, most: int) -> None:
        self._half = max(most // 2, 1)
        self._new: dict[Hashable, V] = {}
        self._old: dict[Hashable, V] = {}
        self._lock = threading.Lock()

    def get(self, token: Hashable) -> V | None:
        """The answer kept under `token`, if any."""
        found = self._new.get(token)
        if found is None and self._old:
            found = self._old.get(token)
            if found is not None:
                self.put(token, found)
        return found

    def put(self, token: Hashable, answer: V) -> V:
        """Keep `answer` and give it back."""
        with self._lock:
            if len(self._new) >= self._half and token not in self._new:
                self._old, self._new = self._new, {}
            self._new[token] = answer
        return answer

    def clear(self) -> None:
        """Forget all."""
        with self._lock:
            self._new, self._old = {}, {}

    def __len__(self) -> int:
        return len(self._new.keys() | self._old.keys())


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
