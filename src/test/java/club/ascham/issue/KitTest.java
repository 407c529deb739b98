package club.ascham.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.bow.AgeBand;
import club.ascham.bow.DrawLength;
import club.ascham.bow.Experience;
import club.ascham.bow.Hand;
import club.ascham.bow.Level;
import club.ascham.bow.Newcomer;
import club.ascham.bow.ShortestArrow;
import club.ascham.bow.StringerKind;
import club.ascham.bow.WeightOnFingers;
import club.ascham.concern.Against;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.loan.Archer;
import club.ascham.loan.ItemAsked;
import club.ascham.loan.ItemRules;
import club.ascham.loan.Lendable;
import club.ascham.loan.Offered;
import club.ascham.register.ItemKind;
import club.ascham.standing.State;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What goes beside a bow: what is suggested, and what is refused. */
class KitTest {
  private static final Instant NOW = Instant.parse("2026-06-09T18:00:00Z");
  private static final RigId RIG = new RigId(3);
  private static final Archer BEGINNER = archer(AgeBand.ADULT, 26);
  private static final WeightOnFingers WEIGHT = new WeightOnFingers(28, 26, 30, 0, "");
  private int next = 100;

  @Test
  @DisplayName("a beginner's arrows: draw and 2 in (Ely Archers' safety rules), the shortest first")
  void arrows_theShortestThatAreLongEnoughComeFirst() {
    // Draw 26 in and 2 in for a beginner: elyarchers.org.uk, johnsarchery.ca (R).
    Lendable tooShort = arrows(27.5, 6, false);
    Lendable just = arrows(28, 6, false);
    Lendable longer = arrows(30, 6, false);
    Lendable unmeasured = arrows(0, 6, false);
    KitSuggestion.Slot slot = slot(ItemKind.ARROWS, BEGINNER, longer, tooShort, unmeasured, just);
    assertEquals(List.of(just, longer), slot.options());
    assertTrue(slot.preset());
  }

  @Test
  void pool_withNothingLeft_isNotSuggested() {
    assertTrue(slot(ItemKind.ARROWS, BEGINNER, arrows(30, 0, true)).options().isEmpty());
  }

  @Test
  void tab_ofTheOtherHand_isNotSuggested_andTheUsualSizeComesFirst() {
    Lendable left = kit(ItemKind.TAB, Hand.LEFT, "M");
    Lendable large = kit(ItemKind.TAB, Hand.RIGHT, "L");
    Lendable middle = kit(ItemKind.TAB, Hand.RIGHT, "M");
    Lendable tiny = kit(ItemKind.TAB, Hand.RIGHT, "XS");
    assertEquals(
        List.of(middle, large, tiny),
        slot(ItemKind.TAB, BEGINNER, left, large, tiny, middle).options());
    assertEquals(
        tiny,
        slot(ItemKind.TAB, archer(AgeBand.UP_TO_12, 20), left, large, tiny, middle)
            .options()
            .get(0));
  }

  @Test
  void stringer_mustServeTheBow_andTheRigsOwnComesFirst() {
    Lendable shortOne = stringer(48, 60, null);
    Lendable wide = stringer(54, 72, null);
    Lendable close = stringer(66, 70, null);
    Lendable own = stringer(60, 70, RIG);
    Lendable others = stringer(66, 70, new RigId(9));
    assertEquals(
        List.of(own, close, wide, others),
        slot(ItemKind.STRINGER, BEGINNER, others, shortOne, wide, close, own).options());
  }

  @Test
  void fullerRig_mayCarryASight_whichThePersonChooses() {
    Lendable sight = kit(ItemKind.SIGHT, Hand.RIGHT, null);
    List<KitSuggestion.Slot> slots = suggested(BEGINNER, Level.FULLER, sight);
    KitSuggestion.Slot slot =
        slots.stream().filter(one -> one.kind() == ItemKind.SIGHT).findFirst().orElseThrow();
    assertFalse(slot.preset());
    assertTrue(
        suggested(BEGINNER, Level.BEGINNER, sight).stream()
            .noneMatch(one -> one.kind() == ItemKind.SIGHT));
  }

