package club.ascham.verdict;

import club.ascham.bow.Build;
import java.util.Set;

/**
 * A sign that the trade knows, offered in a check so that nobody has to find the words.
 *
 * @param key stable name for forms and the API
 * @param words one line, as the person would say it
 * @param source where its gravity is published, or that it is common practice
 * @param builds the builds of bow that can show it
 */
public record KnownSign(
    String key, BowPart part, Gravity gravity, String words, String source, Set<Build> builds) {

  public Sign seen() {
    return new Sign(part, gravity, words, source);
  }
}
