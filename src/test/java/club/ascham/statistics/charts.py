# Run: python3 src/test/java/club/ascham/statistics/charts.py (needs numpy and scipy). Used by ChartsTest.
"""Control charts reckoned apart from the program: exact limits of the first readings of an EWMA,
and run lengths by a Markov chain over the states of the chart (Brook and Evans, Biometrika 59,
1972), which knows the limits of the long run only."""
import numpy as np
from scipy.stats import norm


def ewma_limits(centre, sigma, weight, width, readings):
    for i in range(1, readings + 1):
        variance = sum((weight * (1 - weight) ** j) ** 2 for j in range(i))
        yield centre + width * sigma * variance ** 0.5


def ewma_run_length(weight, width, shift, cells=801):
    limit = width * (weight / (2 - weight)) ** 0.5
    edges = np.linspace(-limit, limit, cells + 1)
    middles = (edges[1:] + edges[:-1]) / 2
    reach = (edges[None, :] - (1 - weight) * middles[:, None]) / weight
    stays = np.diff(norm.cdf(reach - shift), axis=1)
    lengths = np.linalg.solve(np.eye(cells) - stays, np.ones(cells))
    return lengths[cells // 2]


def cusum_run_length(slack, limit, shift, cells=160):
    """Each sum by a chain of its own; the rates of two one-sided charts side by side add up (van
    Dobben de Bruyn, Cumulative Sum Tests, 1968)."""
    def one(sign):
        width = limit / (cells - 0.5)
        values = np.arange(cells) * width
        upper = np.r_[values[:-1] + width / 2, limit]
        stays = np.empty((cells, cells))
        for i, value in enumerate(values):
            reached = norm.cdf(upper - value + slack - sign * shift)
            stays[i] = np.diff(np.r_[0.0, reached])
        return np.linalg.solve(np.eye(cells) - stays, np.ones(cells))[0]

    return 1 / (1 / one(1) + 1 / one(-1))


if __name__ == "__main__":
    print("EWMA limits", ["%.4f" % x for x in ewma_limits(50, 2.0539, 0.3, 3, 3)])
    print("EWMA 0.2, 2.962: run length %.1f in control, %.2f at a shift of 1 sd"
          % (ewma_run_length(0.2, 2.962, 0), ewma_run_length(0.2, 2.962, 1)))
    print("CUSUM 0.5, 4: run length %.1f in control, %.2f at a shift of 1 sd"
          % (cusum_run_length(0.5, 4, 0), cusum_run_length(0.5, 4, 1)))
