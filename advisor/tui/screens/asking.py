"""The words of the Questions screen that are reckoned: how many questions are left, and why one is asked."""

from advisor.core.case import Answer, Known, TapeName, Unknown
from advisor.interview.agenda import Due
from advisor.interview.begin import TAPE_WORDS
from advisor.report.lines import bullets, para


def told_count(deciding: int, put_off: int) -> str:
    """How many questions could each change the advice, this one among them, as counted just now.

    Those put off were not looked at, and the sentence says so.
    """
    but = f" apart from the {put_off} put off" if put_off else ""
    if deciding == 0:
        return f"No answer could change the advice any more{but}."
    if deciding == 1:
        return f"This is the only question that could change the advice{but}."
    return f"After this one {deciding - 1} more question{'s' * (deciding > 2)} could change the advice{but}."


def same(held: Answer | None, given: Answer) -> bool:
    """Whether what is given is what the case holds already, whenever it was said."""
    if isinstance(held, Known) and isinstance(given, Known):
        return (held.value, held.told) == (given.value, given.told)
    return isinstance(held, Unknown) and isinstance(given, Unknown)


def why_told(due: Due, again: bool, lines: tuple[str, ...]) -> list[str]:
    """Why a question is asked, in words."""
    if lines:
        return [*para(f"What the answer to '{due.question.ask}' can change:"), "", *bullets(lines)]
    if due.decides and not again:
        return para("By itself it changes nothing; it settles which questions come after it, and those can.")
    return para("No fix hangs on it now. It sizes the work: the numbers in the plan.")


def such_as(tape: TapeName) -> str:
    """A length as it is typed on this tape."""
    return f"{TAPE_WORDS[tape]}, such as {'1 1/2' if tape == 'in' else '3.8'}"
