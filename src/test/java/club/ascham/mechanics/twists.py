# Run: python3 src/test/java/club/ascham/mechanics/twists.py (needs numpy). Used by TwistsTest.
"""A twisted string strand by strand, apart from the program's closed form: every strand of the
bundle is a helix about its axis as long as the strand is, and the length of the string is that at
which the strands are as long as they were, on the mean over the cross-section or at its edge."""
import numpy as np

LENGTH, STRANDS, DIAMETER, PACKING = 1651.0, 14, 0.45, 0.75


def shortening(twists):
    edge = DIAMETER / 2 * (STRANDS / PACKING) ** 0.5
    # Rings of equal area, so that each strand counts alike.
    rings = edge * np.sqrt((np.arange(100_000) + 0.5) / 100_000)
    lengths = lambda radius: np.sqrt(LENGTH ** 2 - (2 * np.pi * radius * twists) ** 2)
    # Strands may slide along each other: the bundle is as short as its mean strand.
    return LENGTH - np.mean(lengths(rings)), LENGTH - lengths(edge)


if __name__ == "__main__":
    # That 12 twists out of 22 lower brace by 3 mm: brace follows the shortening of the mean strand
    # by a factor between 1 (mean strand) and 2 (outermost helix), 5 and 95 in a hundred, times 1.02
    # with a spread of 0.07, in 4 million draws.
    rng = np.random.default_rng(1)
    follows = rng.normal(1.5, 0.5 / 1.6448536, 4_000_000) * rng.normal(1.02, 0.07, 4_000_000)
    given_up = shortening(22)[0] - shortening(10)[0]
    print("chance of 3 mm: %.4f" % np.mean(follows * given_up >= 3))
    for twists in (15, 20, 25):
        print("%d twists: mean strand %.2f mm, outermost helix %.2f mm" % ((twists,) + shortening(twists)))
