package club.ascham.store;

import io.quarkus.hibernate.orm.PersistenceUnitExtension;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.StringJoiner;
import java.util.function.Function;
import javax.sql.DataSource;

/**
 * Reads rows of plain SQL into records whose components are the selected columns, by their names:
 * pages select what they show and nothing else. Parameters are numbered ({@code ?1}, {@code ?2}),
 * so that one may stand in several places. Inside a use case it reads in that transaction; what
 * entities hold back is written first.
 */
@ApplicationScoped
public class Rows {
  private final DataSource source;
  private final EntitiesInUse entities;

  Rows(DataSource source, @PersistenceUnitExtension EntitiesInUse entities) {
    this.source = source;
    this.entities = entities;
  }

  public <R extends Record> List<R> list(Class<R> shape, String sql, Object... parameters) {
    RowShape<R> rows = RowShape.of(shape);
    return read(sql, parameters, found -> rows.all(sql, found));
  }

  /** A row whose columns a table of fields tells, and no record. */
  public interface Row {
    /**
     * @param column from 1
     * @return null: nothing is there
     */
    <T> T value(int column, Class<T> type);
  }

  public <T> List<T> list(Function<Row, T> reading, String sql, Object... parameters) {
    return read(
        sql,
        parameters,
        found -> {
          Row row = RowShape.valuesOf(found);
          List<T> rows = new ArrayList<>();
          while (found.next()) {
            rows.add(reading.apply(row));
          }
          return rows;
        });
  }

  public <R extends Record> Optional<R> one(Class<R> shape, String sql, Object... parameters) {
    List<R> rows = list(shape, sql, parameters);
    if (rows.size() > 1) {
      throw new IllegalStateException("one row expected, " + rows.size() + " found: " + sql);
    }
    return rows.stream().findFirst();
  }

  /** The first column of the first row as a whole number; 0 where there is none. */
  public long number(String sql, Object... parameters) {
    return read(sql, parameters, found -> found.next() ? found.getLong(1) : 0L);
  }

  /** The first column of every row as text. */
  public List<String> texts(String sql, Object... parameters) {
    return read(
        sql,
        parameters,
        found -> {
          List<String> texts = new ArrayList<>();
          while (found.next()) {
            texts.add(found.getString(1));
          }
          return texts;
        });
  }

  /** Runs one changing statement inside the use case's transaction; answers the rows changed. */
  public int change(String sql, Object... parameters) {
    return run(sql, parameters, PreparedStatement::executeUpdate);
  }

  /** Adds a row inside the use case's transaction; answers its number. */
  public long add(NewRow row) {
    return number(row.insert(), row.values());
  }

  /**
   * Adds rows by one statement.
   *
   * @param into the table and its columns, {@code check_sign (check_id, part)}
   * @param rows at least one, each with a value for every column
   */
  public void add(String into, List<? extends List<?>> rows) {
    List<Object> values = new ArrayList<>();
    StringJoiner places = new StringJoiner(", ");
    for (List<?> row : rows) {
      StringJoiner place = new StringJoiner(", ", "(", ")");
      row.forEach(
          value -> {
            values.add(value);
            place.add("?" + values.size());
          });
      places.add(place.toString());
    }
    change("INSERT INTO " + into + " VALUES " + places, values.toArray());
  }

  private <T> T read(String sql, Object[] parameters, Reading<T> reading) {
    return run(
        sql,
        parameters,
        statement -> {
          try (ResultSet found = statement.executeQuery()) {
            return reading.of(found);
          }
        });
  }

  private <T> T run(String sql, Object[] parameters, Running<T> running) {
    entities.write();
    StatementCount.another();
    try (Connection connection = source.getConnection();
        PreparedStatement statement = connection.prepareStatement(sql)) {
      for (int i = 0; i < parameters.length; i++) {
        statement.setObject(i + 1, RowShape.stored(parameters[i]));
      }
      return running.of(statement);
    } catch (SQLException failure) {
      throw refusedOrFailed(failure, sql);
    }
  }

  private static RuntimeException refusedOrFailed(SQLException failure, String sql) {
    return DatabaseRefusal.in(failure)
        .<RuntimeException>map(refusal -> refusal)
        .or(() -> FileTrouble.in(failure))
        .orElseGet(() -> new IllegalStateException("the database failed on: " + sql, failure));
  }

  private interface Running<T> {
    T of(PreparedStatement statement) throws SQLException;
  }

  private interface Reading<T> {
    T of(ResultSet found) throws SQLException;
  }
}
