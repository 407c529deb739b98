package club.ascham.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import club.ascham.bow.Known;
import club.ascham.bow.OnePieceSpec;
import club.ascham.bow.RigSpec;
import club.ascham.bow.Style;
import org.junit.jupiter.api.Test;

class DrawForceTest {
  @Test
  void aChildsTable_endsAtTheMarkedDraw_andAt24InWhereThatIsUnknown() {
    assertEquals(22, last(DrawForce.of(bow(54, 22), null)));
    DrawForce unknown = DrawForce.of(bow(54, 28), null);
    assertEquals(24, last(unknown));
    assertEquals("24", unknown.markedAt());
    assertEquals(24, unknown.at().drawIn());
    assertFalse(unknown.description().contains("at 28 in"), unknown.description());
  }

  @Test
  void anyOtherTable_goesOnTo32In() {
    assertEquals(32, last(DrawForce.of(bow(68, 28), null)));
  }

  private static int last(DrawForce force) {
    return force.rows().get(force.rows().size() - 1).drawIn();
  }

  private static RigSpec bow(int lengthIn, double markedAtIn) {
    return new RigSpec(
        null,
        null,
        new OnePieceSpec(null, lengthIn, 14, markedAtIn, Known.NO, null),
        null,
        Style.SPLIT_FINGER);
  }
}
