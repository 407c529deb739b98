package club.ascham.record;

import club.ascham.measured.Measurement;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import club.ascham.units.Money;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;
import java.util.Currency;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A stored field and its value as people say them. */
final class FieldSaid {
  private static final Set<String> LENGTHS =
      Stream.concat(
              Stream.of(
                  "arrow_length",
                  "brace_high",
                  "brace_low",
                  "draw_length",
                  "high",
                  "low",
                  "measured_length",
                  "strand_diameter",
                  "thread_pitch"),
              Arrays.stream(Measurement.values())
                  .filter(Measurement::isLength)
                  .map(Measurement::column))
          .collect(Collectors.toUnmodifiableSet());

  private static final Map<String, String> THINGS =
      Map.of(
          "accident_item", "thing kept after an accident",
          "bow_check", "check",
          "bowstring", "string",
          "club_brace_band", "brace band",
          "move", "press",
          "moved", "thing moved by a press",
          "upkeep_task", "work asked for",
          "upkeep_record", "work done");

  private FieldSaid() {}

  /** {@code loan_line} is a "loan line". */
  static String thing(String table) {
    return THINGS.getOrDefault(table, table.replace('_', ' '));
  }

  static String field(String column) {
    return column.replaceFirst("_id$|_minor$|_at$|_on$", "").replace('_', ' ');
  }

  static String value(String column, JsonNode value, Currency currency) {
    if (value == null || value.isNull()) {
      return "nothing";
    }
    if (value.isIntegralNumber() && LENGTHS.contains(column)) {
      return LengthText.both(new Length(value.longValue()));
    }
    if (value.isIntegralNumber() && column.endsWith("_minor")) {
      return new Money(value.longValue()).format(currency);
    }
    return value.asText();
  }
}
