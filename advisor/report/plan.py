"""The plan as lines: what it comes to, what to buy, the steps in order, what cannot be undone, what remains."""

from advisor.advise.overrule import overruled
from advisor.core.advice import Plan, Step
from advisor.core.case import Case, Unknown
from advisor.core.stages import STAGE_WORDS
from advisor.core.work import OpId
from advisor.report.advice import fix_title, head_lines, likely, minutes, past_limits, teller_of
from advisor.report.cautions import beside, mind_lines, more_lines
from advisor.report.lines import bullets, heading, para
from advisor.report.overrule import chosen_lines, warning
from advisor.rulebase.base import RuleBase
from advisor.words import Teller

TOLD_TO_TRY = ("try on", "try it on", "garment on", "put it on")
"""Words of a step that says already that it is worn."""


def plan_lines(base: RuleBase, case: Case, plan: Plan, more: bool = True) -> list[str]:
    """The whole plan. `more`: with every caution; without, the first three and how to see the others."""
    teller = teller_of(base, case)
    lines = head_lines(base, case)
    if not plan.advice.findings:
        return [*lines, "", "Nothing is wrong, as far as it has been told: there is nothing to plan."]
    lines += decided_lines(base, case, plan)
    if plan.steps:
        lines += total_lines(base, plan)
        lines += unknown_lines(base, case, plan)
        lines += mind_lines(base, plan, pointer=not more)
        if plan.materials:
            lines += heading("Have at hand")
            lines += bullets(need.what + (f": {need.amount}" if need.amount else "") for need in plan.materials)
        lines += step_lines(base, teller, plan)
        lines += more_lines(base, plan) if more else []
    lines += blocked_lines(plan)
    lines += left_lines(plan)
    return lines


def blocked_lines(plan: Plan) -> list[str]:
    """Fixes that get in each other's way: their steps cannot be done, and another must be chosen for one of them."""
    hindered = [step for step in plan.steps if step.op.id in plan.blocked]
    if not hindered:
        return []
    titles = {option.id: option.title for option in plan.advice.chosen()}
    fixes = dict.fromkeys(titles[id] for step in hindered for id in step.serves)
    lines = heading("These do not go together")
    lines += para("Other work is in the way of these; choose something else for one or the other:")
    return lines + bullets(fixes)


def decided_lines(base: RuleBase, case: Case, plan: Plan) -> list[str]:
    """What each finding gets."""
    lines = heading("What is done about what")
    chosen = {option.finding: option for option in plan.advice.chosen()}
    for finding in plan.advice.findings:
        option = chosen.get(finding.id)
        lines += para(finding.words, 2, "- ")
        held = plan.advice.choices.get(finding.id)
        if option is not None:
            mark = " (suggested; nothing was chosen)" if finding.id in plan.suggested else ""
            lines += para(f"{option.title}{mark}", 4, "> ")
            if held is not None and not mark:
                lines += [line for told in chosen_lines(plan.advice, option, held) for line in para(told, 6)]
            lines += [line for past in past_limits(option, case.limits) for line in para(past, 6)]
        elif held is not None:
            was = fix_title(base, case, held.fix)
            lines += para(f"Chosen was: {was}. That is not among the options; choose again.", 4)
        else:
            lines += para("Nothing can be done about it here.", 4)
    return lines


def total_lines(base: RuleBase, plan: Plan) -> list[str]:
    """The plan's figures with what the grades mean."""
    totals, grades = plan.totals, base.grades
    lines = heading("What it comes to")
    lines += para(f"Time: {minutes(totals.minutes.least, totals.minutes.most)}, likely {likely(totals.minutes)}.")
    lines += para(f"Hardest part: {totals.difficulty} of 5, {grades.meaning('difficulty', totals.difficulty)}.")
    lines += para(f"Weakest part lasts: {totals.durability} of 5, {grades.meaning('durability', totals.durability)}.")
    lines += para(f"Shows most: {totals.visibility} of 5, {grades.meaning('visibility', totals.visibility)}.")
    if totals.irreversible:
        lines += para(f"Steps that cannot be undone: {totals.irreversible}. They are marked.")
    return lines


def unknown_lines(base: RuleBase, case: Case, plan: Plan) -> list[str]:
    """What she could not say: the plan goes on without it, and nothing that cannot be undone may rest on that."""
    questions = base.asked(case)
    unknown = [key for key, answer in case.answers.items() if isinstance(answer, Unknown) and key in questions]
    if not unknown:
        return []
    lines = heading("Not known")
    lines += bullets(questions[key].name for key in questions if key in unknown)
    lines += para(
        "The plan leaves out what hangs on these, or takes a usual value for it; the advice tells what each would "
        "change."
    )
    if plan.totals.irreversible:
        lines += para("Leave the steps that cannot be undone until they are known.")
    return lines


def step_lines(base: RuleBase, teller: Teller, plan: Plan) -> list[str]:
    """The steps, numbered, under the stages of work."""
    lines: list[str] = []
    stage, warnings = "", warnings_at(base, plan)
    for number, step in enumerate(plan.steps, 1):
        if step.op.stage != stage:
            stage = step.op.stage
            lines += heading(STAGE_WORDS[step.op.stage].capitalize())
        lines += [line for said in warnings.get(step.op.id, ()) for line in para(said, 4)]
        lines += one_step(teller, step, number)
    return lines


def warnings_at(base: RuleBase, plan: Plan) -> dict[OpId, list[str]]:
    """What is told beside which step: dangers the head has no room for, and choices against the advice."""
    told = beside(base, plan)
    for op, warnings in overruled_at(plan).items():
        told.setdefault(op, []).extend(warnings)
    return told


def overruled_at(plan: Plan) -> dict[OpId, list[str]]:
    """What rules an option out that was chosen all the same: at its first step that is, if there is one, its alone."""
    told: dict[OpId, list[str]] = {}
    for option in overruled(plan.advice):
        steps = [step for step in plan.steps if option.id in step.serves]
        if steps:
            first = min(steps, key=lambda step: len(step.serves))
            told.setdefault(first.op.id, []).append(warning(option))
    return told


def one_step(teller: Teller, step: Step, number: int) -> list[str]:
    """One step: the instruction with its numbers, what to check first, whether to try on."""
    op = step.op
    lines: list[str] = []
    if not op.reversible:
        lines += para(f"CANNOT BE UNDONE. Before it, make sure that {op.check_before}.", 4)
    lines += para(f"{instruction(teller, step)} ({op.minutes.likely} min)", 0, f"{number:>2}. ")
    if op.try_on and not any(told in op.says.casefold() for told in TOLD_TO_TRY):
        lines += para("Try on before you go further.", 4)
    return lines


def instruction(teller: Teller, step: Step) -> str:
    """What to do, with the figures filled in."""
    return teller.say(step.op.says, step.op.figures)


def left_lines(plan: Plan) -> list[str]:
    """What the plan leaves: by choice, or because it cannot close it."""
    if not plan.remains:
        return ["", "Worked through on paper, nothing is left open."] if plan.steps else []
    lines = heading("What is left")
    left = {o.finding: o.title for o in plan.advice.chosen() if not o.closes}
    for finding in plan.remains:
        how = f" Suggested: {left[finding.id]}." if finding.id in left else ""
        if finding.id in left and finding.id not in plan.suggested:
            how = f" Chosen: {left[finding.id]}."
        lines += para(finding.words + how, 2, "- ")
    return lines
