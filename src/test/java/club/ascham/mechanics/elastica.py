# Run: python3 src/test/java/club/ascham/mechanics/elastica.py (needs numpy and scipy; 20 s). Used by ElasticBowTest, CommonRecurveTest and bench's BenchApiTest.
"""Elastic limbs apart from the program: the same equations, solved by other means. The limb is
integrated by an adaptive eighth-order method with the place where the string leaves it found as an
event, and bow and string by a general solver of equations; the cantilever by elliptic integrals."""
import math
import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, fsolve
from scipy.special import ellipk, ellipkinc, ellipe, ellipeinc


def cantilever(load):
    """A dead load across the tip: place across, shortening along, and angle of the tip."""
    def reach(p2):
        phi = math.asin(1 / math.sqrt(2 * p2))
        return ellipk(p2) - ellipkinc(phi, p2) - math.sqrt(load)
    p2 = brentq(reach, 0.5 + 1e-12, 1 - 1e-9, xtol=1e-15)
    phi = math.asin(1 / math.sqrt(2 * p2))
    angle = math.asin(2 * p2 - 1)
    k = math.sqrt(load)
    across = 1 - 2 / k * (ellipe(p2) - ellipeinc(phi, p2))
    along = 1 - math.sqrt(2 * math.sin(angle)) / k
    return across, along, angle


class Limb:
    def __init__(self, length, root_x, root_y, angle, stiffness, curvature, kink=None):
        self.length, self.x, self.y, self.angle = length, root_x, root_y, angle
        self.stiffness, self.curvature = stiffness, curvature
        self.stops = [0, length] if kink is None else [0, kink, length]

    def bolt_in(self, by):
        return self.turned(self.angle - by)

    def turned(self, angle):
        kink = self.stops[1] if len(self.stops) > 2 else None
        return Limb(self.length, self.x, self.y, angle, self.stiffness, self.curvature, kink)

    def stiffer(self, factor):
        kink = self.stops[1] if len(self.stops) > 2 else None
        return Limb(self.length, self.x, self.y, self.angle,
                    lambda s: factor * self.stiffness(s), self.curvature, kink)

    def under(self, line_x, lean, tension):
        """Gap to the string's line, string from the axis to the limb's end, bending energy."""
        cos, sin = math.cos(lean), math.sin(lean)

        def slope(s, z, part):
            moment = tension * ((line_x - z[1]) * cos + z[2] * sin)
            stiff = self.stiffness(s)
            return [self.curvature(part) + moment / stiff, math.sin(z[0]), math.cos(z[0]),
                    moment * moment / (2 * stiff)]

        def leaves(s, z, part):
            return z[0] - lean
        leaves.terminal, leaves.direction = True, -1
        z = [self.angle, self.x, self.y, 0.0]
        for start, end in zip(self.stops, self.stops[1:]):
            done = solve_ivp(slope, (start, end), z, method="DOP853", rtol=1e-12, atol=1e-13,
                             args=((start + end) / 2,), events=leaves)
            z = done.y[:, -1]
            if done.status == 1:
                break
        off = done.t[-1]
        gap = (line_x - z[1]) * cos + z[2] * sin
        return gap, math.hypot(line_x - z[1], z[2]) + self.length - off, z[3]


def braced_at(limb, brace):
    gap = lambda t: limb.under(brace, 0, t)[0]
    high = 1.0
    while gap(high) > 0:
        high *= 1.5
    tension = brentq(gap, high / 1.5, high, xtol=1e-13)
    return tension, limb.under(brace, 0, tension)


def strung(limb, string, start=8.7):
    """Two limbs alike: brace and tension."""
    def both(u):
        gap, along, _ = limb.under(u[0], 0, u[1])
        return [gap, 2 * along - string]
    brace, tension = fsolve(both, [start, braced_at(limb, start)[0]], xtol=1e-13)
    return brace, tension


def strung_unlike(upper, lower, string, brace, tension):
    """Brace, tension and lean of one string on two limbs."""
    def all_three(u):
        up, below = upper.under(u[0], u[2], u[1]), lower.under(u[0], -u[2], u[1])
        return [up[0], below[0], up[1] + below[1] - string]
    return fsolve(all_three, [brace, tension, 0.0], xtol=1e-13)


def drawn(limb, brace, tension, draw, steps=12):
    """Force and stored energy of a bow of two limbs alike."""
    half, rest = limb.under(brace, 0, tension)[1:]
    guess = [-0.02, tension]
    for at in np.linspace(brace, draw, steps + 1)[1:]:
        def both(u):
            gap, along, _ = limb.under(at, u[0], u[1])
            return [gap, along - half]
        guess = fsolve(both, guess, xtol=1e-13)
        guess = list(guess)
    force = -2 * guess[1] * math.sin(guess[0])
    return force, 2 * (limb.under(draw, guess[0], guess[1])[2] - rest)


