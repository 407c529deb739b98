package club.ascham.concern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.id.ItemId;
import club.ascham.standing.State;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class AgainstTest {
  private static Against of(Matter matter, long item, String code, long source) {
    return new Against(
        List.of(
            new Concern(
                Weight.BLOCKS,
                matter,
                LocalDate.EPOCH,
                new ItemId(item),
                code,
                null,
                null,
                code + ", told: it fell.",
                "something told of it",
                "Until answered.",
                "/reports/" + source,
                source)));
  }

  @Test
  void whatWasToldOfSeveralParts_isOneLine_howeverTheyAreBroughtTogether() {
    Against riser = of(Matter.REPORTED, 1, "R-1", 7);
    Against limbs = of(Matter.REPORTED, 2, "L-1", 7);
    Against string = of(Matter.REPORTED, 3, "S-1", 7);
    Against bow = riser.and(limbs).and(string).and(limbs);
    assertEquals(1, bow.all().size());
    assertEquals("R-1, L-1, S-1, told: it fell.", bow.all().get(0).said());
    assertEquals(2, bow.and(of(Matter.REPORTED, 2, "L-1", 8)).all().size(), "another report");
  }

  @Test
  void aLineOfAList_tellsOfTheHeaviest_andHowMuchMoreThereIs() {
    Against two = of(Matter.WITHDRAWN, 1, "R-1", 7).and(of(Matter.NOT_CHECKED, 2, "R-1", 8));
    assertEquals(1, two.beside(State.READY).more());
    assertEquals(0, two.beside(State.TO_BE_CHECKED).more(), "the state says the other");
    assertEquals(Matter.WITHDRAWN, two.beside(State.WITHDRAWN).heaviest().matter());
    assertNull(Against.NOTHING.beside(State.READY));
  }

  @Test
  void aDanger_staysUnstrung_andAnOverdueDayDoesNot() {
    assertTrue(of(Matter.REPORTED, 1, "R-1", 7).staysUnstrung());
    assertTrue(of(Matter.WITHDRAWN, 1, "R-1", 7).staysUnstrung());
    assertFalse(of(Matter.OVERDUE, 1, "R-1", 7).staysUnstrung());
    assertFalse(of(Matter.NOT_SET_UP, 1, "R-1", 7).staysUnstrung());
  }

  @Test
  void whatAnotherSaysAlready_isLeftOut() {
    Against limbs = of(Matter.WITHDRAWN, 1, "L-1", 7);
    Against both = limbs.and(of(Matter.WITHDRAWN, 2, "S-1", 8));
    assertEquals(List.of("S-1"), both.beyond(limbs).all().stream().map(Concern::code).toList());
  }

  @Test
  void otherMatters_stayALineForEachPart() {
    assertEquals(
        2, of(Matter.WITHDRAWN, 1, "R-1", 7).and(of(Matter.WITHDRAWN, 2, "L-1", 7)).all().size());
  }
}
