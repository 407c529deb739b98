package club.ascham.exchange;

import club.ascham.check.Verdicts;
import club.ascham.form.OneLine;
import club.ascham.form.Typed;
import club.ascham.verdict.Remark;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Locale;
import java.util.Optional;

/**
 * Lets in only what can be put into words again, a saying of what it is said of, and nothing of it
 * that no verdict of this program says.
 */
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
      Verdicts.texts(row.value("saidOf"))
          .map(SayingRules::wrong)
          .flatMap(Optional::stream)
          .findFirst()
          .or(read::beyond)
          .ifPresent(wrong -> row.fault("saidOf", wrong));
    } catch (IllegalArgumentException notSaid) {
      row.fault(
          "saidOf",
          "that is not what %s is said of: as-said takes one line of words, [\"…\"]"
              .formatted(row.value("saying")));
    }
  }

  /** What the program would not keep of these words; empty: nothing. */
  private static Optional<String> wrong(String words) {
    if (words.isBlank()) {
      return Optional.of("it holds no words");
    }
    if (!OneLine.is(words)) {
      return Optional.of("it holds a line break; it stands on one line");
    }
    return Typed.canBeShown(words)
        ? Optional.empty()
        : Optional.of("it holds a character that can't be seen");
  }
}
