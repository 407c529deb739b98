package club.ascham.exchange;

import club.ascham.bow.BracePoint;
import club.ascham.measured.Measurement;
import java.util.ArrayList;
import java.util.List;

/**
 * One column of a list: its name in the file, its place in the database, and how its values are
 * written.
 *
 * @param required whether every row must have a value
 * @param otherwise stored where the cell is empty; null: nothing is stored
 * @param onlyTold an export tells it, and an import passes it over
 */
record Column(
    String name,
    String table,
    String field,
    Codec codec,
    boolean required,
    Object otherwise,
    boolean onlyTold) {

  static Column optional(String name, String place, Codec codec) {
    return at(name, place, codec, false, null);
  }

  static Column required(String name, String place, Codec codec) {
    return at(name, place, codec, true, null);
  }

  /** A column that the database wants filled: an empty cell stands for the usual value. */
  static Column usually(Object otherwise, String name, String place, Codec codec) {
    return at(name, place, codec, false, otherwise);
  }

  /**
   * What is this club's own to know: whatever a file says of it is neither taken nor held against.
   */
  static Column onlyTold(String name, String place, Codec codec) {
    Column told = at(name, place, codec, false, null);
    return new Column(name, told.table, told.field, codec, false, null, true);
  }

  /** The columns of what was measured; of a length the text it was read from too. */
  static List<Column> measured(String table, Measurement... what) {
    List<Column> columns = new ArrayList<>();
    for (Measurement one : what) {
      columns.add(optional(one.field(), table + "." + one.column(), codec(one)));
      if (one.isLength()) {
        columns.add(optional(one.typedField(), table + "." + one.typedColumn(), Codecs.line(60)));
      }
      if (one == Measurement.BRACE) {
        columns.add(
            optional(Measurement.FROM, table + ".brace_from", Codecs.word(BracePoint.class)));
      }
    }
    return columns;
  }

  private static Codec codec(Measurement what) {
    if (what.isLength()) {
      return Codecs.length(what.kept());
    }
    return what.isWhole()
        ? Codecs.whole(what.low(), what.high())
        : Codecs.decimal(what.low(), what.high());
  }

  private static Column at(
      String name, String place, Codec codec, boolean required, Object otherwise) {
    int dot = place.indexOf('.');
    return new Column(
        name, place.substring(0, dot), place.substring(dot + 1), codec, required, otherwise, false);
  }

  String selected() {
    return codec.selected(table + "." + field);
  }
}
