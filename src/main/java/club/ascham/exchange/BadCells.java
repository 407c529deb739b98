package club.ascham.exchange;

import java.util.ArrayList;
import java.util.List;

/**
 * Everything that stands in the way of an import: counted, and the first of it kept to be shown.
 */
final class BadCells {
  private static final int MOST_SHOWN = 200;

  private final List<BadCell> first = new ArrayList<>();
  private int inAll;

  void add(BadCell bad) {
    inAll++;
    if (first.size() < MOST_SHOWN) {
      first.add(bad);
    }
  }

  List<BadCell> first() {
    return first;
  }

  int inAll() {
    return inAll;
  }
}
