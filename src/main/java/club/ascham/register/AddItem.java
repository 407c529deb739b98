package club.ascham.register;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.ItemId;
import club.ascham.people.Actor;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.LongStream;

/** Registers new items, each under the next code of its kind. */
@ApplicationScoped
public class AddItem {
  static final int MOST_AT_ONCE = 50;

  private final ItemRecords records;
  private final Items items;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  AddItem(ItemRecords records, Items items, Story story, Actor actor, ClubTime time) {
    this.records = records;
    this.items = items;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /**
   * Adds so many items that are alike, and names the first: the others follow it by their numbers.
   *
   * @param copies from 1 to 50
   */
  @Writes
  public Outcome<ItemId> add(ItemDetails details, int copies) {
    if (copies < 1 || copies > MOST_AT_ONCE) {
      throw new IllegalArgumentException("from 1 to " + MOST_AT_ONCE + " at once, not " + copies);
    }
    List<ItemCode> codes = nextCodes(details.kind().letter(), copies);
    if (codes.size() < copies) {
      return Outcome.refused(
          Refusal.now(
              "No codes left",
              "copies",
              "Only %d codes that begin with %s are left, and a code is never used twice."
                  .formatted(codes.size(), details.kind().letter())));
    }
    List<ItemId> ids = new ArrayList<>();
    for (ItemCode code : codes) {
      Item item = Item.of(code, details, time.today());
      records.add(item, details);
      ids.add(item.id());
    }
    story.tell(
        new Story.Told(
            time.now(),
            actor.id(),
            copies == 1 ? "Registered." : "Registered, one of " + copies + " alike.",
            null,
            null,
            ids,
            List.of()));
    return Outcome.done(
        ids.get(0),
        copies == 1
            ? "Registered as " + codes.get(0).display() + ". Write the code on it."
            : "Registered "
                + copies
                + " "
                + details.kind().plural()
                + ", each with a code of its own.");
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

  /** Those that one press added. */
  List<Registered> added(ItemId first, int copies) {
    return items.registered(
        LongStream.range(first.value(), first.value() + copies).mapToObj(ItemId::new).toList());
  }

  /** Where one goes on after adding them. */
  String page(ItemId first, int copies) {
    return page(added(first, copies).stream().map(Registered::code).toList());
  }

  private static String page(List<ItemCode> codes) {
    return codes.size() == 1
        ? "/items/" + codes.get(0).display()
        : "/register/labels?codes="
            + codes.stream().map(ItemCode::bare).collect(Collectors.joining(","));
  }
}
