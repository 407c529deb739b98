package club.ascham;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Optional;

/** The few things a club sets outside the program; the rest is edited on the rules page. */
@ConfigMapping(prefix = "ascham")
public interface Settings {
  /** Loads the demo club into an empty data folder; such a folder refuses to start without it. */
  @WithDefault("false")
  boolean demo();

  /** The folder of the SQLite file, its backups and the key of the second steps. */
  @WithDefault("ascham-data")
  Path dataDir();

  /** A second folder, on another disk, that gets a copy of each backup. It is never made. */
  Optional<Path> backupCopyDir();

  /** The club's time zone: which day it is, and when tonight ends. */
  @WithDefault("Europe/London")
  ZoneId zone();

  /** ISO 4217 code of the money the club counts in. */
  @WithDefault("GBP")
  String currency();

  /** Whether a proxy that speaks TLS stands before us and says whom it speaks for. */
  @WithDefault("false")
  boolean behindProxy();

  /** The address that the proxy calls from; what others say of themselves is not believed. */
  @WithDefault("127.0.0.1")
  String proxyAddress();

  /** How long someone stays signed in without asking for anything. */
  @WithDefault("PT10H")
  Duration sessionIdle();

  /** How many requests a second one address may keep up; for a moment it may ask for many more. */
  @WithDefault("50")
  int requestsASecond();

  /**
   * How long a request's body may take to come, beside what its size takes. It counts from the
   * header on, what waits for its turn at the file included: keep it well above the gate's patience
   * of ten seconds.
   */
  @WithDefault("PT60S")
  Duration bodyWithin();
}
