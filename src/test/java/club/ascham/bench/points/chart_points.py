# Run: python3 src/test/java/club/ascham/bench/points/chart_points.py (needs numpy and scipy). Used by bench's ChartPointsTest.
"""Control charts: the weighted average as one weighted sum a reading (no recursion), its limits from
the variance of that sum; the cumulative sums as the highest of all sums that end at a reading."""
import numpy as np
from table import Table

HANDBOOK = [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6,
            52.4, 53.6, 52.1]
SUMS = [324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600, 324.625, 325.150,
        328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350]


def own(readings):
    """Centre and scatter of readings from themselves: the mean, and the mean step over 1.128."""
    if len(readings) < 2:
        return {}
    return {"own.centre": float(np.mean(readings)), "own.sigma": float(np.mean(np.abs(np.diff(readings))) / 1.128)}


def ewma(readings, centre, sigma, weight, width):
    averages, reaches = [], []
    for i in range(1, len(readings) + 1):
        weights = weight * (1 - weight) ** np.arange(i - 1, -1, -1.0)
        averages.append(float(np.dot(weights, readings[:i]) + (1 - weights.sum()) * centre))
        reaches.append(float(width * sigma * np.sqrt(np.sum(weights ** 2))))
    upper, lower = [centre + r for r in reaches], [centre - r for r in reaches]
    signals = [i + 1 for i, a in enumerate(averages) if a > upper[i] + 1e-12 * abs(centre) or a < lower[i] - 1e-12 * abs(centre)]
    return {"ewma": averages, "upper": upper, "lower": lower, "signals": signals or "none"}


def cusum(readings, centre, k, h):
    def ends(values):
        return [max([0.0] + [float(np.sum(values[j:i + 1])) for j in range(i + 1)]) for i in range(len(values))]
    off = np.array(readings) - centre
    high, low = ends(off - k), ends(-off - k)
    over = [i + 1 for i in range(len(readings)) if max(high[i], low[i]) > h + 1e-9]
    return {"high": high, "low": low, "firstSignal": over[0] if over else None}


if __name__ == "__main__":
    rng = np.random.default_rng(20261130)
    drawn = lambda n, mean=220.0, sd=1.0: [round(float(x), 2) for x in rng.normal(mean, sd, n)]
    table = Table("ewma", "chart_points.py", "The exponentially weighted moving average and its limits.")

    def point(name, readings, centre, sigma, weight, width, edge=False, fault=()):
        table.point(name, {"kind": "ewma", "readings": readings or None, "centre": centre, "sigma": sigma, "lambda": weight,
                           "width": width}, None if fault else dict(ewma(readings, centre, sigma, weight, width),
                                                                    **own(readings)), fault, edge)

    point("e-Handbook 6.3.2.4", HANDBOOK, 50, 2.0539, 0.3, 3)
    point("the same by 0.2 of the newest", HANDBOOK, 50, 2.0539, 0.2, 2.962)
    for n in (3, 8, 12, 30, 60):
        point("%d steady readings" % n, drawn(n), 220, 1, 0.2, 3)
    point("a fall of 5 mm at the sixth", drawn(5) + drawn(5, 215), 220, 1, 0.2, 3)
    point("a slow fall", [round(220 - 0.15 * i, 2) for i in range(20)], 220, 1, 0.2, 3)
    point("tiller about nothing", drawn(10, 0, 1.2), 0, 1.2, 0.25, 2.7)
    point("one reading on its centre", [220], 220, 1, 0.2, 3, True)
    point("one reading far off", [225], 220, 1, 0.2, 3, True)
    point("one reading just on the limit: no signal", [223], 220, 1, 1, 3, True)
    point("a hair beyond the limit", [223.001], 220, 1, 1, 3, True)
    point("one just on the lower limit", [217], 220, 1, 1, 3, True)
    point("the newest alone counts", drawn(8), 220, 1, 1, 3, True)
    point("the newest hardly counts", drawn(8), 220, 1, 0.001, 3, True)
    point("all readings alike", [220.5] * 6, 220, 1, 0.2, 3, True)
    point("negative readings", [-1.5, -2, -0.5, -3.25], -1, 0.8, 0.3, 3, True)
    point("the narrowest limits", drawn(5), 220, 1, 0.2, 0.01, True)
    point("the widest", drawn(5, 220, 30), 220, 1, 0.2, 20, True)
    point("a scatter of nothing is refused", [220, 221], 220, 0, 0.2, 3, True, ["sigma"])
    point("a weight over 1 is refused", [220, 221], 220, 1, 1.01, 3, True, ["lambda"])
    point("no readings", [], 220, 1, 0.2, 3, True, ["readings"])
    point("large numbers", [99999999, 99999998], 99999998, 1, 0.2, 3, True)
    table.write()

    table = Table("cusum", "chart_points.py", "Cumulative sums.")

    def sums(name, readings, centre, k, h, edge=False, fault=()):
        table.point(name, {"kind": "cusum", "readings": readings or None, "centre": centre, "k": k, "h": h},
                    None if fault else cusum(readings, centre, k, h), fault, edge)

    sums("e-Handbook 6.3.2.3", SUMS, 325, 0.3175, 4.1959)
    sums("the same by a limit that is met sooner", SUMS, 325, 0.3175, 2.5)
    for n in (3, 8, 12, 30, 60):
        sums("%d steady readings" % n, drawn(n), 220, 0.5, 5)
    sums("a fall of 5 mm at the sixth", drawn(5) + drawn(5, 215), 220, 0.5, 5)
    sums("a rise and back", [220, 222, 223, 221, 219, 218, 219, 220], 220, 0.5, 5)
    sums("tiller about nothing", drawn(10, 0, 1.2), 0, 0.6, 6)
    sums("one reading on its centre", [220], 220, 0.5, 5, True)
    sums("one reading just on the limit: no signal", [225.5], 220, 0.5, 5, True)
    sums("a hair beyond", [225.501], 220, 0.5, 5, True)
    sums("one just on the limit below", [214.5], 220, 0.5, 5, True)
    sums("a sum that reaches the limit and no more", [222.5, 223.5], 220, 0.5, 5, True)
    sums("no allowance", drawn(6), 220, 0, 3, True)
    sums("an allowance that takes everything up", [221, 219, 220.5], 220, 2, 5, True)
    sums("readings off by just the allowance", [220.5, 219.5, 220.5], 220, 0.5, 5, True)
    sums("a limit of all but nothing", [220.1], 220, 0, 0.00000001, True)
    sums("a limit of nothing is refused", [220], 220, 0.5, 0, True, ["h"])
    sums("a negative allowance is refused", [220], 220, -0.1, 5, True, ["k"])
    sums("no readings", [], 220, 0.5, 5, True, ["readings"])
    sums("both ways in turn", [226, 214, 226, 214], 220, 0.5, 5, True)
    table.write()
