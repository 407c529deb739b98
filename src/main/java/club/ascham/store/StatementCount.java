package club.ascham.store;

import java.util.concurrent.atomic.LongAdder;
import org.hibernate.resource.jdbc.spi.StatementInspector;

/**
 * Counts the SQL statements run, by Hibernate or by {@link Rows}: a page needs the same few always.
 */
public class StatementCount implements StatementInspector {
  private static final long serialVersionUID = 1L;
  private static final LongAdder RUN = new LongAdder();

  public static long run() {
    return RUN.sum();
  }

  static void another() {
    RUN.increment();
  }

  @Override
  public String inspect(String sql) {
    another();
    return sql;
  }
}
