"""Frames of findings, answers, vetoes and fixes."""

from pathlib import Path
from string import Template
from typing import get_args

from advisor.authoring.known import Seen, answered_by, fix_named, other_fix, other_problem, seen
from advisor.authoring.naming import card_name, plain_name
from advisor.authoring.writing import Frame, Made
from advisor.check.material import Material
from advisor.core.stages import STAGES
from advisor.core.work import Setup
from advisor.knowledge.facts import JOIN_KINDS

CHECK = "fill in every FILL, then run `advisor rules check`"
JOINS = ", ".join(JOIN_KINDS)
SETUPS = ", ".join(get_args(Setup))
SOURCE = "  # FILL: a key of rules/sources.toml, or leave common-practice or from-memory"

STATE = '''"""FILL: one line on what is wrong."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="FILL: what is wrong, in a few words and without a period",
    problem="$problem",
    stage="hem",  # FILL: the stage of work: $stages
    why="FILL: one sentence about cloth and body: what comes of it if it stays so.",
    source="common-practice",$source
    when=(
        given(
            "FILL: the condition in plain words",
            Trait(role="FILL: role", slot="FILL: state", word="FILL: word", place=MATCH.place),
        ),
    ),
    says="FILL: the sentence the wearer reads. {place} may stand in it.",
    fires=(fires("FILL: how it is, in three words", trait("FILL: place.state", "FILL: role", "FILL: word")),),
    near=(near("FILL: how it is when nothing is wrong", word="FILL: another word of the state"),),
)
'''

JOIN = '''"""FILL: one line on what is wrong."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def past(over: Mm, slack: Mm) -> bool:
    return over > slack  # FILL: as it is for too long or too wide; -over > slack for too short or too narrow


def amount(over: Mm) -> Mm:
    return over  # FILL: -over for too short or too narrow: an amount is never below nothing


rule = Find(
    title="FILL: what is wrong, in a few words and without a period",
    problem="$problem",
    stage="hem",  # FILL: the stage of work: $stages
    why="FILL: one sentence about cloth and body: what comes of it if it stays so.",
    source="common-practice",$source
    when=(
        given(
            "FILL: what is held against what, in plain words",
            Joined(
                kind="fit",  # FILL: the kind of join: $joins
                role="FILL: role",
                place=MATCH.place,
                over_mm=MATCH.over,
                slack_mm=MATCH.slack,
            ),
        ),
        such_that("FILL: it is longer by more than a tape can miss", past),
    ),
    amount=amount,
    says="FILL: the sentence the wearer reads. {place} and {over} may stand in it.",
    fires=(
        fires(
            "FILL: 1 in of it",
            joined("fit", ("FILL: place.slot", "FILL: role"), ("FILL: place.slot", "FILL: role"), "1 in"),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("FILL: less than a mark of the tape", over_mm=length("1/32 in")),
        near("FILL: another part is measured", role="FILL: another role"),
        near("FILL: another kind of join", kind="seam"),
    ),
)
'''

LENGTHS = '''"""FILL: one line on what is wrong."""

from advisor.knowledge import MATCH, Find, Measure, Mm, fires, given, length, measure, near, near_without, such_that


def past(first: Mm, second: Mm) -> bool:
    return first > second  # FILL: when it is wrong


def amount(first: Mm, second: Mm) -> Mm:
    return first - second  # FILL: by how much; an amount is never below nothing


rule = Find(
    title="FILL: what is wrong, in a few words and without a period",
    problem="$problem",
    stage="hem",  # FILL: the stage of work: $stages
    why="FILL: one sentence about cloth and body: what comes of it if it stays so.",
    source="common-practice",$source
    when=(
        given(
            "FILL: the first length, in plain words",
            Measure(role="FILL: role", slot="FILL: measure", place=MATCH.place, mm=MATCH.first),
        ),
        given("FILL: and the second", Measure(role="FILL: role", slot="FILL: measure", mm=MATCH.second)),
        such_that("FILL: the first is longer", past),
    ),
    amount=amount,
    reckons={"by": amount},
    says="FILL: the sentence the wearer reads. {place}, {by}, {first} and {second} may stand in it.",
    fires=(
        fires(
            "FILL: 1 in of it",
            measure("FILL: place.slot", "FILL: role", "11 in"),
            measure("FILL: place.slot", "FILL: role", "10 in"),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("FILL: both the same", mm=length("10 in")),
        near_without("FILL: the first is not known", at=0),
        near_without("FILL: the second is not known", at=1),
    ),
)
'''
FINDINGS = {"state": STATE, "join": JOIN, "lengths": LENGTHS}

ANSWER = '''"""FILL: one line on what answers what."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="FILL: what is done about what, in a few words and without a period",
    problem="$problem",
    fix="$fix",
    role="FILL: the role it is offered at, or take this line out if it is offered wherever the problem is found",
    why="FILL: one sentence about cloth and body: why this fix answers this problem.",
    source="common-practice",$source
    when=(),  # FILL: given(...), unless(...), such_that(...) with words of their own; or leave () if it always holds
    fires=(
        fires(
            "FILL: how it is, in three words",
            $fact,
        ),
    ),
    near=(near("FILL: something else is wrong", name="$other"),),  # FILL: and one more for each condition
)
'''

