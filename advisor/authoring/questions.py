"""A new question at the end of those of a role, put into the role's file without touching a comment in it."""

import tomllib
from pathlib import Path
from typing import Any

from advisor.authoring.naming import plain_name
from advisor.authoring.writing import told
from advisor.errors import KnowledgeError, UsageError, nearest
from advisor.ground import read_text, save_text
from advisor.rulebase.garment import RoleShape
from advisor.rulebase.toml import read_shape

WORD = """[slots.{slot}]
name = "FILL: what is asked for, in a few words; {{place}} stands for the part"
ask = "FILL: the question as a sentence; {{place}} stands for the part"
help = "FILL: how to see it; or take the line out"
kind = "word"
neutral = "no"  # FILL: the word that stands in until she answers
rank = 50  # FILL: small numbers are asked first
words = {{ no = "FILL: the answer in her words", yes = "FILL: the answer in her words" }}
"""
LENGTH = """[slots.{slot}]
name = "FILL: what is asked for, in a few words; {{place}} stands for the part"
ask = "FILL: the question as a sentence; {{place}} stands for the part"
help = "FILL: where the tape begins and ends; or take the line out"
kind = "{kind}"
how = "{how}"
neutral = "0 in"  # FILL: the length that stands in until she answers
least = "0 in"  # FILL: the least and the most that can be true
most = "6 in"
rank = 50  # FILL: small numbers are asked first
"""
KINDS = {
    "word": WORD,
    "length": LENGTH.replace("{kind}", "length").replace("{how}", "measured"),
    "pinch": LENGTH.replace("{kind}", "pinch").replace("{how}", "pinned"),
}


def add_question(folder: Path, role: str, slot: str, kind: str) -> tuple[Path, tuple[str, ...]]:
    """Put the frame of a question `slot` into the file of `role`; the file, and what to do next.

    `kind`: a key of KINDS. UsageError for a role there is not or a slot it has; KnowledgeError for a file that
    cannot be read; SaveError if it cannot be written.
    """
    path = folder / "roles" / f"{role}.toml"
    roles = {each.stem for each in (folder / "roles").glob("*.toml")}
    if role not in roles:
        raise UsageError(f"no role '{role}'", hint=nearest(role, roles))
    plain_name(slot, "the question")
    shape = read_shape(path, RoleShape)
    if slot in {*shape.slots, *shape.states, *shape.measures}:
        raise UsageError(f"'{slot}' is there already", where=told(path), hint="choose another name, or edit that file")
    text, digest = read_text(path, error=KnowledgeError)
    frame = KINDS[kind].format(slot=slot)
    after = inserted(text, frame)
    _same_but_for(path, text, after, slot, frame)
    save_text(path, after, expect=digest)
    steps = (
        f"fill in every FILL of [slots.{slot}], then run `advisor rules check`",
        "let a rule look at it: until one does, nobody is asked",
    )
    return path, steps


def inserted(text: str, frame: str) -> str:
    """`text` with `frame` after the last of its questions and before the comments of what follows."""
    end = "\r\n" if "\r\n" in text else "\n"
    lines = text.splitlines()
    heads = [number for number, line in enumerate(lines) if line.lstrip().startswith("[")]
    slots = [number for number in heads if lines[number].lstrip().startswith("[slots.")]
    later = [number for number in heads if slots and number > slots[-1]] if slots else heads
    at = later[0] if later else len(lines)
    # What stands right above a heading is about it.
    while at > 0 and lines[at - 1].lstrip().startswith("#") and later:
        at -= 1
    before, after = lines[:at], lines[at:]
    while before and not before[-1].strip():
        before.pop()
    new = [*before, "", *frame.splitlines(), *([""] if after else []), *after]
    return end.join(new) + end


def _same_but_for(path: Path, before: str, after: str, slot: str, frame: str) -> None:
    """Whether the file says what it said, and the question besides. It is looked at once more before it is written."""
    wanted: dict[str, Any] = tomllib.loads(before)
    wanted.setdefault("slots", {})[slot] = tomllib.loads(frame)["slots"][slot]
    try:
        same = tomllib.loads(after) == wanted
    except tomllib.TOMLDecodeError:
        same = False
    if not same:
        hint = f"write [slots.{slot}] into it by hand"
        raise KnowledgeError("is laid out in a way no question can be put into safely", where=told(path), hint=hint)
