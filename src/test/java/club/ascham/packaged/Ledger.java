package club.ascham.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The club's file, read beside the running server, which has recovered it by then. Never writes.
 */
public final class Ledger implements AutoCloseable {
  /** Each selects what must not be there. */
  private static final Map<String, String> NEVER = new LinkedHashMap<>();

  static {
    NEVER.put(
        "an item on two open loan lines",
        """
        SELECT item_id, count(*) FROM loan_line WHERE back_at IS NULL AND arrow_count IS NULL
         GROUP BY item_id HAVING count(*) > 1""");
    NEVER.put(
        "an item lent again before it came back",
        """
        SELECT a.id, b.id FROM loan_line a JOIN loan_line b ON b.item_id = a.item_id AND b.id > a.id
         WHERE a.arrow_count IS NULL AND b.arrow_count IS NULL AND a.out_at <= b.out_at
           AND b.out_at < coalesce(a.back_at, '9999')""");
    NEVER.put(
        "an item fitted to two rigs",
        "SELECT item_id, count(*) FROM fitting WHERE until_at IS NULL GROUP BY item_id HAVING"
            + " count(*) > 1");
    NEVER.put(
        "two parts in one place of a rig",
        """
        SELECT rig_id, place, count(*) FROM fitting WHERE until_at IS NULL
         GROUP BY rig_id, place HAVING count(*) > 1""");
    NEVER.put(
        "a pool that lent more arrows than it has",
        """
        SELECT k.id, k.arrow_count FROM kit_item k WHERE k.pool = 1 AND k.arrow_count <
          (SELECT coalesce(sum(l.arrow_count), 0) FROM loan_line l WHERE l.item_id = k.id AND l.back_at IS NULL)""");
    NEVER.put(
        "a retired item that is fitted or on loan",
        """
        SELECT i.id, i.code FROM item i WHERE i.retired_on IS NOT NULL
           AND (EXISTS (SELECT 1 FROM fitting f WHERE f.item_id = i.id AND f.until_at IS NULL)
             OR EXISTS (SELECT 1 FROM loan_line l WHERE l.item_id = i.id AND l.back_at IS NULL AND l.arrow_count IS NULL))""");
    NEVER.put(
        "a rig on loan of which a fitted part is not out with it",
        """
        SELECT l.rig_id, f.item_id FROM loan_line l JOIN fitting f ON f.rig_id = l.rig_id AND f.until_at IS NULL
         WHERE l.back_at IS NULL AND NOT EXISTS (
           SELECT 1 FROM loan_line x WHERE x.item_id = f.item_id AND x.loan_id = l.loan_id AND x.back_at IS NULL)""");
    NEVER.put(
        "a loan without a line",
        "SELECT id, kind FROM loan l WHERE NOT EXISTS (SELECT 1 FROM loan_line x WHERE x.loan_id ="
            + " l.id)");
    NEVER.put(
        "a receipt of nothing",
        "SELECT id, loan_id FROM receipt r WHERE NOT EXISTS (SELECT 1 FROM loan_line x WHERE"
            + " x.receipt_id = r.id)");
    NEVER.put(
        "a string without its particulars",
        "SELECT id, code FROM item i WHERE kind = 'STRING' AND NOT EXISTS (SELECT 1 FROM bowstring"
            + " s WHERE s.id = i.id)");
    NEVER.put(
        "a change without its sentence",
        "SELECT id, table_name FROM change WHERE story_id NOT IN (SELECT id FROM story)");
    NEVER.put("a sentence without its seal", "SELECT id, sentence FROM story WHERE hash IS NULL");
    NEVER.put(
        "a plan of upkeep that is kept but not reckoned",
        """
        SELECT item_id, rule_id FROM (SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_plan
                                      EXCEPT SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned)""");
    NEVER.put(
        "a plan of upkeep that is reckoned but not kept",
        """
        SELECT item_id, rule_id FROM (SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_reckoned
                                      EXCEPT SELECT item_id, rule_id, due_on, because, beyond_on FROM upkeep_plan)""");
    NEVER.put("a broken reference", "SELECT \"table\", rowid FROM pragma_foreign_key_check");
  }

  private final Connection connection;

  private Ledger(Connection connection) {
    this.connection = connection;
  }

  public static Ledger of(Path dataFolder) throws SQLException {
    Connection connection =
        DriverManager.getConnection(
            "jdbc:sqlite:" + dataFolder.resolve("ascham.db") + "?busy_timeout=5000");
    try (Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA query_only = 1");
    }
    return new Ledger(connection);
  }

  /** The file is whole, and so is everything that it must never hold. */
  public void isSound() throws SQLException {
    assertEquals(List.of("ok"), texts("PRAGMA integrity_check"));
    List<String> found = new ArrayList<>();
    for (Map.Entry<String, String> never : NEVER.entrySet()) {
      texts(never.getValue()).forEach(row -> found.add(never.getKey() + ": " + row));
    }
    assertEquals(List.of(), found);
  }

  /** The first column of the first row; -1 where there is none. */
  public long number(String sql, Object... parameters) throws SQLException {
    try (PreparedStatement statement = prepared(sql, parameters);
        ResultSet row = statement.executeQuery()) {
      return row.next() ? row.getLong(1) : -1;
    }
  }

  /** Each row's first column, and its second where there is one. */
  public List<String> texts(String sql, Object... parameters) throws SQLException {
    List<String> texts = new ArrayList<>();
    try (PreparedStatement statement = prepared(sql, parameters);
        ResultSet row = statement.executeQuery()) {
      boolean two = row.getMetaData().getColumnCount() > 1;
      while (row.next()) {
        texts.add(two ? row.getString(1) + " " + row.getString(2) : row.getString(1));
      }
    }
    return texts;
  }

  private PreparedStatement prepared(String sql, Object... parameters) throws SQLException {
    PreparedStatement statement = connection.prepareStatement(sql);
    for (int i = 0; i < parameters.length; i++) {
      statement.setObject(i + 1, parameters[i]);
    }
    return statement;
  }

  @Override
  public void close() throws SQLException {
    connection.close();
  }
}