def braced_unlike(upper, lower, brace, tension):
    """Tension and lean of the string that braces two limbs so high."""
    def both(u):
        return [upper.under(brace, u[1], u[0])[0], lower.under(brace, -u[1], u[0])[0]]
    return fsolve(both, [tension, 0.0], xtol=1e-13)


def half_drawn(limb, brace, lean, tension, draw, steps=12):
    """Force and stored energy of one half: its string keeps its length from brace on, whatever the
    other limb does, since the archer holds the nock on the draw axis."""
    half, rest = limb.under(brace, lean, tension)[1:]
    guess = [lean - 0.004, tension]
    for at in brace + (draw - brace) * (np.arange(1, steps + 1) / steps) ** 2:
        def both(u):
            gap, along, _ = limb.under(at, u[0], u[1])
            return [gap, along - half]
        guess = list(fsolve(both, guess, xtol=1e-13))
        assert max(abs(off) for off in both(guess)) < 1e-8, (draw, both(guess))
    return -guess[1] * math.sin(guess[0]), limb.under(draw, guess[0], guess[1])[2] - rest


def straight_bow():
    limb = Limb(32, 0, 4, 0, lambda s: 1e5 * ((32 - s) / 32 + 1e-4), lambda s: 0.0)
    tension, (gap, half, _) = braced_at(limb, 6)
    print("straight bow braced at 6 in: string %.5f in" % (2 * half))
    for draw in (10, 16, 28):
        print("   drawn to %d in: %.5f lbf, %.4f in lbf" % ((draw,) + drawn(limb, 6, tension, draw)))


HALF_TURN = 0.5 / 24 / 2.4


def recurve(forward, per_inch, part, left):
    """68 in on a 25 in riser, 30 lb at 28 in AMO on a string of 65 in: limb, brace, tension."""
    length = 19.5
    kink = part * length
    limb = Limb(length, forward, 14.5, 0, lambda s: 5000 * (1 - (1 - left) * s / length),
                lambda s: 0.0 if s < kink else per_inch, kink)
    brace, tension = strung(limb, 65)
    limb = limb.stiffer(30 / drawn(limb, brace, tension, 26.25)[0])
    return (limb,) + tuple(strung(limb, 65))


def tiller_of_half_a_turn(limb, brace, tension):
    lean = strung_unlike(limb.bolt_in(HALF_TURN), limb, 65, brace, tension)[2]
    return 2 * 12.5 * math.sin(lean)


def common_recurve():
    """As CommonRecurve has it."""
    limb, brace, tension = recurve(2.75, -0.225, 0.68, 0.55)
    slope = (strung(limb, 65.05)[0] - strung(limb, 64.95)[0]) / 0.1
    last = drawn(limb, brace, tension, 26.25)[0] / drawn(limb, brace, tension, 25.25)[0] - 1
    print("common recurve: brace %.4f in, tension %.3f lbf, brace by string %.4f, last inch %.5f"
          % (brace, tension, slope, last))
    turned = limb.bolt_in(HALF_TURN)
    brace_2, tension_2 = strung(turned, 65)
    print("   both bolts in by half a turn: weight x %.5f, brace %+.5f in"
          % (drawn(turned, brace_2, tension_2, 26.25)[0] / 30, brace_2 - brace))
    print("   upper bolt in by half a turn: tiller %+.5f in" % tiller_of_half_a_turn(limb, brace, tension))


def other_recurves():
    """What the help page says of a whole turn, by limbs of other makes that brace at 8 to 9 1/4 in."""
    turns = []
    for of in ((2.75, -0.17, 0.62, 0.55), (2.75, -0.17, 0.62, 0.8), (2.75, -0.17, 0.72, 0.8),
               (2.75, -0.225, 0.62, 0.55), (2.75, -0.28, 0.62, 0.35), (2.75, -0.28, 0.72, 0.8),
               (2.0, -0.225, 0.72, 0.55), (2.0, -0.28, 0.72, 0.8), (3.5, -0.28, 0.62, 0.35)):
        limb, brace, tension = recurve(*of)
        assert 8 <= brace <= 9.25, brace
        turns.append(2 * 25.4 * tiller_of_half_a_turn(limb, brace, tension))
    print("other recurves: a turn of the upper bolt in, tiller %.1f to %.1f mm" % (max(turns), min(turns)))


if __name__ == "__main__":
    for load in (0.2, 1, 2, 5, 10):
        print("cantilever under %g: across %.5f, along %.5f, angle %.5f" % ((load,) + cantilever(load)))
    straight_bow()
    common_recurve()
    other_recurves()
