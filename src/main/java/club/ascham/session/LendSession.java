package club.ascham.session;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.LoanLines;
import club.ascham.people.Actor;
import club.ascham.standing.Standing;
import club.ascham.store.Pressed;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** One press lends a set of rigs to a leader until tonight: no slip, no deposit. */
@ApplicationScoped
class LendSession {
  private final Rows rows;
  private final Sessions sessions;
  private final LoanLines lines;
  private final Actor actor;
  private final ClubTime time;
  private final Story story;
  private final Pressed pressed;

  LendSession(
      Rows rows,
      Sessions sessions,
      LoanLines lines,
      Actor actor,
      ClubTime time,
      Story story,
      Pressed pressed) {
    this.rows = rows;
    this.sessions = sessions;
    this.lines = lines;
    this.actor = actor;
    this.time = time;
    this.story = story;
    this.pressed = pressed;
  }

  sealed interface Outcome {
    record Lent(String page) implements Outcome {}

    /** Some of the rigs are not ready any more; nothing was changed. */
    record NotReady(List<RigId> rigs) implements Outcome {}
  }

  @Writes
  Outcome lend(String leader, Collection<RigId> rigs, String formKey) {
    var earlier = pressed.ledTo(formKey);
    if (earlier.isPresent()) {
      return new Outcome.Lent(earlier.get());
    }
    List<RigId> unfit = rigs.stream().filter(rig -> !isReady(rig)).toList();
    if (!unfit.isEmpty()) {
      return new Outcome.NotReady(unfit);
    }
    Instant now = time.now();
    rows.change(
        """
        INSERT INTO loan (kind, leader, issued_at, due_on, issued_by, recorded_at)
        VALUES ('SESSION', ?1, ?2, ?3, ?4, ?2)""",
        leader,
        now,
        time.today(),
        actor.id());
    LoanId loan = new LoanId(rows.number("SELECT max(id) FROM loan"));
    for (RigId rig : rigs) {
      List<ItemId> parts = new ArrayList<>(sessions.partsOf(rig));
      for (ItemId part : parts) {
        lines.lend(loan, part, rig, now, null);
      }
      story.tell(
          Story.Told.ofRig(
                  now, actor.id(), rig, parts, "Lent for a session, loan " + loan.value() + ".")
              .on(loan));
    }
    String page = "/sessions/" + loan.value();
    pressed.leads(formKey, page);
    return new Outcome.Lent(page);
  }

  private boolean isReady(RigId rig) {
    return rows.number(
            "SELECT count(*) FROM rig_standing s WHERE s.rig_id = ?2 AND "
                + Standing.STATE_TODAY
                + " = 'READY'",
            time.today(),
            rig)
        == 1;
  }
}
