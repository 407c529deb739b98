package club.ascham.register;

import club.ascham.bow.Compatibility;
import club.ascham.bow.Hand;
import java.util.Locale;
import java.util.function.Function;

/**
 * The table of one kind of particulars, and the values that several kinds share: here, since the
 * fields of one kind must not wait for all the others.
 */
record FieldTable<P extends Particulars>(String name, Class<P> particulars) {
  static final int LONGEST_NAME = 80;
  static final int LONGEST_MARK = 60;
  static final Values.Line NAME = new Values.Line(LONGEST_NAME);
  static final Values.Line MARK = new Values.Line(LONGEST_MARK);
  static final Values.Whole BOW_IN =
      new Values.Whole(Compatibility.SHORTEST_BOW_IN, Compatibility.LONGEST_BOW_IN);
  static final Values.Word<Hand> EITHER_HAND = new Values.Word<>(Hand.class, "either");

  <T> ItemField<T> field(String field, String label, Values<T> values, Function<P, T> of) {
    return new ItemField<>(
        field,
        label,
        place(name, field),
        values,
        details -> of.apply(particulars.cast(details.particulars())));
  }

  /** A column is called as its field is, but with underscores. */
  static String place(String table, String field) {
    return table + "." + field.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }
}
