package club.ascham.story;

import club.ascham.store.Rows;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The personal values that the record keeps beside its chain, and their erasing.
 *
 * <p>What somebody was called before, and how they were reached, is known from here: a text that
 * holds an earlier name is offered for erasing like one with the present name, by page, API and the
 * nightly round alike.
 */
@ApplicationScoped
public class PersonalValues {
  private final Rows rows;

  PersonalValues(Rows rows) {
    this.rows = rows;
  }

  /**
   * A personal field as it was once changed.
   *
   * @param fromAndTo as a JSON array; null: erased
   */
  public record Kept(Instant recorded, String field, String fromAndTo) {}

  /** What is kept of one row, oldest first. */
  public List<Kept> of(String table, long row) {
    return rows.list(
        Kept.class,
        """
        SELECT s.recorded_at AS recorded, p.field, p.value AS from_and_to
          FROM change c JOIN personal p ON p.change_id = c.id JOIN story s ON s.id = c.story_id
         WHERE c.table_name = ?1 AND c.row_id = ?2 ORDER BY p.id""",
        table,
        row);
  }

  /** Every value that these fields of the row ever had, as far as the record has it still. */
  public List<String> ever(String table, long row, String... fields) {
    return rows.texts(
        """
        WITH kept AS (
          SELECT p.value FROM change c JOIN personal p ON p.change_id = c.id
           WHERE c.table_name = ?1 AND c.row_id = ?2 AND p.field IN (SELECT value FROM json_each(?3)))
        SELECT value ->> 0 FROM kept WHERE value ->> 0 IS NOT NULL
         UNION SELECT value ->> 1 FROM kept WHERE value ->> 1 IS NOT NULL""",
        table,
        row,
        Arrays.stream(fields).collect(Collectors.joining("\",\"", "[\"", "\"]")));
  }

  /**
   * Erases, inside the use case's transaction, every value ever recorded of the row, the ones
   * written in this very transaction too: the chain keeps their hashes, nobody can tell what they
   * were.
   */
  public void erase(String table, long row) {
    seal();
    rows.change(
        """
        UPDATE personal SET salt = NULL, value = NULL
         WHERE value IS NOT NULL
           AND change_id IN (SELECT id FROM change WHERE table_name = ?1 AND row_id = ?2)""",
        table,
        row);
  }

  /** As {@link #erase(String, long)}, of one field alone. */
  void erase(String table, long row, String field) {
    seal();
    rows.change(
        """
        UPDATE personal SET salt = NULL, value = NULL
         WHERE value IS NOT NULL AND field = ?3
           AND change_id IN (SELECT id FROM change WHERE table_name = ?1 AND row_id = ?2)""",
        table,
        row,
        field);
  }

  private record Open(long id, String salt, String value) {}

  /** Gives each value that has none yet the hash that the chain will hold. */
  void seal() {
    for (Open value :
        rows.list(Open.class, "SELECT id, salt, value FROM personal WHERE hash IS NULL")) {
      rows.change(
          "UPDATE personal SET hash = ?2 WHERE id = ?1",
          value.id(),
          Chain.ofPersonal(value.salt(), value.value()));
    }
  }
}
