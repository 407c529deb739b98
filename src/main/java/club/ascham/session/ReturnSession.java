package club.ascham.session;

import club.ascham.check.SettleStranger;
import club.ascham.check.StrangerBack;
import club.ascham.check.Verdicts;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.form.Outcome;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.LoanLine;
import club.ascham.loan.LoanLines;
import club.ascham.people.Actor;
import club.ascham.receive.LineBack;
import club.ascham.receive.TakeLineBack;
import club.ascham.report.About;
import club.ascham.report.TellReport;
import club.ascham.report.Telling;
import club.ascham.rules.Club;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.undo.Moves;
import club.ascham.verdict.Given;
import club.ascham.verdict.Saying;
import club.ascham.verdict.Verdict;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Takes a session's rigs back in one list: looked over and fine, or something seen. */
@ApplicationScoped
class ReturnSession {
  private static final Telling NOTHING_TOLD = new Telling(Set.of(), null, null, null);

  private final Rows rows;
  private final Verdicts verdicts;
  private final LoanLines lines;
  private final TakeLineBack takeLineBack;
  private final SettleStranger settleStranger;
  private final Sessions sessions;
  private final Concerns concerns;
  private final TellReport tellReport;
  private final Moves moves;
  private final Actor actor;
  private final ClubTime time;
  private final Club club;
  private final Story story;

  ReturnSession(
      Rows rows,
      Verdicts verdicts,
      LoanLines lines,
      TakeLineBack takeLineBack,
      SettleStranger settleStranger,
      Sessions sessions,
      Concerns concerns,
      TellReport tellReport,
      Moves moves,
      Actor actor,
      ClubTime time,
      Club club,
      Story story) {
    this.rows = rows;
    this.verdicts = verdicts;
    this.lines = lines;
    this.takeLineBack = takeLineBack;
    this.settleStranger = settleStranger;
    this.sessions = sessions;
    this.concerns = concerns;
    this.tellReport = tellReport;
    this.moves = moves;
    this.actor = actor;
    this.time = time;
    this.club = club;
    this.story = story;
  }

  /**
   * What is said of one rig.
   *
   * @param told nothing: looked over, fine
   * @param stranger a part that is on it and not on its list; null: none
   */
  record RigBack(RigId rig, Telling told, StrangerBack stranger) {
    boolean somethingSeen() {
      return !told.isNothing() || stranger != null;
    }
  }

  /**
   * What came back of a session.
   *
   * @param beside what of the things beside the bows is here
   */
  record SetBack(List<RigBack> rigs, List<LineBack> beside) {}

  /** Says beside what became of each rig only what else is to be known, if anything. */
  @Writes
  Outcome<LoanId> takeBack(LoanId loan, SetBack set) {
    List<RigBack> back = set.rigs();
    Instant now = time.now();
    Instant out = sessions.head(loan).orElseThrow().issuedAt();
    // As it stood before they came back: that nobody has checked them since says nothing yet.
    Map<RigId, Against> against = concerns.ofRigs(back.stream().map(RigBack::rig).toList());
    int late = 0;
    Long calmReceipt = null;
    Map<RigId, Long> receipts = new HashMap<>();
    Set<Long> kept = new LinkedHashSet<>();
    List<Long> looks = new ArrayList<>();
    Set<RigId> stillOut =
        sessions.rigsOf(loan).stream()
            .filter(Sessions.Out::isOut)
            .map(Sessions.Out::rig)
            .collect(Collectors.toSet());
    for (RigBack each : back) {
      if (!stillOut.contains(each.rig())) {
        // Received by someone else a moment ago: what is told now stands all the same.
        if (!each.told().isNothing()) {
          tellReport.tell(each.told(), new About(each.rig(), loan, null, About.ToldAt.LOAN, now));
          late++;
        }
        continue;
      }
      long receipt;
      if (each.somethingSeen()) {
        receipt = receipt(loan, now, each.told());
      } else {
        calmReceipt =
            calmReceipt == null ? Long.valueOf(receipt(loan, now, each.told())) : calmReceipt;
        receipt = calmReceipt;
      }
      kept.add(receipt);
      rows.change(
          """
          UPDATE loan_line SET back_at = max(?3, out_at), outcome = 'BACK', receipt_id = ?4,
                 shots = CASE WHEN rig_id IS NULL THEN NULL ELSE ?5 END
           WHERE loan_id = ?1 AND rig_id = ?2 AND back_at IS NULL\
          """,
          loan,
          each.rig(),
          now,
          receipt,
          // The clock may have been set back meanwhile.
          club.rules().shotsWhileOut(Duration.between(out, now.isBefore(out) ? out : now)));
      receipts.put(each.rig(), receipt);
      if (!each.told().isNothing()) {
        tellReport.tell(each.told(), about(loan, receipt, each, now));
      }
      putBack(loan, each, against.get(each.rig()), looks, now);
    }
    String counted = takeBackWhatWentBeside(loan, set.beside(), calmReceipt, kept, now);
    if (!kept.isEmpty()) {
      moves.returned(loan, kept, looks);
    }
    // Once all is taken back: what is on one bow may belong to another of the same session.
    for (RigBack each : back) {
      if (each.stranger() == null || !receipts.containsKey(each.rig())) {
        continue;
      }
      Outcome<RigId> settled =
          settleStranger.settle(each.stranger(), about(loan, receipts.get(each.rig()), each, now));
      if (!(settled instanceof Outcome.Done)) {
        QuarkusTransaction.setRollbackOnly();
        return Outcome.refused(
            StrangerBack.Fields.of(each.rig()).answer(), settled.refusals().get(0).words());
      }
    }
    return Outcome.done(
        loan,
        counted
            + laidAside(against.values())
            + (late == 0
                ? ""
                : " Someone was quicker: what you told of "
                    + (late == 1 ? "a bow" : late + " bows")
                    + " that had come back is kept. Lay it aside."));
  }

