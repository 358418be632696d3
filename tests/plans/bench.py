"""How long the search takes on twelve findings of six ways each and six knock-ons: `python -m tests.plans.bench`."""

from statistics import median
from time import process_time

from advisor.advise.front.measure import Bounds
from advisor.advise.front.search import front
from tests.plans.graphs import planned


def main() -> None:
    """Print seconds of CPU over forty graphs."""
    spent = []
    for seed in range(40):
        graph, begun = planned(seed), process_time()
        front(graph, Bounds())
        spent.append(process_time() - begun)
    print(f"whole front: median {median(spent):.3f} s, worst {max(spent):.3f} s of {len(spent)} graphs")


if __name__ == "__main__":
    main()
