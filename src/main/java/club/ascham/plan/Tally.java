package club.ascham.plan;

import java.util.Arrays;

/**
 * Counts values of nought or more in a bounded number of buckets, so that memory does not grow with
 * how many are counted: whole up to 127, beyond that 64 buckets to each doubling, hence no quantile
 * is off by more than 1 in 128, and what never varies is given exactly. Tallies of parts add up to
 * the tally of the whole, in any order.
 *
 * <p>Only whole numbers are summed: so shares add up exactly.
 */
final class Tally {
  private static final int EXACT = 128;
  private static final int STEPS = 64;
  private static final int STEP_BITS = 6;

  /** Beyond every sum of money that comes of what forms take; a thousand of them still add up. */
  static final long MOST = (1L << 52) - 1;

  private int[] counts = new int[4];
  private long sum;
  private long least = Long.MAX_VALUE;
  private long most;
  private int all;

  void add(long value) {
    if (value < 0 || value > MOST) {
      throw new IllegalArgumentException("beyond what is counted: " + value);
    }
    int bucket = bucket(value);
    if (bucket >= counts.length) {
      counts = Arrays.copyOf(counts, Math.max(bucket + 1, 2 * counts.length));
    }
    counts[bucket]++;
    sum += value;
    least = Math.min(least, value);
    most = Math.max(most, value);
    all++;
  }

  void add(Tally other) {
    if (other.counts.length > counts.length) {
      counts = Arrays.copyOf(counts, other.counts.length);
    }
    for (int i = 0; i < other.counts.length; i++) {
      counts[i] += other.counts[i];
    }
    sum += other.sum;
    least = Math.min(least, other.least);
    most = Math.max(most, other.most);
    all += other.all;
  }

  double mean() {
    return all == 0 ? 0 : (double) sum / all;
  }

  /**
   * The smallest counted value that at least this share does not exceed; the middle of its bucket.
   */
  long quantile(double share) {
    long wanted = Math.max(1, (long) Math.ceil(share * all));
    long seen = 0;
    for (int i = 0; i < counts.length; i++) {
      seen += counts[i];
      if (seen >= wanted) {
        return Math.max(least, Math.min(most, value(i)));
      }
    }
    return 0;
  }

  Spread band() {
    return new Spread(
        quantile(0.05), quantile(0.25), quantile(0.5), quantile(0.75), quantile(0.95), mean());
  }

  /** How many buckets there are, whatever was counted: what memory it may take. */
  static int mostBuckets() {
    return bucket(MOST) + 1;
  }

  private static int bucket(long value) {
    if (value < EXACT) {
      return (int) value;
    }
    int doublings = 63 - Long.numberOfLeadingZeros(value) - STEP_BITS;
    return EXACT + (doublings - 1) * STEPS + (int) (value >>> doublings) - STEPS;
  }

  private static long value(int bucket) {
    if (bucket < EXACT) {
      return bucket;
    }
    int doublings = (bucket - EXACT) / STEPS + 1;
    long low = (long) ((bucket - EXACT) % STEPS + STEPS) << doublings;
    return low + (1L << (doublings - 1));
  }
}