  @Test
  void everythingSuggested_isAllowed() {
    List<Lendable> stock =
        List.of(
            arrows(28, 6, false),
            kit(ItemKind.TAB, Hand.RIGHT, "M"),
            kit(ItemKind.BRACER, null, "long"),
            stringer(60, 70, null));
    for (Lendable item : stock) {
      assertEquals(List.of(), refused(item, null), item.kind().said());
    }
  }

  @Test
  void arrowsTooShort_areRefusedWithBothFigures() {
    String why = refused(arrows(27, 6, false), null).get(0);
    assertTrue(why.contains("27 in") && why.contains("28 in"), why);
  }

  @Test
  void arrowsWithoutALength_areRefused() {
    assertTrue(refused(arrows(0, 6, false), null).get(0).contains("not recorded"));
  }

  // 5 grains to the pound at the high end, 30 lb: hoyt.com/safetyandwarnings/traditional-recurves
  // (R).
  @Test
  @DisplayName("arrows below 5 grains to the pound (a recurve maker's warnings)")
  void arrowsTooLight_areRefusedWithBothFigures_andNotSuggested() {
    Lendable light = arrows(28, 149.0, 6, false);
    Lendable just = arrows(28, 150.0, 6, false);
    String why = refused(light, null).get(0);
    assertTrue(why.contains("149 gr") && why.contains("30.0 lb") && why.contains("150 gr"), why);
    assertTrue(why.contains("heavier arrows") && why.contains("lighter limbs"), why);
    assertEquals(List.of(), refused(just, null));
    assertEquals(List.of(just), slot(ItemKind.ARROWS, BEGINNER, light, just).options());
  }

  @Test
  void arrowsOfUnknownMass_goOut_andItIsSaidThatTheyWereNotChecked() {
    Lendable unweighed = arrows(28, 6, false);
    Lendable weighed = arrows(28, 300.0, 6, false);
    assertEquals(List.of(), refused(unweighed, null));
    String said = ItemRules.unchecked(List.of(offered(weighed), offered(unweighed)), receiver());
    assertTrue(said.contains(unweighed.code()) && !said.contains(weighed.code()), said);
    assertEquals("", ItemRules.unchecked(List.of(offered(weighed)), receiver()));
  }

  @Test
  void pool_isGivenOutByCount_andNoMoreThanIsLeft() {
    Lendable pool = arrows(30, 8, true);
    assertTrue(refused(pool, null).get(0).startsWith("How many"));
    assertTrue(refused(pool, 9).get(0).contains("Only 8"));
    assertEquals(List.of(), refused(pool, 8));
    assertTrue(refused(arrows(30, 6, false), 4).get(0).contains("whole"));
    assertEquals(List.of(), refused(arrows(30, 6, false), 6));
  }

  @Test
  void stateOtherThanReady_isRefused() {
    for (State state : State.values()) {
      List<String> why = refused(kit(ItemKind.TAB, Hand.RIGHT, "M", state, null, null), null);
      assertEquals(state == State.READY, why.isEmpty(), state.name());
    }
  }

  @Test
  void wrongHand_wrongStringer_fittedPart_bowPart_areRefused() {
    assertTrue(refused(kit(ItemKind.TAB, Hand.LEFT, "M"), null).get(0).contains("right hand"));
    assertTrue(
        refused(kit(ItemKind.STRING, null, null, State.READY, RIG, null), null)
            .get(0)
            .contains("fitted"));
    assertTrue(refused(kit(ItemKind.RISER, null, null), null).get(0).contains("part of a rig"));
  }

  @Test
  void itemThatCameBackLater_isRefusedForAnEarlierDay() {
    Lendable later = kit(ItemKind.TAB, Hand.RIGHT, "M", State.READY, null, NOW.plusSeconds(60));
    assertTrue(refused(later, null).get(0).contains("not come back yet"));
  }

