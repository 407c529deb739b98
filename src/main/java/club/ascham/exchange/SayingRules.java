package club.ascham.exchange;

import club.ascham.check.Verdicts;
import club.ascham.form.Typed;
import club.ascham.verdict.Remark;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Locale;

/** Lets in only what can be put into words again: a saying of what it is said of. */
@ApplicationScoped
class SayingRules implements RowRules {
  @Override
  public String list() {
    return "verdict-lines";
  }

  @Override
  public void check(Typed row) {
    if (!row.has("saying") || !row.has("saidOf")) {
      return;
    }
    String saying = row.value("saying").strip().toUpperCase(Locale.ROOT).replace('-', '_');
    try {
      Remark read = Verdicts.read(saying, row.value("saidOf"));
      if (!Typed.canBeShown(read.words() + read.caution().orElse(""))) {
        row.fault("saidOf", "it holds a character that can't be seen");
      }
    } catch (IllegalArgumentException notSaid) {
      row.fault(
          "saidOf",
          "that is not what %s is said of: as-said takes one line of words, [\"…\"]"
              .formatted(row.value("saying")));
    }
  }
}
