package club.ascham.check;

import club.ascham.drift.DriftWords;
import club.ascham.drift.Drifts;
import club.ascham.id.ItemId;
import club.ascham.rig.RigCard;
import club.ascham.statistics.Cause;
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
    Work work = drift.causes().isEmpty() ? Work.LIMB_INSPECTION : work(drift.causes().get(0));
    ItemId item = new Judging(card).item(part(work)).id();
    if (!isAskedFor(item, work)) {
      askForWork.ask(item, new Request(work, DriftWords.because(drift), false), time.now(), null);
    }
  }

  private boolean isAskedFor(ItemId item, Work work) {
    return rows.number(
            "SELECT count(*) FROM upkeep_task WHERE item_id = ?1 AND work = ?2 AND closed_by_record IS NULL",
            item,
            work)
        > 0;
  }

  /** What stretches is not mended: it is looked at, and kept or replaced. */
  private static Work work(Cause.Likely likely) {
    return switch (likely.cause()) {
      case STRING_CREEPS -> Work.STRING_REPLACEMENT;
      case BOLT_WALKS -> Work.BOLT_INSPECTION;
      case LIMB -> Work.LIMB_INSPECTION;
    };
  }

  private static club.ascham.verdict.Part part(Work work) {
    return switch (work) {
      case STRING_REPLACEMENT -> club.ascham.verdict.Part.STRING;
      case BOLT_INSPECTION -> club.ascham.verdict.Part.BOLTS;
      default -> club.ascham.verdict.Part.LIMBS;
    };
  }
}
