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
        "as-said | [\"Worn.\"] |",
        "as-said | Worn. | that is not what as-said is said of: as-said takes one line of words, [\"…\"]",
        "as-said | [\"Worn.\", \"Frayed.\"] | that is not what as-said is said of: as-said takes one line of words, [\"…\"]",
        "as-said | [\"Worn\\u202e.\"] | it holds a character that can't be seen",
        "outside | [\"BRACE\"] | that is not what outside is said of: as-said takes one line of words, [\"…\"]",
        "outside | [\"BRACE\", 21000000, [22000000, 23000000]] |",
        "nothing-known | [] | that is not what nothing-known is said of: as-said takes one line of words, [\"…\"]",
      })
  void whatIsSaid_isSaidOfWhatItsSayingLeavesOpen(String saying, String saidOf, String refusal) {
    Typed row = Typed.nothing().with("saying", saying).with("saidOf", saidOf);
    new SayingRules().check(row);
    assertEquals(refusal, row.messageAt("saidOf"));
  }
}
