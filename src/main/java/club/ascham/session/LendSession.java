package club.ascham.session;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Weight;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.KitBeside;
import club.ascham.loan.LoanLines;
import club.ascham.people.Actor;
import club.ascham.standing.Standing;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** One press lends a set of rigs to a leader until tonight: no slip, no deposit. */
@ApplicationScoped
class LendSession {
  private static final String SAY_WHY =
      " Leave it in, or say in whole words why it goes out all the same; that is kept.";

  private final Rows rows;
  private final Sessions sessions;
  private final LoanLines lines;
  private final KitBeside beside;
  private final Concerns concerns;
  private final Actor actor;
  private final ClubTime time;
  private final Story story;

  LendSession(
      Rows rows,
      Sessions sessions,
      LoanLines lines,
      KitBeside beside,
      Concerns concerns,
      Actor actor,
      ClubTime time,
      Story story) {
    this.rows = rows;
    this.sessions = sessions;
    this.lines = lines;
    this.beside = beside;
    this.concerns = concerns;
    this.actor = actor;
    this.time = time;
    this.story = story;
  }

  @Writes
  Outcome<LoanId> lend(SessionDetails wish) {
    List<RigId> rigs = wish.rigs();
    String overrideWhy = wish.overrideWhy();
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
      return Outcome.refused(notReady(unfit));
    }
    String spokenAgainst =
        against.values().stream()
            .map(one -> one.said(Weight.SPEAKS_AGAINST))
            .filter(said -> !said.isEmpty())
            .collect(Collectors.joining(" "));
    if (!spokenAgainst.isEmpty() && overrideWhy == null) {
      return Outcome.asked("overrideWhy", spokenAgainst + SAY_WHY);
    }
    KitBeside.Judged kit = beside.judge(wish.beside(), overrideWhy);
    if (!kit.refusals().isEmpty()) {
      return Outcome.refused(kit.refusals());
    }
    Instant now = time.now();
    LoanId loan =
        new LoanId(
            rows.add(
                NewRow.of("loan")
                    .with("kind", "SESSION")
                    .with("leader", wish.leader())
                    .with("issued_at", now)
                    .with("due_on", time.today())
                    .with("issued_by", actor.id())
                    .with("recorded_at", now)
                    .with(
                        "override_why",
                        spokenAgainst.isEmpty() && kit.spokenAgainst().isEmpty()
                            ? null
                            : overrideWhy)));
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
    return Outcome.done(loan, said(wish));
  }

  private static Refusal notReady(Map<RigId, String> why) {
    return Refusal.now(
        "Not ready",
        "rigs",
        (why.size() == 1 ? "One of these is" : why.size() + " of these are")
            + " not ready any more, and left out. "
            + why.entrySet().stream()
                .map(one -> "Rig " + one.getKey().value() + ": " + one.getValue())
                .collect(Collectors.joining(" "))
            + " Look, and send the rest again.");
  }

  private static String said(SessionDetails wish) {
    int bows = new HashSet<>(wish.rigs()).size();
    int beside = wish.beside().size();
    return bows
        + (bows == 1 ? " rig" : " rigs")
        + (beside == 0 ? "" : " and " + beside + (beside == 1 ? " thing" : " things") + " beside")
        + " lent until tonight.";
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
