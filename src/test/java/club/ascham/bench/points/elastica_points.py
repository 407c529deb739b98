# Run: python3 src/test/java/club/ascham/bench/points/elastica_points.py (needs numpy and scipy; a minute). Used by bench's StaticsPointsTest.
"""Elastic limbs, alike and unlike: adaptive integration and a general solver (mechanics/elastica.py).
Where no bow is, the reason is reckoned from lengths alone."""
import math
import os
import sys
import warnings
import numpy as np
from table import Table

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "mechanics"))
import elastica

# The solver warns where it can't go on past the twelfth digit; what it found is checked below.
warnings.simplefilter("ignore", RuntimeWarning)
OFTEN_LEFT_OUT = {"rootForwardIn": 0, "rootAngleRad": 0, "restCurvaturePerIn": 0, "recurveFromPart": 1,
                  "recurveCurvaturePerIn": 0}


def limb_of(asked):
    of = dict(OFTEN_LEFT_OUT, **asked)
    length, kink = of["limbLengthIn"], of["recurveFromPart"] * of["limbLengthIn"]
    inside = kink if 0 < kink < length else None
    return elastica.Limb(length, of["rootForwardIn"], of["rootHeightIn"], of["rootAngleRad"],
                         lambda s: of["rootStiffnessLbIn2"] * (1 - (1 - of["tipFraction"]) * s / length),
                         lambda s: of["restCurvaturePerIn"] if s < kink else of["recurveCurvaturePerIn"], inside)


def farthest(limb):
    """How far toward the archer the unstrung limb reaches anywhere."""
    angle, x, most, n = limb.angle, limb.x, limb.x, 20000
    for i in range(n):
        s = (i + 0.5) * limb.length / n
        angle += limb.curvature(s) * limb.length / n / 2
        x += math.sin(angle) * limb.length / n
        angle += limb.curvature(s) * limb.length / n / 2
        most = max(most, x)
    return most


def reckon(asked, brace, string, draws):
    weak = asked["rootStiffnessLbIn2"]
    if weak < 100 and "lower" not in asked:
        # So many times as stiff has so many times the force at the same shape; the solver wants common forces.
        told, fault = reckon(dict(asked, rootStiffnessLbIn2=1e4 * weak), brace, string, draws)
        told["tensionLb"] /= 1e4
        told["forcesLb"], told["energiesInLb"] = ([one / 1e4 for one in told[name]] for name in ("forcesLb", "energiesInLb"))
        return told, fault
    upper = limb_of(asked)
    lower = limb_of(dict(asked, **asked["lower"])) if "lower" in asked else upper
    if (brace is None) == (string is None):
        return None, ["braceIn"]
    if brace is not None and brace <= max(farthest(upper), farthest(lower)):
        return None, ["braceIn"]
    if string is not None and string >= upper.y + upper.length + lower.y + lower.length:
        return None, ["stringIn"]
    if brace is None:
        start = 6 + max(farthest(upper), farthest(lower))
        brace, tension = elastica.strung(upper, string, start)
        lean = 0.0
        if lower is not upper:
            brace, tension, lean = elastica.strung_unlike(upper, lower, string, brace, tension)
    else:
        tension, lean = elastica.braced_at(upper, brace)[0], 0.0
        if lower is not upper:
            tension, lean = elastica.braced_unlike(upper, lower, brace, tension)
    length = lambda at, near: sum(
        limb.under(at, side * turned, pull)[1]
        for pull, turned in [(elastica.braced_at(upper, at)[0], 0.0) if lower is upper
                             else tuple(elastica.braced_unlike(upper, lower, at, near))]
        for limb, side in ((upper, 1), (lower, -1)))
    assert max(abs(upper.under(brace, lean, tension)[0]), abs(lower.under(brace, -lean, tension)[0])) < 1e-8
    assert string is None or abs(upper.under(brace, lean, tension)[1] + lower.under(brace, -lean, tension)[1] - string) < 1e-8
    halves = [upper.under(brace, lean, tension)[1], lower.under(brace, -lean, tension)[1]]
    string = sum(halves)
    for draw in draws:
        if draw < brace - 1e-9:
            return None, ["drawsIn"]
        for limb, half in zip((upper, lower), halves):
            if math.hypot(draw - limb.x, limb.y) > limb.length + half:
                return None, ["drawsIn"]
    nudge = 1e-4
    slope = 2 * nudge / (length(brace + nudge, tension) - length(brace - nudge, tension))
    forces, energies = [], []
    for draw in draws:
        if draw - brace < 1e-9:
            forces.append(0.0), energies.append(0.0)
            continue
        both = [elastica.half_drawn(limb, brace, side * lean, tension, draw) for limb, side in ((upper, 1), (lower, -1))]
        forces.append(both[0][0] + both[1][0]), energies.append(both[0][1] + both[1][1])
    square = lambda limb, turned: (brace - limb.x) * math.cos(turned) + limb.y * math.sin(turned)
    return {"braceIn": brace, "stringIn": string, "dBraceDString": slope, "tensionLb": tension,
            "tillerUpperIn": square(upper, lean), "tillerLowerIn": square(lower, -lean),
            "forcesLb": forces or "none", "energiesInLb": energies or "none"}, []


STRAIGHT = {"limbLengthIn": 32, "rootHeightIn": 4, "rootStiffnessLbIn2": 100010, "tipFraction": 0.000099990001}
TAPERED = dict(STRAIGHT, rootStiffnessLbIn2=100000, tipFraction=0.05)
RECURVE = {"limbLengthIn": 19.5, "rootHeightIn": 14.5, "rootForwardIn": 2.75, "rootStiffnessLbIn2": 5000,
           "tipFraction": 0.55, "recurveFromPart": 0.68, "recurveCurvaturePerIn": -0.225}
