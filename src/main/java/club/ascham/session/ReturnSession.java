package club.ascham.session;

import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.report.About;
import club.ascham.report.TellReport;
import club.ascham.report.Telling;
import club.ascham.rules.Club;
import club.ascham.store.Pressed;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.undo.Moves;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Takes a session's rigs back in one list: looked over and fine, or something seen. */
@ApplicationScoped
class ReturnSession {
  private final Rows rows;
  private final Sessions sessions;
  private final Concerns concerns;
  private final TellReport tellReport;
  private final Moves moves;
  private final Actor actor;
  private final ClubTime time;
  private final Club club;
  private final Story story;
  private final Pressed pressed;

  ReturnSession(
      Rows rows,
      Sessions sessions,
      Concerns concerns,
      TellReport tellReport,
      Moves moves,
      Actor actor,
      ClubTime time,
      Club club,
      Story story,
      Pressed pressed) {
    this.rows = rows;
    this.sessions = sessions;
    this.concerns = concerns;
    this.tellReport = tellReport;
    this.moves = moves;
    this.actor = actor;
    this.time = time;
    this.club = club;
    this.story = story;
    this.pressed = pressed;
  }

  /**
   * What is said of one rig.
   *
   * @param told nothing: looked over, fine
   */
  record RigBack(RigId rig, Telling told) {
    boolean somethingSeen() {
      return !told.isNothing();
    }
  }

  /** Says how many went back ready, and how many wait for a check. */
  record Returned(String said) {}

  @Writes
  Returned takeBack(LoanId loan, List<RigBack> back, String formKey) {
    if (pressed.ledTo(formKey).isPresent()) {
      return new Returned("These were received already.");
    }
    Instant now = time.now();
    Instant out = sessions.head(loan).orElseThrow().issuedAt();
    // As it stood before they came back: that nobody has checked them since says nothing yet.
    Map<RigId, Against> against = concerns.ofRigs(back.stream().map(RigBack::rig).toList());
    int ready = 0;
    int toCheck = 0;
    int late = 0;
    Long calmReceipt = null;
    Set<Long> receipts = new LinkedHashSet<>();
    List<Long> looks = new ArrayList<>();
    Set<RigId> stillOut =
        sessions.rigsOf(loan).stream()
            .filter(Sessions.Out::isOut)
            .map(Sessions.Out::rig)
            .collect(Collectors.toSet());
    for (RigBack each : back) {
      if (!stillOut.contains(each.rig())) {
        // Received by someone else a moment ago: what is told now stands all the same.
        if (each.somethingSeen()) {
          tellReport.tell(each.told(), new About(each.rig(), loan, null, About.ToldAt.LOAN, now));
          late++;
        }
        continue;
      }
      long receipt;
      if (each.somethingSeen()) {
        receipt = receipt(loan, now, each);
      } else {
        calmReceipt = calmReceipt == null ? Long.valueOf(receipt(loan, now, each)) : calmReceipt;
        receipt = calmReceipt;
      }
      receipts.add(receipt);
      rows.change(
          """
              UPDATE loan_line SET back_at = max(?3, out_at), outcome = 'BACK', receipt_id = ?4,
                     shots = CASE WHEN rig_id IS NULL THEN NULL ELSE ?5 END
               WHERE loan_id = ?1 AND rig_id = ?2 AND back_at IS NULL""",
          loan,
          each.rig(),
          now,
          receipt,
          // The clock may have been set back meanwhile.
          club.rules().shotsWhileOut(Duration.between(out, now.isBefore(out) ? out : now)));
      if (each.somethingSeen()) {
        report(loan, receipt, each, now);
      }
      if (putBack(loan, each, against.get(each.rig()), looks, now)) {
        ready++;
      } else {
        toCheck++;
      }
    }
    takeBackWhatWentBeside(loan, now);
    if (!receipts.isEmpty()) {
      moves.returned(loan, receipts, looks);
    }
    String said =
        ready
            + (ready == 1 ? " rig is" : " rigs are")
            + " ready again"
            + (toCheck == 0 ? "." : "; " + toCheck + " to be checked.")
            + laidAside(against.values())
            + (late == 0
                ? ""
                : " Someone was quicker: what you told of "
                    + (late == 1 ? "a bow" : late + " bows")
                    + " that had come back is kept. Lay it aside.");
    pressed.leads(formKey, "/sessions/" + loan.value());
    return new Returned(said);
  }

