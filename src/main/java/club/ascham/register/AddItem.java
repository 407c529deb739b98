package club.ascham.register;

import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.Pressed;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Registers new items, each under the next code of its kind. */
@ApplicationScoped
public class AddItem {
  static final int MOST_AT_ONCE = 50;

  private final ItemRecords records;
  private final Items items;
  private final Story story;
  private final Pressed pressed;
  private final Actor actor;
  private final ClubTime time;

  AddItem(
      ItemRecords records, Items items, Story story, Pressed pressed, Actor actor, ClubTime time) {
    this.records = records;
    this.items = items;
    this.story = story;
    this.pressed = pressed;
    this.actor = actor;
    this.time = time;
  }

  /** What became of it. */
  public sealed interface Outcome {
    /**
     * The new items, in the order of their codes.
     *
     * @param page where to go on
     */
    record Added(List<ItemId> ids, List<ItemCode> codes, String page) implements Outcome {}

    /** This form was sent before: nothing more was added. */
    record AddedBefore(String page) implements Outcome {}

    /** The letter's numbers are used up. */
    record NoCodesLeft(String message) implements Outcome {}
  }

  /**
   * Adds so many items that are alike.
   *
   * @param copies from 1 to 50
   * @param formKey null: none
   */
  @Writes
  public Outcome add(ItemDetails details, int copies, String formKey) {
    if (copies < 1 || copies > MOST_AT_ONCE) {
      throw new IllegalArgumentException("from 1 to " + MOST_AT_ONCE + " at once, not " + copies);
    }
    Optional<String> before = pressed.ledTo(formKey);
    if (before.isPresent()) {
      return new Outcome.AddedBefore(before.get());
    }
    List<ItemCode> codes = nextCodes(details.kind().letter(), copies);
    if (codes.size() < copies) {
      return new Outcome.NoCodesLeft(
          "Only %d codes that begin with %s are left, and a code is never used twice."
              .formatted(codes.size(), details.kind().letter()));
    }
    List<ItemId> ids = new ArrayList<>();
    for (ItemCode code : codes) {
      Item item = Item.of(code, details, time.today());
      records.persist(item);
      ids.add(item.id());
    }
    records.flush();
    story.tell(
        new Story.Told(
            time.now(),
            actor.id(),
            copies == 1 ? "Registered." : "Registered, one of " + copies + " alike.",
            null,
            null,
            ids,
            List.of()));
    String page = page(codes);
    pressed.leads(formKey, page);
    return new Outcome.Added(ids, codes, page);
  }

  private List<ItemCode> nextCodes(char letter, int copies) {
    List<ItemCode> codes = new ArrayList<>();
    OptionalInt next = ItemCode.nextIssuable(letter, items.lastNumber(letter) + 1);
    while (codes.size() < copies && next.isPresent()) {
      codes.add(ItemCode.of(letter, next.getAsInt()).orElseThrow());
      next = ItemCode.nextIssuable(letter, next.getAsInt() + 1);
    }
    return codes;
  }

  private static String page(List<ItemCode> codes) {
    return codes.size() == 1
        ? "/items/" + codes.get(0).display()
        : "/register/labels?codes="
            + codes.stream().map(ItemCode::bare).collect(Collectors.joining(","));
  }
}
