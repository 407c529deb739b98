# Run: python3 src/test/java/club/ascham/statistics/replacement_age.py (needs scipy). Used by ReplacementAgeTest and bench's NumbersApiTest.
"""The age at which replacing costs least (R. E. Barlow and F. Proschan, Mathematical Theory of
Reliability, 1965), apart from the program: the survival curve is integrated numerically, and the
condition for the least cost solved by bisection and Brent's rule."""
import math
from scipy.integrate import quad
from scipy.optimize import brentq


def best(shape, scale, planned, unplanned):
    survival = lambda t: math.exp(-((t / scale) ** shape))
    hazard = lambda t: shape / scale * (t / scale) ** (shape - 1)
    up = lambda t: quad(survival, 0, t, epsabs=1e-14, epsrel=1e-13)[0]
    least = lambda t: hazard(t) * up(t) - (1 - survival(t)) - planned / (unplanned - planned)
    age = brentq(least, 1e-6 * scale, 5 * scale, xtol=1e-13 * scale, rtol=1e-15)
    cost = (planned * survival(age) + unplanned * (1 - survival(age))) / up(age)
    return age, cost, unplanned / (scale * math.gamma(1 + 1 / shape))


if __name__ == "__main__":
    for life in ((2, 1000, 1, 5), (3, 1, 1, 5)):
        print("shape %g, scale %g, costs %g and %g:" % life,
              "age %.6f, cost rate %.8f, run to failure %.8f" % best(*life))
