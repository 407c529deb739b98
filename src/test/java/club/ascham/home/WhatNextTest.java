package club.ascham.home;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import club.ascham.units.ItemCode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WhatNextTest {
  private static final ItemCode CODE = ItemCode.of('R', 101).orElseThrow();

  @ParameterizedTest(name = "part {0}, loan {1}, rig {2} {3}, needs check {4}, may change {5}: {6}")
  @CsvSource({
    "ON_LOAN,         7, 3, ON_LOAN,         false, true,  /receive/7",
    "WITHDRAWN,       7, 3, WITHDRAWN,       false, true,  /receive/7",
    "ON_LOAN,         7,  ,                , false, true,  /receive/7",
    "TO_BE_CHECKED,    , 3, TO_BE_CHECKED,   true,  true,  /check/3",
    "TO_BE_CHECKED,    , 3, TO_BE_CHECKED,   false, true,  /rigs/3",
    "TO_BE_CHECKED,    , 3, WITHDRAWN,       true,  true,  /rigs/3",
    "IN_THE_WORKSHOP,  , 3, IN_THE_WORKSHOP, true,  true,  /rigs/3",
    "READY,            , 3, READY,           false, true,  /rigs/3",
    "READY,            ,  ,                , false, true,  /items/R-0101-E",
    "RETIRED,          ,  ,                , false, true,  /items/R-0101-E",
    "ON_LOAN,         7, 3, ON_LOAN,         false, false, /rigs/3",
    "ON_LOAN,         7,  ,                , false, false, /items/R-0101-E",
    "TO_BE_CHECKED,    , 3, TO_BE_CHECKED,   true,  false, /rigs/3",
  })
  void aThing_leadsToWhatItNeedsNow(
      State state,
      Long loan,
      Long rig,
      State rigState,
      boolean needsCheck,
      boolean hand,
      String path) {
    assertEquals(path, WhatNext.of(item(state, loan, rig, rigState, needsCheck), hand).path());
  }

  @Test
  void aBorrowerWithALoan_leadsToIt_andElseToTheBorrower() {
    assertEquals(
        "/loans/9",
        WhatNext.of(new FoundPerson(4L, "Rosa", new LoanId(9), LocalDate.of(2026, 6, 2))).path());
    assertEquals("/borrowers/4", WhatNext.of(new FoundPerson(4L, "Rosa", null, null)).path());
  }

  @Test
  void oneHit_goesStraightOn_twoAreListed_andNoneSaysSo() {
    FoundItem item = item(State.READY, null, 3L, State.READY, false);
    FoundPerson person = new FoundPerson(4L, "Rosa", null, null);
    assertEquals(
        new Found.One(new WhatNext("Open", "/rigs/3")),
        Found.among(List.of(), List.of(item), Map.of(), false, true, "x"));
    assertInstanceOf(
        Found.Several.class,
        Found.among(List.of(person), List.of(item), Map.of(), false, true, "x"));
    assertInstanceOf(
        Found.Nothing.class, Found.among(List.of(), List.of(), Map.of(), false, true, "x"));
  }

  @Test
  void aSoundPartOfAWithdrawnRig_isShownWithItsRigsState() {
    assertEquals(State.WITHDRAWN, item(State.READY, null, 3L, State.WITHDRAWN, false).stateShown());
  }

  private static FoundItem item(
      State state, Long loan, Long rig, State rigState, boolean needsCheck) {
    return new FoundItem(
        CODE,
        "RISER",
        "Alderfen",
        "Fenlight 25",
        null,
        state,
        loan == null ? null : new LoanId(loan),
        rig == null ? null : new RigId(rig),
        rigState,
        needsCheck,
        new ItemId(1));
  }
}
