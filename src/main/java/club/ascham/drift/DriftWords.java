package club.ascham.drift;

import club.ascham.statistics.Cause;
import club.ascham.statistics.Drift;
import club.ascham.statistics.Drift.Judged;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Whether a bow changes, as people say it. */
public final class DriftWords {
  private DriftWords() {}

  /**
   * In one or two sentences that begin with one of three words: steady, unsure, changing.
   *
   * @param day how a moment's day is said; null: that day is not over, and says nothing yet
   */
  public static String of(Drift drift, Function<Instant, String> day) {
    return of(drift, day, causes(drift.causes()));
  }

  /**
   * The same where the last check has its own cause: one reading that jumps is sooner a slip or a
   * part out of its seat than wear, and two causes side by side would be none.
   */
  public static String asItsCheckSays(Drift drift, Function<Instant, String> day) {
    return of(drift, day, "Its last check says what to look at first.");
  }

  private static String of(Drift drift, Function<Instant, String> day, String causes) {
    if (drift.readings() < 2) {
      return "Unsure: one reading alone says nothing about change. The next one will.";
    }
    return switch (drift.answer()) {
      case STEADY ->
          "Steady over %d readings since %s: %s; readings differ by as much of themselves."
              .formatted(drift.readings(), day.apply(drift.begun()), moved(drift));
      case UNSURE ->
          "Unsure: %s. That is much, and may still be the reader: measure it again soon."
              .formatted(moved(drift));
      case CHANGING ->
          "Changing%s: %s, more than readings differ of themselves. %s"
              .formatted(since(drift, day, "about "), moved(drift), causes);
    };
  }

  /**
   * Beside a reading that is being typed: one line against the set-up figure, where it changes;
   * else null.
   */
  public static String line(Drift drift, Function<Instant, String> day) {
    return drift.readings() < 2 || drift.answer() != Drift.Answer.CHANGING
        ? null
        : "Changing%s: %s.".formatted(since(drift, day, ""), moved(drift));
  }

  private static String since(Drift drift, Function<Instant, String> day, String how) {
    String said = day.apply(drift.since());
    return said == null ? "" : " since " + how + said;
  }

  /** Why work is asked for: always the same words for the same causes, without figures. */
  public static String because(Drift drift) {
    return "Its readings change by more than readers differ. "
        + causes(drift.causes())
        + " Look at it, and keep or replace what is worn.";
  }

  private static String moved(Drift drift) {
    return Stream.of(
            moved("brace", drift.brace(), "lower", "higher"),
            moved("tiller", drift.tiller(), "smaller", "larger"))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining(", "));
  }

  private static String moved(String what, Judged judged, String less, String more) {
    if (judged == null) {
      return "";
    }
    double mm = Math.round(judged.change() * 10) / 10.0;
    return mm == 0
        ? what + " as it was"
        : String.format(
            Locale.UK, "%s %.1f mm %s than it was", what, Math.abs(mm), mm < 0 ? less : more);
  }

  private static String causes(List<Cause.Likely> causes) {
    if (causes.isEmpty()) {
      return "Nothing that wears explains it: was it adjusted without a note?";
    }
    String first = "Likeliest " + said(causes.get(0)) + ".";
    return causes.size() == 1
        ? first
        : first
            + " Else "
            + causes.stream().skip(1).map(DriftWords::said).collect(Collectors.joining(", or "))
            + ".";
  }

  private static String said(Cause.Likely likely) {
    return switch (likely.cause()) {
      case STRING_CREEPS -> "the string stretches";
      case BOLT_WALKS -> "a limb bolt walks";
      case LIMB -> "a limb changes";
    };
  }
}
