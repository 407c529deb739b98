package club.ascham.assembly;

import club.ascham.bow.Compatibility;
import club.ascham.bow.Misfit;
import club.ascham.bow.RigSpec;
import club.ascham.bow.StringSpec;
import club.ascham.bow.StringerKind;
import club.ascham.bow.StringerSpec;
import club.ascham.form.Outcome;
import club.ascham.id.ItemId;
import club.ascham.id.RigId;
import club.ascham.people.Actor;
import club.ascham.rig.Obstacle;
import club.ascham.rig.Place;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.web.NoSuchThing;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;

/** Keeps a spare string or a stringer with a rig, without fitting it. */
@ApplicationScoped
class KeepWith {
  static final String ITEM = "item";

  private final RigSpecs specs;
  private final PartsOnHand parts;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  KeepWith(RigSpecs specs, PartsOnHand parts, Rows rows, Story story, Actor actor, ClubTime time) {
    this.specs = specs;
    this.parts = parts;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  private record Stringer(
      ItemId id, boolean retired, StringerKind kind, int bowFromIn, int bowToIn) {}

  @Writes
  Outcome<RigId> keep(RigId id, ItemCode code) {
    RigCard card =
        specs.of(id).orElseThrow(() -> new NoSuchThing("There is no rig " + id.value() + "."));
    Optional<RigSpec> spec = card.spec();
    if (spec.isEmpty()) {
      return Obstacle.refused("", "This rig is not whole yet.", "Fit its parts first.");
    }
    Optional<PartOnHand> part = parts.coded(code);
    Optional<Stringer> stringer = part.isPresent() ? Optional.empty() : stringer(code);
    if (part.isPresent() && part.get().part().place() == Place.STRING) {
      return keepString(card, spec.get(), part.get());
    }
    if (stringer.isPresent()) {
      return keepStringer(card, spec.get(), stringer.get(), code);
    }
    return Obstacle.refused(
        ITEM,
        code.display() + " is neither a string nor a stringer of this club.",
        "Only those are kept with a rig; everything else has its own hook.");
  }

  /** Lets something that was kept with this rig hang by itself again. */
  @Writes
  Outcome<RigId> letGo(RigId id, ItemCode code) {
    int changed =
        rows.change(
            "DELETE FROM kept_with WHERE rig_id = ?1 AND item_id = (SELECT id FROM item WHERE code"
                + " = ?2)",
            id,
            code.bare());
    if (changed == 0) {
      return Obstacle.refused(ITEM, code.display() + " is not kept with this rig.", "");
    }
    List<ItemId> about =
        rows.list(ItemId.class, "SELECT id FROM item WHERE code = ?1", code.bare());
    story.tell(
        Story.Told.ofRig(
            time.now(),
            actor.id(),
            id,
            about,
            "No longer kept with this rig: " + code.display() + "."));
    return Outcome.done(id, code.display() + " is no longer kept with this rig.");
  }

  private Outcome<RigId> keepString(RigCard card, RigSpec spec, PartOnHand string) {
    if (card.id().equals(string.fittedTo())) {
      return Obstacle.refused(
          ITEM, string.part().code() + " is the string that is fitted.", "Choose a spare one.");
    }
    Optional<Obstacle> notFree = string.refusal(ITEM, null);
    if (notFree.isPresent()) {
      return Obstacle.refused(notFree.get());
    }
    StringSpec spare = string.part().string();
    List<Misfit> misfits =
        Compatibility.misfits(
            new RigSpec(spec.riser(), spec.limbs(), spec.onePiece(), spare, spec.style()));
    return misfits.isEmpty()
        ? kept(card, string.part().id(), string.part().code())
        : refused(misfits.get(0));
  }

  private Outcome<RigId> keepStringer(
      RigCard card, RigSpec spec, Stringer stringer, ItemCode code) {
    if (stringer.retired()) {
      return Obstacle.refused(ITEM, code.display() + " is retired.", "Choose another.");
    }
    if (spec.bowLengthIn().isPresent()) {
      Optional<Misfit> misfit =
          Compatibility.misfit(
              new StringerSpec(stringer.kind(), stringer.bowFromIn(), stringer.bowToIn()),
              spec.bowLengthIn().getAsInt());
      if (misfit.isPresent()) {
        return refused(misfit.get());
      }
    }
    return kept(card, stringer.id(), code.display());
  }

  private Optional<Stringer> stringer(ItemCode code) {
    return rows.one(
        Stringer.class,
        """
        SELECT i.id, i.retired_on IS NOT NULL AS retired, t.stringer_kind AS kind, t.bow_from_in, t.bow_to_in
          FROM item i JOIN stringer t ON t.id = i.id WHERE i.code = ?1\
        """,
        code.bare());
  }

  private static Outcome<RigId> refused(Misfit misfit) {
    return Obstacle.refused(ITEM, misfit.reason(), misfit.remedy());
  }

  private Outcome<RigId> kept(RigCard card, ItemId item, String code) {
    rows.change(
        "INSERT INTO kept_with (item_id, rig_id) VALUES (?1, ?2)"
            + " ON CONFLICT (item_id) DO UPDATE SET rig_id = excluded.rig_id",
        item,
        card.id());
    story.tell(
        Story.Told.ofRig(
            time.now(), actor.id(), card.id(), List.of(item), "Kept with this rig: " + code + "."));
    return Outcome.done(card.id(), code + " is kept with this rig.");
  }
}
