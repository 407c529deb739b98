package club.ascham.web;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The addresses of a route whose parameter is one of some words: {@code /api/{list:a|b}}. */
public final class Alternatives {
  private static final Pattern ONE_OF = Pattern.compile("\\{\\w+:\\s*([\\w-]+(?:\\|[\\w-]+)+)}");

  private Alternatives() {}

  /** Each of them; the template itself where it has no such parameter. */
  public static List<String> of(String template) {
    Matcher words = ONE_OF.matcher(template);
    return words.find()
        ? Arrays.stream(words.group(1).split("\\|")).map(words::replaceFirst).toList()
        : List.of(template);
  }
}
