package club.ascham.story;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** A name as it may stand in a text: its words in a row, whole, in upper or lower case. */
final class NameInText {
  private static final String NO_LETTER_BEFORE = "(?<![\\p{L}\\p{M}\\p{N}])";
  private static final String NO_LETTER_AFTER = "(?![\\p{L}\\p{M}\\p{N}])";

  private final String firstWord;
  private final Pattern pattern;

  NameInText(String name) {
    String[] words = name.strip().split("\\s+");
    this.firstWord = words[0].toLowerCase(Locale.ROOT);
    this.pattern =
        Pattern.compile(
            Arrays.stream(words)
                .map(Pattern::quote)
                .collect(Collectors.joining("\\s+", NO_LETTER_BEFORE, NO_LETTER_AFTER)),
            Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /** Looked for plainly first: nearly every text holds nothing of it. */
  boolean isIn(String text) {
    return text.toLowerCase(Locale.ROOT).contains(firstWord) && pattern.matcher(text).find();
  }

  String replacedIn(String text, String by) {
    return pattern.matcher(text).replaceAll(Matcher.quoteReplacement(by));
  }
}
