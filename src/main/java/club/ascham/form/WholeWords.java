package club.ascham.form;

import java.lang.Character.UnicodeScript;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether a text says something to whoever reads it later and was not there. It weighs a text and
 * does not understand it: what it refuses is a letter, a word, or the same few again and again.
 */
public final class WholeWords {
  /** Stands at a field whose text is no reason. */
  public static final String WANTED =
      "A few whole words, please: whoever reads it later was not there.";

  private static final int FEWEST_WORDS = 3;
  private static final int FEWEST_LETTERS = 12;
  private static final int FEWEST_DIFFERENT = 5;

  private static final int FEWEST_WORDS_OF_A_SOURCE = 2;
  private static final int FEWEST_LETTERS_OF_A_SOURCE = 8;

  /** What a club may honestly say of a figure that nobody printed. */
  private static final Set<String> SOURCES = Set.of("judged", "common practice");

  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}'’]*");

  /** Scripts that put no space between words: two of their letters make about one. */
  private static final Set<UnicodeScript> UNSPACED =
      EnumSet.of(
          UnicodeScript.HAN,
          UnicodeScript.HIRAGANA,
          UnicodeScript.KATAKANA,
          UnicodeScript.THAI,
          UnicodeScript.LAO,
          UnicodeScript.KHMER,
          UnicodeScript.MYANMAR,
          UnicodeScript.TIBETAN);

  /** Scripts whose one sign says what two letters or more say elsewhere. */
  private static final Set<UnicodeScript> DENSE =
      EnumSet.of(
          UnicodeScript.HAN,
          UnicodeScript.HIRAGANA,
          UnicodeScript.KATAKANA,
          UnicodeScript.HANGUL,
          UnicodeScript.ETHIOPIC);

  private WholeWords() {}

  /** Three different words and twelve letters at least, of any script. */
  public static boolean isReason(String text) {
    return weigh(text).reaches(FEWEST_WORDS, FEWEST_LETTERS);
  }

  /** A reason, two words that name a book or a person, or that there is none. */
  public static boolean isSource(String text) {
    String bare = text.strip().replaceAll("[.!]+$", "").toLowerCase(Locale.ROOT);
    return SOURCES.contains(bare)
        || weigh(text).reaches(FEWEST_WORDS_OF_A_SOURCE, FEWEST_LETTERS_OF_A_SOURCE);
  }

  /**
   * What a text amounts to.
   *
   * @param words different ones, each of two letters or more
   * @param letters as many as they would be in an alphabet
   * @param different letters
   */
  private record Weight(int words, int letters, int different) {
    boolean reaches(int fewestWords, int fewestLetters) {
      return words >= fewestWords && letters >= fewestLetters && different >= FEWEST_DIFFERENT;
    }
  }

  private static Weight weigh(String text) {
    Set<String> words = new HashSet<>();
    Set<Integer> different = new HashSet<>();
    Set<Integer> unspaced = new HashSet<>();
    int letters = 0;
    Matcher word = WORD.matcher(text.toLowerCase(Locale.ROOT));
    while (word.find()) {
      boolean spaced = true;
      for (int letter : word.group().codePoints().filter(Character::isLetter).toArray()) {
        UnicodeScript script = UnicodeScript.of(letter);
        letters += DENSE.contains(script) ? 2 : 1;
        different.add(letter);
        if (UNSPACED.contains(script)) {
          spaced = false;
          unspaced.add(letter);
        }
      }
      if (spaced && word.group().codePointCount(0, word.group().length()) > 1) {
        words.add(word.group());
      }
    }
    return new Weight(words.size() + unspaced.size() / 2, letters, different.size());
  }
}
