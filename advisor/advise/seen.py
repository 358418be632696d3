"""What one run shows: the problems in order, the fixes offered for each, what rules them out."""

from collections.abc import Sequence

from advisor.core.case import FindingId, FixId
from advisor.core.stages import STAGES, stage_index
from advisor.engine import Run
from advisor.errors import KnowledgeError
from advisor.knowledge.facts import Offer, Problem, Veto


class Seen:
    """A run, read once. KnowledgeError if two rules give two amounts for one problem."""

    def __init__(self, run: Run) -> None:
        self.run = run
        self.problems = _problems(run)
        self._offers: dict[FindingId, list[Offer]] = {}
        self._vetoes: dict[tuple[FindingId, FixId], list[Veto]] = {}
        for offer in run.of(Offer):
            self._offers.setdefault(offer.problem, []).append(offer)
        for veto in run.of(Veto):
            self._vetoes.setdefault((veto.problem, veto.fix), []).append(veto)

    def at(self, stage: str) -> list[Problem]:
        """The problems of one stage."""
        return [problem for problem in self.problems if problem.stage == stage]

    def offers(self, finding: FindingId) -> Sequence[Offer]:
        """What is offered for a finding."""
        return self._offers.get(finding, ())

    def vetoes(self, offer: Offer) -> Sequence[Veto]:
        """What rules an offer out."""
        return self._vetoes.get((offer.problem, offer.fix), ())

    def rule_of(self, fact: Problem | Offer | Veto) -> str:
        """The first rule that concluded a fact."""
        return self.run.concluded_by(fact)[0]


_STAGE_AT: dict[str, int] = {stage: stage_index(stage) for stage in STAGES}


def _problems(run: Run) -> list[Problem]:
    """The problems by stage and name, each once."""
    seen: dict[FindingId, Problem] = {}
    for problem in run.of(Problem):
        other = seen.setdefault(problem.id, problem)
        if other is not problem and other.mm != problem.mm:
            rules = sorted({rule for each in (other, problem) for rule in run.concluded_by(each)})
            raise KnowledgeError(
                f"two amounts for {problem.id}", where=", ".join(rules), hint="let one rule reckon the amount"
            )
    return sorted(seen.values(), key=lambda problem: (_STAGE_AT[problem.stage], problem.id))
