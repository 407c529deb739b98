# Run: python3 src/test/java/club/ascham/mechanics/rigid_limb.py (needs scipy). Used by RigidLimbTest, bench's BenchApiTest and its points.
"""Rigid limbs apart from the program's closed forms: limb and string are found by solving the
equilibrium of each state, forces by virtual work (the slope of the energy), nothing by formula."""
import math
from scipy.optimize import brentq


class Bow:
    def __init__(self, limb=15, height=17.5, forward=1.5, stiffness=560, rest=-0.10, half_string=30.6):
        self.limb, self.height, self.forward = limb, height, forward
        self.stiffness, self.rest, self.half_string = stiffness, rest, half_string

    def tip(self, angle):
        return self.forward + self.limb * math.sin(angle), self.height + self.limb * math.cos(angle)

    def braced(self, half_string=None):
        half = self.half_string if half_string is None else half_string
        return brentq(lambda angle: self.tip(angle)[1] - half, 0, math.pi, xtol=1e-15)

    def drawn(self, draw, steps=2000):
        """The limb's angle when the nock stands at this draw: the first at which the half string
        reaches no farther than it is long. None: limb and string together are too short."""
        def slack(angle):
            x, y = self.tip(angle)
            return math.hypot(draw - x, y) - self.half_string
        start = self.braced()
        if slack(start) < 1e-14:
            return start
        last = start
        for i in range(1, steps + 1):
            angle = start + math.pi * i / steps
            if slack(angle) < 0:
                return brentq(slack, last, angle, xtol=1e-15)
            last = angle
        return None

    def energy(self, draw):
        """Of both limbs, from brace."""
        bent = lambda angle: self.stiffness * (angle - self.rest) ** 2
        return bent(self.drawn(draw)) - bent(self.braced())

    def force(self, draw, step=1e-3):
        """Slope of the energy, to the fourth order of the step."""
        return (8 * (self.energy(draw + step) - self.energy(draw - step))
                - (self.energy(draw + 2 * step) - self.energy(draw - 2 * step))) / (12 * step)

    def brace(self, half_string=None):
        return self.tip(self.braced(half_string))[0]

    def brace_by_string(self, step=1e-5):
        half = self.half_string
        return (self.brace(half + step) - self.brace(half - step)) / (4 * step)

    def tension(self, step=1e-5):
        """By virtual work as well: shortening the half string by a little does work tension * that."""
        bent = lambda half: 0.5 * self.stiffness * (self.braced(half) - self.rest) ** 2
        return -(bent(self.half_string + step) - bent(self.half_string - step)) / (2 * step)


if __name__ == "__main__":
    case = Bow()
    print("case RL-1: lean %.6f, brace %.6f, brace by string %.6f, tension %.6f"
          % (case.braced(), case.brace(), case.brace_by_string(), case.tension()))
    for draw in (10, 18, 26.25):
        print("drawn to %g: force %.5f, energy %.4f" % (draw, case.force(draw), case.energy(draw)))
