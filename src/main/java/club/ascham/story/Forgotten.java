package club.ascham.story;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * Whom texts may name that are to be forgotten.
 *
 * @param surely what names this person and hardly anyone else: a full name, a telephone number
 * @param perhaps what others, or a thing, may be called too: a family name alone
 */
public record Forgotten(List<String> surely, List<String> perhaps) {
  private static final int LONGEST_OF_ANYBODY = 3;

  /** A name of one word is anybody's; of a longer one the last is the family's. */
  public static Forgotten of(String name, String... otherwise) {
    String[] words = name.strip().split("\\s+");
    List<String> others = Arrays.stream(otherwise).filter(Forgotten::isTelling).toList();
    return words.length == 1
        ? new Forgotten(others, List.of(words[0]))
        : new Forgotten(
            Stream.concat(Stream.of(name), others.stream()).toList(),
            List.of(words[words.length - 1]));
  }

  /** Each of the names they went by, and whatever else is theirs. */
  public static Forgotten of(List<String> names, List<String> otherwise) {
    Forgotten all = new Forgotten(List.of(), List.of());
    for (String name : names) {
      all = all.and(of(name));
    }
    return all.and(
        new Forgotten(otherwise.stream().filter(Forgotten::isTelling).toList(), List.of()));
  }

  public Forgotten and(Forgotten other) {
    return new Forgotten(both(surely, other.surely), both(perhaps, other.perhaps));
  }

  private static List<String> both(List<String> some, List<String> more) {
    return Stream.concat(some.stream(), more.stream()).distinct().toList();
  }

  private static boolean isTelling(String words) {
    return words != null && words.length() > LONGEST_OF_ANYBODY;
  }
}
