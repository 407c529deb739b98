package club.ascham;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Which Ascham this is: the version that it was built as, told from here and nowhere else. */
@ApplicationScoped
public class ProgramVersion {
  private final String version;

  ProgramVersion(@ConfigProperty(name = "quarkus.application.version") String version) {
    this.version = version;
  }

  /** Such as {@code 1.0.0}. */
  public String version() {
    return version;
  }
}
