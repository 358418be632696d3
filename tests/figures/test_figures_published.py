"""Published worked examples and table rows come out as published, or as they should have been."""

import tomllib
from fractions import Fraction
from pathlib import Path

import answers_closure
import answers_girth
import pytest
import yaml
from published_answers import ANSWERS

assert answers_closure and answers_girth
HERE = Path(__file__).parent
PUBLISHED = tomllib.loads((HERE / "published.toml").read_text(encoding="utf-8"), parse_float=Fraction)
LEFT_OUT = tomllib.loads((HERE / "left_out.toml").read_text(encoding="utf-8"))
COLLECTION = HERE.parents[2] / "shared" / "checks.yaml"


@pytest.mark.parametrize("id", PUBLISHED)
def test_published_example(id: str) -> None:
    entry = PUBLISHED[id]
    ours = ANSWERS[id](entry["given"] | {"source": entry["source"]})
    for key, expected in entry["expect"].items():
        assert agrees(ours[key], expected, entry["tolerance"]), f"{key}: {ours[key]}, published {expected}"


@pytest.mark.parametrize("id", [id for id, entry in PUBLISHED.items() if "source_says" in entry])
def test_a_wrong_printed_figure_is_not_repeated(id: str) -> None:
    entry = PUBLISHED[id]
    ours = ANSWERS[id](entry["given"] | {"source": entry["source"]})
    said = entry["source_says"]
    assert not all(agrees(ours[key], said[key], entry["tolerance"]) for key in said)


def test_every_example_is_answered_and_cites_an_address() -> None:
    assert set(ANSWERS) == set(PUBLISHED)
    assert all("<http" in entry["source"] for entry in PUBLISHED.values())


def test_what_is_left_out_has_a_reason() -> None:
    left = [id for group in LEFT_OUT.values() for id in group["ids"]]
    assert len(left) == len(set(left))
    assert not set(left) & set(PUBLISHED)
    assert all(len(group["reason"]) > 20 for group in LEFT_OUT.values())


def test_nothing_of_the_collection_is_lost(capsys: pytest.CaptureFixture[str]) -> None:
    if not COLLECTION.exists():
        pytest.skip("the collection of published examples is not beside this checkout")
    collection = {entry["id"]: entry for entry in yaml.safe_load(COLLECTION.read_text())["examples"]}
    left = {id for group in LEFT_OUT.values() for id in group["ids"]}
    assert set(collection) == set(PUBLISHED) | left
    for id, ours in PUBLISHED.items():
        theirs = collection[id]
        for part in ("given", "expect", "source_says"):
            assert plain(ours.get(part, {})) == plain(theirs.get(part, {})), id
        assert float(ours["tolerance"]) == theirs["tolerance"], id
        assert ours["source"] == " ".join(theirs["source"].split()), id
    with capsys.disabled():
        print(f"\npublished examples: {len(PUBLISHED)} held, {len(left)} left out with a reason")


def agrees(ours: object, published: object, tolerance: Fraction) -> bool:
    if isinstance(published, bool | str):
        return ours == published
    assert isinstance(ours, int | Fraction), "an answer is an exact number"
    assert isinstance(published, int | Fraction)
    return abs(ours - published) <= tolerance


def plain(values: dict[str, object]) -> dict[str, object]:
    """As read from another format: fractions as floats."""
    return {key: as_float(value) for key, value in values.items()}


def as_float(value: object) -> object:
    if isinstance(value, list):
        return [as_float(item) for item in value]
    return float(value) if isinstance(value, Fraction) else value
