# Run: python3 src/test/java/club/ascham/bench/points/draw_weight_points.py (needs numpy and scipy; two minutes). Used by bench's DrawWeightPointsTest.
"""The weight on the fingers, from what the bench's own page states: the force of a common recurve,
solved by the adaptive integration of mechanics/elastica.py (no curve, no spline, no rounding of
brace), beside an even rise from the braced string; the two published labels for another riser."""
import functools
import math
import os
import sys
import warnings
from table import Table

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "mechanics"))
import elastica

AMO = 1.75
COMMON_BRACE = 8.625
MEDIUM_LIMBS = 43
USUAL_RISER = 25


@functools.lru_cache(None)
def force(bow, riser, brace, draw):
    """Of the common recurve, in its own unit, at a draw from the throat of the grip; None: there is none."""
    length = (bow - riser) / 2 - 2
    if not 44 <= bow <= 76 or not 9 <= length + 2 <= 26:
        return None
    kink = 0.68 * length
    limb = elastica.Limb(length, 2.75 * bow / 68, riser / 2 + 2, 0, lambda s: 5000 * (1 - 0.45 * s / length),
                         lambda s: 0.0 if s < kink else -0.225, kink)
    tension, _ = elastica.braced_at(limb, brace)
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        return elastica.drawn(limb, brace, tension, draw)[0]


def half_even(value):
    return math.floor(value + 0.5) if value % 1 != 0.5 else 2 * round(value / 2)


def riser_factor(marked, riser, bow, brace):
    """Likeliest, least and most of what another riser makes of the weight."""
    if riser is None or marked == riser:
        return 1, 1, 1
    if marked is None:
        _, low, high = riser_factor(USUAL_RISER, riser, bow, brace)
        return 1, min(1, low), max(1, high)
    shorter = marked - riser
    steep, shallow = (30 / 28) ** (shorter / 2), (28 / 26) ** (shorter / 4)
    at = 28 - AMO
    all_three = [steep, shallow]
    here, there = force(bow, riser, brace, at), force(bow + shorter, marked, brace, at)
    if here and there:
        all_three.append(here / there)
    return math.sqrt(steep * shallow), min(all_three), max(all_three)


def reckon(asked):
    marked, draw = asked["markedLb"], asked["drawLengthIn"]
    at = asked.get("markedAtIn", 28)
    brace = asked["braceMm"] / 25.4 if "braceMm" in asked else COMMON_BRACE
    zero = brace + AMO
    if draw <= zero + 1 + 1e-12 or (draw >= at + 8 and not asked.get("sure")):
        return None, ["drawLengthIn"]
    riser = asked.get("riserIn")
    bow = riser + MEDIUM_LIMBS if riser is not None else 2 * half_even(brace / 0.13 / 2)
    stiff = riser if riser is not None else half_even(0.37 * bow)
    even = (draw - zero) / (at - zero)
    here, there = force(bow, stiff, brace, draw - AMO), force(bow, stiff, brace, at - AMO)
    rise = here / there if here else even
    factor, least, most = riser_factor(asked.get("markedRiserIn"), riser, bow, brace)
    return {"onFingersLb": marked * factor * rise, "low": (marked - 1) * least * min(rise, even) * 0.95,
            "high": (marked + 1) * most * max(rise, even) * 1.05}, []


if __name__ == "__main__":
    table = Table("draw_weight", "draw_weight_points.py", "The weight on an archer's fingers.")

    def point(name, marked, draw, edge=False, **more):
        asked = dict({"markedLb": marked, "drawLengthIn": draw}, **more)
        expected, fault = reckon(asked)
        table.point(name, asked, expected, fault, edge)

    point("30 lb an inch beyond the mark", 30, 29, markedAtIn=28, markedRiserIn=25, riserIn=25)
    point("30 lb an inch short of it", 30, 27, markedRiserIn=25, riserIn=25)
    point("a newcomer's 18 lb at 26 in", 18, 26, riserIn=25)
    point("16 lb at a child's 22 in, nothing else known", 16, 22)
    point("38 lb at 30 1/4 in, brace 9 in", 38, 30.25, riserIn=25, markedRiserIn=25, braceMm=228.6)
    point("28 lb marked on 25 in, used on 23 in", 28, 28, riserIn=23, markedRiserIn=25, braceMm=212.725)
    point("28 lb marked on 25 in, used on 27 in", 28, 27.5, riserIn=27, markedRiserIn=25)
    point("24 lb, marked at 26 in", 24, 25, markedAtIn=26, riserIn=23, markedRiserIn=23)
    point("20 lb at 24 in, a short riser", 20, 24, riserIn=21, markedRiserIn=21, braceMm=203.2)
    point("34 lb at 28 3/4 in, riser of the mark unknown", 34, 28.75, riserIn=25)
    point("the same, on a riser of 23 in", 34, 28.75, riserIn=23)
    point("a draw of 27 1/8 in", 32, 27.125, riserIn=25, markedRiserIn=25)
    point("at the mark, on its riser: as marked", 30, 28, True, markedRiserIn=25, riserIn=25)
    point("the weakest limbs that are taken", 4, 26, True, riserIn=23, markedRiserIn=23)
    point("the strongest", 120, 28.5, True, riserIn=25, markedRiserIn=25)
    point("the shortest riser", 20, 24, True, riserIn=13, markedRiserIn=13, braceMm=180)
    point("the longest riser", 40, 30, True, riserIn=30, markedRiserIn=30)
    point("marked on the longest, used on a common one", 30, 28, True, riserIn=25, markedRiserIn=30)
    point("marked at the least draw that is taken", 20, 24, True, markedAtIn=20, riserIn=21, markedRiserIn=21)
    point("marked at the greatest", 30, 30, True, markedAtIn=34, riserIn=25, markedRiserIn=25)
    point("a shortest draw of 12 in", 16, 12, True, riserIn=25)
    point("an inch beyond the braced string hardly is a draw", 20, 12.75, True, braceMm=254)
    point("a hair more is", 20, 12.8, True, braceMm=254)
    point("8 in beyond the mark is asked back", 24, 32, True, markedAtIn=24, riserIn=25)
    point("a hair less is not", 24, 31.99, True, markedAtIn=24, riserIn=25)
    point("8 in beyond, looked at again", 24, 32, True, markedAtIn=24, riserIn=25, sure=True)
    point("the usual mark and 8 in: the longest draw", 20, 36, True)
    point("a brace so low that no recurve reaches it: an even rise", 20, 25, True, braceMm=100)
    point("a brace so high that no recurve reaches it", 20, 27, True, braceMm=320)
    point("an even rise as the bow's length ends, 76 in", 30, 27, True, braceMm=256)
    point("a low brace of 6 in on a common riser", 30, 28, True, riserIn=25, markedRiserIn=25, braceMm=152.4)
    point("a brace between two eighths of an inch", 30, 24, True, riserIn=25, markedRiserIn=25, braceMm=220.6625)
    table.write()
