package club.ascham.check;

import club.ascham.bow.Build;
import club.ascham.form.Typed;
import club.ascham.report.Telling;
import club.ascham.verdict.BowPart;
import club.ascham.verdict.Gravity;
import club.ascham.verdict.KnownSign;
import club.ascham.verdict.Sign;
import club.ascham.verdict.Signs;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was seen, part by part: {@code limbs} is fine, note or stop, {@code limbsWords} says it in
 * the person's own words, and {@code signs} lists the keys of known signs. A known sign weighs what
 * the trade says; where answer and signs differ, the graver stands.
 */
final class SignAnswers {
  /** Says that words only read like a danger. */
  static final String NOT_SO = "notSo";

  private static final int LONGEST_WORDS = 400;

  private SignAnswers() {}

  static List<Sign> parse(Typed typed, Build build) {
    List<KnownSign> ticked = ticked(typed, build);
    List<Sign> seen = new ArrayList<>();
    for (BowPart part : Signs.parts(build)) {
      seen.addAll(of(part, typed, ticked, build));
    }
    return seen;
  }

  /** Whether any part is to be stopped, whatever is still to be said of it. */
  static boolean stops(Typed typed) {
    return Arrays.stream(BowPart.values())
        .anyMatch(part -> typed.value(field(part)).equalsIgnoreCase(Gravity.STOP.name()));
  }

  static String field(BowPart part) {
    return part.name().toLowerCase(Locale.ROOT);
  }

  static String wordsField(BowPart part) {
    return field(part) + "Words";
  }

  private static List<KnownSign> ticked(Typed typed, Build build) {
    List<KnownSign> ticked = new ArrayList<>();
    Arrays.stream(typed.value("signs").split("[,\\s]+"))
        .filter(key -> !key.isEmpty())
        .forEach(
            key -> {
              Optional<KnownSign> known =
                  Signs.byKey(key).filter(sign -> sign.builds().contains(build));
              known.ifPresent(ticked::add);
              if (known.isEmpty()) {
                typed.fault("signs", "A bow like this has no sign called \"" + key + "\".");
              }
            });
    return ticked;
  }

  private static List<Sign> of(BowPart part, Typed typed, List<KnownSign> ticked, Build build) {
    Gravity answer = typed.word(field(part), Gravity.class);
    String words = typed.text(wordsField(part), LONGEST_WORDS);
    List<Sign> signs = new ArrayList<>();
    ticked.stream()
        .filter(known -> known.part() == part && known.gravity() != Gravity.FINE)
        .forEach(known -> signs.add(known.seen()));
    if (words != null) {
      if (answer == null || answer == Gravity.FINE) {
        typed.fault(field(part), "Is what you saw a note or a stop?");
        return signs;
      }
      if (answer == Gravity.NOTE && !typed.ticked(NOT_SO)) {
        Telling.askedOf(words)
            .ifPresent(asked -> typed.fault(wordsField(part), asked + " Then it is a stop."));
      }
      signs.add(new Sign(part, answer, words));
    } else if (answer != null && answer != Gravity.FINE && !weighs(signs, answer)) {
      if (signs.isEmpty()) {
        typed.fault(
            wordsField(part), "What did you see? A few words, or tick it in the list of signs.");
      } else {
        // Graver than the list would have it, and the person has the bow in hand.
        signs.add(new Sign(part, answer, signs.get(0).words()));
      }
    }
    if (signs.isEmpty() && answer == Gravity.FINE) {
      sound(part, build).ifPresent(signs::add);
    }
    return signs;
  }

  private static boolean weighs(List<Sign> signs, Gravity answer) {
    return signs.stream().anyMatch(sign -> sign.gravity().compareTo(answer) >= 0);
  }

  private static Optional<Sign> sound(BowPart part, Build build) {
    return Signs.of(part, build).stream()
        .filter(known -> known.gravity() == Gravity.FINE)
        .findFirst()
        .map(KnownSign::seen);
  }
}