  @Test
  void sameItemTwice_andAnUnknownCode_areRefused() {
    Lendable tab = kit(ItemKind.TAB, Hand.RIGHT, "M");
    ItemAsked asked = new ItemAsked("items.tab", new ItemCode(tab.bareCode()), null);
    ItemAsked again = new ItemAsked("moreItems", new ItemCode(tab.bareCode()), null);
    ItemAsked unknown =
        new ItemAsked("moreItems", new ItemCode(arrows(30, 6, false).bareCode()), null);
    List<Refusal> refusals =
        ItemRules.refusals(
            List.of(asked, again, unknown), Map.of(tab.bareCode(), offered(tab)), receiver(), null);
    assertEquals(2, refusals.size());
    assertTrue(refusals.get(0).words().contains("twice"));
    assertTrue(refusals.get(1).words().contains("no item"));
    assertEquals("moreItems", refusals.get(0).field());
  }

  private KitSuggestion.Slot slot(ItemKind kind, Archer archer, Lendable... stock) {
    return suggested(archer, Level.BEGINNER, stock).stream()
        .filter(slot -> slot.kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static List<KitSuggestion.Slot> suggested(Archer archer, Level level, Lendable... stock) {
    KitSuggestion.Bow bow = new KitSuggestion.Bow(RIG, level, 68, WEIGHT);
    return KitSuggestion.of(archer, shortest(archer), bow, List.of(stock));
  }

  private static List<String> refused(Lendable item, Integer count) {
    ItemAsked asked = new ItemAsked("items.it", new ItemCode(item.bareCode()), count);
    return ItemRules.refusals(
            List.of(asked), Map.of(item.bareCode(), offered(item)), receiver(), null)
        .stream()
        .map(Refusal::words)
        .toList();
  }

  private static ItemRules.Receiver receiver() {
    return new ItemRules.Receiver(Hand.RIGHT, null, shortest(BEGINNER), WEIGHT, NOW);
  }

  private static ShortestArrow shortest(Archer archer) {
    return Newcomer.fit(archer.answers()).shortestArrow();
  }

  private static Archer archer(AgeBand age, double drawIn) {
    return new Archer(
        Hand.RIGHT, null, new DrawLength(Length.ofInches(drawIn), false), age, Experience.BEGINNER);
  }

  private Lendable arrows(double inches, int count, boolean pool) {
    return arrows(inches, null, count, pool);
  }

  private Lendable arrows(double inches, Double massGr, int count, boolean pool) {
    return new Lendable(
        new ItemId(next),
        bare('A'),
        ItemKind.ARROWS,
        null,
        null,
        null,
        null,
        inches == 0 ? null : Length.ofInches(inches),
        massGr,
        count,
        pool,
        count,
        null,
        null,
        null,
        null,
        null,
        State.READY,
        null,
        null,
        null,
        null);
  }

  private Lendable kit(ItemKind kind, Hand hand, String size) {
    return kit(kind, hand, size, State.READY, null, null);
  }

  private Lendable kit(
      ItemKind kind, Hand hand, String size, State state, RigId fittedTo, Instant lastBack) {
    return new Lendable(
        new ItemId(next),
        bare('K'),
        kind,
        null,
        null,
        hand,
        size,
        null,
        null,
        null,
        false,
        0,
        null,
        null,
        null,
        null,
        null,
        state,
        fittedTo,
        null,
        state == State.ON_LOAN ? 5L : null,
        lastBack);
  }

  private Lendable stringer(int from, int to, RigId keptWith) {
    return new Lendable(
        new ItemId(next),
        bare('T'),
        ItemKind.STRINGER,
        null,
        null,
        null,
        null,
        null,
        null,
        null,
        false,
        0,
        StringerKind.TIP_TO_TIP,
        from,
        to,
        null,
        null,
        State.READY,
        null,
        keptWith,
        null,
        null);
  }

  private String bare(char letter) {
    int number = ItemCode.nextIssuable(letter, next).orElseThrow();
    next = number + 1;
    return ItemCode.of(letter, number).orElseThrow().bare();
  }

  private static Offered offered(Lendable item) {
    return new Offered(item, Against.NOTHING);
  }
}
