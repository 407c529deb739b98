package club.ascham.check;

import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.measured.Measurement;
import club.ascham.rig.ReadingJson;
import club.ascham.verdict.BowPart;
import club.ascham.verdict.Gravity;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Carries the answers of a check into the form of the one that follows it. */
final class EarlierAnswers {
  private EarlierAnswers() {}

  /**
   * @param readings also what was measured, which a second measurement never shows and a correction
   *     starts from
   */
  static void carry(Checks checks, long earlier, Typed into, boolean readings) {
    checks.one(earlier).ifPresent(check -> carry(check, checks.signs(earlier), into, readings));
  }

  private static void carry(
      Checks.Row check, List<Checks.SeenSign> signs, Typed into, boolean readings) {
    if (check.allAsListed()) {
      into.with("allAsListed", "on");
    }
    Map<BowPart, List<Checks.SeenSign>> byPart =
        signs.stream()
            .collect(
                Collectors.groupingBy(
                    Checks.SeenSign::part,
                    () -> new EnumMap<>(BowPart.class),
                    Collectors.toList()));
    byPart.forEach((part, seen) -> carry(part, seen, into));
    Typed measured = Typed.of(ReadingJson.of(check.measured()));
    into.with(Measurement.FROM, measured.value(Measurement.FROM));
    if (readings) {
      measured.all().forEach(into::with);
      into.with("dryLooseOrFall", check.dryLooseOrFall() ? "on" : null);
      into.with("cameBackStrung", check.cameBackStrung() ? "on" : null);
    }
  }

  private static void carry(BowPart part, List<Checks.SeenSign> seen, Typed into) {
    Gravity gravest =
        seen.stream()
            .map(Checks.SeenSign::gravity)
            .max(Comparator.naturalOrder())
            .orElse(Gravity.FINE);
    into.with(SignAnswers.field(part), Words.of(gravest));
    if (gravest != Gravity.FINE) {
      into.with(
          SignAnswers.wordsField(part),
          seen.stream()
              .filter(sign -> sign.gravity() != Gravity.FINE)
              .map(Checks.SeenSign::words)
              .collect(Collectors.joining("; ")));
    }
  }
}
