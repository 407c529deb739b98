package club.ascham.hostile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A form as a page offers it.
 *
 * @param fields each with what it holds, the first choice of a list
 */
record Form(String verb, String action, Map<String, String> fields) {
  private static final Pattern FORM = Pattern.compile("(?s)<form\\b([^>]*)>(.*?)</form>");
  private static final Pattern FIELD =
      Pattern.compile(
          "(?s)<(?:input|button|textarea)\\b[^>]*>|<select\\b[^>]*>(?:\\s*<option\\b[^>]*>)*");

  static List<Form> on(String page, String address) {
    List<Form> forms = new ArrayList<>();
    Matcher form = FORM.matcher(page);
    while (form.find()) {
      Map<String, String> fields = new LinkedHashMap<>();
      Matcher field = FIELD.matcher(form.group(2));
      while (field.find()) {
        String name = attribute(field.group(), "name");
        if (!name.isEmpty()) {
          fields.putIfAbsent(name, value(field.group()));
        }
      }
      String action = attribute(form.group(1), "action");
      String verb = attribute(form.group(1), "method");
      forms.add(
          new Form(
              verb.equalsIgnoreCase("post") ? "POST" : "GET",
              action.isEmpty() ? address : action,
              fields));
    }
    return forms;
  }

  private static String value(String tag) {
    Matcher values = Pattern.compile("\\bvalue=\"([^\"]*)\"").matcher(tag);
    String last = "";
    while (values.find()) {
      last = values.group(1);
    }
    return last;
  }

  static String attribute(String tag, String name) {
    Matcher found = Pattern.compile("\\b" + name + "=\"([^\"]*)\"").matcher(tag);
    return found.find() ? found.group(1).replace("&amp;", "&") : "";
  }
}
