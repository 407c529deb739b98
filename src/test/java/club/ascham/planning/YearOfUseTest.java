package club.ascham.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import club.ascham.fleet.Rack;
import club.ascham.id.LoanId;
import club.ascham.plan.PlannedPart;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A year of use begins at the club's midnight, in summer an hour before that of UTC. */
@QuarkusTest
class YearOfUseTest {
  private static final int SHORTEST_RECORD = 30;

  @Inject Rows rows;
  @Inject Rack rack;
  @Inject ClubTime time;
  @Inject FleetToPlan fleetToPlan;

  @Test
  void whatWasLentInTheFirstHourOfTheYear_counts_andNothingBefore() {
    Rack.Hung rig = rack.readyRig("RIGHT", 20);
    lent(rig, "2022-06-30T22:59:59.999Z");
    lent(rig, "2022-06-30T23:00:00.000Z");
    PlannedPart riser =
        fleetToPlan.read(LocalDate.of(2023, 7, 1)).fleet().parts().stream()
            .filter(part -> part.code().equals(rig.riserCode()))
            .findFirst()
            .orElseThrow();
    assertEquals(1.0 / SHORTEST_RECORD, riser.loansADay(), 1e-9);
    rack.clear(List.of(rig));
  }

  private void lent(Rack.Hung rig, String at) {
    LoanId loan = rack.lend(rig, "Anno Twelvemonth", time.today());
    rows.change("UPDATE loan SET issued_at = ?2 WHERE id = ?1", loan, at);
    rows.change(
        "UPDATE loan_line SET out_at = ?2, back_at = ?2, outcome = 'BACK' WHERE loan_id = ?1",
        loan,
        at);
  }
}
