package club.ascham.worksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.Build;
import club.ascham.upkeep.Work;
import club.ascham.verdict.Gravity;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class InspectionListTest {
  private static final InspectionList BOLTS =
      InspectionList.of(Work.BOLT_INSPECTION, Build.ADJUSTABLE, 4.0);

  @Test
  void theBoltsOfAnAdjustableRiser_areLookedAtWithTheirTurns() {
    assertEquals(
        List.of("turns", "alike", "thread", "lockingScrew", "washer", "seat"), keys(BOLTS));
    assertTrue(BOLTS.asksTurns());
    assertTrue(BOLTS.looks().get(0).sound().contains("maker's 4 turns"));
  }

  @Test
  void theBoltsOfAScrewInBow_haveTheirOwnList_andNoTurns() {
    InspectionList list = InspectionList.of(Work.BOLT_INSPECTION, Build.SCREW_IN, null);
    assertEquals(List.of("thread", "seat", "washer", "tight"), keys(list));
    assertFalse(list.asksTurns());
    assertTrue(list.looks().stream().noneMatch(look -> look.sound().contains("turns")));
  }

  @Test
  void withoutTheMakersLimit_nothingIsPutInItsPlace() {
    InspectionList list = InspectionList.of(Work.BOLT_INSPECTION, Build.ADJUSTABLE, null);
    assertTrue(list.looks().get(0).sound().contains("not recorded"));
    assertEquals(
        Result.PASSED,
        inspected(list, Map.of(), 9.0, 9.0).outcome(list).result(),
        "a person judges where no limit is known");
  }

  @ParameterizedTest
  @EnumSource(value = Work.class, names = "STRING_REPLACEMENT", mode = EnumSource.Mode.EXCLUDE)
  void everyLook_namesItsSource_andHasAKeyOfItsOwn(Work work) {
    for (Build build : Build.values()) {
      InspectionList list = InspectionList.of(work, build, null);
      assertTrue(list.looks().size() >= 4);
      assertEquals(list.looks().size(), new HashSet<>(keys(list)).size());
      assertTrue(list.looks().stream().noneMatch(look -> look.source().isBlank()));
    }
  }

  // hoyttarget.com and hoyt.com's support pages (R): never beyond the maker's
  // limit of turns out.
  @Test
  @DisplayName(
      "turns beyond the maker's limit fail, whatever was answered (a bow maker's answers, R)")
  void turnsBeyondTheMakersLimit_fail() {
    assertEquals(Result.PASSED, inspected(BOLTS, Map.of(), 4.0, 4.0).outcome(BOLTS).result());
    Inspected.Outcome over = inspected(BOLTS, Map.of(), 4.0, 4.25).outcome(BOLTS);
    assertEquals(Result.FAILED, over.result());
    assertEquals("Beyond the maker's limit of 4 turns out.", over.found());
    assertEquals("upper 4 turns out, lower 4 1/4 turns out", over.measured());
  }

  @Test
  void oneStopFails_aNoteDoesNot_andWordsAreKept() {
    Inspected.Outcome note =
        inspected(BOLTS, Map.of("lockingScrew", Gravity.NOTE), null, null).outcome(BOLTS);
    assertEquals(Result.PASSED, note.result());
    assertEquals("Noted: locking screws. Tightened.", note.found());
    Inspected.Outcome stop =
        inspected(BOLTS, Map.of("thread", Gravity.STOP), null, null).outcome(BOLTS);
    assertEquals(Result.FAILED, stop.result());
    assertEquals("Not as it should be: threads. Tightened.", stop.found());
  }

  @Test
  void whatNobodyAnswered_countsAsAStop() {
    Inspected nothing = new Inspected(Map.of(), null, null, null, null);
    assertEquals(Result.FAILED, nothing.outcome(BOLTS).result());
  }

  @Test
  void aString_isReplacedAndNotInspected() {
    assertThrows(
        IllegalArgumentException.class,
        () -> InspectionList.of(Work.STRING_REPLACEMENT, null, null));
  }

  @Property
  @Label("a graver answer never lets pass what failed before")
  void graverNeverPermitsMore(
      @ForAll @Size(6) List<Gravity> answers, @ForAll @Size(6) List<Gravity> other) {
    Map<String, Gravity> seen = new HashMap<>();
    Map<String, Gravity> graver = new HashMap<>();
    for (int i = 0; i < 6; i++) {
      String key = BOLTS.looks().get(i).key();
      seen.put(key, answers.get(i));
      graver.put(key, answers.get(i).compareTo(other.get(i)) > 0 ? answers.get(i) : other.get(i));
    }
    Result before = new Inspected(seen, null, null, "x", null).outcome(BOLTS).result();
    Result after = new Inspected(graver, null, null, "x", null).outcome(BOLTS).result();
    assertTrue(before != Result.FAILED || after == Result.FAILED);
  }

  private static Inspected inspected(
      InspectionList list, Map<String, Gravity> other, Double upper, Double lower) {
    Map<String, Gravity> seen = new HashMap<>();
    list.looks().forEach(look -> seen.put(look.key(), Gravity.FINE));
    seen.putAll(other);
    return new Inspected(seen, upper, lower, other.isEmpty() ? null : "Tightened.", null);
  }

  private static List<String> keys(InspectionList list) {
    return list.looks().stream().map(Look::key).toList();
  }
}
