package club.ascham.standing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.concern.Against;
import club.ascham.concern.Matter;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * Any sequence of fitting, setting up, issuing, receiving, checking, withdrawing and inspecting,
 * done to a real file: the views, the function and a model that knows only what was done must
 * agree.
 */
class StandingLawsTest {
  private static final List<Deed> A_READY_RIG =
      List.of(Deed.FIT_LIMBS, Deed.FIT_STRING, Deed.BEGIN_SET_UP, Deed.FINISH_SET_UP);

  private static final List<Matter> THE_BOWS_OWN =
      List.of(Matter.WITHDRAWN, Matter.NOT_SET_UP, Matter.NOT_CHECKED);

  private static BenchFile file;

  @BeforeContainer
  static void open() throws Exception {
    file = BenchFile.migrated();
  }

  @AfterContainer
  static void close() throws SQLException {
    file.close();
  }

  @Property(tries = 200)
  @Label("the view, the function and the model agree after any sequence of deeds, on any day")
  void viewAndFunctionAgree(@ForAll @Size(min = 1, max = 40) List<Deed> deeds) throws SQLException {
    try (OneRig rig = file.aRig()) {
      for (Deed first : A_READY_RIG) {
        assertTrue(rig.tryTo(first));
      }
      for (Deed deed : deeds) {
        rig.tryTo(deed);
        for (LocalDate today : List.of(rig.today(), rig.today().plusDays(400))) {
          OneRig.Seen seen = rig.seen(today);
          assertEquals(
              seen.facts().on(today), seen.state(), () -> "view against function after " + deed);
          assertEquals(rig.expected(today), seen.state(), () -> "view against model after " + deed);
        }
      }
      for (OneRig.Seen part : rig.parts(rig.today())) {
        assertEquals(part.facts().on(rig.today()), part.state(), "a part");
      }
    }
  }

  @Property(tries = 300)
  @Label("no sequence of deeds lends a rig that is withdrawn, on loan already or without set-up")
  void nothingUnfitIsEverLent(@ForAll @Size(min = 1, max = 40) List<Deed> deeds)
      throws SQLException {
    try (OneRig rig = file.aRig()) {
      for (Deed first : A_READY_RIG) {
        rig.tryTo(first);
      }
      for (Deed deed : deeds) {
        boolean fitBefore = rig.mayBeLent();
        boolean done = rig.tryTo(deed);
        if (deed == Deed.ISSUE) {
          assertTrue(!done || fitBefore, "lent although unfit");
        }
      }
    }
  }

  @Property(tries = 150)
  @Label("what stands against a rig keeps it in exactly where its facts do, on any day")
  void whatBlocksIsWhatTheStateFollowsFrom(@ForAll @Size(min = 1, max = 40) List<Deed> deeds)
      throws SQLException {
    try (OneRig rig = file.aRig()) {
      for (Deed first : A_READY_RIG) {
        rig.tryTo(first);
      }
      for (Deed deed : deeds) {
        rig.tryTo(deed);
        for (LocalDate today : List.of(rig.today(), rig.today().plusDays(400))) {
          OneRig.Seen seen = rig.seen(today);
          Standing facts = seen.facts();
          Against against = rig.against(today);
          assertEquals(facts.withdrawn(), against.has(Matter.WITHDRAWN), () -> "after " + deed);
          assertEquals(facts.inWorkshop(), against.has(Matter.NOT_SET_UP), () -> "after " + deed);
          assertEquals(facts.needsCheck(), against.has(Matter.NOT_CHECKED), () -> "after " + deed);
          boolean keptIn = facts.blockedFrom() != null && facts.blockedFrom().isBefore(today);
          assertEquals(keptIn, against.without(THE_BOWS_OWN).blocks(), () -> "after " + deed);
          boolean nothingElse =
              seen.state() == State.READY
                  || seen.state() == State.ON_LOAN
                      && !facts.inWorkshop()
                      && !facts.needsCheck()
                      && !keptIn;
          assertEquals(nothingElse, !against.blocks(), () -> "after " + deed);
        }
      }
    }
  }

  @Property(tries = 150)
  @Label("of a day that is past it is read as it was read in that day’s evening")
  void thePastIsReadAsItWas(@ForAll @Size(min = 1, max = 40) List<Deed> deeds) throws SQLException {
    try (OneRig rig = file.aRig()) {
      Map<LocalDate, Against> evenings = new TreeMap<>();
      for (Deed first : A_READY_RIG) {
        rig.tryTo(first);
      }
      for (Deed deed : deeds) {
        rig.tryTo(deed);
        evenings.put(rig.today(), rig.against(rig.today()));
      }
      evenings.forEach((day, was) -> assertEquals(was, rig.againstOn(day), () -> "on " + day));
    }
  }
}
