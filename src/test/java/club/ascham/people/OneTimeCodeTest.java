package club.ascham.people;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OneTimeCodeTest {
  /** The secret of both RFCs' tables. */
  private static final byte[] SECRET = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);

  private static final Instant NOW = Instant.parse("2026-06-09T18:30:10Z");

  // RFC 4226, HOTP: An HMAC-Based One-Time Password Algorithm, appendix D.
  @ParameterizedTest(name = "RFC 4226, appendix D: count {0} is {1}")
  @CsvSource({
    "0, 755224", "1, 287082", "2, 359152", "3, 969429", "4, 338314",
    "5, 254676", "6, 287922", "7, 162583", "8, 399871", "9, 520489"
  })
  void eachCount_hasTheCodeInPrint(long count, String code) {
    assertEquals(code, OneTimeCode.at(SECRET, count));
  }

  // RFC 6238, TOTP: Time-Based One-Time Password Algorithm, appendix B, the rows for SHA1.
  @ParameterizedTest(name = "RFC 6238, appendix B: second {0} is step {1} and {2}")
  @CsvSource({
    "59, 1, 94287082",
    "1111111109, 37037036, 07081804",
    "1111111111, 37037037, 14050471",
    "1234567890, 41152263, 89005924",
    "2000000000, 66666666, 69279037",
    "20000000000, 666666666, 65353130"
  })
  void eachMoment_hasTheStepAndTheEightDigitsInPrint(long second, long step, String code) {
    assertEquals(step, OneTimeCode.stepOf(Instant.ofEpochSecond(second)));
    assertEquals(code, OneTimeCode.digits(SECRET, step, 8));
    assertEquals(code.substring(2), OneTimeCode.at(SECRET, step), "six digits are its last six");
  }

  @ParameterizedTest(name = "a phone {0} steps ahead: taken {1}")
  @CsvSource({"-2, false", "-1, true", "0, true", "1, true", "2, false"})
  void aPhoneOneStepOff_isTaken_andTwoStepsOff_isNot(int ahead, boolean taken) {
    long step = OneTimeCode.stepOf(NOW) + ahead;
    assertEquals(
        taken ? OptionalLong.of(step) : OptionalLong.empty(),
        OneTimeCode.matched(SECRET, OneTimeCode.at(SECRET, step), NOW));
  }

  @Test
  void blanksInACode_areNoMatter() {
    String code = OneTimeCode.at(SECRET, OneTimeCode.stepOf(NOW));
    assertEquals(
        OptionalLong.of(OneTimeCode.stepOf(NOW)),
        OneTimeCode.matched(SECRET, code.substring(0, 3) + " " + code.substring(3), NOW));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "abcdef", "1", "12345678901234567890", "-00001", "٠١٢٣٤٥"})
  void anythingElse_isNoCode(String typed) {
    assertEquals(OptionalLong.empty(), OneTimeCode.matched(SECRET, typed, NOW));
  }
}
