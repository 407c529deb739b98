# Run: python3 src/test/java/club/ascham/bench/points/ask_server.py http://127.0.0.1:8080 (a server with ASCHAM_DEMO=true). Used by hand.
"""Asks a running server every point of the tables over its API, and says where it and the other tool
differ. Points of a club that has something else in force than the demo's are left out, and counted."""
import base64
import csv
import json
import os
import sys
import urllib.error
import urllib.request
from table import FOLDER

CARDS = {"twists": "twists", "bolts": "bolts", "draw_weight": "draw-weight", "rigid_limb": "statics", "elastica": "statics",
         "ewma": "chart", "cusum": "chart", "life": "life", "replacement_age": "replacement-age", "readers": "readers"}
LISTS = {"drawsIn", "readings", "failed", "suspended", "entered"}
WORDS = {"kind", "model", "style"}


def rows(name):
    with open(os.path.join(FOLDER, name + ".csv")) as file:
        lines = [line for line in file if not line.startswith("#")]
    return list(csv.DictReader(lines))


def body(row, card):
    asked = {}
    for name, cell in row.items():
        if cell and name not in ("point", "edge", "fault") and name[0] != "=" and not name.startswith(("club.", "own.")):
            if card == "readers" and name == "readings":
                value = [dict(reader=one.split(":")[0], value=float(one.split(":")[1])) for one in cell.split()]
            elif name in LISTS:
                value = [float(one) for one in cell.split() if one != "none"]
            elif name in WORDS:
                value = cell
            else:
                value = json.loads(cell)
            place = asked
            *path, last = name.split(".")
            for step in path:
                place = place.setdefault(step, {})
            place[last] = value
    return asked


def ask(server, card, asked):
    request = urllib.request.Request(server + "/api/bench/" + card, json.dumps(asked).encode(),
                                     {"Content-Type": "application/json", "Authorization":
                                      "Basic " + base64.b64encode(b"officer:demo-fleet").decode()})
    try:
        with urllib.request.urlopen(request) as answer:
            return json.load(answer), []
    except urllib.error.HTTPError as refusal:
        told = json.load(refusal)
        return None, sorted(error["field"] for error in told.get("errors", []))


def found(answer, path):
    for step in path.split("."):
        answer = [one.get(step) for one in answer] if isinstance(answer, list) else (answer or {}).get(step)
    return answer


def apart(told, cell):
    """Relative difference, of 1 where the figure is smaller; None: not the same thing."""
    if isinstance(told, list):
        cells = [] if cell == "none" else cell.split()
        if len(told) != len(cells):
            return None
        parts = [apart(one, other) for one, other in zip(told, cells)]
        return None if None in parts else max(parts, default=0.0)
    if told is None or isinstance(told, bool) or isinstance(told, str):
        said = "null" if told is None else str(told).lower() if isinstance(told, bool) else told
        return 0.0 if said == cell else None
    return None if cell == "null" else abs(told - float(cell)) / max(1.0, abs(float(cell)))


if __name__ == "__main__":
    server = sys.argv[1]
    for card, calculator in CARDS.items():
        points, edges, left_out, worst, where = 0, 0, 0, 0.0, ""
        for row in rows(card):
            club = {name: cell for name, cell in row.items() if name.startswith("club.")}
            if club and (club["club.fewest"], club["club.most"]) != ("10", "60"):
                left_out += 1
                continue
            points, edges = points + 1, edges + bool(row["edge"])
            answer, fault = ask(server, calculator, body(row, card))
            if fault != sorted(row["fault"].split()):
                print("   %s, %s: refused at %s, expected at %s" % (card, row["point"], fault, row["fault"].split()))
                continue
            for name, cell in row.items():
                if name[0] == "=" and cell and not name.startswith("=own.") and not fault:
                    told = found(answer, name[1:])
                    part = apart(told, cell)
                    if part is None or part > 1e-3:
                        print("   %s, %s: %s is %s, expected %s" % (card, row["point"], name[1:], told, cell))
                    elif part > worst:
                        worst, where = part, name[1:] + " of " + row["point"]
        print("%s: %d points, %d edges (%d left out), largest difference up to 0.001: %.1e (%s)"
              % (card, points, edges, left_out, worst, where))
