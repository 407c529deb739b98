package club.ascham.words;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Finds what looks like the name of a host, and other working notes, in a text that is shown. */
final class HostNames {
  /** A word with a dot and an end that registries give. */
  private static final Pattern HOST =
      Pattern.compile(
          "(?<![\\w.-])(?:[a-z0-9-]+\\.)+(?:com|org|net|info|edu|gov|uk|fr|de|nl|ch|eu|nz|gg|ca|au"
              + "|hu|es|be|it|at|us|ie|se|dk|wiki|blog|shop|cafe|tv|io|co)(?![\\w.-]*\\w)",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern NOTE =
      Pattern.compile(
          "stored cop|https?://|\\bwww\\.|read in a |from memory\\b|\\([RMC]\\)|\\bcalc\\b",
          Pattern.CASE_INSENSITIVE);

  /** Mail addresses under the name that is kept free for examples, and names of XML's dialects. */
  private static final Pattern MEANT =
      Pattern.compile("[\\w.+-]+@example\\.org|xmlns(:\\w+)?=\"[^\"]*\"");

  private HostNames() {}

  static List<String> in(String text) {
    String shown = MEANT.matcher(text).replaceAll("");
    return Stream.of(HOST, NOTE)
        .flatMap(pattern -> pattern.matcher(shown).results().map(found -> around(shown, found)))
        .toList();
  }

  private static String around(String text, MatchResult found) {
    int from = Math.max(0, found.start() - 30);
    return text.substring(from, Math.min(text.length(), found.end() + 20)).replace('\n', ' ');
  }

  /** The texts in a Java source that may reach a screen: its literals, without comments. */
  static String literals(String java) {
    Matcher parts =
        Pattern.compile(
                "\"\"\"(?s:.*?)\"\"\"|\"(?:\\\\.|[^\"\\\\\\n])*\"|'(?:\\\\.|[^'\\\\])'"
                    + "|//[^\\n]*|/\\*(?s:.*?)\\*/")
            .matcher(java);
    StringBuilder literals = new StringBuilder();
    while (parts.find()) {
      if (parts.group().startsWith("\"")) {
        literals.append(parts.group()).append('\n');
      }
    }
    // A sentence is often put together from several lines.
    return literals.toString();
  }
}
