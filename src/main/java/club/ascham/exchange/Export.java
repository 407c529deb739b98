package club.ascham.exchange;

import club.ascham.Settings;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import javax.sql.DataSource;

/** Writes lists as files. */
@ApplicationScoped
class Export {
  private final DataSource source;
  private final Currency currency;

  Export(DataSource source, Settings settings) {
    this.source = source;
    this.currency = Currency.getInstance(settings.currency());
  }

  String csv(CsvList list) {
    try (Connection connection = source.getConnection()) {
      return csv(list, connection, currency);
    } catch (SQLException failure) {
      throw new IllegalStateException("can't read the list " + list.name(), failure);
    }
  }

  static String csv(CsvList list, Connection connection, Currency currency) throws SQLException {
    return CsvText.written(list.header(), rows(list, connection, currency));
  }

  /** The cells of every row, in the order of the columns. */
  static List<List<String>> rows(CsvList list, Connection connection, Currency currency)
      throws SQLException {
    Surroundings around = new Surroundings(currency, 0);
    List<List<String>> rows = new ArrayList<>();
    try (PreparedStatement statement = connection.prepareStatement(list.select());
        ResultSet found = statement.executeQuery()) {
      while (found.next()) {
        List<String> cells = new ArrayList<>(list.columns().size());
        for (int i = 0; i < list.columns().size(); i++) {
          Object selected = found.getObject(i + 1);
          cells.add(
              selected == null || selected.equals("")
                  ? ""
                  : list.columns().get(i).codec().written(selected, around));
        }
        rows.add(cells);
      }
    }
    return rows;
  }
}