CHILDS = {"limbLengthIn": 15, "rootHeightIn": 11, "rootForwardIn": 2, "rootStiffnessLbIn2": 1500, "tipFraction": 0.5,
          "recurveFromPart": 0.7, "recurveCurvaturePerIn": -0.2}

if __name__ == "__main__":
    table = Table("elastica", "elastica_points.py", "Statics of a bow with elastic limbs.")

    def point(name, asked, brace=None, string=None, draws=(), edge=False):
        expected, fault = reckon(asked, brace, string, draws)
        flat = {k: v for k, v in asked.items() if k != "lower"}
        flat.update({"lower." + k: v for k, v in asked.get("lower", {}).items()})
        table.point(name, dict({"model": "elastica"}, **flat, braceIn=brace, stringIn=string, drawsIn=draws or None),
                    expected, fault, edge)

    far = (10, 16, 26.25)
    point("straight bow of linear taper", STRAIGHT, 6, draws=(10, 16, 28))
    point("the same from its string", STRAIGHT, None, 70.3437, (10, 16, 28))
    point("common recurve of 68 in from its string", RECURVE, None, 65, far)
    point("the same braced at 8 1/4 in", RECURVE, 8.25, draws=far)
    point("the same braced at 9 1/4 in", RECURVE, 9.25, draws=far)
    point("a stronger hook", dict(RECURVE, recurveFromPart=0.72, recurveCurvaturePerIn=-0.28, tipFraction=0.8), 8.75, draws=far)
    point("a longer limb, a stiffer root", dict(RECURVE, limbLengthIn=20.5, rootStiffnessLbIn2=6500), None, 67, far)
    point("a junior's bow of 54 in", CHILDS, 6.5, draws=(8, 14, 20))
    point("a straight bow, tips half as stiff", dict(STRAIGHT, tipFraction=0.5), 6, draws=(10, 18, 28))
    point("a limb bent back all along", dict(TAPERED, restCurvaturePerIn=-0.01), 6.5, draws=(10, 18, 27))
    point("a limb bent toward the archer", dict(TAPERED, restCurvaturePerIn=0.004), 6.5, draws=(10, 18, 27))
    point("a root that leans away", dict(RECURVE, rootAngleRad=-0.05), 8.75, draws=far)
    point("a lower limb stiffer by a twentieth", dict(RECURVE, lower={"rootStiffnessLbIn2": 5250}), None, 65, far)
    point("an upper bolt half a turn in", dict(RECURVE, rootAngleRad=-0.5 / 24 / 2.4, lower={"rootAngleRad": 0}), None, 65, far)
    point("unlike limbs, from their brace", dict(RECURVE, lower={"rootStiffnessLbIn2": 4800}), 8.75, draws=far)
    point("a straight bow, unlike limbs", dict(TAPERED, lower={"rootStiffnessLbIn2": 105000}), None, 70.3, (10, 28))
    point("limbs of unlike length", dict(TAPERED, lower={"limbLengthIn": 31.5}), 6, draws=(10, 24), edge=True)
    point("unlike curves and roots at once",
          dict(RECURVE, lower={"rootForwardIn": 2.7, "recurveFromPart": 0.7, "recurveCurvaturePerIn": -0.22}),
          8.6, draws=far, edge=True)
    point("drawn to brace and no farther", RECURVE, 8.75, draws=(8.75,), edge=True)
    point("a hundredth of an inch beyond brace", RECURVE, 8.75, draws=(8.76,), edge=True)
    point("not drawn", RECURVE, 8.75, edge=True)
    point("drawn in falling order", RECURVE, 8.75, draws=(26.25, 12), edge=True)
    point("short of brace", RECURVE, 8.75, draws=(8.7,), edge=True)
    point("farther than limb and string are long", RECURVE, 8.75, draws=(60,), edge=True)
    point("a far draw of 34 in", RECURVE, 8.75, draws=(34,), edge=True)
    point("the lowest brace asked for, an inch", STRAIGHT, 1, draws=(4, 20), edge=True)
    point("a brace within the unstrung limb", dict(TAPERED, restCurvaturePerIn=0.02), 6, edge=True)
    point("a brace just clear of a recurve's root, not drawn", RECURVE, 2.76, edge=True)
    point("a very low brace of 4 in", RECURVE, 4, draws=(8, 20), edge=True)
    point("a brace at the recurve's root", RECURVE, 2.75, edge=True)
    point("brace and string both", STRAIGHT, 6, 70.3437, edge=True)
    point("neither brace nor string", STRAIGHT, edge=True)
    point("a string longer than the bow", STRAIGHT, None, 72.5, edge=True)
    point("tips as stiff as the root", dict(TAPERED, tipFraction=1), 6, draws=(10, 24), edge=True)
    point("tips stiffer than the root", dict(TAPERED, tipFraction=2), 6, draws=(10, 24), edge=True)
    point("a recurve from the root on", dict(RECURVE, recurveFromPart=0, recurveCurvaturePerIn=-0.03), 8.75, draws=far, edge=True)
    point("a recurve from the tip on: none", dict(RECURVE, recurveFromPart=1), 8.75, draws=(12, 24), edge=True)
    point("the shortest limb", {"limbLengthIn": 5, "rootHeightIn": 3, "rootStiffnessLbIn2": 200, "tipFraction": 0.5}, 2,
          draws=(3, 5), edge=True)
    point("the longest limb", {"limbLengthIn": 60, "rootHeightIn": 10, "rootStiffnessLbIn2": 300000, "tipFraction": 0.3}, 12,
          draws=(20, 40), edge=True)
    point("the weakest limb", dict(TAPERED, rootStiffnessLbIn2=1), 6, draws=(10, 28), edge=True)
    table.write()
