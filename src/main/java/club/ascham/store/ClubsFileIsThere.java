package club.ascham.store;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;

/** Not ready where nothing would be kept of what is saved. */
@Readiness
@ApplicationScoped
class ClubsFileIsThere implements HealthCheck {
  private final SameFile sameFile;

  ClubsFileIsThere(SameFile sameFile) {
    this.sameFile = sameFile;
  }

  @Override
  public HealthCheckResponse call() {
    return sameFile
        .trouble()
        .map(
            trouble ->
                HealthCheckResponse.named("the club's file")
                    .down()
                    .withData("why", trouble.getMessage()))
        .orElseGet(() -> HealthCheckResponse.named("the club's file").up())
        .build();
  }
}
