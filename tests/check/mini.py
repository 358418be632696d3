"""A rule base of one garment and a dozen cards, whole and sound, to be broken in one place at a time.

A cape with a lining that may hang too long. All of it is made up for these tests.
"""

from pathlib import Path

from advisor.check.fault import Fault
from advisor.check.run import Report, run_checks

GRADES = (Path(__file__).resolve().parents[2] / "rules" / "grades.toml").read_text(encoding="utf-8")

ROLE = """
title = "a lining"

[slots.fits]
name = "how {place} hangs"
ask = "How does {place} hang?"
kind = "word"
neutral = "right"
words = { right = "as it should", long = "too long" }

[slots.long_by]
after = { fits = ["long"] }
name = "how much too long {place} is"
ask = "How much too long is {place}?"
kind = "length"
neutral = "0 in"
most = "6 in"

[slots.cloth]
name = "the cloth of {place}"
ask = "How is the cloth of {place}?"
kind = "word"
neutral = "firm"
words = { firm = "firm", thin = "worn thin" }

[measures.length]
start = "30 in"
meaning = "how long it is"

[measures.wanted]
start = "30 in"
meaning = "how long it should be"

[states.hem]
start = "sewn"
words = ["sewn", "cut"]
meaning = "its hem"
"""

GARMENT = """
title = "A cape with a lining"

[places]
inside = { role = "lining", words = "the lining" }

[reckoned]
"inside.wanted" = ["inside.length - inside.long_by"]

[[joins]]
kind = "fit"
a = "inside.length"
b = "inside.wanted"
"""

CASE = """
version = 1
title = "The night watchman's cape"
garment = "cape"
tape = "in"

[answers.inside]
fits = "long"
long_by = { value = "1 in", how = "measured" }
"""

THIN_CASE = """
version = 1
title = "The wigmaker's cape"
garment = "cape"
tape = "in"

[answers.inside]
fits = "long"
long_by = { value = "2 in", how = "measured" }
cloth = "thin"
"""

LONG = '''"""The lining hangs out."""

from advisor.knowledge import MATCH, Find, Joined, fires, given, joined, length, near, such_that

rule = Find(
    title="Lining too long",
    problem="lining_long",
    stage="hem",
    why="A lining that is longer than the cape hangs out below it.",
    source="common-practice",
    when=(
        given(
            "the lining is measured against the cape",
            Joined(kind="fit", role="lining", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is longer", lambda over, slack: over > slack),
    ),
    amount=lambda over: over,
    says="{place} is {over} too long.",
    fires=(
        fires(
            "1 in long",
            joined("fit", ("inside.length", "lining"), ("inside.wanted", "lining"), "1 in"),
            amount=length("1 in"),
        ),
    ),
    near=(near("as long as it should be", over_mm=length("0 in")), near("it is sewn, not worn", kind="seam")),
)
'''

SHORT = (
    LONG.replace("hangs out.", "pulls.").replace("too long", "too short").replace("lining_long", "lining_short")
    .replace("longer than the cape hangs out below it", "shorter than the cape pulls it up")
    .replace("it is longer", "it is shorter").replace("over > slack", "-over > slack")
    .replace("amount=lambda over: over", "amount=lambda over: -over")
    .replace('"1 in long"', '"1 in short"')
    .replace('"1 in"),\n            amount', '"1 in", under=True),\n            amount')
)  # fmt: skip

OPEN = '''"""The hem was cut and not sewn."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Hem not sewn",
    problem="hem_open",
    stage="finish",
    why="A cut edge frays with every wear and every wash.",
    source="common-practice",
    when=(given("the hem is cut", Trait(role="lining", slot="hem", word="cut", place=MATCH.place)),),
    says="The hem of {place} is not sewn.",
    fires=(fires("cut", trait("inside.hem", "lining", "cut")),),
    near=(near("sewn", word="sewn"),),
)
'''


def answer(title: str, problem: str, other: str, stage: str, fix: str) -> str:
    """An answer card that always holds."""
    return f'''"""An answer."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="{title}",
    problem="{problem}",
    fix="{fix}",
    why="That is what can be done about it here.",
    source="common-practice",
    when=(),
    fires=(fires("it is there", problem("{problem}", "inside", "lining", "{stage}", "1 in")),),
    near=(near("something else", name="{other}"),),
)
'''


THIN = '''"""No cutting in thin cloth."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No cutting in thin cloth",
    fix="length.fixes.shorten",
    why="A new edge in thin cloth frays away before it is sewn.",
    source="common-practice",
    when=(given("the cloth is thin", Trait(role="lining", slot="cloth", word="thin", place=MATCH.cloth)),),
    says="The cloth of {place} is too thin to be cut.",
    fires=(
        fires(
            "a lining worn thin",
            offered("lining_long", "inside", "lining", "length.fixes.shorten"),
            problem("lining_long", "inside", "lining", "hem", "1 in"),
            trait("inside.cloth", "lining", "thin"),
        ),
    ),
    near=(near("firm cloth", at=2, word="firm"),),
)
'''

