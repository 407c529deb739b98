package club.ascham.register;

import club.ascham.Settings;
import club.ascham.bow.Misfit;
import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.LengthUnit;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Corrects what the register holds of an item. */
@ApplicationScoped
public class ChangeItem {
  private final ItemRecords records;
  private final Items items;
  private final Fitted fitted;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;
  private final Currency currency;

  ChangeItem(
      ItemRecords records,
      Items items,
      Fitted fitted,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time,
      Settings settings) {
    this.records = records;
    this.items = items;
    this.fitted = fitted;
    this.rows = rows;
    this.story = story;
    this.actor = actor;
    this.time = time;
    this.currency = Currency.getInstance(settings.currency());
  }

  /** Puts new details in the place of those of a version. */
  @Writes
  public Outcome<ItemId> change(ItemId id, int version, ItemDetails details) {
    Item item = records.findById(id.value());
    if (item.version() != version) {
      return Outcome.refused(
          Refusal.now(
              "Someone saved first",
              "version",
              "You read version %d and it is version %d now. Read it again. Nothing was changed."
                  .formatted(version, item.version())));
    }
    ItemDetails before = items.registered(List.of(id)).get(0).details();
    Optional<Refusal> refusal = refusal(id, before, details);
    if (refusal.isPresent()) {
      return Outcome.refused(refusal.get());
    }
    List<Changes.Change> changes =
        Changes.between(details.kind(), written(before), written(details));
    if (!changes.isEmpty()) {
      records.change(item, details);
      story.tell(Story.Told.ofItem(time.now(), actor.id(), id, Changes.sentence(changes)));
    }
    return Outcome.done(
        id, changes.isEmpty() ? "Nothing was different, so nothing was changed." : "Changed.");
  }

  private Optional<Refusal> refusal(ItemId id, ItemDetails before, ItemDetails details) {
    if (details.particulars() instanceof Particulars.OfKitItem kit
        && details.kind() == ItemKind.ARROWS) {
      return arrowsOut(id, (Particulars.OfKitItem) before.particulars(), kit);
    }
    return fitted
        .rigOf(id)
        .flatMap(
            rig ->
                fitted
                    .misfit(rig, id, details.particulars())
                    .map(
                        misfit ->
                            new Refusal(
                                field(misfit.kind(), details.kind()),
                                "It is fitted to a rig whose parts would no longer fit: "
                                    + misfit.reason()
                                    + " Take it off the rig first.")));
  }

  private Optional<Refusal> arrowsOut(
      ItemId id, Particulars.OfKitItem before, Particulars.OfKitItem now) {
    long lines =
        rows.number("SELECT count(*) FROM loan_line WHERE item_id = ?1 AND back_at IS NULL", id);
    long out =
        rows.number(
            "SELECT sum(arrow_count) FROM loan_line WHERE item_id = ?1 AND back_at IS NULL", id);
    if (lines > 0 && before.pool() != now.pool()) {
      return Optional.of(
          new Refusal(
              "pool", "Some of these arrows are on loan: receive them before changing this."));
    }
    if (now.arrowCount() < out) {
      return Optional.of(
          new Refusal("arrowCount", out + " of these arrows are on loan: there can't be fewer."));
    }
    return Optional.empty();
  }

  private Map<String, String> written(ItemDetails details) {
    return ItemWriter.write(details, LengthUnit.MILLIMETRE, currency);
  }

  private static String field(Misfit.Kind misfit, ItemKind kind) {
    return switch (misfit) {
      case BUILD -> "build";
      case FITTING -> "limbFitting";
      case MODEL -> kind == ItemKind.RISER ? "limbModel" : "model";
      case STRING_MEASURED -> "measuredLength";
      case STRING_MATERIAL -> kind == ItemKind.STRING ? "material" : "hmpeTips";
      case BOW_LENGTH, STRING_DESIGNATION, STRINGER_LENGTH ->
          switch (kind) {
            case RISER -> "lengthIn";
            case LIMBS -> "size";
            case STRING -> "forBowIn";
            default -> "bowLengthIn";
          };
    };
  }
}
