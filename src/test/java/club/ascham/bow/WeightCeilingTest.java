package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeightCeilingTest {

  // Source: “Bow weights for beginners and juniors”, a coach's page, undated, quoting the UK
  // Scouts; its columns are headed “maximum bow weight at start of course” and “maximum draw weight
  // by end of the course”. 4 lb beyond the end, and the steps of the others: judged.
  @ParameterizedTest(name = "{0}, {1}: {2} lb free, {3} lb with a reason, refused above {4} lb")
  @DisplayName(
      "Maxima by age (UK Scouts, as a coach's page quotes them) and what is judged of them")
  @CsvSource({
    "UP_TO_12, BEGINNER, 14, 16, 20",
    "FROM_13_TO_14, BEGINNER, 16, 18, 22",
    "FROM_15_TO_16, BEGINNER, 18, 22, 26",
    "FROM_17_TO_18, BEGINNER, 20, 24, 28",
    "ADULT, BEGINNER, 20, 24,",
    "UP_TO_12, IMPROVER, 20, 20,",
    "FROM_13_TO_14, IMPROVER, 22, 22,",
    "FROM_15_TO_16, IMPROVER, 26, 26,",
    "FROM_17_TO_18, IMPROVER, 28, 28,",
    "ADULT, IMPROVER, 28, 28,",
    "UP_TO_12, EXPERIENCED, 24, 24,",
    "FROM_13_TO_14, EXPERIENCED, 26, 26,",
    "FROM_15_TO_16, EXPERIENCED, 30, 30,",
    "FROM_17_TO_18, EXPERIENCED, 32, 32,",
    "ADULT, EXPERIENCED, 32, 32,"
  })
  void figures(AgeBand age, Experience experience, double free, double most, Double refused) {
    WeightCeiling ceiling = WeightCeiling.of(age, experience);
    assertEquals(free, ceiling.freeLb());
    assertEquals(most, ceiling.mostLb());
    assertEquals(refused, ceiling.refusedAboveLb());
    assertEquals(age != AgeBand.ADULT, ceiling.junior());
  }

  @ParameterizedTest(name = "{0}, {1}, {2} lb (to {3} lb): {4}")
  @CsvSource({
    // the ceiling itself is free, and each bound belongs to the milder side
    "ADULT, BEGINNER, 20, 26, LIGHT_ENOUGH",
    "ADULT, BEGINNER, 20.1, 22, WITH_A_COACH",
    "ADULT, BEGINNER, 24.1, 26, WITH_A_COACH",
    "ADULT, BEGINNER, 40, 44, WITH_A_COACH",
    "ADULT, IMPROVER, 28, 31, LIGHT_ENOUGH",
    "ADULT, IMPROVER, 28.1, 31, WITH_A_COACH",
    "ADULT, EXPERIENCED, 50, 55, WITH_A_COACH",
    // a junior is held to the high end
    "UP_TO_12, BEGINNER, 12, 14, LIGHT_ENOUGH",
    "UP_TO_12, BEGINNER, 12, 14.1, WITH_A_COACH",
    "UP_TO_12, BEGINNER, 17, 20, WITH_A_COACH",
    "UP_TO_12, BEGINNER, 17, 20.1, REFUSED",
    "FROM_17_TO_18, BEGINNER, 26, 28.1, REFUSED",
    "FROM_17_TO_18, IMPROVER, 26, 28.1, WITH_A_COACH",
    "UP_TO_12, EXPERIENCED, 40, 44, WITH_A_COACH"
  })
  void whatAWeightAsks(
      AgeBand age, Experience experience, double lb, double highLb, Heaviness asks) {
    WeightCeiling ceiling = WeightCeiling.of(age, experience);
    WeightOnFingers weight = new WeightOnFingers(lb, lb - 2, highLb, 0, "");
    assertEquals(asks, ceiling.of(weight));
    assertEquals(asks == Heaviness.LIGHT_ENOUGH, ceiling.against(weight).isEmpty());
  }

  @Test
  void unknownExperience_isABeginners() {
    assertEquals(
        WeightCeiling.of(AgeBand.ADULT, Experience.BEGINNER),
        WeightCeiling.of(AgeBand.ADULT, null));
  }

  @Test
  void words_sayWhichEndCountsAndWhichFigure() {
    WeightCeiling child = WeightCeiling.of(AgeBand.UP_TO_12, Experience.BEGINNER);
    String asked = child.against(new WeightOnFingers(13, 11, 15.2, 0, ""));
    assertTrue(asked.contains("15.2 lb") && asked.contains("high end"), asked);
    assertTrue(asked.contains("14 lb is the most at the start of a course"), asked);
    assertTrue(asked.contains("By its end it is 16 lb"), asked);
    String beyond = child.against(new WeightOnFingers(16, 14, 18, 0, ""));
    assertTrue(beyond.contains("more than the 16 lb that a course ends with"), beyond);
    String refused = child.against(new WeightOnFingers(18, 16, 21, 0, ""));
    assertTrue(refused.contains("nothing over 20 lb"), refused);
  }

  @Test
  void figures_nameTheirSourceAndWhatIsJudged() {
    String basis =
        Newcomer.fit(
                new NewcomerAnswers(
                    Hand.RIGHT, null, 22, false, AgeBand.UP_TO_12, Experience.BEGINNER))
            .weightBasis();
    for (String said :
        List.of("“Bow weights for beginners and juniors”", "UK Scouts", "(judged)", "high end")) {
      assertTrue(basis.contains(said), basis);
    }
  }

  @Test
  void aReasonAlone_isNotEnough_whereACoachIsAsked() {
    assertEquals(
        Map.of("overrideWhy", "Too heavy. Why?", "overrideCoach", AgainstAdvice.WHICH_COACH),
        AgainstAdvice.NOTHING_SAID.lacking("Too heavy.", " Why?", true));
    assertEquals(
        List.of("overrideCoach"),
        List.copyOf(
            new AgainstAdvice("holds it easily", null)
                .lacking("Too heavy.", " Why?", true)
                .keySet()));
    assertTrue(
        new AgainstAdvice("holds it easily", "Bo Tarn").lacking("Too heavy.", "", true).isEmpty());
    assertFalse(new AgainstAdvice(null, "Bo Tarn").lacking("Too heavy.", "", true).isEmpty());
  }

  @Test
  void whatIsRecorded_namesTheCoach() {
    assertEquals(
        "Holds it easily. The coach who agreed: Bo Tarn.",
        new AgainstAdvice("Holds it easily", "Bo Tarn").said());
    assertEquals("Holds it.", new AgainstAdvice("Holds it.", null).said());
  }
}
