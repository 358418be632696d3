"""Digests: of what is said and of nothing else. hashlib and ast are the only means; the checks compare meanings."""

import ast
import random
import shutil
from pathlib import Path

import pytest

from advisor.rulebase.digests import base_digest, card_digests, digest_of, file_digest, files_of, plain_tree
from tests.spine.worlds import BASE

CARD = """\
'''About it.'''

from advisor.knowledge import Fix


def work(a, b):
    return a + b


fix = Fix(title="Take it in", grade=3)
"""


def written(folder: Path, text: str, name: str = "card.py") -> str:
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return file_digest(path)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("return a + b", "return a + b  # the two layers"),
        ("'''About it.'''", "'''Otherwise said.'''"),
        ("'''About it.'''\n\n", ""),
        ("title=", "\n    title="),
        ("def work(a, b):\n", 'def work(a, b):\n    """Both."""\n'),
        ("grade=3", "grade=3, fires=(1, 2), near=(3,)"),
        ('"Take it in"', '"Take "\n    "it in"'),
    ],
)
def test_layout_comments_and_examples_leave_no_mark(tmp_path: Path, old: str, new: str) -> None:
    assert old in CARD
    assert written(tmp_path, CARD) == written(tmp_path, CARD.replace(old, new), "other.py")


@pytest.mark.parametrize(
    ("old", "new"), [("a + b", "a - b"), ("grade=3", "grade=4"), ("Take it in", "Take it out"), ("(a, b)", "(a, *b)")]
)
def test_whatever_is_said_otherwise_does(tmp_path: Path, old: str, new: str) -> None:
    assert old in CARD
    assert written(tmp_path, CARD) != written(tmp_path, CARD.replace(old, new), "other.py")


def test_toml_counts_by_its_values(tmp_path: Path) -> None:
    one = written(tmp_path, 'a = 1\n[b]\nc = ["x", "y"]\n', "one.toml")
    assert one == written(
        tmp_path, '# now\n[b] # there\nc = [\n  "x",\n  "y",\n]\n'.replace("# now", "a = 1"), "two.toml"
    )
    assert one != written(tmp_path, 'a = 1\n[b]\nc = ["y", "x"]\n', "three.toml")


def test_a_file_edited_meanwhile_is_read_again(tmp_path: Path) -> None:
    first = written(tmp_path, CARD)
    assert written(tmp_path, CARD.replace("grade=3", "grade=44")) != first


def test_parts_in_any_order_and_never_run_together() -> None:
    parts = [f"part {n}" for n in range(20)]
    shuffled = parts[:]
    random.Random(1).shuffle(shuffled)
    assert digest_of(parts) == digest_of(shuffled)
    assert digest_of(["ab", "c"]) != digest_of(["a", "bc"]) != digest_of(["abc"])


def test_the_tree_is_free_of_what_one_version_of_python_adds() -> None:
    # Python 3.12 added type_params, and 3.13 leaves empty fields out of what it prints.
    tree = ast.parse("def f(x):\n    return x\n")
    function = tree.body[0]
    plain = plain_tree(tree)
    function.type_params = []  # type: ignore[union-attr]
    function.decorator_list = None  # type: ignore[union-attr, assignment]
    assert plain_tree(tree) == plain and "lineno" not in plain


def test_the_whole_base_is_counted_and_where_it_lies_is_not(tmp_path: Path) -> None:
    files = files_of(BASE)
    assert set(BASE.files) < set(files) and "roles.waist" in files and "tables.grades" in files
    assert len(set(files.values())) == len(files)
    assert not any(path.name == "sources.toml" for path in files.values())
    some = sorted(files)[:5]
    assert base_digest(BASE, but=some) != base_digest(BASE)
    copied = tmp_path / "card.py"
    shutil.copy(files[some[0]], copied)
    assert card_digests(BASE, some)[some[0]] == file_digest(copied)
