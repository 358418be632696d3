"""A shape worth printing at its true size, named by the operation that it serves."""

from dataclasses import dataclass
from typing import Literal

Kind = Literal["dart", "patch", "row", "run_out", "hem_card"]
"""dart: fold to stitch, length. patch: side. row: places from the top down. run_out: depth at the top, length.
hem_card: depths to turn to, from the edge."""


@dataclass(frozen=True)
class Template:
    """What to draw, from these figures of the operation by name, in the order the kind asks for."""

    kind: Kind
    figures: tuple[str, ...]
