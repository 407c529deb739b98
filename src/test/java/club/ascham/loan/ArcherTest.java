package club.ascham.loan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.AgeBand;
import club.ascham.bow.Experience;
import club.ascham.bow.Hand;
import club.ascham.form.Typed;
import club.ascham.units.Length;
import club.ascham.units.LengthUnit;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ArcherTest {
  @Test
  void four_answers_make_an_archer() {
    Typed typed = answers("drawLength", "27 1/2", "dominantEye", "left");
    Archer archer = Archer.parse(typed, LengthUnit.INCH).orElseThrow();
    assertEquals(Hand.RIGHT, archer.hand());
    assertEquals(Hand.LEFT, archer.dominantEye());
    assertEquals(Length.ofInches(27.5), archer.draw().amo());
    assertFalse(archer.draw().estimated());
    assertEquals(AgeBand.ADULT, archer.age());
    assertEquals(Experience.BEGINNER, archer.experience());
  }

  @Test
  void eye_mayBeUntested() {
    assertNull(
        Archer.parse(answers("drawLength", "27"), LengthUnit.INCH).orElseThrow().dominantEye());
  }

  // Arm span, fingertip to fingertip, divided by 2.5: published by several dealers (trade facts,
  // R).
  @Test
  @DisplayName("arm span divided by 2.5 is the draw, an estimate (published by several dealers)")
  void armSpan_dividedByTwoAndAHalf_isAnEstimate() {
    Archer archer = Archer.parse(answers("armSpan", "1750 mm"), LengthUnit.INCH).orElseThrow();
    assertEquals(Length.ofMm(700), archer.draw().amo());
    assertTrue(archer.draw().estimated());
  }

  @Test
  void drawAndSpan_theMeasuredDrawCounts() {
    Archer archer =
        Archer.parse(answers("drawLength", "27", "armSpan", "1750 mm"), LengthUnit.INCH)
            .orElseThrow();
    assertEquals(Length.ofInches(27), archer.draw().amo());
    assertFalse(archer.draw().estimated());
  }

  @ParameterizedTest(name = "{0}={1} is wrong at {2}")
  @CsvSource({
    "hand,,hand",
    "hand,both,hand",
    "drawLength,,drawLength",
    "drawLength,far,drawLength",
    "drawLength,9 in,drawLength",
    "drawLength,-27,drawLength",
    "ageBand,,ageBand",
    "ageBand,42,ageBand",
    "experience,,experience",
    "dominantEye,both,dominantEye"
  })
  void wrongAnswer_standsAtItsField(String field, String value, String faulty) {
    Map<String, String> texts = new HashMap<>(answers("drawLength", "27").all());
    texts.put(field, value);
    Typed typed = Typed.of(texts);
    assertTrue(Archer.parse(typed, LengthUnit.INCH).isEmpty());
    assertTrue(typed.messageAt(faulty) != null, typed.faults().toString());
    assertEquals(1, typed.faults().size());
  }

  @Test
  void drawInTheWrongUnit_isAskedBack() {
    Typed typed = answers("drawLength", "685");
    assertTrue(Archer.parse(typed, LengthUnit.INCH).isEmpty());
    assertEquals("685 mm", typed.suggestionAt("drawLength"));
    Typed taken = answers("drawLength", "685", "take-drawLength", "685 mm");
    assertEquals(Length.ofMm(685), Archer.parse(taken, LengthUnit.INCH).orElseThrow().draw().amo());
  }

  static Typed answers(String... more) {
    Map<String, String> texts = new HashMap<>();
    texts.put("hand", "right");
    texts.put("ageBand", "adult");
    texts.put("experience", "beginner");
    for (int i = 0; i < more.length; i += 2) {
      texts.put(more[i], more[i + 1]);
    }
    return Typed.of(texts);
  }
}
