package club.ascham.story;

import java.util.List;

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

  record About(long entry, Long item, Long rig) {}

  /**
   * @param fields as a JSON object
   */
  record Changed(long entry, long id, String table, long row, String fields) {}

  /**
   * @param hash null: it has none yet
   */
  record Personal(long change, String field, String hash) {}

  private final StringBuilder json = new StringBuilder();

  private EntryText() {}

  /**
   * @param about of this entry, in order, as are the others
   * @param personal of these changes, those of each beside one another
   */
  static String of(Head entry, List<About> about, List<Changed> changes, List<Personal> personal) {
    EntryText text = new EntryText();
    text.json.append('[').append(entry.id()).append(',');
    text.quoted(entry.happened()).append(',');
    text.quoted(entry.recorded()).append(',').append(entry.account()).append(',');
    text.quoted(entry.sentence()).append(',');
    text.quoted(entry.why()).append(',').append(entry.loan()).append(",[");
    for (About one : about) {
      text.next('[').append(one.item()).append(',').append(one.rig()).append(']');
    }
    text.json.append("],[");
    int at = 0;
    for (Changed change : changes) {
      text.next('[').append(change.id()).append(',');
      text.quoted(change.table()).append(',').append(change.row()).append(',');
      text.json.append(change.fields()).append(",{");
      for (; at < personal.size() && personal.get(at).change() == change.id(); at++) {
        text.parted();
        text.quoted(personal.get(at).field()).append(':');
        text.quoted(personal.get(at).hash());
      }
      text.json.append("}]");
    }
    return text.json.append("]]").toString();
  }

  private StringBuilder next(char opens) {
    parted();
    return json.append(opens);
  }

  /** A comma, but for the first. */
  private void parted() {
    char last = json.charAt(json.length() - 1);
    if (last != '[' && last != '{') {
      json.append(',');
    }
  }

  private StringBuilder quoted(String text) {
    if (text == null) {
      return json.append("null");
    }
    json.append('"');
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
    return json.append('"');
  }
}
