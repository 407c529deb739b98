package club.ascham.store;

import java.sql.Types;
import java.util.Set;
import org.hibernate.community.dialect.SQLiteDialect;
import org.hibernate.engine.jdbc.dialect.spi.DialectResolutionInfo;

/**
 * STRICT tables know one kind of integer and one of real, so Hibernate's finer kinds are equal
 * here.
 */
public class StrictSqliteDialect extends SQLiteDialect {
  private static final Set<Integer> WHOLE =
      Set.of(Types.BOOLEAN, Types.BIT, Types.TINYINT, Types.SMALLINT, Types.INTEGER, Types.BIGINT);
  private static final Set<Integer> REAL =
      Set.of(Types.REAL, Types.FLOAT, Types.DOUBLE, Types.NUMERIC);

  public StrictSqliteDialect() {
    super();
  }

  public StrictSqliteDialect(DialectResolutionInfo info) {
    super(info);
  }

  /** The key comes with the row, without a second statement. */
  @Override
  public boolean supportsInsertReturning() {
    return true;
  }

  @Override
  public boolean equivalentTypes(int one, int other) {
    return (WHOLE.contains(one) && WHOLE.contains(other))
        || (REAL.contains(one) && REAL.contains(other))
        || super.equivalentTypes(one, other);
  }
}
