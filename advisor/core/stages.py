"""The stages of work, in the order a maker meets them.

A finding belongs to one stage and is decided with every effect up to that stage in. An option of a stage
is sized on the garment as earlier stages leave it, so a rule of one stage may not read what a later writes.
"""

from typing import Literal, get_args

Stage = Literal["open", "mend", "level", "girth", "join", "closure", "hem", "finish"]

STAGES: tuple[Stage, ...] = get_args(Stage)

STAGE_WORDS: dict[Stage, str] = {
    "open": "look over, wash, open and strip",
    "mend": "mend the cloth",
    "level": "set levels, seat and hip",
    "girth": "fit the girths",
    "join": "make the edges agree",
    "closure": "closures",
    "hem": "lengths and hems",
    "finish": "finish and press",
}


def stage_index(stage: Stage) -> int:
    """Where `stage` stands in the order of work, from 0."""
    return STAGES.index(stage)
