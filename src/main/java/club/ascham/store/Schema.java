package club.ascham.store;

import io.quarkus.flyway.FlywayConfigurationCustomizer;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.file.Path;
import java.util.Map;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;

/**
 * The schema that the migrations make. Those of {@code common} hold what any database takes, with
 * blanks where databases differ; what they are in SQLite stands here alone.
 *
 * <p>It began anew with 1.0.0: a file from before has other migrations, with smaller numbers, and
 * is carried over once ({@code start.CarryOver}).
 */
@ApplicationScoped
public class Schema implements FlywayConfigurationCustomizer {
  private static final Map<String, String> BLANKS =
      Map.of(
          "key", "INTEGER PRIMARY KEY",
          "real", "REAL",
          "strict", "STRICT",
          "strict_by_key", "STRICT, WITHOUT ROWID");

  private static final int FIRST = 101;

  @Override
  public void customize(FluentConfiguration configuration) {
    configuration.placeholders(BLANKS);
  }

  /**
   * Whether a file is from before 1.0.0.
   *
   * @param newest the newest migration that it went through, such as {@code 046}
   */
  public static boolean isFromBefore(String newest) {
    return Integer.parseInt(newest) < FIRST;
  }

  /** For a file that no server has open. */
  public static FluentConfiguration of(String url) {
    return Flyway.configure()
        .dataSource(url, "", "")
        .locations("classpath:db/migration/common", "classpath:db/migration/sqlite")
        .placeholders(BLANKS);
  }

  /** Makes it in a new file. */
  public static void make(Path file) {
    of("jdbc:sqlite:" + file.toAbsolutePath() + "?foreign_keys=true").load().migrate();
  }
}
