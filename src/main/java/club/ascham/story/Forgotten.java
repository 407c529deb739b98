package club.ascham.story;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Whom texts may name that are to be forgotten.
 *
 * @param surely what names this person and hardly anyone else: a full name, a telephone number
 * @param perhaps what others, or a thing, may be called too: a family name alone
 */
public record Forgotten(List<String> surely, List<String> perhaps) {
  /** A name of one word is anybody's; of a longer one the last is the family's. */
  public static Forgotten of(String name, String... otherwise) {
    String[] words = name.strip().split("\\s+");
    List<String> others =
        Arrays.stream(otherwise).filter(Objects::nonNull).filter(one -> one.length() > 3).toList();
    return words.length == 1
        ? new Forgotten(others, List.of(words[0]))
        : new Forgotten(
            Stream.concat(Stream.of(name), others.stream()).toList(),
            List.of(words[words.length - 1]));
  }
}
