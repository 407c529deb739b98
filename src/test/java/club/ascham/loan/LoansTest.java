package club.ascham.loan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.borrower.Borrowers;
import club.ascham.fixture.ClubFixture;
import club.ascham.fixture.LaidBow;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.time.ClubTime;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

@QuarkusTest
class LoansTest {
  @Inject Loans loans;
  @Inject Borrowers borrowers;
  @Inject LoanLines lines;
  @Inject ClubFixture fixture;
  @Inject ClubTime time;

  @Test
  void open_loans_stand_in_the_order_in_which_they_fall_due() {
    LocalDate today = time.today();
    long late =
        fixture.lend(fixture.aBowReadyToGoOut(24), "Ada Quill", "2026-02-01", day(today, -3));
    long soon =
        fixture.lend(fixture.aBowReadyToGoOut(24), "Bea Quill", "2026-02-01", day(today, 3));
    long back =
        fixture.lend(fixture.aBowReadyToGoOut(24), "Cy Quill", "2026-02-01", day(today, -9));
    fixture.allBack(back, "2026-03-01");

    List<LoanRow> found = loans.list(filter("q", "quill"), today);
    assertEquals(List.of(late, soon), found.stream().map(row -> row.id().value()).toList());
    assertTrue(found.get(0).isOverdue(today));
    assertFalse(found.get(1).isOverdue(today));
    assertEquals(3, found.get(0).linesOut());
    assertEquals(1, found.get(0).bows().size());

    assertEquals(1, loans.count(filter("q", "QUILL", "show", "overdue"), today));
    assertEquals(1, loans.count(filter("q", "quill", "show", "closed"), today));
    assertEquals(3, loans.count(filter("q", "quill", "show", "all"), today));
    assertEquals(0, loans.count(filter("q", "quill", "kind", "session"), today));
  }

  @Test
  void loan_isFoundByTheCodeOfWhatIsInIt() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    long loan = fixture.lend(rig, "Dot Reedham", "2026-02-01", "2026-03-01");
    List<LoanRow> found = loans.list(filter("q", rig.limbs().code().toLowerCase()), time.today());
    assertEquals(List.of(loan), found.stream().map(row -> row.id().value()).toList());
    assertEquals(List.of(rig.body().code()), found.get(0).bows());
  }

  @Test
  void counts_countEachOpenLoanOnce() {
    OpenLoanCounts before = loans.openCounts(time.today());
    fixture.lend(fixture.aBowReadyToGoOut(24), "Eve Loddon", "2026-02-01", day(time.today(), -1));
    fixture.lend(fixture.aBowReadyToGoOut(24), "Fay Loddon", "2026-02-01", day(time.today(), 0));
    OpenLoanCounts after = loans.openCounts(time.today());
    assertEquals(before.open() + 2, after.open());
    assertEquals(before.overdue() + 1, after.overdue());
    assertEquals(before.dueToday() + 1, after.dueToday());
  }

  @Test
  void lines_beginWithTheBow() {
    LaidBow rig = fixture.aBowReadyToGoOut(20);
    long loan = fixture.lend(rig, "Gil Yare", "2026-02-01", "2026-03-01");
    List<LoanLine> found = lines.of(new LoanId(loan));
    assertEquals(
        List.of("riser", "limbs", "string"), found.stream().map(LoanLine::kindWord).toList());
    assertEquals(rig.body().code(), found.get(0).code());
    assertEquals("Alderfen Heron", found.get(0).name());
  }

  @Test
  void borrower_isFoundByPartOfTheName() {
    fixture.lend(fixture.aBowReadyToGoOut(24), "Ottilie Émond", "2026-02-01", "2026-03-01");
    Borrowers.Row found = borrowers.named("tilie ÉM", 0, 10).get(0);
    assertEquals("Ottilie Émond", found.name());
    assertEquals(1, found.openLoans());
    assertEquals(1, borrowers.countNamed("ottilie émond".replace('é', 'É')));
    assertEquals(found, borrowers.row(found.id()).orElseThrow());
  }

  private static String day(LocalDate today, int plus) {
    return today.plusDays(plus).toString();
  }

  private static LoanFilter filter(String... pairs) {
    Map<String, String> texts = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      texts.put(pairs[i], pairs[i + 1]);
    }
    return LoanFilter.parse(Typed.of(texts));
  }
}
