"""Case files: TOML, edited by the program and by hand, comments and order kept, read strictly.

    read_case(path, garments)                    -> Opened (case, path, digest, text)
    write_case(opened, case, path, garments)     -> Opened; only the lines that differ are changed
    parse_case(text, garments)                   -> Case
    case_text(case, garments)                    -> the text of a new file
    new_case, answered, chosen, chosen_all, picked_out, recorded    -> the steps that change a Case
    still_to_tell(case)                          -> what was picked out and is not answered yet

`garments` maps each garment's name to its questions by key. A file looks like this:

    version = 1
    title = "The admiral's widow, act two"
    garment = "one_piece"
    tape = "in"                       # or "cm": what bare lengths are in, and lengths are written on
    story = "..."                     # may run over several lines between triple quotes

    [answers.waist]
    sits = "low"                      # a word or a length alone: told, no date
    low_by = { value = "1 1/2 in", how = "measured", at = "2026-11-25T09:30:00" }
    pinned = { value = '2"', how = "pinned", told = "a fold 1/2 in deep at each of two places" }
    round = { unknown = true }        # asked, and she cannot say; a slot with no line was not asked

    [choices]
    "waist_low@bodice" = { fix = "waist.fixes.raise_seam", reason = "it leaves the zipper alone" }   # and at = "..."

    [limits]
    hardest = 4                       # 1 to 5
    weakest = 2                       # 1 to 5
    weigh = { difficulty = 1, durability = 1, visibility = 0.5 }
    visible = 3                       # 1 to 5: the most a fix may show
    cutting = false                   # nothing that cannot be undone
    buttonholes = false               # the machine makes none
    minutes = 120                     # likely minutes, for all of the work
    money = 20                        # for all of the work, as far as prices are told
    prices = { "zipper" = 4.50 }      # by the names on the plan

    [record]                          # the plan as it was printed last, for `advisor replay`; it may be deleted
    at = "2026-11-25T09:30:00"
    advisor = "0.1.0"
    rules = "45045572b652e905"        # a digest, as the next five
    others = "5e0d7c1b2a3f4968"
    formulas = "00214e52dce4aeed"
    operations = "2d826f3559c0d992"
    answers = "91bf2a77c3d04e15"
    advice = "c05d6a1198e7b3f2"
    totals = { hardest = 4, weakest = 5, shows = 2, least = 60, likely = 90, most = 150, final = 1 }

    [record.findings]
    "waist_low@bodice" = { took = "waist.fixes.raise_seam", stood = ["waist.fixes.raise_seam"], out = [] }

    [record.steps]
    level = ["cut bodice.edge 1c22ab90"]

    [record.cards]
    "waist.fixes" = { raise_seam = "7be01d35" }

    [[log]]
    at = "2026-11-25T09:30:00"
    what = "waist.low_by: measured"

Answers stand in one table a place because one then types `low_by` under `[answers.waist]` instead of a quoted
"waist.low_by" on every line, and because a place is what one has under the hands while measuring. Other TOML
for the same (dotted keys, a table for one answer) is read too, and edited in its own way.

A length that was seen to equal the one that stands in for it (a band and the edge it is sewn to) is written
`"same as trousers.edge"`: measured later, both follow.

A length that is on no tape is kept all the same: `"27 1/3 in"`, `"705.125 mm"`, and, for a fraction of a
millimeter that neither can tell, `{ mm = "2095/7" }`, which only the program writes.

Every refusal is a CaseError with the file, the line where it can be told, what is wrong and what to do.
Choices are not compared with the rules: one whose finding is gone is kept.
"""

from advisor.casefile.changes import answered, chosen, chosen_all, new_case, picked_out, recorded, still_to_tell
from advisor.casefile.fresh import case_text
from advisor.casefile.reading import MIGRATIONS, Opened, parse_case, read_case
from advisor.casefile.shape import VERSION
from advisor.casefile.vocabulary import Garments, Questions
from advisor.casefile.writing import write_case

__all__ = [
    "MIGRATIONS",
    "VERSION",
    "Garments",
    "Opened",
    "Questions",
    "answered",
    "case_text",
    "chosen",
    "chosen_all",
    "new_case",
    "parse_case",
    "picked_out",
    "read_case",
    "recorded",
    "still_to_tell",
    "write_case",
]
