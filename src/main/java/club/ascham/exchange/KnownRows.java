package club.ascham.exchange;

import club.ascham.units.ItemCode;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.NavigableSet;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.TreeSet;

/**
 * The rows that are in the database or were just added, by what files call them. Read once per
 * table: within the write transaction nobody else adds any.
 */
final class KnownRows implements References {
  private final Connection connection;
  private final Map<String, NavigableSet<Long>> numbers = new HashMap<>();
  private final Map<Character, Integer> highestCodes = new HashMap<>();
  private Map<String, Long> items;
  private Map<String, Long> accounts;

  KnownRows(Connection connection) {
    this.connection = connection;
  }

  @Override
  public OptionalLong item(String bareCode) {
    return found(items().get(bareCode));
  }

  @Override
  public OptionalLong account(String name) {
    if (accounts == null) {
      accounts = byName("SELECT lower(name), id FROM account");
    }
    return found(accounts.get(name.toLowerCase(Locale.ROOT)));
  }

  @Override
  public boolean has(String table, long number) {
    return numbersOf(table).contains(number);
  }

  void add(String table, long number) {
    numbersOf(table).add(number);
  }

  void addItem(String bareCode, long id) {
    items().put(bareCode, id);
    noteCode(bareCode);
    add("item", id);
  }

  private void noteCode(String bareCode) {
    highestCodes.merge(bareCode.charAt(0), Integer.parseInt(bareCode.substring(1, 5)), Math::max);
  }

  long nextNumber(String table) {
    NavigableSet<Long> taken = numbersOf(table);
    return taken.isEmpty() ? 1 : taken.last() + 1;
  }

  /** The next code of a kind; empty when its ten thousand are used up. */
  OptionalInt nextCode(char letter) {
    items();
    return ItemCode.nextIssuable(letter, highestCodes.getOrDefault(letter, 0) + 1);
  }

  private Map<String, Long> items() {
    if (items == null) {
      items = byName("SELECT code, id FROM item");
      items.keySet().forEach(this::noteCode);
    }
    return items;
  }

  private NavigableSet<Long> numbersOf(String table) {
    return numbers.computeIfAbsent(
        table,
        asked -> {
          NavigableSet<Long> found = new TreeSet<>();
          try (PreparedStatement statement =
                  connection.prepareStatement("SELECT rowid FROM " + asked);
              ResultSet rows = statement.executeQuery()) {
            while (rows.next()) {
              found.add(rows.getLong(1));
            }
          } catch (SQLException failure) {
            throw new IllegalStateException("can't read the numbers of " + asked, failure);
          }
          return found;
        });
  }

  private Map<String, Long> byName(String sql) {
    Map<String, Long> found = new HashMap<>();
    try (PreparedStatement statement = connection.prepareStatement(sql);
        ResultSet rows = statement.executeQuery()) {
      while (rows.next()) {
        found.put(rows.getString(1), rows.getLong(2));
      }
    } catch (SQLException failure) {
      throw new IllegalStateException("can't read the names: " + sql, failure);
    }
    return found;
  }

  private static OptionalLong found(Long id) {
    return id == null ? OptionalLong.empty() : OptionalLong.of(id);
  }
}
