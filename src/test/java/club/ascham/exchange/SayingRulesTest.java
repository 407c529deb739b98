package club.ascham.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.form.Typed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file brings no verdict in that nobody could put into words. */
class SayingRulesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "as-said | [\"Worn.\"] | true",
        "as-said | Worn. | false",
        "as-said | [\"Worn.\", \"Frayed.\"] | false",
        "outside | [\"BRACE\"] | false",
        "outside | [\"BRACE\", 21000000, [22000000, 23000000]] | true",
        "nothing-known | [] | false",
      })
  void whatIsSaid_isSaidOfWhatItsSayingLeavesOpen(String saying, String saidOf, boolean sound) {
    Typed row = Typed.nothing().with("saying", saying).with("saidOf", saidOf);
    new SayingRules().check(row);
    assertEquals(sound, row.sound(), saidOf);
    assertEquals(
        sound ? null : "that is not what " + saying + " is said of: as-said takes one line of"
            + " words, [\"…\"]",
        row.messageAt("saidOf"));
  }
}
