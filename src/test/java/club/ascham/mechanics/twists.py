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
    for twists in (15, 20, 25):
        print("%d twists: mean strand %.2f mm, outermost helix %.2f mm" % ((twists,) + shortening(twists)))
