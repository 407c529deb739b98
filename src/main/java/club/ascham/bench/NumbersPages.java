package club.ascham.bench;

import club.ascham.bench.BenchPages.Said;
import club.ascham.bench.NumberQuestions.LifeTold;
import club.ascham.bench.NumberQuestions.ReadingAsked;
import club.ascham.form.Typed;
import club.ascham.people.Role;
import club.ascham.statistics.Cusum;
import club.ascham.statistics.Ewma;
import club.ascham.statistics.Interval;
import club.ascham.statistics.LifeEstimate;
import club.ascham.statistics.MovingRange;
import club.ascham.statistics.Readers;
import club.ascham.statistics.ReplacementAge;
import club.ascham.statistics.WeibullFit;
import club.ascham.web.Forms;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The statistics of upkeep as calculators, for whoever likes numbers. The questions stand in the
 * address: they keep nothing, and readers go by a letter.
 */
@Path("/bench/numbers")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class NumbersPages {
  /** Three such lists fit an address, each on lines of its own. */
  private static final int LONGEST = 600;

  private static final double NINE_IN_TEN = 0.9;

  /** Without more said: the watch over a bow reckons with these. */
  private static final double LAMBDA = 0.2;

  private static final double WIDTH = 3;

  /** In standard deviations of a reading. */
  private static final double K = 0.5;

  private static final double H = 5;

  /** The rows behind an answer; the first cell of each names it. */
  public record Table(String caption, List<String> heads, List<List<Cell>> rows) {}

  /** One number under its heading. */
  public record Cell(String head, String said) {}

  /** An answer with its rows; null: there are none. */
  public record Told(Said said, Table table) {}

  /**
   * @param asked which calculator the typed answers are for: chart, life, age or readers
   */
  @CheckedTemplate(basePath = "bench", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record NumbersPage(String asked, Typed chart, Typed life, Typed age, Typed readers, Told answer)
      implements TemplateInstance {}

  @GET
  public Response numbers(@Context UriInfo uri) {
    Typed typed = Forms.typed(uri.getQueryParameters());
    String asked = typed.value("ask");
    Told told =
        switch (asked) {
          case "chart" -> chart(typed);
          case "life" -> life(typed);
          case "age" -> age(typed);
          case "readers" -> readers(typed);
          default -> null;
        };
    NumbersPage page =
        new NumbersPage(
            asked,
            asked.equals("chart") ? typed : Typed.nothing(),
            asked.equals("life") ? typed : Typed.nothing(),
            asked.equals("age") ? typed : Typed.nothing(),
            asked.equals("readers") ? typed : Typed.nothing(),
            told);
    return Response.status(typed.sound() ? 200 : 422)
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(page)
        .build();
  }

  /** What is not typed comes from the readings themselves. */
  private static Told chart(Typed typed) {
    List<Double> readings = numbers(typed, "readings");
    if (readings == null || readings.size() < 2) {
      typed.fault("readings", "Two numbers at least, please.");
      return null;
    }
    MovingRange own = MovingRange.of(readings);
    boolean sums = typed.value("kind").equals("cusum");
    Double typedSigma = typed.decimal("sigma", 0, 1e8);
    double sigma = typedSigma == null ? own.sigma() : typedSigma;
    Typed question =
        Typed.nothing()
            .with("centre", or(typed, "centre", own.centre()))
            .with("sigma", or(typed, "sigma", sigma))
            .with("lambda", or(typed, "lambda", LAMBDA))
            .with("width", or(typed, "width", WIDTH))
            .with("k", or(typed, "k", K * sigma))
            .with("h", or(typed, "h", H * sigma));
    Told told =
        sums
            ? NumberQuestions.cusum(question, readings).map(c -> sums(readings, c)).orElse(null)
            : NumberQuestions.ewma(question, readings).map(c -> averages(readings, c)).orElse(null);
    BenchPages.faults(question, typed, Map.of());
    return told;
  }

  private static String or(Typed typed, String field, double otherwise) {
    return typed.has(field) ? typed.value(field) : String.format(Locale.ROOT, "%.9f", otherwise);
  }

  private static Told averages(List<Double> readings, Ewma chart) {
    List<List<Cell>> rows = new ArrayList<>();
    List<String> heads = List.of("No.", "Reading", "Average", "From", "To", "");
    for (int i = 0; i < readings.size(); i++) {
      rows.add(
          row(
              heads,
              Integer.toString(i + 1),
              number(readings.get(i)),
              number(chart.ewma().get(i)),
              number(chart.lower().get(i)),
              number(chart.upper().get(i)),
              chart.signals().contains(i + 1) ? "signal" : ""));
    }
    return signalled(
        chart.signals().isEmpty() ? null : chart.signals().get(0),
        "The weighted average against its limits, which widen as readings come.",
        new Table("Weighted average and limits", heads, rows));
  }

  private static Told sums(List<Double> readings, Cusum chart) {
    List<List<Cell>> rows = new ArrayList<>();
    List<String> heads = List.of("No.", "Reading", "Sum up", "Sum down", "");
    for (int i = 0; i < readings.size(); i++) {
      rows.add(
          row(
              heads,
              Integer.toString(i + 1),
              number(readings.get(i)),
              number(chart.high().get(i)),
              number(chart.low().get(i)),
              chart.firstSignal() != null && chart.firstSignal() == i + 1 ? "signal" : ""));
    }
    return signalled(
        chart.firstSignal(),
        "What readings lie off the centre, added up in each direction.",
        new Table("Cumulative sums", heads, rows));
  }

  private static Told signalled(Integer first, String range, Table table) {
    return new Told(
        new Said(
            first == null ? "No signal" : "Signal at reading " + first,
            range,
            first == null
                ? List.of("Nothing here that scatter does not explain.")
                : List.of("Measure again, then look for the cause."),
            "EWMA and CUSUM as in the NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.3 and"
                + " 6.3.2.4."),
        table);
  }

  private static Told life(Typed typed) {
    List<Double> failed = numbers(typed, "failed");
    List<Double> suspended = numbers(typed, "suspended");
    List<Double> entered = typed.has("entered") ? numbers(typed, "entered") : null;
    if (!typed.sound()) {
      return null;
    }
    return NumberQuestions.life(typed, failed, suspended, entered)
        .map(NumbersPages::lives)
        .orElse(null);
  }

  private static Told lives(LifeTold told) {
    List<String> heads = List.of("Age", "Watched", "Failed", "Reach more", "19 times in 20");
    List<List<Cell>> rows =
        told.curve().steps().stream()
            .map(
                step ->
                    row(
                        heads,
                        number(step.time()),
                        step.watched() + (step.few() ? " (few)" : ""),
                        Integer.toString(step.failed()),
                        percent(step.value()),
                        percent(step.low()) + " to " + percent(step.high())))
            .toList();
    Table table = rows.isEmpty() ? null : new Table("Share that reaches an age", heads, rows);
    WeibullFit fit = told.fit();
    if (fit == null) {
      return new Told(
          new Said(
              "No life can be told yet",
              told.refusal(),
              List.of("Keep to the interval there is, and go on writing down what fails and when."),
              "At least %d failures, at more ages than one."
                  .formatted(LifeEstimate.FEWEST_FAILURES)),
          table);
    }
    return new Told(
        new Said(
            "Half last " + number(fit.life().quantile(0.5)),
            between(fit.quantile(0.5, NINE_IN_TEN)) + ", 9 times in 10",
            List.of(
                "One in ten has failed by %s (%s)."
                    .formatted(
                        number(fit.life().quantile(0.1)), between(fit.quantile(0.1, NINE_IN_TEN))),
                "Mean %s. Shape %s (%s), scale %s (%s)."
                    .formatted(
                        number(fit.life().mean()),
                        number(fit.life().shape()),
                        between(fit.shape(NINE_IN_TEN)),
                        number(fit.life().scale()),
                        between(fit.scale(NINE_IN_TEN))),
                fit.shape(NINE_IN_TEN).low() > 1
                    ? "They wear out: an age to replace them at may pay."
                    : "It is not sure that they wear out: inspect rather than replace by age."),
            "Weibull by maximum likelihood: %d failures of %d parts."
                .formatted(fit.failures(), fit.parts())),
        table);
  }

  private static Told age(Typed typed) {
    return NumberQuestions.replacementAge(typed).map(NumbersPages::ages).orElse(null);
  }

  private static Told ages(ReplacementAge best) {
    String basis = "Age replacement after Barlow and Proschan; costs and ages in your own units.";
    String toFailure = number(best.runToFailureCostRate());
    return new Told(
        best.age() == null
            ? new Said(
                "No age pays: inspect instead",
                "Running to failure costs " + toFailure + " for each unit of age.",
                List.of(
                    "An age pays only where old parts fail more often than young ones, and a"
                        + " failure costs more than a planned replacement."),
                basis)
            : new Said(
                "Replace at " + number(best.age()),
                "That costs %s for each unit of age; running to failure costs %s."
                    .formatted(number(best.costRate()), toFailure),
                List.of("Statistics alone never lengthen a safety interval."),
                basis),
        null);
  }

  private static Told readers(Typed typed) {
    String text = text(typed, "readings");
    List<ReadingAsked> asked = new ArrayList<>();
    for (String line : text.split("\\R|;")) {
      String[] words = line.strip().split("[\\s:=]+");
      if (words.length == 2 && isNumber(words[1])) {
        asked.add(new ReadingAsked(words[0], parse(words[1])));
      } else if (!line.isBlank()) {
        typed.fault("readings", "One reading a line, please, such as: a 220.5");
      }
    }
    return typed.sound()
        ? NumberQuestions.readers(typed, asked).map(NumbersPages::people).orElse(null)
        : null;
  }

  private static Told people(Readers readers) {
    List<String> heads = List.of("Reader", "Reads more by");
    List<List<Cell>> rows = new ArrayList<>();
    readers
        .offsets()
        .forEach((reader, offset) -> rows.add(row(heads, reader, number(offset.mean()))));
    double pair = 1.96 * Math.sqrt(2) * readers.reproducibility();
    return new Told(
        new Said(
            "Two people may differ by " + number(pair),
            "19 times in 20, on a bow that did not change",
            List.of(
                "One person again scatters by %s, people differ by %s, both together %s (standard deviations)."
                    .formatted(
                        number(readers.repeatability()),
                        number(readers.between()),
                        number(readers.reproducibility())),
                "Mean of all readings %s.".formatted(number(readers.mean()))),
            "Components of variance, one-way; each reader's own figure is drawn toward 0, the fewer"
                + " the readings the more."),
        new Table("What each reads more than all of them", heads, rows));
  }

  private static List<Cell> row(List<String> heads, String... said) {
    List<Cell> row = new ArrayList<>();
    for (int i = 0; i < said.length; i++) {
      row.add(new Cell(heads.get(i), said[i]));
    }
    return row;
  }

  private static String between(Interval interval) {
    return number(interval.low()) + " to " + number(interval.high());
  }

  private static String percent(double share) {
    return Math.round(100 * share) + " in 100";
  }

  /** Four figures are more than any of these numbers is worth. */
  private static String number(double value) {
    double size = Math.abs(value);
    String format = size >= 1000 ? "%.0f" : size >= 100 ? "%.1f" : size >= 1 ? "%.2f" : "%.3g";
    return value == 0 ? "0" : String.format(Locale.ROOT, format, value).replace('-', '\u2212');
  }

  private static String text(Typed typed, String field) {
    String text = typed.text(field, LONGEST);
    return text == null ? "" : text;
  }

  /** Numbers apart by blanks, lines or semicolons; null, and a fault, where one is none. */
  private static List<Double> numbers(Typed typed, String field) {
    List<Double> numbers = new ArrayList<>();
    for (String word : text(typed, field).split("[\\s;]+")) {
      if (isNumber(word)) {
        numbers.add(parse(word));
      } else if (!word.isEmpty()) {
        typed.fault(field, "Numbers only, please, with a blank between them.");
        return null;
      }
    }
    return numbers;
  }

  private static boolean isNumber(String word) {
    return word.matches("[+\\-\u2212]?\\d{1,8}([.,]\\d{1,9})?");
  }

  private static double parse(String word) {
    return Double.parseDouble(word.replace(',', '.').replace('\u2212', '-'));
  }
}
