package club.ascham.check;

import club.ascham.bow.Who;
import club.ascham.form.Words;
import club.ascham.verdict.BenchStep;
import club.ascham.verdict.Verdict;
import club.ascham.verdict.Verdict.AdjustFirst;
import club.ascham.verdict.Verdict.Withdraw;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A verdict in words as it was given, kept with the check line by line: a plain line is a reason;
 * the others begin with what they are.
 *
 * @param expected what it should measure after the steps
 * @param work what a withdrawn bow needs
 * @param basis what the verdict rests on
 */
public record VerdictWords(
    Verdict.Kind kind,
    List<String> reasons,
    List<Step> steps,
    List<String> expected,
    List<String> work,
    List<String> notes,
    List<String> basis) {
  private static final String EXPECT = "Expect: ";
  private static final String NEEDS = "Needs: ";
  private static final String NOTE = "Note: ";
  private static final String RESTS_ON = "Rests on: ";
  private static final Pattern STEP =
      Pattern.compile("Step ([A-Z_]+)(?: ([+-][0-9.]+))? by ([a-z-]+): (.*?)(?: \\| (.*))?");

  public VerdictWords {
    reasons = List.copyOf(reasons);
    steps = List.copyOf(steps);
    expected = List.copyOf(expected);
    work = List.copyOf(work);
    notes = List.copyOf(notes);
    basis = List.copyOf(basis);
  }

  /**
   * One numbered step.
   *
   * @param amount twists or turns advised; null: none
   * @param caution null: nothing beyond the ordinary
   */
  public record Step(BenchStep.Key key, Who who, Double amount, String words, String caution) {
    static Step of(BenchStep step) {
      return new Step(
          step.key(),
          step.who(),
          step.amount().orElse(null),
          oneLine(step.words()),
          step.caution().map(VerdictWords::oneLine).orElse(null));
    }

    public boolean isForPermitHolder() {
      return who == Who.PERMIT_HOLDER;
    }
  }

  static VerdictWords of(Verdict verdict) {
    List<String> reasons =
        List.of("What was looked at is fine, and the readings lie within their bands.");
    List<Step> steps = List.of();
    List<String> expected = List.of();
    List<String> work = List.of();
    if (verdict instanceof AdjustFirst adjust) {
      reasons = adjust.reasons();
      steps = adjust.steps().stream().map(Step::of).toList();
      expected = adjust.expected();
    } else if (verdict instanceof Withdraw withdraw) {
      reasons = withdraw.reasons();
      work = withdraw.work();
    }
    return new VerdictWords(
        verdict.kind(),
        lines(reasons),
        steps,
        lines(expected),
        lines(work),
        lines(verdict.notes()),
        lines(verdict.basis()));
  }

  private static List<String> lines(List<String> said) {
    return said.stream().map(VerdictWords::oneLine).toList();
  }

  private static String oneLine(String words) {
    return words.lines().map(String::strip).collect(Collectors.joining(" "));
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

  String text() {
    List<String> lines = new ArrayList<>(reasons);
    for (Step step : steps) {
      lines.add(
          "Step %s%s by %s: %s%s"
              .formatted(
                  step.key(),
                  step.amount() == null ? "" : String.format(Locale.ROOT, " %+.3f", step.amount()),
                  Words.of(step.who()),
                  step.words().replace(" | ", " / "),
                  step.caution() == null ? "" : " | " + step.caution()));
    }
    expected.forEach(line -> lines.add(EXPECT + line));
    work.forEach(line -> lines.add(NEEDS + line));
    notes.forEach(line -> lines.add(NOTE + line));
    basis.forEach(line -> lines.add(RESTS_ON + line));
    return String.join("\n", lines);
  }

  static VerdictWords read(Verdict.Kind kind, String text) {
    List<String> reasons = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    List<String> expected = new ArrayList<>();
    List<String> work = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    List<String> basis = new ArrayList<>();
    for (String line : text.split("\n")) {
      Matcher step = STEP.matcher(line);
      if (step.matches()) {
        steps.add(step(step));
      } else if (line.startsWith(EXPECT)) {
        expected.add(line.substring(EXPECT.length()));
      } else if (line.startsWith(NEEDS)) {
        work.add(line.substring(NEEDS.length()));
      } else if (line.startsWith(NOTE)) {
        notes.add(line.substring(NOTE.length()));
      } else if (line.startsWith(RESTS_ON)) {
        basis.add(line.substring(RESTS_ON.length()));
      } else {
        reasons.add(line);
      }
    }
    return new VerdictWords(kind, reasons, steps, expected, work, notes, basis);
  }

  private static Step step(Matcher parts) {
    return new Step(
        BenchStep.Key.valueOf(parts.group(1)),
        Who.valueOf(parts.group(3).toUpperCase(Locale.ROOT).replace('-', '_')),
        parts.group(2) == null ? null : Double.valueOf(parts.group(2)),
        parts.group(4),
        parts.group(5));
  }
}