  private static About about(LoanId loan, long receipt, RigBack rig, Instant now) {
    return new About(rig.rig(), loan, receipt, About.ToldAt.SESSION, now);
  }

  /** What came back with a danger against it that stood before it did. */
  private static String laidAside(Collection<Against> against) {
    return against.stream()
        .flatMap(one -> one.dangers().stream())
        .map(one -> " Lay it aside, unstrung: " + one.said())
        .distinct()
        .collect(Collectors.joining());
  }

  private long receipt(LoanId loan, Instant now, Telling told) {
    return rows.add(
        NewRow.of("receipt")
            .with("loan_id", loan)
            .with("happened_at", now)
            .with("recorded_at", now)
            .with("received_by", actor.id())
            .with("dry_loose_or_fall", told.tellsOfShock())
            .with("words", told.words()));
  }

  /** Ready again where the look was enough. */
  private void putBack(LoanId loan, RigBack rig, Against against, List<Long> kept, Instant now) {
    long looks = sessions.looksSinceFullCheck(rig.rig());
    boolean enough =
        LookRule.suffices(rig.somethingSeen(), against, looks, club.rules().fullCheckEveryLooks());
    // What a look can't answer is not found fine by one: the bow waits for its check.
    if (!rig.somethingSeen() && !LookRule.isBeyondALook(against)) {
      long look =
          rows.add(
              NewRow.of("bow_check")
                  .with("rig_id", rig.rig())
                  .with("kind", "LOOK")
                  .with("happened_at", now)
                  .with("recorded_at", now)
                  .with("checked_by", actor.id())
                  .with("all_as_listed", true)
                  .with("verdict", Verdict.Kind.FIT)
                  .with("released_at", enough ? now : null)
                  .with("released_by", enough ? actor.id() : null));
      verdicts.keep(look, Given.look(enough ? Saying.LOOKED_OVER : Saying.LOOKED_OVER_CHECK_DUE));
      kept.add(look);
    }
    List<ItemId> parts = sessions.partsOf(rig.rig());
    story.tell(
        Story.Told.ofRig(now, actor.id(), rig.rig(), parts, sentence(rig, against, enough))
            .on(loan));
  }

  private static String sentence(RigBack rig, Against against, boolean enough) {
    if (rig.stranger() != null) {
      return "Back from a session; " + rig.stranger().found() + ".";
    }
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

  /**
   * Arrows and the like that went beside the rigs, by count; says what is missing of them.
   *
   * @param calm the receipt of the rigs of which nothing was told; null: none was kept
   * @param receipts takes the one that they came back on
   */
  private String takeBackWhatWentBeside(
      LoanId loan, List<LineBack> beside, Long calm, Set<Long> receipts, Instant now) {
    Map<Long, LoanLine> out =
        lines.of(loan).stream()
            .filter(line -> line.isOut() && line.rig() == null)
            .collect(Collectors.toMap(LoanLine::id, Function.identity()));
    // What somebody else received a moment ago is here all the same.
    List<LineBack> here =
        beside.stream().filter(line -> line.back() && out.containsKey(line.line())).toList();
    if (here.isEmpty()) {
      return "";
    }
    long kept = calm == null ? receipt(loan, now, NOTHING_TOLD) : calm;
    receipts.add(kept);
    List<ItemId> items = new ArrayList<>();
    List<String> said = new ArrayList<>();
    for (LineBack each : here) {
      LoanLine line = out.get(each.line());
      takeLineBack.take(kept, line, each, now);
      items.add(line.item());
      String counted = TakeLineBack.countedShort(line, each);
      if (!counted.isEmpty()) {
        said.add(counted + ".");
      }
      if (each.damage() != null) {
        said.add(line.code() + " came back damaged and is withdrawn.");
      }
    }
    String counted = String.join(" ", said);
    story.tell(
        new Story.Told(
            now,
            actor.id(),
            counted.isEmpty() ? "Back from a session." : "Back from a session: " + counted,
            null,
            loan,
            items,
            List.of()));
    return counted;
  }
}
