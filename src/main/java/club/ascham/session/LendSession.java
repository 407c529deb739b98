package club.ascham.session;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Weight;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.KitBeside;
import club.ascham.loan.LoanLines;
import club.ascham.loan.Refusal;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** One press lends a set of rigs to a leader until tonight: no slip, no deposit. */
@ApplicationScoped
class LendSession {
  private final Rows rows;
  private final Sessions sessions;
  private final LoanLines lines;
  private final KitBeside beside;
  private final Concerns concerns;
  private final Actor actor;
  private final ClubTime time;
  private final Story story;
  private final Pressed pressed;

  LendSession(
      Rows rows,
      Sessions sessions,
      LoanLines lines,
      KitBeside beside,
      Concerns concerns,
      Actor actor,
      ClubTime time,
      Story story,
      Pressed pressed) {
    this.rows = rows;
    this.sessions = sessions;
    this.lines = lines;
    this.beside = beside;
    this.concerns = concerns;
    this.actor = actor;
    this.time = time;
    this.story = story;
    this.pressed = pressed;
  }

  sealed interface Outcome {
    record Lent(String page) implements Outcome {}

    /** Some of the rigs may not go out; nothing was changed. */
    record NotReady(Map<RigId, String> why) implements Outcome {}

    /** Something speaks against some of them, and no reason was given; nothing was changed. */
    record AskedWhy(String spokenAgainst) implements Outcome {}

    /** Something beside the bows may not go out so; nothing was changed. */
    record KitRefused(List<Refusal> refusals) implements Outcome {}
  }

  @Writes
  Outcome lend(SessionDetails wish, String formKey) {
    List<RigId> rigs = wish.rigs();
    String overrideWhy = wish.overrideWhy();
    var earlier = pressed.ledTo(formKey);
    if (earlier.isPresent()) {
      return new Outcome.Lent(earlier.get());
    }
    Map<RigId, Against> against = concerns.ofRigs(rigs);
    Map<RigId, String> unfit = new LinkedHashMap<>();
    for (RigId rig : rigs) {
      if (against.get(rig).blocks()) {
        unfit.put(rig, against.get(rig).keptIn());
      } else if (!isReady(rig)) {
        unfit.put(rig, "It is not ready any more.");
      }
    }
    if (!unfit.isEmpty()) {
      return new Outcome.NotReady(unfit);
    }
    String spokenAgainst =
        against.values().stream()
            .map(one -> one.said(Weight.SPEAKS_AGAINST))
            .filter(said -> !said.isEmpty())
            .collect(Collectors.joining(" "));
    if (!spokenAgainst.isEmpty() && overrideWhy == null) {
      return new Outcome.AskedWhy(spokenAgainst);
    }
    KitBeside.Judged kit = beside.judge(wish.beside(), overrideWhy);
    if (!kit.refusals().isEmpty()) {
      return new Outcome.KitRefused(kit.refusals());
    }
    Instant now = time.now();
    rows.change(
        """
        INSERT INTO loan (kind, leader, issued_at, due_on, issued_by, recorded_at, override_why)
        VALUES ('SESSION', ?1, ?2, ?3, ?4, ?2, ?5)\
        """,
        wish.leader(),
        now,
        time.today(),
        actor.id(),
        spokenAgainst.isEmpty() && kit.spokenAgainst().isEmpty() ? null : overrideWhy);
    LoanId loan = new LoanId(rows.number("SELECT max(id) FROM loan"));
    for (RigId rig : rigs) {
      List<ItemId> parts = new ArrayList<>(sessions.partsOf(rig));
      for (ItemId part : parts) {
        lines.lend(loan, part, rig, now, null);
      }
      Story.Told told =
          Story.Told.ofRig(
                  now, actor.id(), rig, parts, "Lent for a session, loan " + loan.value() + ".")
              .on(loan);
      story.tell(against.get(rig).speaks() ? told.because(overrideWhy) : told);
    }
    lendBeside(loan, wish, kit, now);
    String page = "/sessions/" + loan.value();
    pressed.leads(formKey, page);
    return new Outcome.Lent(page);
  }

  private void lendBeside(LoanId loan, SessionDetails wish, KitBeside.Judged kit, Instant now) {
    List<ItemId> out = beside.lend(loan, wish.beside(), now);
    if (!out.isEmpty()) {
      story.tell(
          new Story.Told(
              now,
              actor.id(),
              "Lent for a session, loan " + loan.value() + ".",
              kit.spokenAgainst().isEmpty() ? null : wish.overrideWhy(),
              loan,
              out,
              List.of()));
    }
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
