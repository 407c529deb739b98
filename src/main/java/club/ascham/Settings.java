package club.ascham;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.nio.file.Path;
import java.time.ZoneId;

/** The few things a club sets outside the program; the rest is edited on the rules page. */
@ConfigMapping(prefix = "ascham")
public interface Settings {
  /** Loads the demo club into an empty data folder; such a folder refuses to start without it. */
  @WithDefault("false")
  boolean demo();

  /** The folder of the SQLite file, uploads and backups. */
  @WithDefault("ascham-data")
  Path dataDir();

  /** The club's time zone: which day it is, and when tonight ends. */
  @WithDefault("Europe/London")
  ZoneId zone();

  /** ISO 4217 code of the money the club counts in. */
  @WithDefault("GBP")
  String currency();
}
