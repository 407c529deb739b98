# Run: python3 src/test/java/club/ascham/bench/points/bolt_points.py (needs numpy and scipy). Used by bench's BoltPointsTest.
"""Turns of the limb bolts for an aim of tiller, from what the bench's own page states: 7.5 mm for a
turn of one bolt with a spread of 4.5, shared evenly where both bolts have room (so that the draw
weight stays), at most a quarter turn of each, by eighths. Of all first steps that the bolts have
room for, each is tried: that in which each bolt comes nearest to its share is advised. All in whole
fractions, so that the limits are exact."""
from fractions import Fraction as Exact
from scipy.stats import norm
from table import Table

IN = Exact(254, 10)
TURN, SPREAD = Exact(15, 2), Exact(9, 2)
EIGHTH, QUARTER = Exact(1, 8), Exact(1, 4)
Z90 = norm.ppf(0.95)
# What is aimed at, and beyond what no bolt is turned: in mm, by the fingers.
STYLES = {"split-finger": (3, -4, 10), "three-under": (0, -6, 10), "string-walking": (-3, -10, 4)}


def half_step(mm):
    sixteenth = IN / 16
    return sixteenth / 2 if mm % sixteenth == 0 else Exact(1, 2)


def reckon(tiller, target=None, upper=None, lower=None, most=None, style=None):
    exact = lambda value: None if value is None else Exact(str(value))
    tiller, target, upper, lower, most = map(exact, (tiller, target, upper, lower, most))
    aim, low, high = STYLES[style or "split-finger"]
    target = Exact(aim) if target is None else target
    nothing = lambda outcome, reached: (
        {"outcome": outcome, "upperTurns": 0, "lowerTurns": 0, "firstStep.upperTurns": 0, "firstStep.lowerTurns": 0,
         "expectedTillerMm": float(tiller), "low": float(tiller), "high": float(tiller), "reached": reached}, [])
    if not low - half_step(tiller) <= tiller <= high + half_step(tiller):
        return nothing("look-first", False)
    fault = [name for name, out in (("upperTurnsOut", upper), ("lowerTurnsOut", lower))
             if out is not None and most is not None and out > most]
    if fault:
        return None, fault[:1]
    off = tiller - target
    if abs(off) < 1:
        return nothing("leave-it", True)
    # A tiller too large wants the upper bolt in or the lower one out; too small, the other way round.
    stands_in, stands_out = (upper, lower) if off > 0 else (lower, upper)
    room_in = Exact(1000) if stands_in is None else stands_in
    room_out = Exact(0) if stands_out is None or most is None else most - stands_out
    wanted = abs(off) / TURN
    # All of it: half and half, and what one has no room for falls to the other.
    half = wanted / 2
    goes_in, goes_out = min(half, room_in), min(half, room_out)
    goes_in = min(room_in, wanted - goes_out)
    goes_out = min(room_out, wanted - goes_in)
    steps = [Exact(n, 8) for n in range(3)]
    tried = [(i, o) for i in steps for o in steps if i <= room_in and o <= room_out]
    capped = lambda share: min(share, QUARTER)
    near = lambda step, share: (abs(capped(share) - step), -step)
    best = min(tried, key=lambda s: (near(s[0], goes_in), near(s[1], goes_out)))
    if wanted < EIGHTH * 3 / 2 or best == (0, 0):
        # Nearer to one eighth in all than to two: one bolt alone, in rather than out.
        one = [s for s in ((EIGHTH, Exact(0)), (Exact(0), EIGHTH)) if s in tried]
        best = one[0] if one else (0, 0)
    if best == (0, 0):
        return nothing("no-room", False)
    into, out = best
    moved = into + out
    way = -1 if off > 0 else 1
    first = (into, -out) if off > 0 else (-out, into)
    whole = (goes_in, -goes_out) if off > 0 else (-goes_out, goes_in)
    expected = float(tiller + way * TURN * moved)
    reach = Z90 * float(SPREAD * moved)
    return {"outcome": "turn", "upperTurns": float(whole[0]), "lowerTurns": float(whole[1]),
            "firstStep.upperTurns": float(first[0]), "firstStep.lowerTurns": float(first[1]),
            "expectedTillerMm": expected, "low": expected - reach, "high": expected + reach,
            "reached": goes_in + goes_out > wanted - EIGHTH / 2}, []


