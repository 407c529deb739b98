package club.ascham.exchange;

import club.ascham.measured.Measurement;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;

/** Asks of what a file says was measured what the forms ask; its bounds are the table's. */
@ApplicationScoped
class MeasuredRules {
  private static final String WHENCE = "it belongs to brace: from where was that measured?";

  @Produces
  @Singleton
  RowRules checks() {
    return RowRules.of("checks", row -> Measurement.fromWhere(row, WHENCE));
  }

  @Produces
  @Singleton
  RowRules setUps() {
    return RowRules.of("set-ups", row -> Measurement.fromWhere(row, WHENCE));
  }
}
