"""Saving a case: the file as she keeps it, with only what differs changed, read back before it is written."""

import os
import pathlib
from dataclasses import fields

from advisor.casefile.editing import Page
from advisor.casefile.fresh import case_text
from advisor.casefile.lines import Path, comments, statements
from advisor.casefile.notation import Node, case_node, entry_text, record_node
from advisor.casefile.reading import Opened, format_of, limits_of, log_of, parse_case, record_of, shown
from advisor.casefile.shape import VERSION, CaseShape, Fault, shaped
from advisor.casefile.syntax import load
from advisor.casefile.vocabulary import Garments, Questions, answer_of, question_of
from advisor.core.case import Case, Limits
from advisor.errors import CaseError
from advisor.ground import Digest, migrate_text, save_text

_RECORD_TABLES = ("findings", "steps", "cards")
_KEPT = "# Kept from the earlier layout of this file:\n"


def write_case(opened: Opened | None, case: Case, path: pathlib.Path, garments: Garments) -> Opened:
    """Save `case` at `path` and hand back the file as it now stands.

    opened: what was read from that file or last saved to it, or from the file to copy; None for a new one.
    Raises CaseError for a case that a file cannot give back, and what `save_text` of advisor.ground raises:
    ChangedOnDisk if somebody else wrote the file, SaveError. After any of these the file is as it was.
    """
    text = case_text(case, garments) if opened is None else edited(opened.text, case, garments)
    if parse_case(text, garments, where=f"{shown(path)} (not saved)") != case:
        what = "not saved: read back, the text would not give the same case; nothing was changed"
        raise CaseError(what, where=shown(path), hint="undo the last change and save again")
    expect = opened.digest if opened and _same_file(opened.path, path) else None
    return Opened(case, path, _save(opened, path, text, expect), text)


def _save(opened: Opened | None, path: pathlib.Path, text: str, expect: Digest | None) -> Digest:
    if opened and expect and format_of(load(opened.text, shown(path))) < VERSION:
        return migrate_text(path, text, expect=expect)[0]
    return save_text(path, text, expect=expect)


def _same_file(one: pathlib.Path, other: pathlib.Path) -> bool:
    return os.path.realpath(one) == os.path.realpath(other)


def edited(text: str, case: Case, garments: Garments) -> str:
    """`text`, the file of a case, saying what `case` says; lines that need not change do not.

    A file of an older format, or one laid out in a way that cannot be edited so, is laid out anew with its
    comments at the top.
    """
    windows = "\r\n" in text and "\n" not in text.replace("\r\n", "")
    plain = text.replace("\r\n", "\n")
    new = _amended(plain, case, garments) or _anew(plain, case, garments)
    return new.replace("\n", "\r\n") if windows else new


def _amended(text: str, case: Case, garments: Garments) -> str | None:
    """`text` with what differs changed; None if it does not then give back `case`."""
    raw = load(text, "case")
    if format_of(raw) != VERSION:
        return None
    shape = shaped(raw)
    questions = garments.get(case.garment, {})
    whole = case_node(case, questions)
    page = Page(text, whole)
    for path in _changes(shape, case, questions):
        node = _at(whole, path)
        if node is None:
            page.drop(path)
        else:
            page.put(path, node)
    _write_log(page, shape, case)
    try:
        return page.text if parse_case(page.text, garments) == case else None
    except CaseError:
        return None


def _at(whole: Node, path: Path) -> Node | None:
    node: Node | None = whole
    for name in path:
        node = None if node is None or isinstance(node, str) else node.get(str(name))
    return node


def _changes(shape: CaseShape, case: Case, questions: Questions) -> list[Path]:
    """The paths at which the file does not say what `case` says."""
    head = ("title", "garment", "tape", "story")
    changed: list[Path] = [(name,) for name in head if getattr(shape, name) != getattr(case, name)]
    rows = {f"{place}.{slot}": (place, slot) for place, slots in shape.answers.items() for slot in slots}
    for name in [*rows, *(name for name in case.answers if name not in rows)]:
        place, _, slot = name.partition(".")
        if name not in rows or not _still(shape, case, questions, *rows[name]):
            changed.append(("answers", *rows.get(name, (place, slot))))
    return changed + _choices_changed(shape, case) + _limits_changed(shape, case.limits) + _record_changed(shape, case)


def _still(shape: CaseShape, case: Case, questions: Questions, place: str, slot: str) -> bool:
    """Whether a line of the file, read on the tape of `case`, gives the answer `case` has."""
    try:
        question = question_of(place, slot, questions)
        return answer_of(shape.answers[place][slot], question, case.tape) == case.answers.get(question.key)
    except Fault:
        return False


def _choices_changed(shape: CaseShape, case: Case) -> list[Path]:
    now = {finding: (choice.fix, choice.reason, choice.at) for finding, choice in case.choices.items()}
    then = {finding: (row.fix, row.reason, row.at) for finding, row in shape.choices.items()}
    return [("choices", finding) for finding in [*then, *now] if now.get(finding) != then.get(finding)]


def _record_changed(shape: CaseShape, case: Case) -> list[Path]:
    """The lines of the record that are others now; all of it if it goes."""
    old = record_of(shape)
    if case.record == old or case.record is None:
        return [("record",)] if case.record != old else []
    now, then = record_node(case.record), record_node(old) if old else {}
    changed: list[Path] = []
    for name in dict.fromkeys([*then, *now]):
        here, there = now.get(name, {}), then.get(name, {})
        if name not in _RECORD_TABLES or isinstance(here, str) or isinstance(there, str):
            changed += [("record", name)] * (here != there)
            continue
        changed += [("record", name, key) for key in dict.fromkeys([*there, *here]) if there.get(key) != here.get(key)]
    return changed


def _limits_changed(shape: CaseShape, now: Limits) -> list[Path]:
    then = limits_of(shape)
    changed = [each.name for each in fields(Limits) if getattr(then, each.name) != getattr(now, each.name)]
    # What weighs has a table of its own: `weigh_difficulty` here is `weigh.difficulty` there.
    paths: list[Path] = [("limits", *name.split("_")) for name in changed]
    if "weigh" in shape.limits.model_fields_set:
        return paths
    return list(dict.fromkeys(path[:2] for path in paths))


def _write_log(page: Page, shape: CaseShape, case: Case) -> None:
    """Add what is new at the end; a log that is not the old one and more is written anew."""
    old = log_of(shape)
    on_one_line = any(each.path == ("log",) and each.value for each in statements(page.text))
    new = case.log[len(old) :]
    if case.log[: len(old)] != old or (on_one_line and new):
        page.drop(("log",))
        new = case.log
    if new:
        page.append("\n".join(entry_text(entry) for entry in new))


def _anew(text: str, case: Case, garments: Garments) -> str:
    fresh = case_text(case, garments)
    known = set(comments(fresh))
    notes = [note for note in comments(text) if note not in known and note != _KEPT.strip()]
    return (_KEPT + "\n".join(notes) + "\n\n" if notes else "") + fresh
