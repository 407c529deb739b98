package club.ascham.receive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.loan.LoanLine;
import club.ascham.register.ItemKind;
import club.ascham.units.ItemCode;
import club.ascham.units.Money;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReceiptDetailsTest {
  private static final Instant ISSUED = Instant.parse("2026-03-02T19:00:00Z");
  private static final Instant NOW = Instant.parse("2026-03-16T19:30:00Z");
  private static final ReceiptDetails.When WHEN =
      new ReceiptDetails.When(ISSUED, NOW, ZoneId.of("Europe/London"));
  private static final Currency POUNDS = Currency.getInstance("GBP");

  private final Typed typed = Typed.nothing();

  @Test
  void whatIsNotTicked_isMissing() {
    ReceiptDetails read = read(typed.with("back-1", "on"));
    assertTrue(typed.sound());
    assertTrue(read.lines().get(0).back());
    assertFalse(read.lines().get(1).back());
  }

  @Test
  void aDamagedThing_isHere_evenWithItsTickForgotten() {
    ReceiptDetails read = read(typed.with("damage-2", "torn"));
    assertTrue(read.lines().get(1).back());
    assertEquals("torn", read.lines().get(1).damage());
  }

  @Test
  void aLetter_isNoDamageToWithdrawFor() {
    read(typed.with("damage-2", "x"));
    assertNotNull(typed.faultAt("damage-2"));
  }

  @Test
  void nothingTicked_isNothingToReceive() {
    read(typed);
    assertNotNull(typed.faultAt("lines"));
  }

  @Test
  void arrowsBack_areAllOfThem_unlessCounted_andNeverMore() {
    assertEquals(8, read(Typed.nothing().with("back-2", "on")).lines().get(1).count());
    assertEquals(
        6, read(Typed.nothing().with("back-2", "on").with("count-2", "6")).lines().get(1).count());
    read(typed.with("back-2", "on").with("count-2", "9"));
    assertNotNull(typed.faultAt("count-2"));
  }

  @Test
  void aSetOfWhichNothingCameBack_isUnticked() {
    LoanLine set = aSet(3, 8);
    read(typed.with("back-3", "on").with("count-3", "0"), WHEN, set);
    assertNotNull(typed.faultAt("count-3"));
    Typed some = Typed.nothing().with("back-3", "on").with("count-3", "5");
    assertEquals(5, read(some, WHEN, set).lines().get(0).count());
    assertEquals(3, set.shortBy(5));
  }

  @Test
  void nothingIsKeptOfTheDeposit_whileSomethingIsStillOut() {
    read(
        typed
            .with("back-1", "on")
            .with("depositKept", "5")
            .with("depositKeptWhy", "Two of the arrows lie in the wood."));
    assertNotNull(typed.faultAt("depositKept"));
  }

  @Test
  void moreThanTheDeposit_canNotBeKept_andKeepingNeedsItsReason() {
    read(typed.with("allBack", "yes").with("depositKept", "20.01").with("depositKeptWhy", "x"));
    assertNotNull(typed.faultAt("depositKept"));
    assertNotNull(typed.faultAt("depositKeptWhy"));
    Typed unsaid = Typed.nothing().with("allBack", "yes").with("depositKept", "5");
    read(unsaid);
    assertNotNull(unsaid.faultAt("depositKeptWhy"));
  }

  @Test
  void whatWasLentLateInAnEvening_mayBeBackThatDay_andNoSooner() {
    Instant late = Instant.parse("2026-07-02T21:40:00Z");
    ReceiptDetails.When afterMidnight =
        new ReceiptDetails.When(late, Instant.parse("2026-07-02T23:10:00Z"), WHEN.zone());
    Typed thatDay = Typed.nothing().with("allBack", "yes").with("on", "2026-07-02");
    assertEquals(late, read(thatDay, afterMidnight).happened());
    assertTrue(thatDay.sound());
    Typed dayBefore = Typed.nothing().with("allBack", "yes").with("on", "2026-07-01");
    read(dayBefore, afterMidnight);
    assertNotNull(dayBefore.faultAt("on"));
  }

  @Test
  void paperTypedInLater_liesBetweenTheLoanAndNow() {
    assertEquals(
        Instant.parse("2026-03-10T21:00:00Z"),
        read(Typed.nothing().with("allBack", "yes").with("on", "10/3/2026")).happened());
    Typed before = Typed.nothing().with("allBack", "yes").with("on", "2026-03-01");
    read(before);
    assertNotNull(before.faultAt("on"));
    Typed after = Typed.nothing().with("allBack", "yes").with("on", "2026-03-17");
    read(after);
    assertNotNull(after.faultAt("on"));
  }

  private static ReceiptDetails read(Typed typed) {
    return read(typed, WHEN);
  }

  private static ReceiptDetails read(Typed typed, ReceiptDetails.When when) {
    return ReceiptDetails.parse(
        typed, List.of(aLine(1, null), aLine(2, 8)), null, new Money(2000), POUNDS, when);
  }

  private static ReceiptDetails read(Typed typed, ReceiptDetails.When when, LoanLine line) {
    return ReceiptDetails.parse(typed, List.of(line), null, new Money(2000), POUNDS, when);
  }

  private static LoanLine aSet(long id, int holds) {
    return new LoanLine(
        id,
        new LoanId(1),
        new ItemId(id),
        null,
        ItemCode.of('A', 20).orElseThrow().bare(),
        ItemKind.ARROWS,
        null,
        null,
        ISSUED,
        null,
        null,
        null,
        null,
        null,
        holds,
        null,
        null);
  }

  private static LoanLine aLine(long id, Integer arrows) {
    ItemKind kind = arrows == null ? ItemKind.TAB : ItemKind.ARROWS;
    return new LoanLine(
        id,
        new LoanId(1),
        new ItemId(id),
        null,
        ItemCode.of('R', 147).orElseThrow().bare(),
        kind,
        null,
        null,
        ISSUED,
        arrows,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }
}
