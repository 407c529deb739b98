package club.ascham.exchange;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Every list there is, in the order in which an empty club is filled: what is referred to first.
 */
final class Lists {
  private static final List<CsvList> ALL =
      Stream.of(
              List.of(UpkeepLists.braceBands()),
              ItemLists.all(),
              RecordLists.ofRigs(),
              RecordLists.ofLending(),
              RecordLists.ofChecking(),
              RecordLists.ofMoves(),
              UpkeepLists.records(),
              RecordLists.ofReports(),
              RecordLists.ofAccidents(),
              UpkeepLists.stories(),
              List.of(UpkeepLists.rules()))
          .flatMap(List::stream)
          .toList();

  /** Of a file that an earlier version gave: taken apart here, its lines would only be guessed. */
  private static final String VERDICTS =
      " What a verdict says is a list of its own now, “verdict-lines”: give its words there, line"
          + " by line, and leave “verdictText” out; or bring the backup of the earlier version back,"
          + " and this one takes them over itself.";

  private Lists() {}

  static List<CsvList> all() {
    return ALL;
  }

  static Optional<CsvList> named(String name) {
    return ALL.stream().filter(list -> list.name().equals(name)).findFirst();
  }

  /** The list whose columns these are, in whatever order; no two lists have the same. */
  static Optional<CsvList> withHeader(List<String> header) {
    Set<String> names = Set.copyOf(new HashSet<>(header));
    return ALL.stream().filter(list -> list.isOf(names)).findFirst();
  }

  /** Why no list has these columns, beside the list that comes nearest. */
  static String misfit(List<String> header) {
    Set<String> found = new HashSet<>(header);
    CsvList nearest =
        ALL.stream()
            .max(
                Comparator.comparingLong(
                    list ->
                        list.header().stream().filter(found::contains).count() * 100L
                            - list.header().size()))
            .orElseThrow();
    if (nearest.header().stream().noneMatch(found::contains)) {
      return "None of its columns is known: the first line must name the columns, as an export"
          + " does. The first line has "
          + Codecs.quoted(String.join(",", header))
          + ".";
    }
    return "Its columns come nearest to “%s”%s%s.%s"
        .formatted(
            nearest.name(),
            named(", but it lacks ", nearest.header(), found),
            named(
                nearest.header().stream().allMatch(found::contains)
                    ? ", but this list does not know "
                    : ", and this list does not know ",
                header,
                new HashSet<>(nearest.header())),
            found.contains("verdictText") ? VERDICTS : "");
  }

  private static String named(String lead, List<String> names, Set<String> without) {
    String rest =
        names.stream()
            .filter(name -> !without.contains(name))
            .map(name -> name.isBlank() ? "a column without a name" : "“" + name + "”")
            .collect(Collectors.joining(", "));
    return rest.isEmpty() ? "" : lead + rest;
  }
}