  /** What came back with a danger against it that stood before it did. */
  private static String laidAside(Collection<Against> against) {
    return against.stream()
        .flatMap(one -> one.dangers().stream())
        .map(one -> " Lay it aside, unstrung: " + one.said())
        .distinct()
        .collect(Collectors.joining());
  }

  private void report(LoanId loan, long receipt, RigBack rig, Instant now) {
    tellReport.tell(rig.told(), new About(rig.rig(), loan, receipt, About.ToldAt.SESSION, now));
  }

  private long receipt(LoanId loan, Instant now, RigBack rig) {
    rows.change(
        """
        INSERT INTO receipt (loan_id, happened_at, recorded_at, received_by, dry_loose_or_fall, words)
        VALUES (?1, ?2, ?2, ?3, ?4, ?5)""",
        loan,
        now,
        actor.id(),
        rig.told().tellsOfShock(),
        rig.told().words());
    return rows.number("SELECT max(id) FROM receipt");
  }

  /** Whether the look was enough to put it back ready. */
  private boolean putBack(LoanId loan, RigBack rig, Against against, List<Long> kept, Instant now) {
    long looks = sessions.looksSinceFullCheck(rig.rig());
    boolean enough =
        LookRule.suffices(rig.somethingSeen(), against, looks, club.rules().fullCheckEveryLooks());
    // What a look can't answer is not found fine by one: the bow waits for its check.
    if (!rig.somethingSeen() && !LookRule.isBeyondALook(against)) {
      kept.add(
          rows.number(
              """
          INSERT INTO bow_check (rig_id, kind, happened_at, recorded_at, checked_by, all_as_listed, verdict,
                                 verdict_text, released_at, released_by)
          VALUES (?1, 'LOOK', ?2, ?2, ?3, 1, 'FIT', ?4, ?5, ?6) RETURNING id""",
              rig.rig(),
              now,
              actor.id(),
              enough
                  ? "Looked over after a session: fine."
                  : "Looked over: fine. A full check is due.",
              enough ? now : null,
              enough ? actor.id() : null));
    }
    List<ItemId> parts = sessions.partsOf(rig.rig());
    story.tell(
        Story.Told.ofRig(now, actor.id(), rig.rig(), parts, sentence(rig, against, enough))
            .on(loan));
    return enough;
  }

  private static String sentence(RigBack rig, Against against, boolean enough) {
    if (rig.somethingSeen()) {
      return "Back from a session; something seen.";
    }
    if (enough) {
      return "Back from a session; looked over, fine.";
    }
    return LookRule.isBeyondALook(against)
        ? "Back from a session; to be checked for what stands against it."
        : "Back from a session; looked over, fine, and due for a full check.";
  }

  /** Arrows and the like that went beside the rigs come back with the last of them. */
  private void takeBackWhatWentBeside(LoanId loan, Instant now) {
    rows.change(
        """
        UPDATE loan_line SET back_at = max(?2, out_at), outcome = 'BACK', back_count = arrow_count,
               receipt_id = (SELECT max(id) FROM receipt WHERE loan_id = ?1)
         WHERE loan_id = ?1 AND rig_id IS NULL AND back_at IS NULL
           AND NOT EXISTS (SELECT 1 FROM loan_line r WHERE r.loan_id = ?1 AND r.rig_id IS NOT NULL AND r.back_at IS NULL)""",
        loan,
        now);
  }
}
