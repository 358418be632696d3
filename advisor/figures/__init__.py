"""Every number the advisor gives, as pure formulas with words and a source. Lengths are exact millimeters.

Importing the package registers all formulas in `FORMULAS` and all published tables in `TABLES`.
"""

from advisor.figures import (
    buttons,
    darts,
    ease,
    edges,
    elastic,
    estimate,
    fitting,
    gathers,
    hems,
    letout,
    lower,
    patches,
    plackets,
    pleats,
    rows,
    seams,
    shrinkage,
    stitches,
    trunk,
    waist,
    zippers,
)
from advisor.figures.exact import INCH, inches
from advisor.figures.formula import FORMULAS, Figure, FigureError, Formula, Record, figure, figures, formula
from advisor.figures.tables import TABLES, Row, Table

__all__ = [
    "FORMULAS",
    "INCH",
    "TABLES",
    "Figure",
    "FigureError",
    "Formula",
    "Record",
    "Row",
    "Table",
    "buttons",
    "darts",
    "ease",
    "edges",
    "elastic",
    "estimate",
    "figure",
    "figures",
    "fitting",
    "formula",
    "gathers",
    "hems",
    "inches",
    "letout",
    "lower",
    "patches",
    "plackets",
    "pleats",
    "rows",
    "seams",
    "shrinkage",
    "stitches",
    "trunk",
    "waist",
    "zippers",
]
