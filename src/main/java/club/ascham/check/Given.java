package club.ascham.check;

import club.ascham.form.Words;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Remark;
import club.ascham.verdict.Saying;
import club.ascham.verdict.Verdict;
import club.ascham.verdict.Verdict.AdjustFirst;
import club.ascham.verdict.Verdict.Withdraw;
import java.util.ArrayList;
import java.util.List;

/**
 * A verdict as it was given and is kept with its check.
 *
 * @param expected what it should measure after the steps
 * @param work what a withdrawn bow needs
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

  static Given of(Verdict verdict) {
    List<Remark> reasons = List.of(Remark.of(Saying.FINE));
    List<BenchStep> steps = List.of();
    List<Remark> expected = List.of();
    List<Remark> work = List.of();
    if (verdict instanceof AdjustFirst adjust) {
      reasons = adjust.reasons();
      steps = adjust.steps();
      expected = adjust.expected();
    } else if (verdict instanceof Withdraw withdraw) {
      reasons = withdraw.reasons();
      work = withdraw.work();
    }
    return new Given(
        verdict.kind(), reasons, steps, expected, work, verdict.notes(), verdict.basis());
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

  boolean has(BenchStep.Key key) {
    return steps.stream().anyMatch(step -> step.key() == key);
  }

  /** Nothing is adjusted: somebody answers or decides first, and the bow is checked again. */
  boolean waits() {
    return has(BenchStep.Key.ANSWER_TOLD) || has(BenchStep.Key.RELEASE);
  }

  /** The verdict in a few words. */
  String said() {
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
  boolean adjusts() {
    return steps.stream().anyMatch(step -> step.key().adjusts());
  }

  /** All of it, a line each, for those who tell a whole story. */
  public String text() {
    List<String> lines = new ArrayList<>(Remark.words(reasons));
    for (BenchStep step : steps) {
      lines.add(
          "Step by %s: %s%s"
              .formatted(
                  Words.of(step.who()),
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
