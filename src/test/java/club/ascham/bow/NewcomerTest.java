package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.Length;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NewcomerTest {

  // Source: blog.lancasterarchery.com/tag/bow-sizing/ (R), draws that stand in one row only
  @ParameterizedTest(name = "draw {0} in: {1} to {2} in")
  @DisplayName("Bow length by draw length (a dealer's page on bow sizing)")
  @CsvSource({
    "14, 48, 48", "15, 48, 48", "16, 48, 48", "17, 54, 54", "19, 54, 54", "21, 58, 58",
    "23, 62, 62", "25, 64, 66", "27, 66, 68", "29, 68, 70", "30, 68, 70", "31, 70, 72",
    "33, 70, 72"
  })
  void bowLength_publishedTable(double drawIn, int fromIn, int toIn) {
    for (Experience experience : Experience.values()) {
      NewcomerFit fit = fit(drawIn, AgeBand.ADULT, experience);
      assertEquals(fromIn, fit.bowFromIn());
      assertEquals(toIn, fit.bowToIn());
    }
  }

  @ParameterizedTest(name = "draw {0} in, in two rows: grows {1} in, grown {2} in at least")
  @CsvSource({"20, 58, 54", "22, 62, 58", "24, 64, 62", "26, 66, 64", "28, 68, 66"})
  void bowLength_drawInTwoRows_longerForWhoeverGrows(double drawIn, int growsIn, int grownIn) {
    assertEquals(growsIn, fit(drawIn, AgeBand.ADULT, Experience.BEGINNER).bowFromIn());
    assertEquals(growsIn, fit(drawIn, AgeBand.FROM_15_TO_16, Experience.IMPROVER).bowFromIn());
    assertEquals(grownIn, fit(drawIn, AgeBand.ADULT, Experience.IMPROVER).bowFromIn());
  }

  @ParameterizedTest(name = "draw {0} in, where the table is silent: the longer row, {1} in")
  @CsvSource({"16.5, 54", "30.5, 70"})
  void bowLength_tableSilent_longerRow(double drawIn, int fromIn) {
    assertEquals(fromIn, fit(drawIn, AgeBand.ADULT, Experience.EXPERIENCED).bowFromIn());
  }

  @ParameterizedTest(name = "draw {0} in, {1}: {2} in preferred")
  @CsvSource({
    "26.5, BEGINNER, 68",
    "26.5, EXPERIENCED, 66",
    "27.5, EXPERIENCED, 68",
    "32, EXPERIENCED, 70"
  })
  void bowLength_preferred(double drawIn, Experience experience, int preferredIn) {
    assertEquals(preferredIn, fit(drawIn, AgeBand.ADULT, experience).bowPreferredIn());
  }

  // Source: offthearrowshelf.com/tag/beginners/, UK Scouts' figures: start and end of a course (R)
  @ParameterizedTest(name = "{0}: {1} lb at the start, {2} lb by the end, maxima both")
  @DisplayName("Beginners' weights by age, the UK Scouts' as a coach's page quotes them")
  @CsvSource({
    "UP_TO_12, 14, 16",
    "FROM_13_TO_14, 16, 18",
    "FROM_15_TO_16, 18, 22",
    "FROM_17_TO_18, 20, 24",
    "ADULT, 20, 24"
  })
  void weight_beginner(AgeBand age, double startLb, double mostLb) {
    NewcomerFit fit = fit(25, age, Experience.BEGINNER);
    assertEquals(startLb - 2, fit.aimLb());
    assertEquals(startLb, fit.ceiling().freeLb());
    assertEquals(mostLb, fit.ceiling().mostLb());
    assertTrue(fit.leastLb() <= fit.aimLb());
  }

  // Source: doczz.net/doc/6466220 "Choosing your first archery equipment": first own bow 24 to 28
  // lb
  // for women, 28 to 32 lb for men (R)
  @Test
  @DisplayName(
      "An experienced adult's range reaches the 32 lb of a first own bow (Choosing your first"
          + " archery equipment)")
  void weight_experiencedAdult() {
    NewcomerFit fit = fit(28, AgeBand.ADULT, Experience.EXPERIENCED);
    assertEquals(32, fit.ceiling().freeLb());
    assertEquals(28, fit.aimLb());
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvSource({"UP_TO_12, IMPROVER", "FROM_15_TO_16, EXPERIENCED", "ADULT, IMPROVER"})
  void weight_moreExperience_neverLessWeight(AgeBand age, Experience experience) {
    NewcomerFit beginner = fit(25, age, Experience.BEGINNER);
    NewcomerFit further = fit(25, age, experience);
    assertTrue(further.ceiling().freeLb() > beginner.ceiling().freeLb());
    assertTrue(further.aimLb() > beginner.aimLb());
    assertTrue(
        further.leastLb() <= further.aimLb() && further.aimLb() <= further.ceiling().freeLb());
  }

  @Test
  void arrow_followsTheHardRule() {
    NewcomerFit fit =
        Newcomer.fit(
            new NewcomerAnswers(
                Hand.RIGHT, Hand.RIGHT, 24, true, AgeBand.ADULT, Experience.BEGINNER));
    assertEquals(Length.ofInches(27), fit.shortestArrow().length());
    assertTrue(fit.remarks().stream().anyMatch(remark -> remark.contains("estimate")));
  }

  @Test
  void remarks_otherEyeDominant_coachDecidesAndHandStays() {
    NewcomerFit fit =
        Newcomer.fit(
            new NewcomerAnswers(
                Hand.RIGHT, Hand.LEFT, 27, false, AgeBand.ADULT, Experience.EXPERIENCED));
    assertTrue(
        fit.remarks().stream()
            .anyMatch(remark -> remark.contains("left eye") && remark.contains("coach decides")));
  }

  @ParameterizedTest
  @ValueSource(doubles = {13.9, 36.1, Double.NaN})
  void answers_drawOfNoBow_isRefused(double drawIn) {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new NewcomerAnswers(
                Hand.RIGHT, null, drawIn, false, AgeBand.ADULT, Experience.BEGINNER));
  }

  private static NewcomerFit fit(double drawIn, AgeBand age, Experience experience) {
    return Newcomer.fit(
        new NewcomerAnswers(Hand.RIGHT, Hand.RIGHT, drawIn, false, age, experience));
  }
}
