# Run: python3 src/test/java/club/ascham/mechanics/rigid_limb.py (needs scipy). Used by RigidLimbTest and bench's BenchApiTest.
"""Case RL-1, apart from the program's closed forms: limb and string are found by solving the
equilibrium of each state, forces by virtual work (the slope of the energy), nothing by formula."""
import math
from scipy.optimize import brentq

LIMB, HEIGHT, FORWARD, STIFFNESS, REST, HALF_STRING = 15, 17.5, 1.5, 560, -0.10, 30.6


def tip(angle):
    return FORWARD + LIMB * math.sin(angle), HEIGHT + LIMB * math.cos(angle)


def braced(half_string):
    return brentq(lambda angle: tip(angle)[1] - half_string, 0, math.pi, xtol=1e-15)


def drawn(draw):
    """The limb's angle when the nock stands at this draw: the half string reaches just so far."""
    def slack(angle):
        x, y = tip(angle)
        return math.hypot(draw - x, y) - HALF_STRING
    return brentq(slack, braced(HALF_STRING) + 1e-12, math.pi / 2 + 0.5, xtol=1e-15)


def energy(draw):
    """Of both limbs, from brace."""
    bent = lambda angle: STIFFNESS * (angle - REST) ** 2
    return bent(drawn(draw)) - bent(braced(HALF_STRING))


def force(draw, step=1e-3):
    """Slope of the energy, to the fourth order of the step."""
    return (8 * (energy(draw + step) - energy(draw - step))
            - (energy(draw + 2 * step) - energy(draw - 2 * step))) / (12 * step)


def brace(half_string):
    return tip(braced(half_string))[0]


if __name__ == "__main__":
    angle = braced(HALF_STRING)
    step = 1e-5
    slope = (brace(HALF_STRING + step) - brace(HALF_STRING - step)) / (4 * step)
    # By virtual work as well: shortening the half string by a little does work tension * that.
    bent = lambda half: 0.5 * STIFFNESS * (braced(half) - REST) ** 2
    tension = -(bent(HALF_STRING + step) - bent(HALF_STRING - step)) / (2 * step)
    print("lean %.6f, brace %.6f, brace by string %.6f, tension %.6f"
          % (angle, brace(HALF_STRING), slope, tension))
    for draw in (10, 18, 26.25):
        print("drawn to %g: force %.5f, energy %.4f" % (draw, force(draw), energy(draw)))
