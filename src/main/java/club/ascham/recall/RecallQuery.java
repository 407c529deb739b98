package club.ascham.recall;

import club.ascham.form.Typed;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.stream.Stream;

/**
 * What a maker's recall names. What is given must all be true of an item; capitals do not matter.
 *
 * @param maker the whole name; null: any (likewise model)
 * @param batch what the batch begins with; null: any
 * @param serial what a serial begins with, of either limb too; null: any
 */
record RecallQuery(String maker, String model, String batch, String serial) {
  private static final int LONGEST = 100;

  /** Reads {@code maker}, {@code model}, {@code batch} and {@code serial}; empty: none is given. */
  static Optional<RecallQuery> parse(Typed typed) {
    RecallQuery query =
        new RecallQuery(
            typed.optional("maker", LONGEST),
            typed.optional("model", LONGEST),
            typed.optional("batch", LONGEST),
            typed.optional("serial", LONGEST));
    boolean nothing =
        query.maker == null && query.model == null && query.batch == null && query.serial == null;
    // Another field's fault, such as a missing reason, takes nothing from what is traced.
    boolean faulty =
        Stream.of("maker", "model", "batch", "serial")
            .anyMatch(field -> typed.faultAt(field) != null);
    return nothing || faulty ? Optional.empty() : Optional.of(query);
  }

  /** {@code maker Alderfen, batch 24-}: what was looked for. */
  String said() {
    StringJoiner said = new StringJoiner(", ");
    name(said, "maker", maker);
    name(said, "model", model);
    name(said, "batch", batch);
    name(said, "serial", serial);
    return said.toString();
  }

  private static void name(StringJoiner said, String field, String value) {
    if (value != null) {
      said.add(field + " " + value);
    }
  }

  String address() {
    return "/recall?" + query();
  }

  /** The file of who has or had what it names. */
  String holdersAddress() {
    return "/recall/holders.csv?" + query();
  }

  private String query() {
    StringJoiner address = new StringJoiner("&");
    add(address, "maker", maker);
    add(address, "model", model);
    add(address, "batch", batch);
    add(address, "serial", serial);
    return address.toString();
  }

  private static void add(StringJoiner address, String name, String value) {
    if (value != null) {
      address.add(name + "=" + URLEncoder.encode(value, StandardCharsets.UTF_8));
    }
  }
}
