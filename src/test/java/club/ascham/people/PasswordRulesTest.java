package club.ascham.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PasswordRulesTest {
  private static final List<String> ABOUT = List.of("petra.miller", "Wherrybridge Archers");

  @ParameterizedTest
  @ValueSource(strings = {"", "k7#Vq!2pXz9", "три стрелы"})
  void elevenCharacters_areTooFew_ofWhateverKind(String password) {
    assertTrue(PasswordRules.fault(password, ABOUT).orElseThrow().startsWith("At least 12"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "password1234",
        "Password2024!",
        "qwertyuiop12",
        "1q2w3e4r5t6y",
        "111111111111",
        "123456789012",
        "abcabcabcabcabc",
        "abcdefghijklmnop",
        "iloveyou1234",
        "football1966",
        "P@ssw0rdP@ssw0rd",
        "zaq12wsxzaq12wsx"
      })
  void whatManyPeopleChoose_isRefused(String password) {
    assertTrue(PasswordRules.fault(password, ABOUT).orElseThrow().startsWith("Too easily"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "petra.miller1",
        "wherrybridge12",
        "WherrybridgeArchers1",
        "archery archery",
        "petramiller2026"
      })
  void whatAnyoneWouldTryOfThisPersonAndClub_isRefused(String password) {
    assertTrue(PasswordRules.fault(password, ABOUT).orElseThrow().startsWith("Too easily"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "marmot under 7 teacups",
        "correct horse battery",
        "только синие птицы летят",
        "qzkwvxmhtyru",
        "das Boot ist unterwegs nach Norden"
      })
  void aFewWordsOfOnesOwn_areTaken_withoutAnyRuleOfDigitsOrCapitals(String password) {
    assertEquals(Optional.empty(), PasswordRules.fault(password, ABOUT));
  }

  @Test
  void aSixtyFourCharacterPassword_isTaken_seventyThreeBytesAreNot_forTheHashWouldCutThem() {
    String words = "seven unlikely marmots juggle copper teapots beside the old weir";
    assertEquals(64, words.length());
    assertEquals(Optional.empty(), PasswordRules.fault(words, ABOUT));
    String tooLong = words + " at noon!";
    assertEquals(73, tooLong.length());
    assertTrue(PasswordRules.fault(tooLong, ABOUT).orElseThrow().startsWith("At most 72"));
  }

  @Test
  void theLongest_isJudgedInAMoment() {
    PasswordRules.fault("warm up the lists of words", ABOUT);
    assertTimeout(
        Duration.ofSeconds(2),
        () -> PasswordRules.fault("a1b2@c3$".repeat(9), ABOUT),
        "no long password holds the server up");
  }
}