SHORTEN = '''"""Cut the lining shorter and sew the hem."""

from advisor.core.figure import times
from advisor.core.model import Change, Put
from advisor.core.work import Op, Spread
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of


def work(trouble: Trouble, view: View) -> Work:
    at, cut = trouble.place, amount(trouble, "cut")
    cutting = Op(
        id=f"cut {at}.hem",
        stage="hem",
        verb="cut",
        places=(at,),
        setup="table",
        minutes=Spread(5, 8, 12),
        says="Cut {cut} off all round.",
        expects=(Put(f"{at}.hem", "sewn"),),
        effects=(Change(f"{at}.length", times(cut, -1)), Put(f"{at}.hem", "cut")),
        reversible=False,
        check_before="the cape has hung for a night",
        figures={"cut": cut},
    )
    sewing = Op(
        id=f"sew {at}.hem",
        stage="hem",
        verb="sew",
        places=(at,),
        setup="straight",
        minutes=Spread(10, 15, 25),
        says="Sew the hem.",
        expects=(Put(f"{at}.hem", "cut"),),
        effects=(Put(f"{at}.hem", "sewn"),),
    )
    return work_of((cutting, sewing))


fix = Fix(
    title="Cut the lining shorter",
    why="What hangs out is cut away, and the edge is sewn again.",
    wrong_when="The cape itself may still be let down.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=1,
    work=work,
)
'''

SEW = '''"""Sew the hem."""

from advisor.core.model import Put
from advisor.core.work import Op, Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of


def work(trouble: Trouble, view: View) -> Work:
    at = trouble.place
    sewing = Op(
        id=f"sew {at}.hem",
        stage="hem",
        verb="sew",
        places=(at,),
        setup="straight",
        minutes=Spread(10, 15, 25),
        says="Sew the hem.",
        expects=(Put(f"{at}.hem", "cut"),),
        effects=(Put(f"{at}.hem", "sewn"),),
    )
    return work_of((sewing,))


fix = Fix(
    title="Sew the hem",
    why="The cut edge is turned in and sewn down.",
    wrong_when="The length is not yet settled.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=1,
    work=work,
)
'''

LEAVE = '''"""Leave it."""

from advisor.knowledge import Fix, nothing_to_do

fix = Fix(
    title="Leave it as it is",
    why="Nothing is cut and nothing is put at risk.",
    wrong_when="It worries the wearer.",
    source="common-practice",
    difficulty=1,
    durability=5,
    visibility=3,
    closes=False,
    work=nothing_to_do,
)
'''

FILES = {
    "rules/grades.toml": GRADES,
    "rules/sources.toml": "",
    "rules/roles/lining.toml": ROLE,
    "rules/garments/cape.toml": GARMENT,
    "cases/watchman.toml": CASE,
    "cases/wigmaker.toml": THIN_CASE,
    "rules/length/findings/lining_long.py": LONG,
    "rules/length/findings/lining_short.py": SHORT,
    "rules/length/findings/hem_open.py": OPEN,
    "rules/length/answers/shorten_long.py": answer(
        "Shorten a long lining", "lining_long", "hem_open", "hem", "length.fixes.shorten"
    ),
    "rules/length/answers/leave_long.py": answer(
        "Leave a long lining", "lining_long", "hem_open", "hem", "length.fixes.leave"
    ),
    "rules/length/answers/leave_short.py": answer(
        "Leave a short lining", "lining_short", "hem_open", "hem", "length.fixes.leave"
    ),
    "rules/length/answers/sew_open.py": answer(
        "Sew an open hem", "hem_open", "lining_long", "finish", "length.fixes.sew"
    ),
    "rules/length/vetoes/thin_cloth.py": THIN,
    "rules/length/fixes/shorten.py": SHORTEN,
    "rules/length/fixes/sew.py": SEW,
    "rules/length/fixes/leave.py": LEAVE,
}
FIND, SHORTEN_FIX, VETO = (
    "rules/length/findings/lining_long.py",
    "rules/length/fixes/shorten.py",
    "rules/length/vetoes/thin_cloth.py",
)


class Mini:
    """The rule base in `folder`, as it stands on disk."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        for path, text in FILES.items():
            self.write(path, text)

    def write(self, path: str, text: str) -> None:
        """A file, whole."""
        (self.folder / path).parent.mkdir(parents=True, exist_ok=True)
        (self.folder / path).write_text(text, encoding="utf-8")

    def change(self, path: str, old: str, new: str) -> None:
        """Every `old` in a file becomes `new`."""
        text = (self.folder / path).read_text(encoding="utf-8")
        assert old in text, f"{path} does not say {old!r}"
        self.write(path, text.replace(old, new))

    def copy(self, path: str, to: str, *changes: tuple[str, str]) -> None:
        """A file under another name, with changes."""
        self.write(to, (self.folder / path).read_text(encoding="utf-8"))
        for old, new in changes:
            self.change(to, old, new)

    def remove(self, *paths: str) -> None:
        """Files taken away."""
        for path in paths:
            (self.folder / path).unlink()

    def check(self) -> Report:
        """All checks."""
        return run_checks(self.folder / "rules", self.folder / "cases")

    def errors(self) -> list[str]:
        """What must be mended, as told."""
        return [fault.told() for fault in self.check().errors]

    def notes(self) -> list[str]:
        """What to look at, as told."""
        return [fault.told() for fault in self.check().faults if fault.note]

    def faults(self, check: str) -> list[Fault]:
        """What one check found."""
        return [fault for fault in self.check().faults if fault.check == check]
