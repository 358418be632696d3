"""Each frame is refused until it is filled in, hides nothing else meanwhile, and passes when it is.

What the frames are filled with are the words of the small rule base.
"""

import re
from dataclasses import MISSING, fields
from typing import get_args

import pytest
from click.testing import CliRunner, Result

from advisor.authoring import cards
from advisor.cli.app import advisor
from advisor.core.stages import STAGES
from advisor.core.work import Op, Setup
from advisor.errors import AdvisorError, UsageError
from advisor.knowledge.cards import Answer, Find, Veto
from advisor.knowledge.facts import JOIN_KINDS
from advisor.knowledge.fix import Fix
from advisor.rulebase.base import read_base
from tests.check.mini import FIND, Mini

WHY = "It is seen on the stage from far away."
SHARED = (
    ("FILL: one line on what is wrong.", "What is wrong."),
    ("FILL: one line on what answers what.", "What answers it."),
    ("FILL: one line on what is ruled out.", "What is ruled out."),
    ("FILL: one line on what the fix does.", "What it does."),
    ("FILL: what is wrong, in a few words and without a period", "Something wrong"),
    ("FILL: what is done about what, in a few words and without a period", "Something done"),
    ("FILL: what is not done, in a few words and without a period", "Something not done"),
    ("FILL: one sentence about cloth and body: what comes of it if it stays so.", WHY),
    ("FILL: one sentence about cloth and body: why this fix answers this problem.", WHY),
    ("FILL: one sentence about cloth and body: what would go wrong.", WHY),
    ("FILL: the condition in plain words", "it is so"),
    ("FILL: how it is, in three words", "it is so"),
    ("FILL: role", "lining"),
)
STATE = (
    *SHARED,
    ("FILL: state", "cloth"),
    ("FILL: word", "thin"),
    ("FILL: place.state", "inside.cloth"),
    ("FILL: another word of the state", "firm"),
    ("FILL: how it is when nothing is wrong", "firm cloth"),
    ("FILL: how it is when the fix may be chosen", "firm cloth"),
    ("FILL: the sentence the wearer reads. {place} may stand in it.", "The cloth of {place} is worn."),
)
JOIN = (
    *SHARED,
    ("FILL: what is held against what, in plain words", "it is measured against the cape"),
    ("FILL: it is longer by more than a tape can miss", "it is longer"),
    ("FILL: the sentence the wearer reads. {place} and {over} may stand in it.", "{place} is {over} off."),
    ("FILL: 1 in of it", "an inch"),
    ('joined("fit", ("FILL: place.slot"', 'joined("fit", ("inside.length"'),
    ("FILL: place.slot", "inside.wanted"),
    ("FILL: less than a mark of the tape", "a thread"),
    ('        near("FILL: another part is measured", role="FILL: another role"),\n', ""),
    ("FILL: another kind of join", "it is sewn"),
)
LENGTHS = (
    *SHARED,
    ("FILL: the first length, in plain words", "the length"),
    ("FILL: and the second", "the length wanted"),
    ("FILL: the first is longer", "it is longer"),
    ('slot="FILL: measure", place', 'slot="length", place'),
    ("FILL: measure", "wanted"),
    ("FILL: the sentence the wearer reads. {place}, {by}, {first} and {second} may stand in it.", "{place}: {by}."),
    ("FILL: 1 in of it", "an inch"),
    ('"FILL: place.slot", "lining", "11 in"', '"inside.length", "lining", "11 in"'),
    ("FILL: place.slot", "inside.wanted"),
    ("FILL: both the same", "just right"),
    ("FILL: the first is not known", "no length"),
    ("FILL: the second is not known", "no wish"),
)
ELSE_TAKE_OUT = "or take this line out if it is offered wherever the problem is found"
ROLE_LINE = f'    role="FILL: the role it is offered at, {ELSE_TAKE_OUT}",\n'
ANSWER = (
    *SHARED,
    (ROLE_LINE, ""),
    ("FILL: something else is wrong", "another thing"),
)
FIX = (
    *SHARED,
    ("FILL: verb {at}.state", "stitch {at}.hem"),
    ("FILL: verb", "stitch"),
    ("FILL: what to do, as an order.", "Stitch it."),
    ("FILL: state", "hem"),
    ("FILL: word it has before", "cut"),
    ("FILL: word it has after", "sewn"),
    ("FILL: the fix as an order, in a few words and without a period", "Stitch it"),
    ("FILL: one sentence on what it does to cloth and body.", WHY),
    ("FILL: one sentence on when it is the wrong thing to do.", "It is to be washed."),
    ('    cautions=("FILL: one sentence to know before choosing it; or take this line out.",),\n', ""),
)
GARMENT = (
    ("FILL: what it is called", "A hood with a lining"),
    ("FILL: what she calls a lining, with 'the'", "the lining"),
    ("# [reckoned]\n", "[reckoned]\n"),
    (
        '# "place.measure" = ["other.measure - other.slot", "a second way to know it"]',
        '"inside.wanted" = ["inside.length - inside.long_by"]',
    ),
    ('#\n# [[joins]]\n# kind = "band"', '\n[[joins]]\nkind = "fit"'),
    ('# a = "place.measure"', 'a = "inside.length"'),
    ('# b = "other.measure"', 'b = "inside.wanted"'),
)
CASE = (
    ("FILL: who wears it on the stage", "The monk's hood"),
    ("FILL: one or two sentences on the garment and what is wrong with it.", "Its lining hangs out."),
    ("# [answers.inside]", "[answers.inside]"),
    ('# fits = "right" or "long"', 'fits = "long"'),
    ("# long_by", "long_by"),
)
QUESTION = (
    ("FILL: what is asked for, in a few words; {place} stands for the part", "how stiff {place} is"),
    ("FILL: the question as a sentence; {place} stands for the part", "Is {place} stiff?"),
    ("FILL: how to see it; or take the line out", "Fold it."),
    ("FILL: where the tape begins and ends; or take the line out", "From seam to seam."),
    ("FILL: the answer in her words", "it is"),
)
FRAMES = {
    "state": (["rule", "length.worn"], {"rules/length/findings/worn.py": STATE}),
    "join": (["rule", "length.off", "--reads", "join"], {"rules/length/findings/off.py": JOIN}),
    "lengths": (["rule", "length.far", "--reads", "lengths"], {"rules/length/findings/far.py": LENGTHS}),
    "answer": (
        ["rule", "length.let", "--answers", "hem_open", "--with", "length.fixes.leave"],
        {"rules/length/answers/let.py": ANSWER},
    ),
    "veto": (["rule", "length.thin", "--rules-out", "length.fixes.shorten"], {"rules/length/vetoes/thin.py": STATE}),
    "fix": (
        ["fix", "hem.stitch", "--answers", "hem_open", "--new-topic"],
        {"rules/hem/fixes/stitch.py": FIX, "rules/hem/answers/stitch.py": ANSWER},
    ),
    "garment": (
        ["garment", "hood", "inside=lining"],
        {"rules/garments/hood.toml": GARMENT, "cases/first_hood.toml": CASE},
    ),
    "word": (["question", "lining", "stiff"], {"rules/roles/lining.toml": QUESTION}),
    "length": (["question", "lining", "wide", "--kind", "length"], {"rules/roles/lining.toml": QUESTION}),
    "pinch": (["question", "lining", "spare", "--kind", "pinch"], {"rules/roles/lining.toml": QUESTION}),
}


