package club.ascham.exchange;

/** How the values of one column are written in a file and kept in the database. */
interface Codec {

  /**
   * The written form of a value that the export selected.
   *
   * @param selected as the database gave it; never null
   */
  String written(Object selected, Surroundings around);

  /**
   * @param text what stands in the cell; never empty
   */
  CellReading read(String text, Surroundings around);

  /** The SQL that the export selects for this column, given the column's own name. */
  default String selected(String column) {
    return column;
  }
}
