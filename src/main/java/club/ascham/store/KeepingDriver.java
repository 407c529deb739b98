package club.ascham.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import org.sqlite.JDBC;
import org.sqlite.jdbc4.JDBC4Connection;

/**
 * SQLite's driver, whose connections keep what they prepared for whoever asks for the same words
 * next: with the triggers that watch every table, preparing a write costs SQLite more than doing
 * it, and a page's views more than reading them.
 */
public class KeepingDriver extends JDBC {
  @Override
  public Connection connect(String url, Properties settings) throws SQLException {
    return isValidURL(url) ? new Keeping(url, settings) : null;
  }

  private static final class Keeping extends JDBC4Connection implements KeptStatement.Keeper {
    private static final int AT_MOST = 256;

    /** Those that nobody uses just now, the longest unused first. */
    private final Map<String, KeptStatement> kept = new LinkedHashMap<>();

    Keeping(String url, Properties settings) throws SQLException {
      super(url, url.substring(PREFIX.length()), settings);
    }

    @Override
    public PreparedStatement prepareStatement(String sql, int type, int concurrency, int held)
        throws SQLException {
      checkOpen();
      checkCursor(type, concurrency, held);
      KeptStatement known = kept.remove(sql);
      return known == null ? new KeptStatement(this, this, sql) : known.taken();
    }

    @Override
    public void back(String sql, KeptStatement statement) throws SQLException {
      KeptStatement twin = kept.put(sql, statement);
      if (twin == null && kept.size() > AT_MOST) {
        twin = kept.remove(kept.keySet().iterator().next());
      }
      if (twin != null) {
        twin.forget();
      }
    }
  }
}
