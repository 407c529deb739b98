package club.ascham.people;

import com.nulabinc.zxcvbn.Zxcvbn;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which new passwords are refused, and why: length, and how soon it would be guessed by someone who
 * tries what people choose. No rule says which kinds of characters it must hold.
 *
 * <p>A password is never due for renewal.
 */
public final class PasswordRules {
  static final int SHORTEST = 12;

  /** The platform's hash reads no further; a longer one would be shortened unseen. */
  static final int LONGEST_BYTES = 72;

  /** Guesses after which a list of common passwords, names, words and key patterns is exhausted. */
  private static final double FEWEST_GUESSES = 1e8;

  private static final List<String> WORDS_OF_THE_TRADE =
      List.of("ascham", "archery", "archers", "archer", "longbow", "recurve", "riser", "limbs");
  private static final Zxcvbn GUESSER = new Zxcvbn();

  private PasswordRules() {}

  /**
   * What is wrong with a password; empty: nothing.
   *
   * @param about what anyone would try first: the person's name, the club's
   */
  public static Optional<String> fault(String password, Collection<String> about) {
    if (password.codePointCount(0, password.length()) < SHORTEST) {
      return Optional.of("At least " + SHORTEST + " characters, please: a few words will do.");
    }
    if (password.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
      return Optional.of("At most " + LONGEST_BYTES + " characters, please.");
    }
    return guesses(password, about) < FEWEST_GUESSES
        ? Optional.of(
            "Too easily guessed: many people choose that or nearly that. Take a few words of your"
                + " own that do not belong together.")
        : Optional.empty();
  }

  /** What anyone would try first counts for nothing: what is left must stand by itself. */
  private static double guesses(String password, Collection<String> about) {
    String left =
        Stream.concat(about.stream(), WORDS_OF_THE_TRADE.stream())
            .flatMap(words -> Stream.concat(Stream.of(words), Stream.of(words.split("\\W+"))))
            .map(word -> word.toLowerCase(Locale.ROOT))
            .filter(word -> word.length() > 2)
            .sorted(Comparator.comparingInt(String::length).reversed())
            .reduce(password.toLowerCase(Locale.ROOT), (rest, word) -> rest.replace(word, ""));
    return Math.min(
        GUESSER.measure(password).getGuesses(),
        left.isBlank() ? 0 : GUESSER.measure(left).getGuesses());
  }
}
