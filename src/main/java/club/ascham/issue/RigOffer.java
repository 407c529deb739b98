package club.ascham.issue;

import club.ascham.bow.Candidate;
import club.ascham.concern.Against;
import club.ascham.concern.Weight;
import club.ascham.rig.RigCard;
import club.ascham.standing.State;
import java.time.Instant;
import java.util.Optional;

/**
 * A rig as it stands today, to be lent or not.
 *
 * @param loan the loan it is out with; null: none
 * @param readySince when it was last put back or set up
 * @param against what is known that bears on letting it go
 */
record RigOffer(RigCard card, State state, Long loan, Instant readySince, Against against) {
  /** As the ranking looks at it; empty while parts are missing. */
  Optional<Candidate<RigOffer>> candidate() {
    return card.spec().map(spec -> new Candidate<>(this, spec, card.setUp()));
  }

  /** What a reason must answer before it goes out; empty: nothing. */
  String spokenAgainst() {
    return against.said(Weight.SPEAKS_AGAINST);
  }
}
