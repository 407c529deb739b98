package club.ascham.fleet;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A rig that cost trouble in the last year.
 *
 * @param times how often, and the way to each time
 * @param kinds what it was: {@code 5 × adjust first, 1 × withdrawn}
 */
public record TroubledRig(String title, String name, String href, Figure times, String kinds) {

  /** Those that cost most; of as many troubles, the one with the latest first. */
  static List<TroubledRig> most(List<Trouble> newestFirst, int atMost) {
    Map<Long, List<Trouble>> byRig =
        newestFirst.stream()
            .collect(
                Collectors.groupingBy(
                    trouble -> trouble.rig().value(), LinkedHashMap::new, Collectors.toList()));
    return byRig.values().stream()
        .sorted(Comparator.comparingInt((List<Trouble> of) -> of.size()).reversed())
        .limit(atMost)
        .map(TroubledRig::of)
        .toList();
  }

  private static TroubledRig of(List<Trouble> troubles) {
    Trouble latest = troubles.get(0);
    return new TroubledRig(
        latest.title(),
        latest.name(),
        latest.href(),
        FleetList.TROUBLE.figure(troubles.size(), latest.rig().value()),
        troubles.stream()
            .collect(
                Collectors.groupingBy(Trouble::what, LinkedHashMap::new, Collectors.counting()))
            .entrySet()
            .stream()
            .map(what -> what.getValue() + " × " + what.getKey())
            .collect(Collectors.joining(", ")));
  }
}