if __name__ == "__main__":
    table = Table("bolts", "bolt_points.py", "Turns of the limb bolts that bring tiller to its aim.")

    def point(name, *asked, edge=False, **named):
        names = ("tillerMm", "targetMm", "upperTurnsOut", "lowerTurnsOut", "maxTurnsOut", "style")
        given = dict(zip(names, asked))
        given.update(named)
        expected, fault = reckon(*(given.get(name) for name in names))
        table.point(name, given, expected, fault, edge)

    point("much too large, room both ways", 9.5, 4.8, 2, 2, 4)
    point("too large by 3 mm", 6, 3, 1.5, 1.5, 4)
    point("too small by 4 mm", -1, 3, 1, 1, 3)
    point("a little too large", 4.5, 3, 2, 2, 4)
    point("a little too small", 1.4, 3, 2, 2, 4)
    point("the maker's turns unknown: in only", 8, 3, 2, 2)
    point("nothing known of the bolts", 7, 3)
    point("three fingers under, aim by the style", 5, None, 2, 2, 4, "three-under")
    point("string walking, aim by the style", 1, None, 2, 2, 4, "string-walking")
    point("unlike bolts", 8.5, 3, 0.5, 3.5, 4)
    point("two turns of eighths on each", 5.2, 3, 2, 2, 4)
    point("by one bolt, too small", 0, 4, None, 2)
    point("a millimetre off is turned", 4, 3, 2, 2, 4, edge=True)
    point("a hair under is left", 3.99, 3, 2, 2, 4, edge=True)
    point("a millimetre off, in tenths that binary can't hold", 4.1, 3.1, 2, 2, 4, edge=True)
    point("a millimetre too small, in such tenths", 2.1, 3.1, 2, 2, 4, edge=True)
    point("on its aim", 3, 3, 2, 2, 4, edge=True)
    point("no room on either bolt", 8, 3, 0, 4, 4, edge=True)
    point("no room in, the other bolt alone", 8, 3, 0, 1, 4, edge=True)
    point("no room out, the other bolt alone", 8, 3, 2, 4, 4, edge=True)
    point("a sixteenth of a turn of room: none by eighths", 8, 3, 0.0625, 3.9375, 4, edge=True)
    point("room for an eighth in and an eighth out", 9, 3, 0.125, 3.875, 4, edge=True)
    point("both bolts fully in, too large", 8, 3, 0, 0, edge=True)
    point("both bolts out to the limit, too small", -2, 3, 4, 4, 4, edge=True)
    point("further out than the maker allows", 8, 3, 5, 2, 4, edge=True)
    point("the lower one further out than allowed", 8, 3, 2, 4.01, 4, edge=True)
    point("the outer band's end and half a millimetre", 10.5, 3, 2, 2, 4, edge=True)
    point("a hair beyond: look first", 10.51, 3, 2, 2, 4, edge=True)
    point("its low end and half a millimetre", -4.5, 3, 2, 2, 4, edge=True)
    point("a hair beyond the low end", -4.51, 3, 2, 2, 4, edge=True)
    point("minus 3/16 in, read in inches, is within", -4.7625, 3, 2, 2, 4, edge=True)
    point("the same to a hundredth, read in millimetres, is not", -4.76, 3, 2, 2, 4, edge=True)
    point("7/16 in is beyond", 11.1125, 3, 2, 2, 4, edge=True)
    point("string walking at its high end", 4.5, None, 2, 2, 4, "string-walking", edge=True)
    point("string walking beyond its high end", 4.6, None, 2, 2, 4, "string-walking", edge=True)
    point("three under at its low end", -6.5, None, 2, 2, 4, "three-under", edge=True)
    point("an aim between one eighth and two", 4.40625, 3, 2, 2, 4, edge=True)
    point("half way between two eighths on each bolt", 5.8125, 3, 2, 2, 4, edge=True)
    point("the widest tiller that is read", -60, 3, 2, 2, 4, edge=True)
    point("room left for all but a sixteenth", 6, 3, 0.2, 3.86, 4, edge=True)
    table.write()
