"""An amount shared over several places in marks of her tape, with the words that tell each place its part."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from advisor.core.figure import Figure, mm_of
from advisor.core.model import Mm
from advisor.lengths import Tape, split

SHARED = "shared out in marks of the tape"
NOTHING = Mm(0)


@dataclass(frozen=True)
class Shares:
    """`figures` by the names that `words` uses; `rest` is what the tape cannot share out, mm."""

    figures: Mapping[str, Figure]
    words: str
    parts: tuple[Figure, ...]
    rest: Mm = NOTHING

    @property
    def largest(self) -> Figure:
        """The largest part."""
        return max(self.parts, key=mm_of)

    @property
    def count(self) -> int:
        """How many parts there are."""
        return len(self.parts)


def shared(id: str, total: Figure, places: Sequence[str], link: str, each: str, tape: Tape) -> Shares:
    """`total` over `places`, on the tape and adding up: "{id} <link> <each>", or every place by name if they differ."""
    sizes = split(mm_of(total), len(places), tape)
    if len(set(sizes)) == 1:
        one = Figure(id, sizes[0], SHARED, (total.id,), "common-practice")
        return Shares({id: one}, f"{{{id}}} {link} {each}", (one,) * len(places))
    made = tuple(Figure(f"{id}_{n}", size, SHARED, (total.id,), "common-practice") for n, size in enumerate(sizes, 1))
    words = ", ".join(f"{{{figure.id}}} {link} {place}" for figure, place in zip(made, places, strict=True))
    return Shares({figure.id: figure for figure in made}, words, made)


@dataclass(frozen=True)
class Folds(Shares):
    """Pleats or darts of a whole edge; `parts` are the depths of both sides."""

    @property
    def deepest(self) -> Figure:
        """The deepest fold."""
        return self.largest


def folded(total: Figure, a_side: int, counted: str, tape: Tape) -> Folds:
    """`total` taken by twice `a_side` folds, mirrored about the center, each depth on the tape.

    `counted` says which way the depths are told off where they differ. A fold of depth d takes 2 d, so that four
    depths of one mark are the least step; what is under it is the `rest`.
    """
    step = 4 * tape.mark
    depth = mm_of(total) // step * tape.mark
    sizes = split(depth, a_side, tape)
    rest = mm_of(total) - 4 * depth
    left = Figure("rest", rest, "what is under four marks of the tape", (total.id,), "common-practice")
    named = {"rest": left} if rest else {}
    if len(set(sizes)) == 1:
        one = Figure("depth", sizes[0], SHARED, (total.id,), "common-practice")
        take = Figure("take", 2 * sizes[0], "twice the depth", ("depth",), "common-practice")
        words = "each {depth} from fold to stitching, which takes {take} out of the edge"
        return Folds({"depth": one, "take": take, **named}, words, (one,) * (2 * a_side), rest)
    made = tuple(Figure(f"depth_{n}", size, SHARED, (total.id,), "common-practice") for n, size in enumerate(sizes, 1))
    told = ", ".join(f"{{{figure.id}}}" for figure in made)
    words = f"from fold to stitching {told}, counted {counted}; each takes twice that"
    return Folds({**{figure.id: figure for figure in made}, **named}, words, made + made, rest)
