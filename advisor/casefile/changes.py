"""The steps that make and change a case. A Case is frozen, so each hands back another one."""

from collections.abc import Mapping
from dataclasses import replace
from typing import cast

from advisor.casefile.shape import TITLE_LIMIT
from advisor.core.case import Answer, Case, Choice, Entry, FindingId, Known, Record, TapeName
from advisor.core.model import Key
from advisor.errors import CaseError, nearest
from advisor.ground import check_text
from advisor.lengths import TAPES


def new_case(title: str, garment: str, tape: str) -> Case:
    """A case with nothing answered. Raises CaseError for a blank or overlong title or an unknown tape."""
    if not title.strip():
        raise CaseError("the case needs a title", where="title", hint="say which garment it is")
    check_text(title, "title", limit=TITLE_LIMIT)
    if tape not in TAPES:
        raise CaseError("there is no such tape", where="tape", hint=nearest(tape, TAPES))
    return Case(garment=garment, title=title, tape=cast(TapeName, tape))


def answered(case: Case, key: Key, answer: Answer | None, at: str) -> Case:
    """`case` with `answer` at `key` and a line in the log; None takes the answer back.

    at: date and time, ISO; also that of the answer if it has none of its own. A blank word never erases:
    it, and an answer that is already there, give back `case` itself.
    """
    if isinstance(answer, Known) and isinstance(answer.value, str) and not answer.value.strip():
        return case
    if answer is not None and not answer.at:
        answer = replace(answer, at=at)
    if answer == case.answers.get(key):
        return case
    answers = {name: old for name, old in case.answers.items() if name != key or answer is not None}
    if answer is None:
        return _logged(replace(case, answers=answers), at, f"{key}: taken back")
    how = answer.how if isinstance(answer, Known) else "cannot say"
    again = ", again" if key in case.answers else ""
    return _logged(replace(case, answers={**answers, key: answer}), at, f"{key}: {how}{again}")


PICKED = "picked out, to be told"
"""What the log says of a question that something was seen of, and whose answer is still to come."""


def picked_out(case: Case, key: Key, at: str) -> Case:
    """`case` with a line in the log that something was seen of `key`, which is still to be told."""
    return _logged(case, at, f"{key}: {PICKED}")


def still_to_tell(case: Case) -> tuple[Key, ...]:
    """The keys that were picked out and not answered since, in the order they were picked."""
    last: dict[Key, str] = {}
    for entry in case.log:
        key, _, what = entry.what.partition(": ")
        last.pop(key, None)
        last[key] = what
    return tuple(key for key, what in last.items() if what == PICKED and key not in case.answers)


def chosen(case: Case, finding: FindingId, choice: Choice | None, at: str) -> Case:
    """`case` with `choice` for `finding` and a line in the log; None withdraws it.

    at: date and time, ISO; also that of the choice if it has none of its own.
    """
    held = case.choices.get(finding)
    if choice is not None and not choice.at:
        # The same choice made again is no new one.
        choice = replace(choice, at=held.at if held and held == replace(choice, at=held.at) else at)
    if choice == held:
        return case
    choices = {name: old for name, old in case.choices.items() if name != finding}
    if choice is None:
        return _logged(replace(case, choices=choices), at, f"{finding}: choice withdrawn")
    done = _logged(case, at, f"{finding}: {choice.fix} chosen")
    return replace(done, choices={**case.choices, finding: choice})


def recorded(case: Case, record: Record) -> Case:
    """`case` with the plan on record and a line in the log; `case` itself if that plan is on record already."""
    if case.record is not None and replace(case.record, at=record.at) == record:
        return case
    return replace(_logged(case, record.at, "the plan was put on record"), record=record)


def chosen_all(case: Case, choices: Mapping[FindingId, Choice], at: str, what: str) -> Case:
    """`case` with all of `choices`, and one line in the log that says `what`. at: ISO date and time."""
    if all(case.choices.get(finding) == choice for finding, choice in choices.items()):
        return case
    return _logged(replace(case, choices={**case.choices, **choices}), at, what)


def _logged(case: Case, at: str, what: str) -> Case:
    return replace(case, log=(*case.log, Entry(at, what)))
