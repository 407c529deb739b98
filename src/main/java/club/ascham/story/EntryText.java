package club.ascham.story;

import java.util.List;
import java.util.StringJoiner;
import java.util.function.UnaryOperator;

/**
 * An entry of the record as its seal covers it: one JSON array (RFC 8259), reckoned here from what
 * is kept, whichever database keeps it.
 *
 * <p>No blank stands outside a text. In this order:
 *
 * <ol>
 *   <li>the entry’s number
 *   <li>when it happened, and
 *   <li>when it was recorded, both as kept: ISO 8601 in UTC
 *   <li>the number of the account that did it; null: the program by itself
 *   <li>its sentence
 *   <li>the hash of its reason and that one’s salt ({@link Chain#ofPersonal}); of entries from
 *       before reasons could be erased, the reason itself; null: it gives none
 *   <li>the number of its loan; null: of none
 *   <li>what it is about, an array of {@code [item, rig]}, one of them null, by their numbers
 *   <li>the rows it changed, an array of {@code [number, table, row, fields, personal]} by their
 *       numbers: {@code fields} the object of each field from and to, character by character as it
 *       was kept when the row was written; {@code personal} an object of each personal field with
 *       the hash of salt and value, by their numbers
 * </ol>
 *
 * <p>Whole numbers are their decimal digits. In a text, {@code "} and {@code \} come after a {@code
 * \}; U+0008, U+0009, U+000A, U+000C and U+000D are {@code \b \t \n \f \r}; any other character
 * below U+0020 is {@code \}{@code u00} and two hexadecimal digits in lower case; all else stands as
 * it is, in UTF-8. So RFC 8785 writes texts, too. Numbers within {@code fields} are not written
 * anew: they are as kept.
 */
final class EntryText {
  /**
   * @param happened as kept, like what follows
   */
  record Head(
      long id,
      String seal,
      String happened,
      String recorded,
      Long account,
      String sentence,
      String why,
      Long loan) {}

  record About(Long item, Long rig) {}

  /**
   * @param fields as a JSON object
   */
  record Changed(long entry, long id, String table, long row, String fields) {}

  /**
   * @param hash null: it has none yet
   */
  record Personal(long change, String field, String hash) {}

  private EntryText() {}

  /**
   * @param about of this entry, in order, as are the others
   * @param personal of these changes, those of each beside one another
   */
  static String of(Head entry, List<About> about, List<Changed> changes, List<Personal> personal) {
    return text(entry, about, changes, personal, inner -> inner);
  }

  /**
   * As seals covered it before 1.0.0: SQLite’s functions lost on the way that an array within an
   * array is one, and wrote it as a text.
   */
  static String before(
      Head entry, List<About> about, List<Changed> changes, List<Personal> personal) {
    return text(entry, about, changes, personal, EntryText::quoted);
  }

  private static String text(
      Head entry,
      List<About> about,
      List<Changed> changes,
      List<Personal> personal,
      UnaryOperator<String> within) {
    StringJoiner things = new StringJoiner(",", "[", "]");
    about.forEach(one -> things.add("[" + one.item() + "," + one.rig() + "]"));
    StringJoiner rows = new StringJoiner(",", "[", "]");
    int at = 0;
    for (Changed change : changes) {
      StringJoiner apart = new StringJoiner(",", "{", "}");
      for (; at < personal.size() && personal.get(at).change() == change.id(); at++) {
        apart.add(quoted(personal.get(at).field()) + ":" + quoted(personal.get(at).hash()));
      }
      rows.add(
          array(
              change.id(),
              quoted(change.table()),
              change.row(),
              change.fields(),
              within.apply(apart.toString())));
    }
    return array(
        entry.id(),
        quoted(entry.happened()),
        quoted(entry.recorded()),
        entry.account(),
        quoted(entry.sentence()),
        quoted(entry.why()),
        entry.loan(),
        within.apply(things.toString()),
        within.apply(rows.toString()));
  }

  private static String array(Object... parts) {
    StringJoiner array = new StringJoiner(",", "[", "]");
    for (Object part : parts) {
      array.add(String.valueOf(part));
    }
    return array.toString();
  }

  private static String quoted(String text) {
    if (text == null) {
      return "null";
    }
    StringBuilder json = new StringBuilder(text.length() + 2).append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"', '\\' -> json.append('\\').append(c);
        case '\b' -> json.append("\\b");
        case '\t' -> json.append("\\t");
        case '\n' -> json.append("\\n");
        case '\f' -> json.append("\\f");
        case '\r' -> json.append("\\r");
        default -> {
          if (c < ' ') {
            json.append(String.format("\\u%04x", (int) c));
          } else {
            json.append(c);
          }
        }
      }
    }
    return json.append('"').toString();
  }
}
