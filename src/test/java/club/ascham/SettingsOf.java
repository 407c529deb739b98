package club.ascham;

import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Optional;

/** What a club would have set, for whoever is tested without a server. */
public record SettingsOf(Path dataDir, Optional<Path> backupCopyDir, ZoneId zone)
    implements Settings {
  public SettingsOf(Path dataDir, ZoneId zone) {
    this(dataDir, Optional.empty(), zone);
  }

  @Override
  public boolean demo() {
    return false;
  }

  @Override
  public String currency() {
    return "GBP";
  }

  @Override
  public boolean behindProxy() {
    return false;
  }

  @Override
  public String proxyAddress() {
    return "127.0.0.1";
  }

  @Override
  public Duration sessionIdle() {
    return Duration.ofHours(10);
  }

  @Override
  public int requestsASecond() {
    return 50;
  }

  @Override
  public Duration bodyWithin() {
    return Duration.ofSeconds(60);
  }
}
