# Run: python3 src/test/java/club/ascham/bench/points/twist_points.py (needs numpy and scipy). Used by bench's TwistPointsTest.
"""Twists for an aim, from the formulas that the bench's own page states: the chances are integrals
over the two factors (bundle between mean strand and outermost helix; brace against string), the
numbers of twists roots of the quadratic, limits compared in whole fractions of a millimetre."""
import math
import os
import sys
from fractions import Fraction as Exact
from scipy.stats import norm
from table import Table

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "mechanics"))
import twists as strands_one_by_one

IN = Exact(254, 10)
Z90 = norm.ppf(0.95)
LIMITS = {"fewest": 10, "most": 60}
AT_ALL = 150
# The table in force when a club begins, in inches: 62 and 64, 66 and 68, 70 and 72.
BANDS = {62: ("7.5", "8.5"), 64: ("7.5", "8.5"), 66: (8, 9), 68: (8, 9), 70: ("8.75", "9.5"), 72: ("8.75", "9.5")}


def bundle():
    """k: the middle of 1 and 2, which hold nine in ten, times 1.02 with a spread of 0.07; of a
    product of two independent numbers, the exact mean and variance."""
    a, sa, b, sb = 1.5, 0.5 / Z90, 1.02, 0.07
    return a * b, math.sqrt((a * sb) ** 2 + (b * sa) ** 2 + (sa * sb) ** 2)


def thumb():
    """1 mm for 2 to 3 twists, the middle half of all strings."""
    return (1 / 2 + 1 / 3) / 2, (1 / 2 - 1 / 3) / 2 / norm.ppf(0.75)


def half_step(mm):
    """Half of the step that a figure was read in: whole sixteenths of an inch, else millimetres."""
    sixteenth = IN / 16
    return sixteenth / 2 if mm % sixteenth == 0 else Exact(1, 2)


def reckon(asked, limits=LIMITS):
    number = lambda name: None if asked.get(name) is None else Exact(str(asked[name]))
    bow, string, brace, aim = (number(n) for n in ("bowLengthIn", "stringLengthMm", "braceMm", "targetMm"))
    strands, diameter, count = asked.get("strands"), asked.get("strandDiameterMm"), asked.get("twists")
    fault = []
    if string > (bow - 1) * IN:
        fault.append("stringLengthMm")
    if not asked.get("sure"):
        if not Exact(9, 100) * bow * IN <= brace <= Exact(16, 100) * bow * IN:
            fault.append("braceMm")
        band = BANDS.get(round(bow))
        if band:
            low, high = (Exact(str(end)) * IN for end in band)
            if not low - half_step(aim) <= aim <= high + half_step(aim):
                fault.append("targetMm")
    if fault:
        return None, fault
    geometry = (count is not None and strands is not None and diameter is not None and 48 <= bow <= 72
                and Exact(85, 100) * bow * IN <= string <= bow * IN)
    if geometry:
        radius = diameter / 2 * math.sqrt(strands / 0.75)
        geometry = 2 * math.pi * radius * count < string
    wanted = aim - brace
    way = -1 if wanted < 0 else 1
    much = abs(float(wanted))
    mean, sd = bundle() if geometry else thumb()
    if geometry:
        short = lambda n: (math.pi * radius * n) ** 2 / float(string)
        # Strand by strand the same, to 1 in 100, for what is sound.
        strands_one_by_one.LENGTH, strands_one_by_one.STRANDS, strands_one_by_one.DIAMETER = float(string), strands, diameter
        if 0 < count <= 60:
            assert abs(strands_one_by_one.shortening(count)[0] / short(count) - 1) < 0.01
        work = lambda n: abs(short(max(0, count + way * n)) - short(count))

        def root(need):
            """Real number of twists whose work is so much; None: no number."""
            if way > 0:
                return math.sqrt(count ** 2 + need * float(string) / (math.pi * radius) ** 2) - count
            left = count ** 2 - need * float(string) / (math.pi * radius) ** 2
            return None if left < 0 else count - math.sqrt(left)
    else:
        work = lambda n: float(n)
        root = lambda need: need
    most = count if count is not None and way < 0 else AT_ALL

    def fewest(per_work):
        if much == 0:
            return 0
        if per_work <= 0:
            return None
        real = root(much / per_work)
        return None if real is None or math.ceil(real - 1e-12) > most else math.ceil(real - 1e-12)

    low, high = fewest(mean + Z90 * sd), fewest(mean - Z90 * sd)
    # The whole number whose likeliest change comes nearest to what is wanted.
    likely = min(range(most + 1), key=lambda n: (round(abs(mean * work(n) - much), 12), n)) if much >= 0.5 else 0
    limit = limits["most"] - limits["fewest"] if count is None else \
        max(0, limits["most"] - count if way > 0 else count - limits["fewest"])
    here = work(min(limit, most))
    chance = (1.0 if much == 0 else 0.0) if here == 0 else float(norm.sf((much - mean * here) / (sd * here)))
    other = None
    if abs(wanted) < Exact(1, 2) or (likely == 0 and most > 0):
        reach = "leave-it"
    elif chance >= 0.5 and (count is None or limits["fewest"] <= count + way * min(likely, limit) <= limits["most"]):
        reach = "this-string"
    else:
        if geometry:
            new = limits["fewest"] + (limits["most"] - limits["fewest"]) // 3
            other = (mean * (short(new) - short(count)) - float(wanted)) / 1.02
        else:
            other = -float(wanted) / 1.02
        reach = "longer-string" if other >= 0 else "shorter-string"
    turns = min(likely, limit) if reach == "this-string" else 0
    if turns and low is not None:
        low = min(low, turns)
    change = way * work(turns)
    ends = sorted(change * (mean + side * Z90 * sd) for side in (-1, 1))
    signed = lambda n: None if n is None else way * n
    first, last = (signed(low), signed(high)) if way > 0 else (signed(high), signed(low))
    return {"turns": way * turns, "low": first, "high": last, "room": None if count is None else limit,
            "chance": chance, "stringChangeMm": -float(wanted) / 1.02, "reach": reach, "otherStringMm": other,
            "expectedBraceMm": float(brace) + mean * change, "expectedLowMm": float(brace) + ends[0],
            "expectedHighMm": float(brace) + ends[1]}, []


