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
        "as-said | [\"\"] | it holds no words",
        "as-said | [\" \\t\"] | it holds no words",
        "as-said | [\"Worn.\\nFrayed.\"] | it holds a line break; it stands on one line",
        "as-said | [\"Worn.\\u2028Frayed.\"] | it holds a line break; it stands on one line",
        "as-said | [\"Worn.\"] [\"Worn.\"] | that is not what as-said is said of: as-said takes one line of words, [\"…\"]",
        "to-workshop-since | [[\"AS_SAID\", \"Worn.\\nFrayed.\"]] | it holds a line break; it stands on one line",
        "outside | [\"BRACE\", 99999999999, [22000000, 23000000]] | 99999999999 is longer than 3000 mm",
        "outside | [\"BRACE\", 21000000, [-99999999999, 23000000]] | -99999999999 is longer than 3000 mm",
        "outside | [\"BRACE\", 21000000, [23000000, 22000000]] | that is not what outside is said of: as-said takes one line of words, [\"…\"]",
        "count-twists-on-record | [150] |",
        "count-twists-on-record | [151] | 151 is outside 0 to 150",
        "count-twists-on-record | [-1] | -1 is outside 0 to 150",
        "bolt-in | [\"UPPER\", 1e300] | 1.0E300 is outside 0 to 4",
        "bolt-out | [\"UPPER\", 0.25, 13] | 13.0 is outside 0 to 12",
        "to-workshop-since | [[null]] | that is not what to-workshop-since is said of: as-said takes one line of words, [\"…\"]",
        "twists-in | [12, [\"AT_LEAST\", 2000000000]] | 2000000000 is outside 0 to 150",
        "nothing-known | [] | that is not what nothing-known is said of: as-said takes one line of words, [\"…\"]",
      })
  void whatIsSaid_isSaidOfWhatItsSayingLeavesOpen(String saying, String saidOf, String refusal) {
    Typed row = Typed.nothing().with("saying", saying).with("saidOf", saidOf);
    new SayingRules().check(row);
    assertEquals(refusal, row.messageAt("saidOf"));
  }
}
