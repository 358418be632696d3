"""Put loops and label back."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Put loops and label back",
    problem="loops_off",
    fix="waist.fixes.set_loops",
    why="They came off only to let the band be worked on, and the loop hides the new seam.",
    source="EHOWJ",
    when=(),
    fires=(fires("after a seam in the band", problem("loops_off", "band", "waistband", "finish")),),
    near=(near("another problem", name="band_longer"),),
)
