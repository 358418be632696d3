"""Nothing on a protective garment is altered here."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, one_of, problem, such_that, trait

# A bag alters nothing, and whoever the garment goes to is spared the dust.
OPEN = ("general.fixes.leave", "cloth.fixes.hand_over", "cloth.fixes.bag_and_ask")

rule = Veto(
    title="A protective garment is not altered",
    why="A seam, a patch or a hem can end the protection somebody's life hangs on, without anyone seeing it.",
    source="NFPA2113",
    when=(
        given(
            "the garment is protective",
            Trait(
                role="cloth",
                slot="protective",
                word=one_of("flame", "visible", "chemical", "medical", "flotation", "sleepwear"),
            ),
        ),
        such_that("it would be altered", lambda fix: fix not in OPEN),
    ),
    says="The garment is protective: nothing on it is altered here. It goes to the maker or the safety officer.",
    fires=(
        fires(
            "a hem on a flame resistant coverall",
            offered("waist_low", "bodice", "upper_part", "waist.fixes.raise_seam"),
            problem("waist_low", "bodice", "upper_part", "level", "1 in"),
            trait("cloth.protective", "cloth", "flame"),
        ),
    ),
    near=(
        near("it is left as it is", at=0, fix="general.fixes.leave"),
        near("it is handed over", at=0, fix="cloth.fixes.hand_over"),
        near("unknown dust is bagged first", at=0, fix="cloth.fixes.bag_and_ask"),
        near("an ordinary garment", at=2, word="no"),
    ),
)
