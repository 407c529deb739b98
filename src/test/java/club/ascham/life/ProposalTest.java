package club.ascham.life;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.statistics.LifeEstimate;
import club.ascham.statistics.Service;
import club.ascham.statistics.WeibullFit;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ProposalTest {
  /** Parts of a known life, each watched until it failed or was so old. */
  private static WeibullFit fit(double shape, double scale, double oldest) {
    Random random = new Random(7);
    List<Service> services =
        Stream.generate(() -> scale * Math.pow(-Math.log(1 - random.nextDouble()), 1 / shape))
            .limit(400)
            .map(age -> new Service(0, Math.min(age, oldest), age < oldest))
            .toList();
    return assertInstanceOf(LifeEstimate.Fitted.class, LifeEstimate.of(services)).fit();
  }

  @Test
  @DisplayName(
      "shape 2, scale 1000, costs 1 and 5: 510.66 days (age replacement, Barlow & Proschan)")
  void whatWears_isReplacedEarlier_whereThatCostsLess() {
    Proposal.Shorten to =
        assertInstanceOf(Proposal.Shorten.class, Proposal.of(fit(2, 1000, 3000), 5, 1500));
    assertEquals(511, to.days(), 60);
    assertTrue(to.low() < 511 && 511 < to.high(), to.toString());
    assertTrue(to.saves() > 0.15 && to.saves() < 0.35, to.toString());
  }

  @Test
  void aLongerAge_isNeverProposed() {
    assertInstanceOf(Proposal.NotLonger.class, Proposal.of(fit(2, 1000, 3000), 5, 200));
  }

  @Test
  void whereAgeDoesNotWear_orAFailureCostsNoMore_noAgePays() {
    assertInstanceOf(Proposal.InspectInstead.class, Proposal.of(fit(0.8, 1000, 3000), 5, 700));
    assertInstanceOf(Proposal.InspectInstead.class, Proposal.of(fit(2, 1000, 3000), 1, 700));
  }

  @Test
  void whatIsNearTheBestAge_stays() {
    WeibullFit fit = fit(2, 1000, 3000);
    Proposal.Shorten to = assertInstanceOf(Proposal.Shorten.class, Proposal.of(fit, 5, 1500));
    assertInstanceOf(Proposal.Keep.class, Proposal.of(fit, 5, to.days() + 10));
  }
}
