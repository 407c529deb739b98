# Run: not by itself; the programs beside it write their tables through this (needs numpy and scipy).
"""A table of points for one of the bench's calculators: what is asked, what another tool says.

Columns are named as in the API; "=" before a name marks what is expected of the answer, "club." what
the club has in force, "fault" the fields at which the question is refused or asked back. Lists have
blanks between their members; "null" is expected to be absent, an empty cell is not compared."""
import csv
import os
import platform
import numpy
import scipy

ROOT = os.path.join(os.path.dirname(os.path.abspath(__file__)), *[".."] * 7)
FOLDER = os.path.join(ROOT, "src", "test", "resources", "club", "ascham", "bench", "points")


def said(value):
    if value is None:
        return "null"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, (list, tuple)):
        return " ".join(said(one) for one in value)
    if isinstance(value, (int, str)):
        return str(value)
    return "%.12g" % value


class Table:
    def __init__(self, name, program, about):
        self.name, self.program, self.about, self.rows = name, program, about, []

    def point(self, point, asked, expected=None, fault=(), edge=False, club=None):
        assert bool(expected) != bool(fault), point
        row = {"point": point, "edge": "edge" if edge else "", "fault": " ".join(fault)}
        row.update({name: said(value) for name, value in asked.items() if value is not None})
        row.update({"club." + name: said(value) for name, value in (club or {}).items()})
        row.update({"=" + name: said(value) for name, value in (expected or {}).items()})
        self.rows.append(row)

    def write(self):
        columns = []
        for row in self.rows:
            columns += [name for name in row if name not in columns]
        columns.sort(key=lambda name: (name.startswith("="), name == "fault", name.startswith("club.")))
        with open(os.path.join(FOLDER, self.name + ".csv"), "w", newline="") as file:
            file.write("# %s\n# Made by: python3 src/test/java/club/ascham/bench/points/%s (Python %s, numpy %s, scipy %s)\n"
                       % (self.about, self.program, platform.python_version(), numpy.__version__, scipy.__version__))
            writer = csv.DictWriter(file, columns, restval="", lineterminator="\n")
            writer.writeheader()
            writer.writerows(self.rows)
        edges = sum(1 for row in self.rows if row["edge"])
        print("%s: %d points, %d of them edges" % (self.name, len(self.rows), edges))
