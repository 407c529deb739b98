package club.ascham.web;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a browser would send of a form where nobody touched it, but for the page's token. */
public final class FormOnPage {
  private static final Pattern FORM =
      Pattern.compile("(?s)<form\\b(?=[^>]*method=\"post\")([^>]*)>(.*?)</form>");
  private static final Pattern FIELD =
      Pattern.compile(
          "(?s)<(input)\\b([^>]*)>|<(textarea)\\b([^>]*)>(.*?)</textarea>|<(select)\\b([^>]*)>(.*?)</select>");
  private static final Pattern OPTION = Pattern.compile("<option\\b([^>]*)>");

  private FormOnPage() {}

  /** The first that is sent to an address; empty: the page has none. */
  public static Optional<Map<String, String>> on(String page, String address) {
    Matcher form = FORM.matcher(page);
    while (form.find()) {
      if (attribute(form.group(1), "action").replaceFirst("#.*", "").equals(address)) {
        Map<String, String> fields = new HashMap<>();
        read(form.group(2), fields);
        String id = attribute(form.group(1), "id");
        if (!id.isEmpty()) {
          Matcher outside =
              Pattern.compile("<input\\b[^>]*\\bform=\"" + id + "\"[^>]*>").matcher(page);
          while (outside.find()) {
            read(outside.group(), fields);
          }
        }
        fields.remove("csrf-token");
        return Optional.of(fields);
      }
    }
    return Optional.empty();
  }

  private static void read(String html, Map<String, String> fields) {
    Matcher field = FIELD.matcher(html);
    while (field.find()) {
      if (field.group(1) != null) {
        input(field.group(2), fields);
      } else if (field.group(3) != null) {
        fields.put(attribute(field.group(4), "name"), text(field.group(5)));
      } else {
        fields.put(attribute(field.group(7), "name"), chosen(field.group(8)));
      }
    }
  }

  private static void input(String tag, Map<String, String> fields) {
    String type = attribute(tag, "type");
    boolean choice = type.equals("radio") || type.equals("checkbox");
    if (!choice || Pattern.compile("\\schecked\\b").matcher(tag).find()) {
      fields.put(attribute(tag, "name"), attribute(tag, "value"));
    }
  }

  private static String chosen(String options) {
    String first = null;
    Matcher option = OPTION.matcher(options);
    while (option.find()) {
      String value = attribute(option.group(1), "value");
      if (option.group(1).contains(" selected")) {
        return value;
      }
      first = first == null ? value : first;
    }
    return first == null ? "" : first;
  }

  private static String attribute(String tag, String name) {
    Matcher found = Pattern.compile("(?<![\\w-])" + name + "=\"([^\"]*)\"").matcher(tag);
    return found.find() ? text(found.group(1)) : "";
  }

  private static String text(String html) {
    return html.replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }
}
