package club.ascham.bench;

import club.ascham.form.Typed;
import club.ascham.statistics.Cusum;
import club.ascham.statistics.Ewma;
import club.ascham.statistics.KaplanMeier;
import club.ascham.statistics.LifeEstimate;
import club.ascham.statistics.Readers;
import club.ascham.statistics.ReplacementAge;
import club.ascham.statistics.Service;
import club.ascham.statistics.Weibull;
import club.ascham.statistics.WeibullFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Reads a question about numbers, from a page or from JSON, and has it reckoned. */
final class NumberQuestions {
  /** As many as a large club may have had in its life, twice over. */
  static final int MOST_NUMBERS = 20_000;

  /** What is solved with them grows with the third power of the readers. */
  static final int MOST_READINGS = 5_000;

  static final int MOST_READERS = 200;
  static final int LONGEST_NAME = 80;

  private static final double LARGE = 1e8;

  private NumberQuestions() {}

  static Optional<Ewma> ewma(Typed typed, List<Double> readings) {
    List<Double> numbers = numbers(typed, "readings", readings, 1);
    Double centre = BenchQuestions.needed(typed, "centre", -LARGE, LARGE);
    Double sigma = BenchQuestions.needed(typed, "sigma", 1e-8, LARGE);
    Double lambda = BenchQuestions.needed(typed, "lambda", 1e-3, 1);
    Double width = BenchQuestions.needed(typed, "width", 0.01, 20);
    return BenchQuestions.reckoned(typed, () -> Ewma.of(numbers, centre, sigma, lambda, width));
  }

  static Optional<Cusum> cusum(Typed typed, List<Double> readings) {
    List<Double> numbers = numbers(typed, "readings", readings, 1);
    Double centre = BenchQuestions.needed(typed, "centre", -LARGE, LARGE);
    Double k = BenchQuestions.needed(typed, "k", 0, LARGE);
    Double h = BenchQuestions.needed(typed, "h", 1e-8, LARGE);
    return BenchQuestions.reckoned(typed, () -> Cusum.of(numbers, centre, k, h));
  }

  /**
   * @param fit null: refused, and {@code refusal} says why
   */
  record LifeTold(WeibullFit fit, KaplanMeier curve, String refusal) {}

  /**
   * @param entered null: all were watched from new; else ages at entry, of the failed, then of the
   *     suspended
   */
  static Optional<LifeTold> life(
      Typed typed, List<Double> failed, List<Double> suspended, List<Double> entered) {
    List<Double> ends = numbers(typed, "failed", failed, 0);
    List<Double> left = suspended == null ? List.of() : numbers(typed, "suspended", suspended, 0);
    int parts = ends.size() + left.size();
    List<Double> from = entered == null ? null : numbers(typed, "entered", entered, 0);
    if (typed.sound() && (parts == 0 || parts > MOST_NUMBERS)) {
      typed.fault("failed", "Ages of 1 to " + MOST_NUMBERS + " parts, please.");
    }
    if (typed.sound() && from != null && from.size() != parts) {
      typed.fault(
          "entered",
          "One age for each part, please: first the failed, then the suspended. These are %d for %d."
              .formatted(from.size(), parts));
    }
    return BenchQuestions.reckoned(
        typed,
        () -> {
          List<Service> services = new ArrayList<>(parts);
          for (int i = 0; i < parts; i++) {
            boolean fails = i < ends.size();
            services.add(
                new Service(
                    from == null ? 0 : from.get(i),
                    fails ? ends.get(i) : left.get(i - ends.size()),
                    fails));
          }
          KaplanMeier curve = KaplanMeier.of(services, LifeEstimate.BAND);
          LifeEstimate.Answer answer = LifeEstimate.of(services);
          return answer instanceof LifeEstimate.Fitted fitted
              ? new LifeTold(fitted.fit(), curve, null)
              : new LifeTold(null, curve, ((LifeEstimate.Refused) answer).why());
        });
  }

  static Optional<ReplacementAge> replacementAge(Typed typed) {
    Double shape = BenchQuestions.needed(typed, "shape", 0.1, 50);
    Double scale = BenchQuestions.needed(typed, "scale", 1e-3, LARGE);
    Double planned = BenchQuestions.needed(typed, "plannedCost", 1e-3, LARGE);
    Double unplanned = BenchQuestions.needed(typed, "unplannedCost", 1e-3, LARGE);
    return BenchQuestions.reckoned(
        typed, () -> ReplacementAge.of(new Weibull(shape, scale), planned, unplanned));
  }

  /** One person's reading as it was handed in. */
  record ReadingAsked(String reader, Double value) {}

  static Optional<Readers> readers(Typed typed, List<ReadingAsked> asked) {
    if (asked == null
        || asked.size() > MOST_READINGS
        || asked.stream().anyMatch(Objects::isNull)
        || asked.stream().anyMatch(reading -> !isName(reading.reader()))) {
      typed.fault(
          "readings",
          "At most %d readings, please, each with its reader's name.".formatted(MOST_READINGS));
      return Optional.empty();
    }
    numbers(typed, "readings", asked.stream().map(ReadingAsked::value).toList(), 1);
    if (asked.stream().map(ReadingAsked::reader).distinct().count() > MOST_READERS) {
      typed.fault("readings", "At most " + MOST_READERS + " readers, please.");
    }
    return BenchQuestions.reckoned(
        typed,
        () ->
            Readers.of(
                asked.stream()
                    .map(read -> new Readers.Reading("bow", read.reader().strip(), read.value()))
                    .toList()));
  }

  private static boolean isName(String reader) {
    return reader != null
        && !reader.isBlank()
        && reader.length() <= LONGEST_NAME
        && Typed.canBeShown(reader);
  }

  /** The same list where it is one of finite numbers; else a fault, and none. */
  private static List<Double> numbers(Typed typed, String field, List<Double> numbers, int fewest) {
    if (numbers == null || numbers.size() < fewest || numbers.size() > MOST_NUMBERS) {
      typed.fault(field, "%d to %d numbers, please, in a list.".formatted(fewest, MOST_NUMBERS));
      return List.of();
    }
    for (Double number : numbers) {
      if (number == null || !(Math.abs(number) <= LARGE)) {
        typed.fault(field, "Numbers only, please, none beyond " + (long) LARGE + ".");
        return List.of();
      }
    }
    return numbers;
  }
}
