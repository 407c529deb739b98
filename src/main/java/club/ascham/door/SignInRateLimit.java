package club.ascham.door;

import club.ascham.web.Caller;
import club.ascham.web.RateLimit;
import java.time.Duration;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * How long the next try to sign in waits, after wrong ones. A name at an address, or in a browser
 * where it signed in before, has its own count and waits a minute at most; so nobody who guesses
 * elsewhere keeps the owner out. All names at one address, and all addresses at one name, share
 * wider counts that bind only strangers: whoever got in from there before is none.
 *
 * <p>Five tries are free; then each waits 2, 4, 8 … 60 seconds, never longer, and asking meanwhile
 * makes it no longer. At one address, and at one name, strangers share 50, then one in 2 seconds.
 * At worst someone who keeps on guessing at a name in its owner's own network makes a <em>new</em>
 * browser there wait. Access keys and recovery codes never wait. Codes wait more strictly. The
 * counts live in the process, bounded, and a restart forgets them.
 */
final class SignInRateLimit {
  static final int FREE = 5;
  static final Duration LONGEST_WAIT = Duration.ofSeconds(60);
  static final Duration FORGOTTEN = Duration.ofMinutes(15);
  static final int CROWD = 50;
  static final Duration CROWD_EACH = Duration.ofSeconds(2);
  static final int REMEMBERED_AT_MOST = 10_000;

  /**
   * How strict it is.
   *
   * @param longestWait of a name's own count, which is forgotten {@code forgotten} after its last
   *     try
   * @param crowd so many tries of strangers at one name at once, then one in each {@code crowdEach}
   */
  record Limits(Duration longestWait, Duration forgotten, int crowd, Duration crowdEach) {}

  static final Limits FOR_PASSWORDS = new Limits(LONGEST_WAIT, FORGOTTEN, CROWD, CROWD_EACH);

  /**
   * Of a million codes three are right at any time: a day of guessing, from however many places,
   * finds one with a chance under one in two thousand. Only who knows the password gets to guess.
   */
  static final Limits FOR_CODES =
      new Limits(Duration.ofMinutes(15), Duration.ofDays(1), 10, Duration.ofMinutes(10));

  /** A try. The browser's mark is null for one in which this name never signed in. */
  record Try(String name, Caller caller, String browser) {
    private String own() {
      return browser != null ? "browser " + browser : caller.address() + " " + folded();
    }

    private String folded() {
      return name.toLowerCase(Locale.ROOT);
    }
  }

  private record Own(int wrong, Instant last, Instant next, boolean gotIn) {
    static final Own NONE = new Own(0, Instant.MIN, Instant.MIN, false);

    Own on(Instant now, Limits limits) {
      boolean old = last.isBefore(now.minus(limits.forgotten()));
      // Later than now: the clock was set back.
      return old || last.isAfter(now) ? new Own(0, Instant.MIN, Instant.MIN, gotIn) : this;
    }

    Own oneMore(Instant now, Limits limits) {
      long seconds =
          wrong + 1 < FREE
              ? 0
              : Math.min(limits.longestWait().toSeconds(), 2L << Math.min(wrong + 1 - FREE, 10));
      return new Own(wrong + 1, now, now.plusSeconds(seconds), gotIn);
    }
  }

  private final Limits limits;
  private final RateLimit atAddress = new RateLimit(CROWD, CROWD_EACH, REMEMBERED_AT_MOST);
  private final RateLimit atName;
  private final Map<String, Own> owns =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Own> eldest) {
          return size() > REMEMBERED_AT_MOST;
        }
      };

  SignInRateLimit(Limits limits) {
    this.limits = limits;
    this.atName = new RateLimit(limits.crowd(), limits.crowdEach(), REMEMBERED_AT_MOST);
  }

  /**
   * Zero: go on. The try counts as wrong from here on, so that a hundred at once are no way around;
   * {@link #right} takes that back.
   */
  synchronized Duration begin(Try tried, Instant now) {
    Own own = owns.getOrDefault(tried.own(), Own.NONE).on(now, limits);
    Duration wait = own.wrong() == 0 ? Duration.ZERO : Duration.between(now, own.next());
    if (wait.compareTo(Duration.ZERO) > 0) {
      return wait;
    }
    if (isStranger(tried, own)) {
      Duration crowd = tried.caller().here() ? Duration.ZERO : takeAtAddress(tried, now);
      if (crowd.isZero()) {
        crowd = atName.take(tried.folded(), now);
        if (!crowd.isZero() && !tried.caller().here()) {
          atAddress.giveBack(tried.caller().address(), now);
        }
      }
      if (!crowd.isZero()) {
        return crowd;
      }
    }
    owns.put(tried.own(), own.oneMore(now, limits));
    return Duration.ZERO;
  }

  synchronized void right(Try tried, Instant now) {
    Own own = owns.getOrDefault(tried.own(), Own.NONE);
    if (isStranger(tried, own)) {
      if (!tried.caller().here()) {
        atAddress.giveBack(tried.caller().address(), now);
      }
      atName.giveBack(tried.folded(), now);
    }
    owns.put(tried.own(), new Own(0, Instant.MIN, Instant.MIN, true));
  }

  synchronized int remembered() {
    return owns.size();
  }

  private Duration takeAtAddress(Try tried, Instant now) {
    return atAddress.take(tried.caller().address(), now);
  }

  private static boolean isStranger(Try tried, Own own) {
    return tried.browser() == null && !own.gotIn();
  }
}