VETO = '''"""FILL: one line on what is ruled out."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="FILL: what is not done, in a few words and without a period",
    fix="$fix",
    why="FILL: one sentence about cloth and body: what would go wrong.",
    source="common-practice",$source
    # FILL: the state that forbids it; or a limit: such_that("more than 2 in would go", lambda amount: ...)
    when=(
        given("FILL: the condition in plain words", Trait(role="FILL: role", slot="FILL: state", word="FILL: word")),
    ),
    says="FILL: the sentence the wearer reads. {place} may stand in it.",
    fires=(
        fires(
            "FILL: how it is, in three words",
            offered("$problem", "$place", "$role", "$fix"),
            $fact,
            trait("FILL: place.state", "FILL: role", "FILL: word"),
        ),
    ),
    near=(
        near("FILL: how it is when the fix may be chosen", at=2, word="FILL: another word of the state"),
        near("another fix", fix="$other"),
    ),
)
'''

FIX = '''"""FILL: one line on what the fix does."""

from advisor.core.model import Put
from advisor.core.work import Op, Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of


def work(trouble: Trouble, view: View) -> Work:
    at = trouble.place
    # FILL: one Op for each thing done, in order; builders that other fixes use lie in advisor/operations.
    doing = Op(
        id=f"FILL: verb {at}.state",
        stage="hem",  # FILL: the stage of work: $stages
        verb="FILL: verb",
        places=(at,),
        setup="hand",  # FILL: $setups
        minutes=Spread(10, 15, 25),  # FILL: the least, the likely and the most for a careful home sewer
        says="FILL: what to do, as an order.",
        expects=(Put(f"{at}.FILL: state", "FILL: word it has before"),),
        # FILL: what it changes: Put(key, word) for a state, Change(key, figure) for a measure (advisor.core.figure).
        effects=(Put(f"{at}.FILL: state", "FILL: word it has after"),),
        # FILL: for what cannot be undone: reversible=False, check_before="..."; else take this line out.
    )
    return work_of((doing,))


fix = Fix(
    title="FILL: the fix as an order, in a few words and without a period",
    why="FILL: one sentence on what it does to cloth and body.",
    wrong_when="FILL: one sentence on when it is the wrong thing to do.",
    source="common-practice",$source
    difficulty=2,  # FILL: 1 to 5, as rules/grades.toml says
    durability=4,  # FILL: 1 to 5
    visibility=2,  # FILL: 1 to 5
    cautions=("FILL: one sentence to know before choosing it; or take this line out.",),
    work=work,
)
'''


def new_finding(material: Material, name: str, problem: str, reads: str, new_topic: bool) -> Made:
    """The frame of a finding. `reads`: what it looks at, a key of FINDINGS. `problem` "": the name with its topic."""
    topic, own = card_name(name, _topics(material), new_topic)
    problem = plain_name(problem or f"{topic}_{own}", "the problem")
    text = _filled(FINDINGS[reads], problem=problem)
    leave = f"advisor rules new rule {topic}.leave_{own} --answers {problem} --with general.fixes.leave"
    return Made((_frame(material, topic, "findings", own, text),), (CHECK, f"give it an answer: `{leave}`"))


def new_answer(material: Material, name: str, problem: str, fix: str, new_topic: bool) -> Made:
    """The frame of an answer to `problem` with `fix`; "" for what is not settled yet."""
    topic, own = card_name(name, _topics(material), new_topic)
    return Made((_answer(material, topic, own, seen(material, problem), fix_named(material, fix)),), (CHECK,))


def new_veto(material: Material, name: str, fix: str, new_topic: bool) -> Made:
    """The frame of a veto of `fix`, its example taken from the first problem the fix answers."""
    topic, own = card_name(name, _topics(material), new_topic)
    at = seen(material, answered_by(material, fix_named(material, fix)))
    text = _filled(
        VETO,
        fix=fix_named(material, fix),
        problem=at.name,
        place=at.place,
        role=at.role,
        fact=at.fact(),
        other=other_fix(material, fix),
    )
    return Made((_frame(material, topic, "vetoes", own, text),), (CHECK,))


def new_fix(material: Material, name: str, problem: str, new_topic: bool) -> Made:
    """The frames of a fix and of the answer that offers it for `problem`."""
    topic, own = card_name(name, _topics(material), new_topic)
    fix = _frame(material, topic, "fixes", own, _filled(FIX))
    answer = _answer(material, topic, own, seen(material, problem), f"{topic}.fixes.{own}")
    steps = (
        f"what rules it out is a card of its own: `advisor rules new rule {topic}.NAME --rules-out {topic}.fixes.{own}`"
    )
    return Made((fix, answer), (CHECK, steps))


def _answer(material: Material, topic: str, own: str, at: Seen, fix: str) -> Frame:
    text = _filled(ANSWER, problem=at.name, fix=fix, fact=at.fact(), other=other_problem(material, at.name))
    return _frame(material, topic, "answers", own, text)


def _filled(template: str, **words: str) -> str:
    return Template(template).substitute(stages=", ".join(STAGES), setups=SETUPS, joins=JOINS, source=SOURCE, **words)


def _frame(material: Material, topic: str, kind: str, name: str, text: str) -> Frame:
    return Frame(material.folder / topic / kind / f"{name}.py", text)


def _topics(material: Material) -> set[str]:
    """The topics there are: by folder, so that one with a broken card counts too."""
    return {path.parent.parent.name for path in _cards(material.folder)}


def _cards(folder: Path) -> list[Path]:
    return [path for path in folder.glob("*/*/*.py") if "__pycache__" not in path.parts]
