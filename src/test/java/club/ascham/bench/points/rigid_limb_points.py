# Run: python3 src/test/java/club/ascham/bench/points/rigid_limb_points.py (needs numpy and scipy). Used by bench's StaticsPointsTest.
"""Rigid limbs on springs: states found by solving, forces as slopes of the energy (mechanics/rigid_limb.py)."""
import math
import os
import sys
from table import Table

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "mechanics"))
from rigid_limb import Bow


def reckon(limb, height, forward, stiffness, rest, half, draws):
    if limb <= 0:
        return None, ["limbIn"]
    if not abs(rest) <= math.pi / 2:
        return None, ["restAngleRad"]
    if not height - limb < half < height + limb:
        return None, ["halfStringIn"]
    bow = Bow(limb, height, forward, stiffness, rest, half)
    if bow.braced() <= rest:
        return None, ["restAngleRad"]
    if any(draw < bow.brace() - 1e-9 or bow.drawn(draw) is None for draw in draws):
        return None, ["drawsIn"]
    return {"braceIn": bow.brace(), "stringIn": 2 * half, "dBraceDString": bow.brace_by_string(),
            "tensionLb": bow.tension(), "forcesLb": [bow.force(draw) for draw in draws] or "none",
            "energiesInLb": [bow.energy(draw) for draw in draws] or "none"}, []


if __name__ == "__main__":
    table = Table("rigid_limb", "rigid_limb_points.py", "Statics of a bow with rigid limbs on springs.")

    def point(name, limb=15, height=17.5, forward=1.5, stiffness=560, rest=-0.10, half=30.6, draws=(10, 18, 26.25), edge=False):
        expected, fault = reckon(limb, height, forward, stiffness, rest, half, draws)
        table.point(name, {"model": "rigid-limb", "limbIn": limb, "hingeHeightIn": height, "hingeForwardIn": forward,
                           "stiffnessInLbPerRad": stiffness, "restAngleRad": rest, "halfStringIn": half,
                           "drawsIn": draws if draws else None}, expected, fault, edge)

    point("case RL-1")
    point("a shorter string", half=30.2, draws=(11, 20, 27))
    point("a longer string", half=31.2, draws=(8, 14, 25))
    point("stiffer limbs", stiffness=900)
    point("a child's bow", 10.5, 13.5, 1.2, 180, -0.08, 22.6, (9, 15, 20))
    point("a long bow", 16.5, 18.5, 1.6, 600, -0.12, 33.6, (10, 20, 28))
    point("limbs at rest along the riser", rest=0.0)
    point("limbs at rest toward the archer", rest=0.2)
    point("strongly reflexed limbs", rest=-0.6)
    point("hinges level with the throat", forward=0, draws=(9, 16, 24))
    point("hinges behind the throat", forward=-1, draws=(8, 16, 24))
    point("drawn to brace and no farther", draws=(Bow().brace(),), edge=True)
    point("a thousandth of an inch beyond brace", draws=(8.808,), edge=True)
    point("not drawn", draws=(), edge=True)
    point("short of brace", draws=(8.8,), edge=True)
    point("drawn in falling order", draws=(26, 18, 9), edge=True)
    point("nearly as far as limb and string reach", draws=(42,), edge=True)
    farthest = 1.5 + math.sqrt((30.6 + 15) ** 2 - 17.5 ** 2)
    point("a twentieth of an inch short of the farthest", draws=(math.floor(20 * farthest - 1) / 20,), edge=True)
    point("just farther than they reach", draws=(math.ceil(1000 * farthest) / 1000,), edge=True)
    point("a string as long as the unbent bow", half=32.5, edge=True)
    point("one a hundredth of an inch shorter", half=32.49, rest=-0.1, draws=(3, 10, 20), edge=True)
    point("limbs square to the riser", half=17.5, draws=(17, 20, 24), edge=True)
    point("a string shorter than the hinges are high", half=16, draws=(16.5, 18, 20), edge=True)
    point("a string too short for any bow", half=2.5, edge=True)
    point("limbs that just begin to pull", rest=0.5087, edge=True)
    point("limbs slack when braced", rest=0.509, edge=True)
    point("a rest beyond a right angle", rest=-1.6, edge=True)
    point("a rest of all but a right angle", rest=-1.57, edge=True)
    point("no limb", 0, edge=True)
    table.write()