def run(*args: str) -> Result:
    return CliRunner().invoke(advisor, ["rules", *args])


def new(*args: str) -> str:
    done = run("new", *args)
    assert done.exit_code == 0, done.exception
    return done.stdout


def fill(mini: Mini, path: str, pairs: tuple[tuple[str, str], ...]) -> None:
    """As an author would: a text in place of each mark, and what explains it taken out."""
    text = (mini.folder / path).read_text()
    for old, filled in pairs:
        text = text.replace(old, filled)
    text = re.sub(r"[ ]*# FILL:.*", "", text)
    assert "FILL" not in text, text
    mini.write(path, text)


@pytest.mark.parametrize(("args", "files"), FRAMES.values(), ids=FRAMES)
def test_a_frame_is_refused_until_it_is_filled_in(
    small: Mini, args: list[str], files: dict[str, tuple[tuple[str, str], ...]]
) -> None:
    if args[:2] == ["rule", "length.thin"]:
        small.remove("rules/length/vetoes/thin_cloth.py")
    told = new(*args)
    assert all(path in told for path in files) and "Next:" in told and "advisor rules check" in told
    # The program runs on beside the frame, and the check still sees what is wrong elsewhere.
    assert read_base(small.folder / "rules").garments["cape"]
    small.change(FIND, "hangs out below it", "hides the colour")
    faults = small.check().faults
    assert {f.where for f in faults if f.check == "unfilled"} == set(files)
    assert all("is still to be filled in" in f.what and f.line for f in faults if f.check == "unfilled")
    assert [f.where for f in faults if f.check == "wording"] == [FIND]
    small.change(FIND, "hides the colour", "hangs out below it")
    for path, pairs in files.items():
        fill(small, path, pairs)
    if args[0] == "rule" and "findings" in next(iter(files)):
        name = args[1].partition(".")[2]
        new("rule", f"length.leave_{name}", "--answers", f"length_{name}", "--with", "length.fixes.leave")
        fill(small, f"rules/length/answers/leave_{name}.py", ANSWER)
    assert small.errors() == []


def test_frames_stand_in_for_everything_a_card_must_say() -> None:
    for template, kind in (
        *((text, Find) for text in cards.FINDINGS.values()),
        (cards.ANSWER, Answer),
        (cards.VETO, Veto),
        (cards.FIX, Fix),
        (cards.FIX, Op),
    ):
        must = {each.name for each in fields(kind) if each.default is MISSING and each.default_factory is MISSING}
        assert must and must <= set(re.findall(r"\b(\w+)=", template)), kind
    assert all(each in cards.SETUPS for each in get_args(Setup)) and all(each in cards.JOINS for each in JOIN_KINDS)
    assert "$stages" in cards.STATE and len(STAGES) == 8


