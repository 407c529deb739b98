package club.ascham.worksheet;

import club.ascham.verdict.Gravity;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What an inspection found.
 *
 * @param seen the answer to each look of the list, by key
 * @param upperTurnsOut turns of the upper limb bolt out from all the way in; null: not counted
 * @param lowerTurnsOut likewise of the lower
 * @param words anything else that was found or put right; null: nothing
 * @param partsUsed null: none
 */
public record Inspected(
    Map<String, Gravity> seen,
    Double upperTurnsOut,
    Double lowerTurnsOut,
    String words,
    String partsUsed) {

  public Inspected {
    seen = Map.copyOf(seen);
  }

  /**
   * What follows from it; restricts only.
   *
   * @param found in words, for the record
   * @param measured in words; null: nothing was measured
   */
  public record Outcome(Result result, String found, String measured) {}

  /**
   * One stop fails the item, and so do turns beyond the maker's limit, whatever was answered. A
   * look that was not answered counts as a stop: nobody vouches for it.
   */
  public Outcome outcome(InspectionList list) {
    List<String> stops =
        list.looks().stream()
            .filter(look -> gravity(look) == Gravity.STOP)
            .map(look -> look.part().toLowerCase(Locale.ROOT))
            .toList();
    List<String> notes =
        list.looks().stream()
            .filter(look -> gravity(look) == Gravity.NOTE)
            .map(look -> look.part().toLowerCase(Locale.ROOT))
            .toList();
    boolean tooFarOut = isBeyond(list, upperTurnsOut) || isBeyond(list, lowerTurnsOut);
    String found =
        Stream.of(
                tooFarOut
                    ? "Beyond the maker's limit of "
                        + InspectionList.plain(list.maxTurnsOut())
                        + " turns out."
                    : null,
                stops.isEmpty() ? null : "Not as it should be: " + String.join(", ", stops) + ".",
                notes.isEmpty() ? null : "Noted: " + String.join(", ", notes) + ".",
                words)
            .filter(part -> part != null)
            .collect(Collectors.joining(" "));
    return new Outcome(
        tooFarOut || !stops.isEmpty() ? Result.FAILED : Result.PASSED,
        found.isEmpty() ? "All as it should be." : found,
        measured());
  }

  private Gravity gravity(Look look) {
    return seen.getOrDefault(look.key(), Gravity.STOP);
  }

  private static boolean isBeyond(InspectionList list, Double turnsOut) {
    return list.maxTurnsOut() != null && turnsOut != null && turnsOut > list.maxTurnsOut();
  }

  private String measured() {
    if (upperTurnsOut == null && lowerTurnsOut == null) {
      return null;
    }
    return Stream.of(turns("upper", upperTurnsOut), turns("lower", lowerTurnsOut))
        .filter(part -> part != null)
        .collect(Collectors.joining(", "));
  }

  private static String turns(String limb, Double turnsOut) {
    return turnsOut == null ? null : limb + " " + TurnsText.of(turnsOut) + " turns out";
  }
}
