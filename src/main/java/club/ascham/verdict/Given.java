package club.ascham.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What a verdict says, as it is given and kept with its check.
 *
 * @param reasons why, one line each
 * @param steps in the order that is safe
 * @param expected what it should measure after the steps, and how sure that is
 * @param work what a withdrawn bow needs
 * @param notes what to keep an eye on
 * @param basis what the verdict rests on
 */
public record Given(
    Verdict.Kind kind,
    List<Remark> reasons,
    List<BenchStep> steps,
    List<Remark> expected,
    List<Remark> work,
    List<Remark> notes,
    List<Remark> basis) {
  public Given {
    reasons = List.copyOf(reasons);
    steps = List.copyOf(steps);
    expected = List.copyOf(expected);
    work = List.copyOf(work);
    notes = List.copyOf(notes);
    basis = List.copyOf(basis);
  }

  /** Of a mere look that found nothing. */
  public static Given look(Saying found) {
    return new Given(
        Verdict.Kind.FIT,
        List.of(Remark.of(found)),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  public boolean has(BenchStep.Key key) {
    return steps.stream().anyMatch(step -> step.key() == key);
  }

  /** Nothing is adjusted: somebody answers or decides first, and the bow is checked again. */
  public boolean waits() {
    return has(BenchStep.Key.ANSWER_TOLD) || has(BenchStep.Key.RELEASE);
  }

  /** The verdict in a few words. */
  public String said() {
    if (has(BenchStep.Key.ANSWER_TOLD)) {
      return "answer what was told first";
    }
    if (has(BenchStep.Key.RELEASE)) {
      return "leave it unstrung";
    }
    return switch (kind) {
      case FIT -> "fit to issue";
      case ADJUST -> "adjust first";
      case WITHDRAW -> "withdraw";
    };
  }

  /** Whether any of its steps makes another bow of it; else all were looks. */
  public boolean adjusts() {
    return steps.stream().anyMatch(step -> step.key().adjusts());
  }

  /** All of it, a line each, for those who tell a whole story. */
  public String text() {
    List<String> lines = new ArrayList<>(Remark.words(reasons));
    for (BenchStep step : steps) {
      lines.add(
          "Step by %s: %s%s"
              .formatted(
                  step.who().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                  step.words(),
                  step.caution().map(caution -> " | " + caution).orElse("")));
    }
    Remark.words(expected).forEach(line -> lines.add("Expect: " + line));
    Remark.words(work).forEach(line -> lines.add("Needs: " + line));
    Remark.words(notes).forEach(line -> lines.add("Note: " + line));
    Remark.words(basis).forEach(line -> lines.add("Rests on: " + line));
    return String.join("\n", lines);
  }
}
