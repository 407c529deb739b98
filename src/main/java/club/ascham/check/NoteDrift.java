package club.ascham.check;

import club.ascham.drift.DriftWords;
import club.ascham.drift.Drifts;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.rig.Part;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.statistics.Cause;
import club.ascham.statistics.Drift;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.AskForWork;
import club.ascham.upkeep.Request;
import club.ascham.upkeep.Work;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/** Asks for upkeep where a bow is really changing; once, in words without figures, until done. */
@ApplicationScoped
public class NoteDrift {
  private final Drifts drifts;
  private final AskForWork askForWork;
  private final Rows rows;
  private final RigSpecs specs;
  private final ClubTime time;

  NoteDrift(Drifts drifts, AskForWork askForWork, Rows rows, RigSpecs specs, ClubTime time) {
    this.drifts = drifts;
    this.askForWork = askForWork;
    this.rows = rows;
    this.specs = specs;
    this.time = time;
  }

  private record Id(RigId rig) {}

  /** Looks at every bow: after a file brought checks that nobody typed in here. */
  public void all() {
    List<RigId> rigs =
        rows.list(Id.class, "SELECT rig_id FROM rig_parts WHERE set_up_id IS NOT NULL").stream()
            .map(Id::rig)
            .toList();
    specs.of(rigs).values().stream().filter(Judging::isPossible).forEach(this::of);
  }

  void of(RigCard card) {
    boolean tillerAdjusts = card.spec().orElseThrow().tillerAdjusts();
    Drift drift = drifts.of(card.setUpId(), tillerAdjusts);
    if (drift.answer() != Drift.Answer.CHANGING) {
      return;
    }
    club.ascham.verdict.BowPart likeliest = changed(drift);
    boolean maybeALimb =
        likeliest == club.ascham.verdict.BowPart.LIMBS
            || drift.causes().stream().anyMatch(likely -> likely.cause() == Cause.LIMB);
    if (maybeALimb && !tillerAdjusts) {
      // Nothing on such a bow can be set right: until someone has looked at its limbs it stays in.
      ask(card, club.ascham.verdict.BowPart.LIMBS, drift, true);
    }
    if (tillerAdjusts || likeliest != club.ascham.verdict.BowPart.LIMBS) {
      ask(card, likeliest, drift, false);
    }
  }

  private void ask(RigCard card, club.ascham.verdict.BowPart part, Drift drift, boolean blocks) {
    Part item = Judging.item(card, part);
    Work work = WithdrawParts.work(part, item.kind());
    if (!isAskedFor(item.id(), work, blocks)) {
      askForWork.ask(
          item.id(),
          new Request(work, DriftWords.because(drift), blocks, Request.Cause.CHANGING),
          time.now());
    }
  }

  private boolean isAskedFor(ItemId item, Work work, boolean blocks) {
    return rows.number(
            """
            SELECT count(*) FROM upkeep_task
             WHERE item_id = ?1 AND work = ?2 AND closed_by_record IS NULL AND blocks >= ?3""",
            item,
            work,
            blocks)
        > 0;
  }

  /** Where the likeliest cause lies; the limbs, where none is likely. */
  private static club.ascham.verdict.BowPart changed(Drift drift) {
    return drift.causes().isEmpty()
        ? club.ascham.verdict.BowPart.LIMBS
        : switch (drift.causes().get(0).cause()) {
          case STRING_CREEPS -> club.ascham.verdict.BowPart.STRING;
          case BOLT_WALKS -> club.ascham.verdict.BowPart.BOLTS;
          case LIMB -> club.ascham.verdict.BowPart.LIMBS;
        };
  }
}
