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
  private final Fitted fitted;
  private final Rows rows;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;
  private final Currency currency;

  ChangeItem(
      ItemRecords records,
      Fitted fitted,
      Rows rows,
      Story story,
      Actor actor,
      ClubTime time,
      Settings settings) {
    this.records = records;
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
    Optional<Refusal> refusal = refusal(item, details);
    if (refusal.isPresent()) {
      return Outcome.refused(refusal.get());
    }
    List<Changes.Change> changes = Changes.between(written(item.details()), written(details));
    if (!changes.isEmpty()) {
      item.describe(details);
      story.tell(Story.Told.ofItem(time.now(), actor.id(), id, Changes.sentence(changes)));
    }
    return Outcome.done(
        id, changes.isEmpty() ? "Nothing was different, so nothing was changed." : "Changed.");
  }

  private Optional<Refusal> refusal(Item item, ItemDetails details) {
    if (details.particulars() instanceof Particulars.OfKitItem kit
        && details.kind() == ItemKind.ARROWS) {
      return arrowsOut(item, kit);
    }
    return fitted
        .rigOf(item.id())
        .flatMap(
            rig ->
                fitted
                    .misfit(rig, item.id(), details.particulars())
                    .map(
                        misfit ->
                            new Refusal(
                                field(misfit.kind(), item.kind()),
                                "It is fitted to a rig whose parts would no longer fit: "
                                    + misfit.reason()
                                    + " Take it off the rig first.")));
  }

  private Optional<Refusal> arrowsOut(Item item, Particulars.OfKitItem now) {
    long lines =
        rows.number(
            "SELECT count(*) FROM loan_line WHERE item_id = ?1 AND back_at IS NULL", item.id());
    long out =
        rows.number(
            "SELECT sum(arrow_count) FROM loan_line WHERE item_id = ?1 AND back_at IS NULL",
            item.id());
    boolean wasPool = ((Particulars.OfKitItem) item.details().particulars()).pool();
    if (lines > 0 && wasPool != now.pool()) {
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
