"""A case written from nothing: the layout a new file gets, with the comments that teach its notation."""

from collections.abc import Mapping

from advisor.casefile.notation import (
    Node,
    answers_node,
    choice_node,
    entry_text,
    head_nodes,
    inline,
    key,
    limits_node,
    record_node,
)
from advisor.casefile.vocabulary import Garments
from advisor.core.case import Case, Record

_HEAD = """\
# An alteration case. It may be edited by hand: comments and the order of the lines are kept.
# Lengths: "27 1/2 in", "70.5 cm", or bare in the unit of the tape, "27 1/2".
# Inch marks need single quotes around the whole: '27 1/2"'.
"""

_ANSWERS = """\
[answers]
# One table for each place of the garment, one line for each thing asked about it:
#   [answers.waist]
#   low_by = "1 1/2 in"
#   pinned = { value = "2 in", how = "pinned", at = "2026-11-25T09:30:00" }
# how: pinned, measured or told. Asked, but you cannot say: { unknown = true }. Not asked yet: no line.
"""

_CHOICES = """\
[choices]
# What is wrong, and the fix taken for it; your reason if you overrule the first in rank; when.
"""

_LIMITS = """\
[limits]
# hardest: the most difficult work you take on; weakest: the least durable; both from 1 to 5.
# weigh: how much each counts in the ranking, from 0 to 3.
# visible = 3: the most a fix may show. cutting = false: nothing that cannot be undone. buttonholes = false: the
# machine makes none. minutes = 120, money = 20: for all of the work; prices = { "zipper" = 4.50 }: what things cost.
"""


_RECORD = """\
[record]
# The plan as it was printed last, and what it rested on: the advisor writes it for `advisor replay`. It may be deleted.
"""


def case_text(case: Case, garments: Garments) -> str:
    """`case` as a new file, its answers in the order of the garment's questions."""
    head = _HEAD + "".join(f"{name} = {inline(node)}\n" for name, node in head_nodes(case).items())
    answers = answers_node(case, garments.get(case.garment, {}))
    tables = [f"[{key('answers', place)}]\n{_rows(rows)}" for place, rows in answers.items()]
    choices = _CHOICES + _rows({finding: choice_node(choice) for finding, choice in case.choices.items()})
    limits = _LIMITS + _rows(limits_node(case.limits))
    log = [entry_text(entry) for entry in case.log]
    record = _record_tables(case.record) if case.record else []
    return "\n".join([head, _ANSWERS, *tables, choices, limits, *record, *log])


def _record_tables(record: Record) -> list[str]:
    node = record_node(record)
    inner = {name: rows for name in ("findings", "steps", "cards") if isinstance(rows := node.pop(name), Mapping)}
    tables = [f"[{key('record', name)}]\n{_rows(rows)}" for name, rows in inner.items() if rows]
    return [_RECORD + _rows(node), *tables]


def _rows(rows: Mapping[str, Node]) -> str:
    return "".join(f"{key(name)} = {inline(node)}\n" for name, node in rows.items())
