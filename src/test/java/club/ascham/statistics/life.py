# Run: python3 src/test/java/club/ascham/statistics/life.py (needs numpy and scipy). Used by LifeTest.
"""Lives of parts reckoned apart from the program: the likelihood of a Weibull life is maximised by
a general minimiser, its spread taken from second differences, and the survival curve multiplied out."""
import numpy as np
from scipy.optimize import minimize
from scipy.special import gamma
from scipy.stats import norm


def log_likelihood(theta, failed, left):
    """theta: log shape and log scale; failed and left: (age at entry, age at the end)."""
    shape, scale = np.exp(theta)
    value = 0.0
    for entered, end in failed:
        value += np.log(shape / scale) + (shape - 1) * np.log(end / scale)
    for entered, end in failed + left:
        value -= (end / scale) ** shape - (entered / scale) ** shape
    return value


def weibull(failed, left):
    ages = [end for _, end in failed + left]
    best = minimize(lambda t: -log_likelihood(t, failed, left), [0.5, np.log(np.mean(ages))],
                    method="Nelder-Mead", options={"xatol": 1e-11, "fatol": 1e-13, "maxiter": 20000})
    step = 1e-4
    curvature = np.empty((2, 2))
    for i in range(2):
        for j in range(2):
            terms = 0.0
            for a in (1, -1):
                for b in (1, -1):
                    theta = np.array(best.x)
                    theta[i] += a * step
                    theta[j] += b * step
                    terms += a * b * log_likelihood(theta, failed, left)
            curvature[i, j] = -terms / (4 * step * step)
    spread = np.sqrt(np.diag(np.linalg.inv(curvature)))
    shape, scale = np.exp(best.x)
    return shape, scale, -best.fun, spread[1], spread[0]


def kaplan_meier(failed, left, part=0.95):
    """At each age of failure: survival, Greenwood's standard error, and the band on log(-log)."""
    survival, summed = 1.0, 0.0
    for age in sorted(set(failed)):
        watched = sum(1 for x in failed + left if x >= age)
        fails = failed.count(age)
        survival *= 1 - fails / watched
        summed += fails / (watched * (watched - fails))
        z = norm.ppf((1 + part) / 2) * summed ** 0.5 / np.log(survival)
        yield age, survival, survival * summed ** 0.5, survival ** np.exp(-z), survival ** np.exp(z)


def told(name, failed, left):
    shape, scale, value, of_scale, of_shape = weibull(failed, left)
    print("%s: shape %.6f, scale %.4f, log-likelihood %.7f" % (name, shape, scale, value))
    print("   spread of log scale %.6f, of log shape %.6f" % (of_scale, of_shape))
    print("   10 in 100 by %.2f, half by %.2f, mean %.2f"
          % (scale * (-np.log(0.9)) ** (1 / shape),
             scale * np.log(2) ** (1 / shape), scale * gamma(1 + 1 / shape)))


if __name__ == "__main__":
    new = lambda ages: [(0, age) for age in ages]
    told("e-Handbook 8.4.1.3", new([54, 187, 216, 240, 244, 335, 361, 373, 375, 386]), new([500] * 10))
    told("small set", new([30, 49, 82, 90, 96]), new([10, 45, 100]))
    told("delayed entry",
         [(0, 40), (30, 75), (60, 90), (0, 110), (80, 120), (20, 60), (50, 130)],
         [(0, 50), (70, 100), (10, 95), (0, 140)])
    print("Kaplan-Meier, e-Handbook 8.2.1.5")
    for row in kaplan_meier([10, 32, 56, 98, 122, 181], [50, 100, 125, 150] + [200] * 10):
        print("   at %d: %.6f, standard error %.7f, %.6f to %.6f" % row)
