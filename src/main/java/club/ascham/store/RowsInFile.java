package club.ascham.store;

import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.Connection;
import java.sql.SQLFeatureNotSupportedException;
import java.util.logging.Logger;
import javax.sql.DataSource;

/** Rows of a file that no server has open, and no pool. */
public final class RowsInFile {
  private RowsInFile() {}

  /** The connection stays open when a statement is done. */
  public static Rows of(Connection connection) {
    Connection kept =
        (Connection)
            Proxy.newProxyInstance(
                Connection.class.getClassLoader(),
                new Class<?>[] {Connection.class},
                (proxy, method, arguments) -> {
                  try {
                    return method.getName().equals("close")
                        ? null
                        : method.invoke(connection, arguments);
                  } catch (InvocationTargetException failed) {
                    throw failed.getCause();
                  }
                });
    return new Rows(
        new DataSource() {
          @Override
          public Connection getConnection() {
            return kept;
          }

          @Override
          public Connection getConnection(String name, String password) {
            return kept;
          }

          @Override
          public PrintWriter getLogWriter() {
            return null;
          }

          @Override
          public void setLogWriter(PrintWriter out) {}

          @Override
          public void setLoginTimeout(int seconds) {}

          @Override
          public int getLoginTimeout() {
            return 0;
          }

          @Override
          public Logger getParentLogger() throws SQLFeatureNotSupportedException {
            throw new SQLFeatureNotSupportedException();
          }

          @Override
          public <T> T unwrap(Class<T> type) {
            throw new UnsupportedOperationException();
          }

          @Override
          public boolean isWrapperFor(Class<?> type) {
            return false;
          }
        },
        new EntitiesInUse(null, null) {
          @Override
          void write() {
            // No use case goes on, so Hibernate holds nothing back.
          }
        });
  }
}
