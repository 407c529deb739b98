package club.ascham.fleet;

import club.ascham.standing.State;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The rigs ready to go out for one hand.
 *
 * @param hand as people say it
 * @param lengths how many of each length: {@code 66 in × 7}
 * @param href the page with exactly these rigs
 */
public record ReadyBows(String hand, int count, List<String> lengths, String href) {

  /** By hand, hands without a ready rig left out. */
  public static List<ReadyBows> in(List<FleetRig> rigs) {
    return Stream.of("right", "left", Trait.EITHER, Trait.UNKNOWN)
        .map(hand -> of(hand, rigs))
        .filter(ready -> ready.count > 0)
        .toList();
  }

  private static ReadyBows of(String hand, List<FleetRig> rigs) {
    RigChoice choice = RigChoice.ALL.and(Trait.STATE, State.READY.word()).and(Trait.HAND, hand);
    List<FleetRig> ready = choice.of(rigs);
    Map<String, Long> byLength =
        ready.stream()
            .collect(
                Collectors.groupingBy(Trait.LENGTH::saidOf, TreeMap::new, Collectors.counting()));
    return new ReadyBows(
        switch (hand) {
          case "right" -> "Right-handed";
          case "left" -> "Left-handed";
          case Trait.EITHER -> "For either hand";
          default -> "Hand not known";
        },
        ready.size(),
        byLength.entrySet().stream().map(e -> e.getKey() + " × " + e.getValue()).toList(),
        "/fleet/rows?" + choice.query());
  }
}