def test_nothing_is_written_over(small: Mini) -> None:
    before = (small.folder / FIND).read_text()
    for args in (
        ["rule", "length.lining_long"],
        ["fix", "length.sew"],
        ["garment", "cape", "inside=lining"],
        ["question", "lining", "cloth"],
    ):
        refused = run("new", *args).exception
        assert isinstance(refused, UsageError) and "there" in refused.what, args
    assert (small.folder / FIND).read_text() == before
    # All or nothing: the answer's name is taken, so the fix is not written either.
    small.copy("rules/length/answers/sew_open.py", "rules/length/answers/stitch.py")
    assert run("new", "fix", "length.stitch", "--answers", "hem_open").exit_code != 0
    assert not (small.folder / "rules/length/fixes/stitch.py").exists()


@pytest.mark.parametrize(
    ("args", "what", "hint"),
    [
        (["rule", "worn"], "'worn' names no topic", "write topic and name with a dot between, such as length.worn"),
        (["rule", "lenght.worn"], "no topic 'lenght'", "did you mean 'length'?; --new-topic begins one"),
        (["rule", "roles.worn", "--new-topic"], "'roles' cannot be a topic", "it is a folder of another kind"),
        (["rule", "length.Worn Out"], "the name 'Worn Out' is no name", "'worn_out'"),
        (["rule", "length.class"], "the name 'class' is a word of Python", "small letters"),
        (["rule", "length." + "a" * 41], f"the name '{'a' * 41}' is longer than 40 letters", f"'{'a' * 40}'"),
        (["rule", "length.x", "--answers", "lining_lng"], "no finding finds 'lining_lng'", "'lining_long'"),
        (["rule", "length.x", "--rules-out", "length.fixes.shortn"], "no fix 'length.fixes.shortn'", "shorten"),
        (["rule", "length.x", "--with", "length.fixes.sew"], "'length.fixes.sew' answers nothing", "--answers"),
        (["rule", "length.x", "--problem", "y", "--rules-out", "z"], "a rule finds, answers or rules out", "one of"),
        (["fix", "length.x", "--answers", "hem_opn"], "no finding finds 'hem_opn'", "'hem_open'"),
        (["garment", "hood", "inside=linning"], "no role 'linning'", "'lining'"),
        (["garment", "hood", "inside=lining", "inside=lining"], "the place 'inside' is named twice", "another name"),
        (["garment", "hood"], "a garment without any part", "leg=leg_end"),
        (["question", "linning", "stiff"], "no role 'linning'", "'lining'"),
        (["question", "lining", "Stiff"], "the question 'Stiff' is no name", "'stiff'"),
    ],
)  # fmt: skip
def test_a_bad_name_is_refused_with_what_is_near(small: Mini, args: list[str], what: str, hint: str) -> None:
    files = sorted(small.folder.rglob("*"))
    refused = run("new", *args).exception
    assert isinstance(refused, UsageError)
    assert what in refused.what and hint in refused.hint, refused
    assert sorted(small.folder.rglob("*")) == files


def test_rules_of_an_installation_are_not_written_to(small: Mini) -> None:
    small.remove("pyproject.toml")
    for args in (["new", "rule", "length.worn"], ["new", "question", "lining", "stiff"], ["docs"]):
        refused = run(*args).exception
        assert isinstance(refused, UsageError) and "came with an installed advisor" in refused.what


def test_a_question_goes_below_the_others_and_leaves_all_else(small: Mini) -> None:
    path = "rules/roles/lining.toml"
    small.change(path, "[measures.length]", "# How long it is.\n[measures.length]")
    before = (small.folder / path).read_text()
    new("question", "lining", "stiff")
    after = (small.folder / path).read_text()
    begin = after.index("[slots.stiff]")
    end = after.index("# How long it is.")
    assert after[:begin] + after[end:] == before
    assert after.index("[slots.cloth]") < begin < end


def test_a_role_laid_out_in_another_way_is_left_alone(small: Mini) -> None:
    path = small.folder / "rules/roles/lining.toml"
    text = path.read_text().replace("[measures.wanted]", '[measures]\nextra = """\n[slots.x]\n"""\n[measures.wanted]')
    path.write_text(text)
    refused = run("new", "question", "lining", "stiff").exception
    assert isinstance(refused, AdvisorError)
    assert path.read_text() == text


def test_a_folder_that_cannot_be_written_to_is_told(small: Mini) -> None:
    (small.folder / "rules/length/vetoes").rename(small.folder / "rules/length/elsewhere")
    small.write("rules/length/vetoes", "a file where a folder belongs")
    refused = run("new", "rule", "length.thin", "--rules-out", "length.fixes.shorten").exception
    assert isinstance(refused, AdvisorError) and refused.where == "rules/length/vetoes/thin.py"
    assert "see who may write there" in refused.hint
