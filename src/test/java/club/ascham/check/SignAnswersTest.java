package club.ascham.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Build;
import club.ascham.form.Typed;
import club.ascham.verdict.BowPart;
import club.ascham.verdict.Gravity;
import club.ascham.verdict.Sign;
import java.util.List;
import org.junit.jupiter.api.Test;

class SignAnswersTest {
  private final Typed typed = Typed.nothing();

  private List<Sign> read() {
    return SignAnswers.parse(typed, Build.ADJUSTABLE);
  }

  @Test
  void fine_isADeliberateAnswer() {
    typed.with("limbs", "fine");
    assertEquals(List.of(Gravity.FINE), read().stream().map(Sign::gravity).toList());
    assertTrue(typed.sound());
  }

  @Test
  void noAnswer_isNone() {
    assertTrue(read().isEmpty());
  }

  @Test
  void aTickedStop_outweighsFine() {
    typed.with("limbs", "fine").with("signs", "limbs-crack-across");
    assertEquals(List.of(Gravity.STOP), read().stream().map(Sign::gravity).toList());
  }

  @Test
  void stopAnswered_outweighsATickedNote() {
    typed.with("limbs", "stop").with("signs", "limbs-nick");
    assertTrue(read().stream().anyMatch(sign -> sign.gravity() == Gravity.STOP));
  }

  @Test
  void ownWords_weighWhatThePersonSays_andNeedAWeight() {
    typed.with("string", "note").with("stringWords", "grey at the top loop");
    assertEquals(List.of(new Sign(BowPart.STRING, Gravity.NOTE, "grey at the top loop")), read());

    typed.with("limbs", "fine").with("limbsWords", "odd line");
    read();
    assertNotNull(typed.faultAt("limbs"));
  }

  @Test
  void aSignThisBowCanNotHave_isRefused() {
    typed.with("signs", "bolts-screw-in-loose");
    read();
    assertFalse(typed.sound());
  }
}
