"""The advice as lines: findings, and for each its options in order of rank."""

from collections.abc import Iterable
from fractions import Fraction

from advisor.advise.flips import OnlyIf
from advisor.advise.rank import cuts, machine_holes
from advisor.core.advice import Advice
from advisor.core.case import Case, FindingId, Limits
from advisor.core.model import Value
from advisor.core.question import Question
from advisor.core.stages import STAGE_WORDS
from advisor.core.work import Finding, Option, Spread
from advisor.lengths import TAPES
from advisor.report.labels import finding_label, letter
from advisor.report.lines import bullets, heading, para
from advisor.report.rules import problem_title
from advisor.rulebase.base import RuleBase
from advisor.words import Teller

IN_HOURS = 90  # minutes; from here on hours are easier to picture


def advice_lines(
    base: RuleBase, case: Case, advice: Advice, suggested: Iterable[str], hanging: Iterable[OnlyIf]
) -> list[str]:
    """Title, findings with their options, then what cannot be decided without an answer she could not give."""
    teller = teller_of(base, case)
    lines = head_lines(base, case)
    if not advice.findings:
        lines += ["", "Nothing is wrong, as far as it has been told."]
    guesses = set(suggested)
    for finding in advice.findings:
        lines += finding_lines(base, teller, advice, finding, finding.id in guesses, case.limits)
    return lines + hanging_lines(base, case, hanging) + idle_lines(base, case, advice)


def head_lines(base: RuleBase, case: Case) -> list[str]:
    """What the case and its garment are called."""
    return [*para(case.title), *para(base.garment(case.garment).title)]


def idle_lines(base: RuleBase, case: Case, advice: Advice) -> list[str]:
    """The choices whose finding is not there now, named, since they come back with it."""
    if not advice.idle:
        return []
    lines = heading("Kept, but not needed now")
    kept = {id: fix_title(base, case, case.choices[id].fix) for id in advice.idle}
    return lines + bullets(f"{problem_words(base, case, id)}: {title}" for id, title in kept.items())


def problem_words(base: RuleBase, case: Case, id: FindingId) -> str:
    """A finding that is not there, in words: there is no sentence to tell it by."""
    problem, _, place = id.partition("@")
    places = base.garment(case.garment).places
    title = problem_title(base, problem) or "something the rules do not know"
    return f"{title} ({places[place].words})" if place in places else title


def fix_title(base: RuleBase, case: Case, fix: str) -> str:
    """What a fix is called, be it one that the rules do not have (any more)."""
    return _title(base, teller_of(base, case), fix)


def _title(base: RuleBase, teller: Teller, fix: str) -> str:
    return teller.fixed(base.fixes[fix].title) if fix in base.fixes else "a fix the rules do not know"


def teller_of(base: RuleBase, case: Case) -> Teller:
    """How values are said for this case."""
    return Teller(TAPES[case.tape], base.garment(case.garment).places)


def finding_lines(
    base: RuleBase, teller: Teller, advice: Advice, finding: Finding, guessed: bool, limits: Limits = Limits()
) -> list[str]:
    """One finding and its options."""
    lines = heading(f"{finding_label(advice, finding)}. {finding.title} ({STAGE_WORDS[finding.stage]})")
    lines += para(finding.words)
    chosen = advice.choices.get(finding.id)
    if chosen and chosen.fix not in {option.fix for option in advice.options_for(finding.id)}:
        was = _title(base, teller, chosen.fix)
        lines += para(f"Chosen was: {was}. That is not among the options; choose again.", 2)
    for index, option in enumerate(advice.options_for(finding.id)):
        mark = ""
        if chosen and chosen.fix == option.fix:
            mark = " [suggested]" if guessed else " [chosen]"
        lines += option_lines(teller, option, f"{letter(index)}) ", mark, limits)
        if mark == " [chosen]" and chosen and chosen.reason:
            lines += para(f"Your reason: {chosen.reason}", 5)
    if not advice.options_for(finding.id):
        lines += para("Nothing is known that would help.", 2)
    return lines


