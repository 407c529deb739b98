package club.ascham.issue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.borrower.BorrowerId;
import club.ascham.changes.ExtendCommand;
import club.ascham.changes.LostCommand;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.loan.DueChoice;
import club.ascham.loan.ItemAsked;
import club.ascham.loan.LendingTerms;
import club.ascham.units.ItemCode;
import club.ascham.units.LengthUnit;
import club.ascham.units.Money;
import java.time.LocalDate;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IssueCommandTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 6, 9);
  private static final LendingTerms TERMS =
      new LendingTerms(TODAY, LengthUnit.INCH, Currency.getInstance("GBP"), 28);
  private static final String ARROWS = code('A', 60);
  private static final String TAB = code('K', 60);

  @Test
  void newBorrower_andUsualTerms() {
    IssueCommand command = IssueCommand.parse(whole(), TERMS).orElseThrow();
    assertEquals("Nell Harker", command.newcomer().name());
    assertNull(command.known());
    assertEquals(TODAY, command.issuedOn());
    assertEquals(TODAY.plusDays(28), command.dueOn());
    assertEquals(Money.ZERO, command.deposit());
    assertNull(command.depositHow());
  }

  @Test
  void items_comeFromSlotsAndFromTheListOfCodes() {
    Typed typed =
        whole(
            "items.arrows",
            ARROWS,
            "items.arrows.count",
            "6",
            "moreItems",
            TAB + ", " + code('T', 80));
    IssueCommand command = IssueCommand.parse(typed, TERMS).orElseThrow();
    assertEquals(3, command.items().size());
    assertEquals(6, command.items().get(0).count());
    assertEquals(
        List.of("items.arrows", "moreItems", "moreItems"),
        command.items().stream().map(ItemAsked::field).collect(Collectors.toList()));
  }

  @ParameterizedTest(name = "{0}={1}: at {2}")
  @CsvSource({
    "name,,name",
    "contact,,contact",
    "contact,k,contact",
    "rig,,rig",
    "rig,seven,rig",
    "termsAccepted,,termsAccepted",
    "briefingGiven,,briefingGiven",
    "dueWeeks,0,dueWeeks",
    "dueWeeks,60,dueWeeks",
    "dueWeeks,some,dueWeeks",
    "dueOn,2026-06-08,dueOn",
    "dueOn,soon,dueOn",
    "dueOn,2026-02-30,dueOn",
    "dueOn,2029-01-01,dueOn",
    "issuedOn,2026-06-10,issuedOn",
    "deposit,a lot,deposit",
    "deposit,-5,deposit",
    "deposit,20.00,depositHow",
    "items.tab,K-0000-0,items.tab",
    "moreItems,the blue one,moreItems",
    "ageBand,up-to-12,guardian"
  })
  void wrongAnswer_standsAtItsField(String field, String value, String faulty) {
    Typed typed = whole(field, value);
    assertTrue(IssueCommand.parse(typed, TERMS).isEmpty());
    assertNotNull(typed.messageAt(faulty), typed.faults().toString());
  }

  @Test
  void borrowerWhoIsKnown_needsNoName() {
    Typed typed = whole("borrower", "12", "name", "", "contact", "");
    IssueCommand command = IssueCommand.parse(typed, TERMS).orElseThrow();
    assertEquals(new BorrowerId(12), command.known());
    assertNull(command.newcomer());
  }

  @Test
  void due_countsFromTheDayItWasHandedOver() {
    Typed typed = whole("issuedOn", "2026-06-01", "dueOn", "2026-06-03");
    assertEquals(LocalDate.of(2026, 6, 3), IssueCommand.parse(typed, TERMS).orElseThrow().dueOn());
  }

  @ParameterizedTest(name = "{0} weeks from {1}: {2}")
  @CsvSource({
    "4,,2026-07-07",
    "6,,2026-07-21",
    "8,2026-06-01,2026-07-27",
    ",2026-06-01,2026-06-29"
  })
  void due_isSoManyWeeksFromTheDayItWasHandedOver(String weeks, String issuedOn, LocalDate due) {
    Typed typed =
        whole("dueWeeks", weeks == null ? "" : weeks, "issuedOn", issuedOn == null ? "" : issuedOn);
    assertEquals(due, IssueCommand.parse(typed, TERMS).orElseThrow().dueOn());
  }

  @Test
  void aDayThatIsTyped_countsInsteadOfTheWeeks() {
    Typed typed = whole("dueWeeks", "4", "dueOn", "2026-06-20");
    assertEquals(LocalDate.of(2026, 6, 20), IssueCommand.parse(typed, TERMS).orElseThrow().dueOn());
  }

  @ParameterizedTest(name = "usual {0} days: {1}")
  @CsvSource({"28,4 6 8,4", "42,4 6 8,6", "35,4 5 6 8,5", "30, 4 6 8,''"})
  void fourSixAndEightWeeks_areOffered_andWhatIsUsual(int days, String weeks, String usual) {
    LendingTerms terms =
        new LendingTerms(TODAY, LengthUnit.INCH, Currency.getInstance("GBP"), days);
    assertEquals(
        weeks.strip(),
        terms.dues().stream().map(DueChoice::value).collect(Collectors.joining(" ")).strip());
    assertEquals(usual, terms.usualWeeks());
  }

  @Test
  void aJuniorsGuardian_isReachedByTheNumberTypedOnce() {
    Typed typed =
        whole("ageBand", "from-13-to-14", "guardian", "Tess Thurne, 07700 900417", "contact", "");
    assertEquals(
        "Tess Thurne, 07700 900417",
        IssueCommand.parse(typed, TERMS).orElseThrow().newcomer().contact());
    Typed nameAlone = whole("ageBand", "from-13-to-14", "guardian", "Tess Thurne", "contact", "");
    assertTrue(IssueCommand.parse(nameAlone, TERMS).isEmpty());
    assertNotNull(nameAlone.messageAt("contact"));
  }

  @Test
  void lost_takesTheTickedLines() {
    Typed typed = Typed.of(Map.of("line-4", "on", "line-19", "on", "line-x", "on", "words", "bus"));
    LostCommand lost = LostCommand.parse(new LoanId(1), typed, TERMS).orElseThrow();
    assertEquals(List.of(4L, 19L), lost.lines());
    Typed none = Typed.of(Map.of("words", "bus"));
    assertTrue(LostCommand.parse(new LoanId(1), none, TERMS).isEmpty());
    assertNotNull(none.messageAt("lines"));
  }

  @ParameterizedTest(name = "{0}={1}, junior {2}: at {3}")
  @CsvSource({
    "dueOn,,false,dueOn",
    "dueOn,2026-06-08,false,dueOn",
    "dueOn,2028-06-08,false,dueOn",
    "drawLength,,true,drawLength"
  })
  void extension_wrongAnswerStandsAtItsField(
      String field, String value, boolean junior, String faulty) {
    Map<String, String> texts = new HashMap<>(Map.of("dueOn", "2026-07-09", "drawLength", "24"));
    texts.put(field, value == null ? "" : value);
    Typed typed = Typed.of(texts);
    assertTrue(ExtendCommand.parse(new LoanId(1), TERMS.today(), junior, typed, TERMS).isEmpty());
    assertNotNull(typed.messageAt(faulty));
  }

  private static Typed whole(String... more) {
    Map<String, String> texts = new HashMap<>();
    texts.put("hand", "right");
    texts.put("drawLength", "27");
    texts.put("ageBand", "adult");
    texts.put("experience", "beginner");
    texts.put("rig", "7");
    texts.put("name", "Nell Harker");
    texts.put("contact", "07700 900417");
    texts.put("termsAccepted", "on");
    texts.put("briefingGiven", "on");
    for (int i = 0; i < more.length; i += 2) {
      texts.put(more[i], more[i + 1]);
    }
    return Typed.of(texts);
  }

  private static String code(char letter, int from) {
    return ItemCode.of(letter, ItemCode.nextIssuable(letter, from).orElseThrow())
        .orElseThrow()
        .display();
  }

  @Test
  void aLoan_goesOnByWeeksFromTheDayItIsDue_ofWhatIsLateFromToday_andATypedDayCounts() {
    LocalDate today = TERMS.today();
    assertEquals(today.plusDays(10 + 42), extended(today.plusDays(10), "dueWeeks", "6"));
    assertEquals(today.plusDays(28), extended(today.minusDays(3), "dueWeeks", "4"));
    Typed both = Typed.nothing().with("dueWeeks", "4").with("dueOn", today.plusDays(9).toString());
    assertEquals(
        today.plusDays(9),
        ExtendCommand.parse(new LoanId(1), today, false, both, TERMS).orElseThrow().dueOn());
    Typed neither = Typed.nothing();
    assertTrue(ExtendCommand.parse(new LoanId(1), today, false, neither, TERMS).isEmpty());
    assertEquals("Until when?", neither.messageAt("dueOn"));
    assertTrue(
        TERMS.longer(today).stream()
            .map(DueChoice::value)
            .toList()
            .containsAll(List.of("4", "6", "8")));
  }

  private static LocalDate extended(LocalDate due, String field, String said) {
    return ExtendCommand.parse(new LoanId(1), due, false, Typed.nothing().with(field, said), TERMS)
        .orElseThrow()
        .dueOn();
  }
}
