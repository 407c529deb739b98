package club.ascham.web;

import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How often something may be done by each of many: so many at once, then one in every so long.
 * Knows the last few thousand that did; whoever was quiet for longest is forgotten first.
 */
public final class RateLimit {
  private final Duration each;
  private final Duration atOnce;
  private final Map<String, Instant> spentUntil;

  public RateLimit(int atOnce, Duration each, int rememberedAtMost) {
    this.each = each;
    this.atOnce = each.multipliedBy(atOnce);
    this.spentUntil =
        new LinkedHashMap<>(16, 0.75f, true) {
          private static final long serialVersionUID = 1L;

          @Override
          protected boolean removeEldestEntry(Map.Entry<String, Instant> eldest) {
            return size() > rememberedAtMost;
          }
        };
  }

  /** Takes one turn and answers zero, or takes none and answers how long to wait for it. */
  public synchronized Duration take(String who, Instant now) {
    Instant after = spent(who, now).plus(each);
    Duration over = Duration.between(now, after).minus(atOnce);
    if (over.compareTo(Duration.ZERO) > 0) {
      return over;
    }
    spentUntil.put(who, after);
    return Duration.ZERO;
  }

  /** Gives a turn back that turned out not to count. */
  public synchronized void giveBack(String who, Instant now) {
    spentUntil.put(who, spent(who, now).minus(each));
  }

  private Instant spent(String who, Instant now) {
    Instant until = spentUntil.getOrDefault(who, now);
    // A clock that was set back would else make everyone wait for the difference.
    boolean nonsense = until.isAfter(now.plus(atOnce));
    return nonsense || until.isBefore(now) ? now : until;
  }

  synchronized int remembered() {
    return spentUntil.size();
  }
}