def option_lines(teller: Teller, option: Option, label: str, mark: str, limits: Limits = Limits()) -> list[str]:
    """One option: its grades, why, what it comes to; or why it is ruled out."""
    grades = option.grades
    lines = para(f"{option.title}{mark}", 2, label)
    if option.rulings:
        return lines + [line for ruling in option.rulings for line in para(f"Ruled out: {ruling.words}", 5)]
    if option.closes:
        lines += para(
            f"difficulty {grades.difficulty}, lasts {grades.durability}, shows {grades.visibility} (each 1 to 5); "
            f"{minutes(option.minutes.least, option.minutes.most)}",
            5,
        )
    lines += para(option.reason, 5)
    if option.work.leaves and option.closes:
        lines += para(f"It leaves {teller.value(option.work.leaves)} undone.", 5)
    lines += [line for because in grades.because for line in para(f"Here {because}.", 5)]
    lines += [line for past in past_limits(option, limits) for line in para(past, 5)]
    if option.dominated_by:
        lines += para("Another option is at least as good on every count.", 5)
    return lines


def past_limits(option: Option, limits: Limits) -> list[str]:
    """What of an option goes past the limits she set, one sentence each."""
    grades, told = option.grades, []
    if option.closes and grades.difficulty > limits.hardest:
        told.append(f"Harder than the limit you set: {grades.difficulty}, and {limits.hardest} is the most.")
    if option.closes and grades.durability < limits.weakest:
        told.append(f"Lasts less than the limit you set: {grades.durability}, and {limits.weakest} is the least.")
    if option.closes and grades.visibility > limits.visible:
        told.append(f"Shows more than the limit you set: {grades.visibility}, and {limits.visible} is the most.")
    if option.closes and not limits.cutting and cuts(option):
        told.append("Some of its work cannot be undone, and your limit is that all can.")
    if option.closes and not limits.buttonholes and machine_holes(option):
        told.append("It takes a machine that makes buttonholes, and yours makes none.")
    return told


def minutes(least: int, most: int) -> str:
    """A spread of minutes as a person says it."""
    if most < IN_HOURS:
        return f"{least} to {most} minutes" if least != most else f"{least} minutes"
    return f"{hours(least)} to {hours(most)} hours"


def likely(spread: Spread) -> str:
    """The likely minutes of a spread, in the unit that `minutes` tells the spread in."""
    count = spread.likely
    if spread.most < IN_HOURS:
        return f"{count} minutes"
    return f"{hours(count)} {'hours' if count > 67 else 'hour'}"  # 67 minutes are still 1 hour, to the quarter


def hours(count: int) -> str:
    """Minutes as hours to the quarter, a quarter at the least."""
    quarters = max(1, round(count / 15))
    whole, part = divmod(quarters, 4)
    fraction = {0: "", 1: "1/4", 2: "1/2", 3: "3/4"}[part]
    return " ".join(text for text in (str(whole) if whole else "", fraction) if text)


def hanging_lines(base: RuleBase, case: Case, hanging: Iterable[OnlyIf]) -> list[str]:
    """What stands only for some values of something she cannot say."""
    questions = base.asked(case)
    teller = teller_of(base, case)
    by_key: dict[str, list[OnlyIf]] = {}
    for item in hanging:
        by_key.setdefault(item.key, []).append(item)
    lines: list[str] = []
    for key, items in by_key.items():
        lines += heading(f"Not known: {questions[key].name}")
        for finding in dict.fromkeys(item.finding for item in items):
            lines += para(f"{finding}:", 2)
            here = [item for item in items if item.finding == finding]
            lines += bullets((f"{i.title}: only if it {condition(teller, questions[key], i)}" for i in here), 4)
        if questions[key].help:
            lines += para(f"To find out: {questions[key].help}", 2)
    return lines


def condition(teller: Teller, question: Question, item: OnlyIf) -> str:
    """`is at least 5 in`, `is between ...`, `is denim or ...`."""
    if item.words:
        return "is " + " or ".join(f"'{question.words[word]}'" for word in item.words)
    return "is " + " or ".join(_run(teller, question, least, most) for least, most in item.runs)


def _run(teller: Teller, question: Question, least: Value, most: Value) -> str:
    """A run of lengths; an end that lies within a mark of the end of the range is no end to speak of."""
    assert isinstance(least, Fraction) and isinstance(most, Fraction)
    if least - question.least < teller.tape.mark:
        return f"at most {teller.value(most)}"
    if question.most - most < teller.tape.mark:
        return f"at least {teller.value(least)}"
    return teller.value(least) if least == most else f"between {teller.value(least)} and {teller.value(most)}"
