package club.ascham.session;

import club.ascham.bow.ArrowLength;
import club.ascham.bow.ArrowMass;
import club.ascham.bow.Experience;
import club.ascham.bow.FingerWeight;
import club.ascham.bow.ShortestArrow;
import club.ascham.bow.WeightCeiling;
import club.ascham.bow.WeightOnFingers;
import club.ascham.concern.Against;
import club.ascham.concern.Concerns;
import club.ascham.concern.Weight;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.loan.LoanLines;
import club.ascham.people.Actor;
import club.ascham.rig.RigSpecs;
import club.ascham.store.NewRow;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;

/**
 * Gives an archer of a session a share in a rig that is not too heavy, and arrows long and heavy
 * enough. An archer of a session counts as a beginner whose draw may have been estimated: the rules
 * are the careful ones.
 */
@ApplicationScoped
class AddArcher {
  static final String NOTED = "The archer is noted.";
  private static final String SAY_WHY =
      " Take a lighter bow, or say in whole words why this one all the same.";

  private final Rows rows;
  private final LoanLines lines;
  private final RigSpecs rigs;
  private final Concerns concerns;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  AddArcher(
      Rows rows,
      LoanLines lines,
      RigSpecs rigs,
      Concerns concerns,
      Story story,
      Actor actor,
      ClubTime time) {
    this.rows = rows;
    this.lines = lines;
    this.rigs = rigs;
    this.concerns = concerns;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  private record Arrows(
      ItemId id,
      Length length,
      Double massGr,
      boolean pool,
      Integer count,
      boolean outHere,
      boolean outElsewhere) {}

  /** Faults stay at the fields of {@link SharedBow}. */
  @Writes
  Outcome<LoanId> add(LoanId loan, SharedBow wish, Typed typed) {
    RigId rig = wish.rig();
    Length draw = wish.draw();
    String why = wish.given().why();
    if (rows.number(
            "SELECT count(*) FROM loan_line WHERE loan_id = ?1 AND rig_id = ?2 AND back_at IS NULL",
            loan,
            rig)
        == 0) {
      typed.fault("rig", "That rig is not out with this session.");
      return Outcome.unread();
    }
    Arrows arrows = wish.arrows() == null ? null : arrows(loan, wish.arrows(), typed).orElse(null);
    Optional<WeightOnFingers> weight = weight(rig, draw);
    weight.ifPresent(lb -> heavy(wish, lb, typed));
    Against against = arrows == null ? Against.NOTHING : concerns.of(arrows.id());
    if (arrows != null) {
      unfit(
              arrows,
              against,
              ArrowLength.shortestSafe(draw.inches(), wish.estimated(), true, false),
              weight)
          .ifPresent(fault -> typed.fault("arrows", fault));
    }
    if (arrows != null && !arrows.outHere() && against.speaks() && why == null && typed.sound()) {
      typed.fault(
          "overrideWhy",
          against.said(Weight.SPEAKS_AGAINST)
              + " Take others, or say in whole words why these all the same.");
    }
    if (!typed.sound()) {
      return Outcome.unread();
    }
    rows.add(
        NewRow.of("session_archer")
            .with("loan_id", loan)
            .with("rig_id", rig)
            .with("draw_length", draw)
            .with("arrows_id", arrows == null ? null : arrows.id())
            .with("age_band", wish.age())
            .with("override_why", why)
            .with("override_coach", why == null ? null : wish.given().coach()));
    if (arrows != null && !arrows.pool() && !arrows.outHere()) {
      lines.lend(loan, arrows.id(), null, time.now(), null);
    }
    Story.Told told =
        Story.Told.ofRig(
                time.now(), actor.id(), rig, List.of(), "An archer shares it this session.")
            .on(loan);
    story.tell(why == null ? told : told.because(wish.given().said()));
    return Outcome.done(
        loan,
        arrows != null && arrows.massGr() == null && weight.isPresent()
            ? NOTED
                + " The mass of the arrows is not recorded, so it was not checked against the bow."
                + " Weigh one and have it entered."
            : NOTED);
  }

  /** A beginner's ceiling for their age: nobody asks how far an archer of a session has come. */
  private static void heavy(SharedBow wish, WeightOnFingers weight, Typed typed) {
    WeightCeiling ceiling = WeightCeiling.of(wish.age(), Experience.BEGINNER);
    switch (ceiling.of(weight)) {
      case LIGHT_ENOUGH -> {}
      case REFUSED -> typed.fault("rig", ceiling.against(weight));
      case WITH_A_COACH ->
          wish.given().lacking(ceiling.against(weight), SAY_WHY, true).forEach(typed::fault);
    }
  }

  private static Optional<String> unfit(
      Arrows arrows, Against against, ShortestArrow shortest, Optional<WeightOnFingers> weight) {
    if (arrows.length() == null) {
      return Optional.of("The length of these arrows is not recorded: measure one first.");
    }
    if (!shortest.allows(arrows.length())) {
      return Optional.of(
          "Too short for this archer: "
              + LengthText.both(arrows.length())
              + ", and the shortest that is safe is "
              + LengthText.both(shortest.length())
              + ". "
              + shortest.why());
    }
    if (arrows.outElsewhere()) {
      return Optional.of("These are on loan elsewhere.");
    }
    if (!arrows.outHere() && against.blocks()) {
      return Optional.of("These stay in. " + against.keptIn() + " Take others.");
    }
    return weight
        .filter(lb -> arrows.massGr() != null)
        .map(lb -> new ArrowMass(arrows.massGr(), lb))
        .filter(mass -> !mass.isSound())
        .map(
            mass ->
                "Too light for this archer: "
                    + mass.shortfall()
                    + ". Take heavier arrows, or a bow with lighter limbs.");
  }

  private Optional<WeightOnFingers> weight(RigId rig, Length draw) {
    return rigs.of(rig)
        .flatMap(
            card ->
                card.spec()
                    .flatMap(spec -> FingerWeight.reckoned(spec, card.setUp(), draw.inches())));
  }

  private Optional<Arrows> arrows(LoanId loan, ItemCode code, Typed typed) {
    Optional<Arrows> found =
        rows.one(
            Arrows.class,
"""
SELECT i.id, k.arrow_length AS length, k.arrow_mass_gr AS mass_gr, k.pool, k.arrow_count AS count,
       EXISTS (SELECT 1 FROM loan_line x WHERE x.item_id = i.id AND x.loan_id = ?2 AND x.back_at IS NULL) AS out_here,
       k.pool = 0 AND EXISTS (SELECT 1 FROM loan_line x WHERE x.item_id = i.id AND x.loan_id <> ?2 AND x.back_at IS NULL) AS out_elsewhere
  FROM item i JOIN kit_item k ON k.id = i.id
 WHERE i.code = ?1 AND i.kind = 'ARROWS' AND i.retired_on IS NULL""",
            code.bare(),
            loan);
    if (found.isEmpty()) {
      typed.fault("arrows", "That is no set or pool of arrows in use.");
    }
    return found;
  }
}
