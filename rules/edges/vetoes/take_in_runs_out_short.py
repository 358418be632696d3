"""The side seam is too short for the line to run out."""

from advisor.figures.edges import QUARTERS
from advisor.figures.seams import shortest_run_out
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait


def layer(amount: Mm, spare_at: str) -> Mm:
    return amount / QUARTERS.get(spare_at, 4)


def run(amount: Mm, spare_at: str) -> Mm:
    return shortest_run_out(layer(amount, spare_at))


rule = Veto(
    title="Too short to run out",
    fix="edges.fixes.take_in_upper_sides",
    why="A line that runs out in less than 5 in for every 1/2 in of depth shows as a dent beside the seam.",
    source="common-practice",
    when=(
        given(
            "it is known where the spare width lies",
            Trait(place=MATCH.place, role="upper_part", slot="spare_at", word=MATCH.spare_at),
        ),
        given(
            "the side seam is measured",
            Measure(place=MATCH.place, role="upper_part", slot="side_length", mm=MATCH.long),
        ),
        such_that("it is shorter than the line needs", lambda amount, spare_at, long: run(amount, spare_at) > long),
    ),
    reckons={"layer": layer, "run": run},
    says="Each layer would move in {layer} at the waist and needs {run} to run out; the side seam is {long} long.",
    fires=(
        fires(
            "4 in over short seams",
            offered("wider", "bodice", "upper_part", "edges.fixes.take_in_upper_sides"),
            problem("wider", "bodice", "upper_part", "join", "4 in"),
            trait("bodice.spare_at", "upper_part", "round"),
            measure("bodice.side_length", "upper_part", "8 in"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.gather"),
        near("less", at=1, mm=length("3 in")),
        near("just long enough", at=3, mm=length("10 in")),
        near_without("it is not known where", at=2),
        near_without("the seam is not measured", at=3),
    ),
)
