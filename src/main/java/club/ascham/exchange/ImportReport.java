package club.ascham.exchange;

import io.quarkus.qute.TemplateData;
import java.util.List;

/**
 * What an import would do, or did.
 *
 * @param bad everything that stands in its way: while there is any, nothing is imported
 * @param badInAll how many there are, of which {@code bad} holds the first
 * @param newItems the items that were added, by id
 * @param changedRules the upkeep rules that were added or changed, by number
 * @param newEntries the entries of the record that were added, by number
 */
record ImportReport(
    List<PerList> lists,
    List<BadCell> bad,
    int badInAll,
    List<Long> newItems,
    List<Long> changedRules,
    List<Long> newEntries) {
  ImportReport {
    lists = List.copyOf(lists);
    newItems = List.copyOf(newItems);
    changedRules = List.copyOf(changedRules);
    newEntries = List.copyOf(newEntries);
    bad = List.copyOf(bad);
  }

  /**
   * @param added rows that were not there
   * @param changed rows of rules that were there and differ
   * @param unchanged rows that are there already, exactly so
   */
  @TemplateData
  record PerList(String file, String list, String title, int added, int changed, int unchanged) {}

  boolean has(String list) {
    return lists.stream().anyMatch(one -> one.list().equals(list));
  }

  boolean sound() {
    return badInAll == 0;
  }

  /** Rows that would come in, or did. */
  int rows() {
    return lists.stream().mapToInt(list -> list.added() + list.changed()).sum();
  }
}
