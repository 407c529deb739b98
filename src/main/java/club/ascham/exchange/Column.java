package club.ascham.exchange;

/**
 * One column of a list: its name in the file, its place in the database, and how its values are
 * written.
 *
 * @param required whether every row must have a value
 * @param otherwise stored where the cell is empty; null: nothing is stored
 */
record Column(
    String name, String table, String field, Codec codec, boolean required, Object otherwise) {

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

  private static Column at(
      String name, String place, Codec codec, boolean required, Object otherwise) {
    int dot = place.indexOf('.');
    return new Column(
        name, place.substring(0, dot), place.substring(dot + 1), codec, required, otherwise);
  }

  String selected() {
    return codec.selected(table + "." + field);
  }
}
