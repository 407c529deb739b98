package club.ascham.loan;

import club.ascham.concern.Against;
import club.ascham.concern.Weight;

/** Something that may go out beside a bow, with what stands against it today. */
public record Offered(Lendable item, Against against) {
  String spokenAgainst() {
    return against.said(Weight.SPEAKS_AGAINST);
  }
}
