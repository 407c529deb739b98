package club.ascham.check;

import club.ascham.drift.DriftWords;
import club.ascham.drift.Drifts;
import club.ascham.id.ItemId;
import club.ascham.rig.Part;
import club.ascham.rig.RigCard;
import club.ascham.statistics.Drift;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;

/** Asks for upkeep where a bow is really changing; once, until it is done. */
@ApplicationScoped
class NoteDrift {
  private final Drifts drifts;
  private final AskForWork askForWork;
  private final Rows rows;
  private final ClubTime time;

  NoteDrift(Drifts drifts, AskForWork askForWork, Rows rows, ClubTime time) {
    this.drifts = drifts;
    this.askForWork = askForWork;
    this.rows = rows;
    this.time = time;
  }

  void of(RigCard card) {
    Drift drift = drifts.of(card.setUpId(), card.spec().orElseThrow().tillerAdjusts());
    if (drift.answer() != Drift.Answer.CHANGING) {
      return;
    }
    club.ascham.verdict.Part changed = changed(drift);
    Part item = new Judging(card).item(changed);
    Work work = WithdrawParts.work(changed, item.kind());
    if (!isAskedFor(item.id(), work)) {
      askForWork.ask(
          item.id(), new Request(work, DriftWords.because(drift), false), time.now(), null);
    }
  }

  private boolean isAskedFor(ItemId item, Work work) {
    return rows.number(
            "SELECT count(*) FROM upkeep_task WHERE item_id = ?1 AND work = ?2 AND closed_by_record IS NULL",
            item,
            work)
        > 0;
  }

  /** Where the likeliest cause lies; the limbs, where none is likely. */
  private static club.ascham.verdict.Part changed(Drift drift) {
    return drift.causes().isEmpty()
        ? club.ascham.verdict.Part.LIMBS
        : switch (drift.causes().get(0).cause()) {
          case STRING_CREEPS -> club.ascham.verdict.Part.STRING;
          case BOLT_WALKS -> club.ascham.verdict.Part.BOLTS;
          case LIMB -> club.ascham.verdict.Part.LIMBS;
        };
  }
}
