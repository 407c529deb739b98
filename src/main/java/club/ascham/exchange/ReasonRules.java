package club.ascham.exchange;

import club.ascham.form.Typed;
import club.ascham.form.WholeWords;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;

/**
 * Holds what a file says is so now to the rule of the forms: a reason or a source in whole words.
 * What was over by then is history and stays as it was written.
 */
@ApplicationScoped
class ReasonRules {
  @Produces
  @Singleton
  RowRules withdrawals() {
    return RowRules.of(
        "withdrawals",
        row -> {
          if (!row.has("releasedAt")) {
            reason(row, "why");
            reason(row, "noWorkWhy");
          }
        });
  }

  @Produces
  @Singleton
  RowRules upkeepTasks() {
    return RowRules.of(
        "upkeep-tasks",
        row -> {
          if (!row.has("closedBy")) {
            reason(row, "why");
          }
        });
  }

  @Produces
  @Singleton
  RowRules upkeepRules() {
    return RowRules.of("upkeep-rules", ReasonRules::source);
  }

  @Produces
  @Singleton
  RowRules braceBands() {
    return RowRules.of("brace-bands", ReasonRules::source);
  }

  private static void reason(Typed row, String column) {
    if (row.has(column) && !WholeWords.isReason(row.value(column))) {
      row.fault(column, WholeWords.WANTED);
    }
  }

  private static void source(Typed row) {
    if (row.has("source") && !WholeWords.isSource(row.value("source"))) {
      row.fault("source", WholeWords.WANTED);
    }
  }
}