def bow(brace, aim, twists=35, length=68, string=1651, strands=14, diameter=0.45, sure=None):
    return {"bowLengthIn": length, "stringLengthMm": string, "strands": strands, "strandDiameterMm": diameter,
            "twists": twists, "braceMm": brace, "targetMm": aim, "sure": sure}


if __name__ == "__main__":
    table = Table("twists", "twist_points.py", "Twists that bring brace to its aim.")

    def point(name, asked, edge=False, limits=LIMITS):
        expected, fault = reckon(asked, limits)
        club = dict(limits)
        band = BANDS.get(round(asked["bowLengthIn"]))
        if band:
            club.update(braceLowMm=float(Exact(str(band[0])) * IN), braceHighMm=float(Exact(str(band[1])) * IN))
        table.point(name, asked, expected, fault, edge, club)

    point("9 in to 8 3/4 in, 35 twists", bow(228.6, 222.25))
    point("up by 5 mm", bow(215, 220, 20))
    point("up by 8 mm, a thicker string", bow(210, 218, 25, strands=18))
    point("down by 3 mm from 22", bow(222, 219, 22))
    point("66 in, up", bow(207.9625, 212.725, 24, 66, 1600, 16))
    point("70 in, down", bow(238, 230, 45, 70, 1702, 16, 0.4))
    point("64 in, down by 4", bow(210, 206, 30, 64, 1549.4, 12))
    point("62 in, up by 6", bow(196, 202, 18, 62, 1495, 12, 0.42))
    point("72 in, a heavy string", bow(230, 236, 28, 72, 1750, 20, 0.5))
    point("twists not counted, up", bow(215, 220, None))
    point("strands not known, down", bow(222, 217, 30, strands=None))
    point("a junior's bow of 54 in, no table speaks", bow(165, 170, 20, 54, 1290, 10))
    point("half a millimetre off is not left", bow(219.5, 220, 30), True)
    point("a hair under half a millimetre is left", bow(219.51, 220, 30), True)
    point("half a millimetre, in tenths that binary can't hold", bow(217.8, 218.3, 30), True)
    point("half a millimetre down, in such tenths", bow(219.1, 218.6, 30), True)
    point("half a millimetre up, in such tenths", bow(211.1, 211.6, 30), True)
    point("half a millimetre up, in hundredths", bow(216.33, 216.83, 30), True)
    point("on its aim", bow(220, 220, 30), True)
    point("no twists in it, up", bow(215, 217, 0), True)
    point("no twists in it, down: none to take out", bow(222, 219, 0), True)
    point("at the fewest, down: another string", bow(228.6, 219, 10), True)
    point("at the most, up: another string", bow(215, 220, 60), True)
    point("over the most, down", bow(225, 219, 80), True)
    point("under the fewest, up by little: stays under", bow(218, 218.6, 3), True)
    point("room for a part of it: less than an even chance", bow(228.6, 220, 30), True)
    point("a string an inch shorter than its bow", bow(215, 220, 25, 68, 1701.8), True)
    point("a hair longer than that", bow(215, 220, 25, 68, 1701.9), True)
    point("an inch shorter, 62 in", bow(200, 205, 25, 62, 1549.4), True)
    point("an inch shorter, 72 in", bow(230, 235, 25, 72, 1803.4), True)
    point("a bow of 48 in, still by geometry", bow(150, 155, 20, 48, 1130, 10), True)
    point("a bow of 47 in, by the rule of thumb", bow(150, 155, 20, 47, 1110, 10), True)
    point("a string of 0.85 of the bow, 50 in", bow(160, 165, 20, 50, 1079.5, 10), True)
    point("just shorter than 0.85 of the bow", bow(160, 165, 20, 50, 1079.4, 10), True)
    point("aim at the table's high end and half a millimetre", bow(222, 229.1, 30), True)
    point("a hair beyond it is asked back", bow(222, 229.11, 30), True)
    point("a sixteenth of an inch beyond the table is asked back", bow(222, 230.1875, 30), True)
    point("the same, looked at again", bow(222, 230.1875, 30, sure=True), True)
    point("aim half a millimetre under the table's low end", bow(205, 202.7, 30), True)
    point("a hair under that is asked back", bow(205, 202.69, 30), True)
    point("brace at the lowest part of its bow", bow(155.448, 205, None), True)
    point("a hair lower is asked back", bow(155.44, 205, None), True)
    point("brace at the highest part of its bow", bow(276.352, 225, 60), True)
    point("a hair higher is asked back", bow(276.36, 225, 60), True)
    point("brace at the highest part, 66 in", bow(268.224, 225, 60, 66, 1600), True)
    point("brace at the lowest part, 70 in", bow(160.02, 225, 20, 70, 1702), True)
    point("so many twists hardly go in: by the rule of thumb", bow(222, 219, 150, 54, 1270, 60, 2), True)
    point("a club's own limits, 20 to 40", bow(228.6, 222.25, 35), True, {"fewest": 20, "most": 40})
    point("a club's own limits, at the most", bow(220, 223.5, 40), True, {"fewest": 20, "most": 40})
    table.write()
