# Run: python3 src/test/java/club/ascham/bench/points/reader_points.py (needs numpy and scipy). Used by bench's ReaderPointsTest.
"""How far readers differ: mean squares from the projections that least squares makes (no sums of squares
by hand), offsets by generalised least squares and the covariance of all readings, written out."""
import numpy as np
from table import Table


def reckon(readings):
    """readings: (reader, value)."""
    if not readings:
        return None, ["readings"]
    names = sorted({name for name, _ in readings})
    # From the first of them, so that large figures close together keep their digits.
    first = float(readings[0][1])
    y = np.array([value - first for _, value in readings], float)
    n, a = len(y), len(names)
    if a < 2 or n == a:
        return None, ["readings"]
    z = np.array([[1.0 if name == one else 0.0 for one in names] for name, _ in readings])
    ones = np.ones((n, 1))
    onto = lambda x: x @ np.linalg.pinv(x)
    of_readers, of_mean = onto(z), onto(ones)
    # What is expected of a quadratic form y'Ay is the trace of A times the covariance of y.
    between_form, within_form = of_readers - of_mean, np.eye(n) - of_readers
    expected = np.array([[np.trace(form @ z @ z.T), np.trace(form)] for form in (between_form, within_form)])
    seen = np.array([y @ form @ y for form in (between_form, within_form)])
    between, within = np.linalg.solve(expected, seen)
    within, between = max(0.0, within), max(0.0, between)
    if within > 1e-12:
        inverse = np.linalg.inv(between * z @ z.T + within * np.eye(n))
        mean = float((ones.T @ inverse @ y)[0] / (ones.T @ inverse @ ones)[0, 0])
        offsets = between * z.T @ inverse @ (y - mean)
    else:
        # Nobody scatters: whatever differs between readers is theirs.
        each = z.T @ y / z.sum(axis=0)
        offsets = each - each.mean()
    told = {"mean": first + float(y.mean()), "repeatability": float(np.sqrt(within)), "between": float(np.sqrt(between)),
            "reproducibility": float(np.sqrt(within + between))}
    told.update({"offsets." + name: float(offset) for name, offset in zip(names, offsets)})
    return told, []


if __name__ == "__main__":
    rng = np.random.default_rng(20261130)
    table = Table("readers", "reader_points.py", "How far readers differ, and one reader from time to time.")

    def point(name, readings, edge=False):
        expected, fault = reckon(readings)
        table.point(name, {"readings": ["%s:%s" % one for one in readings] or None}, expected, fault, edge)

    def drawn(counts, own=0.7, others=0.7, mean=220.0, step=0.1):
        of = rng.normal(0, others, len(counts)) if others else np.zeros(len(counts))
        return [("abcdefghijklmnopqrst"[i], round(round(float(mean + of[i] + rng.normal(0, own)) / step) * step, 6))
                for i, count in enumerate(counts) for _ in range(count)]

    point("two people, twice each", [("a", 220), ("a", 221), ("b", 222.5), ("b", 223)])
    point("by hand: repeat 2, between 7", [("a", 220), ("a", 222), ("b", 224), ("b", 226)])
    point("three people, four times each", drawn([4, 4, 4]))
    point("five people, thrice each", drawn([3] * 5))
    point("unequal counts", drawn([2, 5, 3]))
    point("very unequal counts", drawn([1, 12, 2, 1]))
    point("eight people, as the check sees them", drawn([3, 1, 4, 2, 2, 1, 5, 2]))
    point("twenty people", drawn([2] * 20))
    point("read to a sixteenth of an inch", drawn([4, 4, 3], step=1.5875))
    point("tiller about nothing", drawn([3, 4, 3], mean=3.0))
    point("people who differ much", drawn([3, 3, 3, 3], 0.4, 2.5))
    point("nobody differs: the share of people is nothing", [("a", 219), ("a", 221), ("b", 221), ("b", 219)], True)
    point("readers nearer to each other than their repeats let expect", [("a", 218), ("a", 222), ("b", 219), ("b", 221.5)], True)
    point("nobody scatters", [("a", 220), ("a", 220), ("b", 222), ("b", 222), ("b", 222)], True)
    point("all readings alike", [("a", 220), ("a", 220), ("b", 220), ("b", 220)], True)
    point("one measured twice, one once", [("a", 220), ("a", 221), ("b", 223)], True)
    point("nobody measured twice", [("a", 220), ("b", 221), ("c", 222)], True)
    point("one person alone", [("a", 220), ("a", 221), ("a", 222)], True)
    point("one reading", [("a", 220)], True)
    point("none", [], True)
    point("negative readings", [("a", -3), ("a", -2.5), ("b", -1), ("b", -1.75), ("c", -2)], True)
    point("far from nothing, close together", [("a", 99999999), ("a", 99999998), ("b", 99999997), ("b", 99999998)], True)
    point("one reader of many with one odd reading", drawn([2, 2, 2, 2]) + [("e", 260)], True)
    table.write()
