package club.ascham.home;

import club.ascham.concern.Concern;
import club.ascham.id.ItemId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What became of what was typed into the code box. */
sealed interface Found {

  /** One exact hit: straight on to what it needs. */
  record One(WhatNext next) implements Found {}

  /**
   * Several, to choose from.
   *
   * @param more whether there were too many to list
   */
  record Several(List<Hit<FoundPerson>> people, List<Hit<FoundItem>> items, boolean more)
      implements Found {}

  /** Nothing, and why. */
  record Nothing(String why) implements Found {}

  /**
   * A thing found and where it leads.
   *
   * @param kept what keeps it in; null: nothing
   */
  record Hit<T>(T what, WhatNext next, Concern kept) {}

  /**
   * @param kept what keeps in those of the items that something does
   * @param more whether there were more than are given here
   * @param hand whether the person asking may change anything
   */
  static Found among(
      List<FoundPerson> people,
      List<FoundItem> items,
      Map<ItemId, Concern> kept,
      boolean more,
      boolean hand,
      String typed) {
    List<Hit<FoundPerson>> persons =
        people.stream().map(person -> new Hit<>(person, WhatNext.of(person), null)).toList();
    List<Hit<FoundItem>> things =
        items.stream()
            .map(item -> new Hit<>(item, WhatNext.of(item, hand), kept.get(item.id())))
            .toList();
    List<WhatNext> all = new ArrayList<>();
    persons.forEach(hit -> all.add(hit.next()));
    things.forEach(hit -> all.add(hit.next()));
    return switch (all.size()) {
      case 0 -> new Nothing("Nothing of the club’s is called “" + typed + "”.");
      case 1 -> new One(all.get(0));
      default -> new Several(persons, things, more);
    };
  }
}
