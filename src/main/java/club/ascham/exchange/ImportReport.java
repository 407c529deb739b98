package club.ascham.exchange;

import java.util.List;

/**
 * What an import would do, or did.
 *
 * @param bad everything that stands in its way: while there is any, nothing is imported
 * @param badInAll how many there are, of which {@code bad} holds the first
 */
record ImportReport(List<PerList> lists, List<BadCell> bad, int badInAll) {
  ImportReport {
    lists = List.copyOf(lists);
    bad = List.copyOf(bad);
  }

  /**
   * @param added rows that were not there
   * @param changed rows of rules that were there and differ
   * @param unchanged rows that are there already, exactly so
   */
  record PerList(String file, String list, String title, int added, int changed, int unchanged) {}

  boolean sound() {
    return badInAll == 0;
  }

  int rows() {
    return lists.stream().mapToInt(list -> list.added() + list.changed()).sum();
  }
}
