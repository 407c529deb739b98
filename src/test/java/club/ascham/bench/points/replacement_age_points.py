# Run: python3 src/test/java/club/ascham/bench/points/replacement_age_points.py (needs numpy and scipy). Used by bench's ReplacementAgePointsTest.
"""The age to replace at: the cost a day itself is minimised, over ages from nothing to many lives, with
the survival curve integrated numerically; where it ends in one, the condition for the least cost says
the same (statistics/replacement_age.py)."""
import math
import os
import sys
import numpy as np
from scipy.integrate import quad
from scipy.optimize import minimize_scalar
from table import Table

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "statistics"))
from replacement_age import best


def cost(shape, planned, unplanned):
    """Cost for a unit of age, in scales, by the logarithm of the hazard gone through."""
    def of(log_hazard):
        hazard = math.exp(log_hazard)
        age = hazard ** (1 / shape)
        # The integral of survival by the hazard gone through: no steep fall to step over.
        part = lambda u: math.exp(-u ** shape)
        knots = [k for k in (0.3, 0.7, 1, 1.3) if k < age]
        up, last = 0.0, 0.0
        for knot in knots + [age]:
            up += quad(part, last, knot, epsabs=0, epsrel=1e-12, limit=200)[0]
            last = knot
        failed = -math.expm1(-hazard)
        return (planned * (1 - failed) + unplanned * failed) / up
    return of


def reckon(shape, scale, planned, unplanned):
    to_failure = unplanned / (scale * math.gamma(1 + 1 / shape))
    none = {"age": None, "costRate": to_failure, "runToFailureCostRate": to_failure}
    of = cost(shape, planned, unplanned)
    grid = np.linspace(-45, math.log(300), 400)
    values = [of(x) for x in grid]
    at = int(np.argmin(values))
    if at in (0, len(grid) - 1) or values[at] > min(values[0], values[-1]) * (1 - 1e-9):
        return none
    found = minimize_scalar(of, bracket=(grid[at - 1], grid[at], grid[at + 1]), options={"xtol": 1e-12})
    rate = found.fun / scale
    if not rate < to_failure * (1 - 1e-3):
        return none
    age = scale * math.exp(found.x / shape)
    if unplanned / planned < 1e4 and shape < 8:
        exact, exact_rate, _ = best(shape, scale, planned, unplanned)
        assert abs(age / exact - 1) < 1e-5 and abs(rate / exact_rate - 1) < 1e-9, (age, exact)
        age = exact
    return {"age": age, "costRate": rate, "runToFailureCostRate": to_failure}


if __name__ == "__main__":
    table = Table("replacement_age", "replacement_age_points.py", "The age at which replacing costs least.")

    def point(name, shape, scale, planned, unplanned, edge=False, fault=()):
        table.point(name, {"shape": shape, "scale": scale, "plannedCost": planned, "unplannedCost": unplanned},
                    None if fault else reckon(shape, scale, planned, unplanned), fault, edge)

    point("a failure costs five times as much", 2, 1000, 1, 5)
    point("shape 3, scale 1", 3, 1, 1, 5)
    point("a club's strings", 3.04, 1000, 14, 42)
    point("the shape at its low end", 2.06, 819, 14, 42)
    point("the shape at its high end", 4.48, 1215, 14, 42)
    point("limbs, ten times as dear when they fail", 2.5, 2400, 90, 900)
    point("shots and not days", 1.8, 15000, 20, 80)
    point("hardly any wear", 1.3, 700, 1, 20)
    point("wears out almost to the day", 12, 365, 10, 30)
    point("a failure costs twice as much", 4, 500, 10, 20)
    point("a hundred times as much", 2, 800, 1, 100)
    point("shape 1: no age pays", 1, 1000, 1, 5, True)
    point("shape just over 1: none either, for so little", 1.001, 1000, 1, 5, True)
    point("fails young", 0.7, 1000, 1, 5, True)
    point("a failure costs the same", 2, 1000, 5, 5, True)
    point("a failure costs less", 2, 1000, 5, 4, True)
    point("a failure costs a hundredth more: a gain under 1 in 1,000", 2, 1000, 1, 1.01, True)
    point("where the gain is just over 1 in 1,000", 2, 1000, 1, 1.6, True)
    point("a hundred thousand times as much", 2, 1000, 1, 100000, True)
    point("the steepest shape that is taken", 50, 365, 10, 30, True)
    point("the flattest", 0.1, 1000, 1, 5, True)
    point("the least scale", 2, 0.001, 1, 5, True)
    point("the largest scale", 2, 100000000, 1, 5, True)
    point("the least costs", 2, 1000, 0.001, 0.005, True)
    point("a shape over 50 is refused", 50.1, 1000, 1, 5, True, ["shape"])
    point("a cost of nothing is refused", 2, 1000, 0, 5, True, ["plannedCost"])
    table.write()
