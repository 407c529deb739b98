package club.ascham.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Band;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.mechanics.TwistLimits;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/**
 * The tables of points that another tool reckoned (the programs in {@code points}), each holding
 * twenty at least of which ten lie at an edge.
 */
final class Points {
  private static final int FEWEST = 20;
  private static final int FEWEST_EDGES = 10;

  private Points() {}

  static Stream<Point> of(String table) throws IOException {
    String name = "points/" + table + ".csv";
    try (Reader reader =
        new InputStreamReader(Points.class.getResourceAsStream(name), StandardCharsets.UTF_8)) {
      List<Point> points =
          CSVFormat.DEFAULT
              .builder()
              .setCommentMarker('#')
              .setHeader()
              .setSkipHeaderRecord(true)
              .get()
              .parse(reader)
              .stream()
              .map(CSVRecord::toMap)
              .map(Point::new)
              .toList();
      assertTrue(points.size() >= FEWEST, table + " has too few points");
      long edges = points.stream().filter(point -> !point.cell("edge").isEmpty()).count();
      assertTrue(edges >= FEWEST_EDGES, table + " has too few edges");
      return points.stream();
    }
  }

  /** How far a figure may lie from what is expected: of its size, of 1 where it is smaller. */
  record Within(double usually, Map<String, Double> named) {
    static Within of(double usually) {
      return new Within(usually, Map.of());
    }

    Within but(String name, double within) {
      Map<String, Double> more = new LinkedHashMap<>(named);
      more.put(name, within);
      return new Within(usually, more);
    }

    double at(String name) {
      return named.getOrDefault(name, usually);
    }
  }

  /** One question with what the other tool answers, by the names of the API. */
  record Point(Map<String, String> cells) {
    /** Expected of something beside the answer; its test asks for it by name. */
    private static final String OWN = "own.";

    String cell(String column) {
      return cells.getOrDefault(column, "");
    }

    Double number(String column) {
      return cell(column).isEmpty() ? null : Double.valueOf(cell(column));
    }

    List<Double> numbers(String column) {
      return words(cell(column)).stream().map(Double::valueOf).toList();
    }

    /** The question as if it had been typed. */
    Typed typed() {
      Map<String, String> asked = new LinkedHashMap<>(cells);
      asked
          .keySet()
          .removeIf(
              name ->
                  Set.of("point", "edge", "fault").contains(name)
                      || name.startsWith("=")
                      || name.startsWith("club."));
      asked.replaceAll(
          (name, cell) ->
              cell.matches("-?[\\d.]+e-?\\d+") ? new BigDecimal(cell).toPlainString() : cell);
      return Typed.of(asked);
    }

    /** What the point's club has put in force. */
    BenchQuestions.Bands club() {
      return new BenchQuestions.Bands() {
        @Override
        public Optional<Band> brace(int bowIn) {
          return Optional.ofNullable(number("club.braceLowMm"))
              .map(low -> Band.ofMm(low, number("club.braceHighMm")));
        }

        @Override
        public TwistLimits twistLimits() {
          return new TwistLimits(number("club.fewest").intValue(), number("club.most").intValue());
        }
      };
    }

    /**
     * Refused at just the fields that the point names, or answered as it says.
     *
     * @param answer by names of its record components; where refused, none
     */
    void holds(Typed typed, Optional<? extends Record> answer, Within within) {
      assertEquals(Set.copyOf(words(cell("fault"))), typed.faults().keySet(), "refused at");
      assertEquals(cell("fault").isEmpty(), answer.isPresent(), "answered");
      if (answer.isEmpty()) {
        return;
      }
      int compared = 0;
      for (Map.Entry<String, String> cell : cells.entrySet()) {
        String name = cell.getKey();
        if (name.startsWith("=") && !name.startsWith("=" + OWN) && !cell.getValue().isEmpty()) {
          is(name.substring(1), found(answer.get(), name.substring(1)), within);
          compared++;
        }
      }
      assertTrue(compared > 0, "nothing was compared");
    }

    /** Whether this is what is expected under that name. */
    void is(String name, Object told, Within within) {
      String expected = cell("=" + name);
      if (told instanceof List<?> list) {
        List<String> each = words(expected);
        assertEquals(each.size(), list.size(), name);
        for (int i = 0; i < each.size(); i++) {
          one(name, each.get(i), list.get(i), within.at(name));
        }
      } else {
        one(name, expected, told, within.at(name));
      }
    }

    private static void one(String name, String expected, Object told, double within) {
      if (expected.equals("null")) {
        assertNull(told, name);
      } else if (told instanceof Number number) {
        double wanted = Double.parseDouble(expected);
        assertEquals(wanted, number.doubleValue(), within * Math.max(1, Math.abs(wanted)), name);
      } else {
        assertEquals(expected, String.valueOf(told), name);
      }
    }

    private static List<String> words(String cell) {
      return cell.isEmpty() || cell.equals("none") ? List.of() : Arrays.asList(cell.split(" "));
    }

    private static Object found(Object in, String path) {
      Object at = in;
      for (String step : path.split("\\.")) {
        at = at instanceof List<?> list ? each(list, step) : component(at, step);
      }
      return at;
    }

    private static List<Object> each(List<?> list, String step) {
      List<Object> all = new ArrayList<>();
      list.forEach(one -> all.add(component(one, step)));
      return all;
    }

    private static Object component(Object of, String name) {
      if (of instanceof Map<?, ?> map) {
        return map.get(name);
      }
      try {
        for (RecordComponent component : of.getClass().getRecordComponents()) {
          if (component.getName().equals(name)) {
            component.getAccessor().setAccessible(true);
            Object told = component.getAccessor().invoke(of);
            return told instanceof Enum<?> word ? Words.of(word) : told;
          }
        }
      } catch (ReflectiveOperationException impossible) {
        throw new IllegalStateException(impossible);
      }
      throw new IllegalArgumentException("no answer is named " + name);
    }

    @Override
    public String toString() {
      return cell("point");
    }
  }
}
