package club.ascham.exchange;

/** What became of one cell of a file. */
sealed interface CellReading {

  /**
   * A value.
   *
   * @param stored as the database keeps it; null: nothing there
   * @param canonical as an export writes it; empty where there is nothing
   */
  record Value(Object stored, String canonical) implements CellReading {}

  /** No usable value; the message says what was found and what would be accepted. */
  record Fault(String message) implements CellReading {}

  /** Names another row, which only those that are there can tell. */
  record Refers(Finder finder) implements CellReading {}

  /** Answers a value or a fault. */
  interface Finder {
    CellReading among(References rows);
  }

  CellReading NOTHING = new Value(null, "");
}
