package club.ascham.assembly;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Place;
import club.ascham.rig.Rigs;
import club.ascham.rig.SetUps;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;

/**
 * Puts one string in the place of another on a rig, inside the use case that decided on it. A rig
 * on loan stays on it; a set-up begun with the old string begins again.
 */
@ApplicationScoped
public class StringExchange {
  private final Rigs rigs;
  private final SetUps setUps;
  private final LoanedParts loaned;
  private final Actor actor;
  private final ClubTime time;

  StringExchange(Rigs rigs, SetUps setUps, LoanedParts loaned, Actor actor, ClubTime time) {
    this.rigs = rigs;
    this.setUps = setUps;
    this.loaned = loaned;
    this.actor = actor;
    this.time = time;
  }

  /** Answers the loan that the rig is out on; empty: it is in the room. */
  public Optional<LoanId> exchange(RigId rig, ItemId off, ItemId on, Instant at) {
    Optional<LoanId> loan = loaned.loanOf(rig);
    rigs.takeOff(rig, off, at);
    loan.ifPresent(l -> loaned.takenOff(l, off, at));
    rigs.fit(rig, Place.STRING, on, at);
    loan.ifPresent(l -> loaned.fitted(l, rig, on, at));
    rigs.changed(rigs.findById(rig.value()));
    setUps.openOf(rig).ifPresent(open -> open.beginAgain(actor.id(), time.now()));
    return loan;
  }
}
