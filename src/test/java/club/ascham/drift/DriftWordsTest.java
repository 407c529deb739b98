package club.ascham.drift;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.statistics.Drift;
import club.ascham.statistics.Drift.Measured;
import club.ascham.statistics.ScatterPrior;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DriftWordsTest {
  private static final Instant BEGIN = Instant.parse("2026-03-02T19:00:00Z");

  private static String words(double... braces) {
    List<Measured> measured = new ArrayList<>();
    for (int i = 0; i < braces.length; i++) {
      measured.add(
          new Measured(
              BEGIN.plusSeconds(14L * 86_400 * i), i % 2 == 0 ? "1" : "2", braces[i], 4.0));
    }
    return DriftWords.of(drift(measured), moment -> moment.toString().substring(0, 10));
  }

  private static Drift drift(List<Measured> measured) {
    return Drift.of(
        measured,
        ScatterPrior.brace(1.5875).scatter(),
        ScatterPrior.tiller(1.5875).scatter(),
        true);
  }

  @Test
  void oneReading_saysNothing() {
    assertEquals(
        "Unsure: one reading alone says nothing about change. The next one will.", words(216));
  }

  @Test
  void readingsThatScatter_areSteady_withWhatTheyDid() {
    assertEquals(
        "Steady over 3 readings since 2026-03-02: brace 0.5 mm lower than it was, tiller as it was;"
            + " readings differ by as much of themselves.",
        words(216, 216.5, 215.5));
  }

  @Test
  void braceThatFellFar_isChanging_andTheStringIsTheLikeliest() {
    String words = words(216, 216.5, 209);
    assertTrue(words.startsWith("Changing since about 2026-03-30: brace 7.0 mm lower"), words);
    assertTrue(words.contains("Likeliest the string stretches."), words);
  }

  @Test
  void whereTheCheckHasItsOwnCause_noneIsNamedBesideIt() {
    List<Measured> measured =
        List.of(
            new Measured(BEGIN, "1", 216.0, 4.0),
            new Measured(BEGIN.plusSeconds(86_400), "2", 216.0, 12.0));
    String words = DriftWords.asItsCheckSays(drift(measured), moment -> "today");
    assertTrue(DriftWords.of(drift(measured), moment -> "today").contains("Likeliest"), words);
    assertTrue(words.startsWith("Changing since about today:"), words);
    assertTrue(words.endsWith("of themselves. Its last check says what to look at first."), words);
  }

  @Test
  void whyWorkIsAskedFor_isSaidWithoutFigures_soThatItIsSaidOnce() {
    List<Measured> measured =
        List.of(
            new Measured(BEGIN, "1", 216.0, 4.0),
            new Measured(BEGIN.plusSeconds(86_400), "2", 208.0, 4.0));
    String because = DriftWords.because(drift(measured));
    assertTrue(because.startsWith("Its readings change by more than readers differ. Likeliest"));
    assertTrue(because.chars().noneMatch(Character::isDigit), because);
  }
}
