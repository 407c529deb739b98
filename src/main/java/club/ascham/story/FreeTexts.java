package club.ascham.story;

import club.ascham.form.Typed;
import club.ascham.store.Rows;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The texts that people type freely, wherever they are kept: who is to be forgotten may be named in
 * any of them. What the record keeps apart from its chain can be taken away with them; what a seal
 * covers as it is can only be shown.
 *
 * <p>An officer sees each such text before the press. A full name, a telephone number or an address
 * goes with it; a family name alone only where it is ticked, since Brook is also a maker. What
 * stays is listed as staying: the program's own sentences, what a check saw, and the sources of
 * rules.
 */
@ApplicationScoped
public class FreeTexts {
  /** The field in which a form ticks those that mean whom it erases. */
  public static final String TICKED = "text";

  private static final String GONE = "[erased]";
  private static final String THE_RECORD = "story";

  /**
   * A column of free text.
   *
   * @param page whose text it is, as SQL over its row {@code t}
   */
  record Column(String table, String name, String said, String page) {}

  private static final String ITEM = "'/items/' || t.code";
  private static final String ITS_ITEM =
      "'/items/' || (SELECT code FROM item WHERE id = t.item_id)";
  private static final String LOAN = "'/loans/' || t.id";
  private static final String RIG = "'/rigs/' || t.rig_id";

  static final List<Column> COLUMNS =
      List.of(
          new Column("item", "notes", "notes of an item", ITEM),
          new Column("item", "retired_note", "note of a retirement", ITEM),
          new Column("loan", "leader", "leader of a session", LOAN),
          new Column("loan", "override_why", "reason at an issue", LOAN),
          new Column("loan", "override_coach", "coach who agreed to a weight", LOAN),
          new Column(
              "session_archer",
              "override_why",
              "reason at an archer of a session",
              "'/sessions/' || t.loan_id"),
          new Column(
              "session_archer",
              "override_coach",
              "coach who agreed to a weight",
              "'/sessions/' || t.loan_id"),
          new Column("loan", "deposit_kept_why", "reason of a kept deposit", LOAN),
          new Column("receipt", "words", "words at a return", "'/loans/' || t.loan_id"),
          new Column("report", "words", "what was told of a bow", "'/reports/' || t.id"),
          new Column("report", "answer_words", "answer to what was told", "'/reports/' || t.id"),
          new Column("bow_check", "correction_why", "reason of a correction", RIG),
          new Column(
              "check_sign",
              "words",
              "what a check saw",
              "'/rigs/' || (SELECT rig_id FROM bow_check WHERE id = t.check_id)"),
          new Column("adjustment", "words", "words of an adjustment", RIG),
          new Column("withdrawal", "why", "reason of a withdrawal", ITS_ITEM),
          new Column("withdrawal", "release_why", "reason of a release", ITS_ITEM),
          new Column("withdrawal", "no_work_why", "why no inspection fits", ITS_ITEM),
          new Column("withdrawal", "looked_at", "what was looked at", ITS_ITEM),
          new Column("withdrawal", "looked_by_name", "who looked at it", ITS_ITEM),
          new Column("accident", "words", "what happened in an accident", "'/accidents/' || t.id"),
          new Column("accident", "end_why", "why a keeping ended", "'/accidents/' || t.id"),
          new Column("upkeep_record", "found", "what an inspection found", ITS_ITEM),
          new Column("upkeep_record", "parts_used", "parts used", ITS_ITEM),
          new Column("upkeep_task", "why", "reason of work asked for", ITS_ITEM),
          new Column("upkeep_rule", "source", "source of an upkeep rule", "'/rules'"),
          new Column("club_brace_band", "source", "source of a brace band", "'/rules'"),
          new Column("club", "terms", "the club’s terms of a loan", "'/rules'"),
          new Column("club", "brace_may_move_source", "source of a brace rule", "'/rules'"),
          new Column("replacement_terms", "source", "source of a price", "'/rules'"),
          new Column("plan_rule", "source", "source of the plan", "'/rules'"),
          new Column(THE_RECORD, "why", "reason in the record", "'/record/' || t.id"),
          new Column(THE_RECORD, "sentence", "sentence of the record", "'/record/' || t.id"));

  private final Rows rows;
  private final PersonalValues personalValues;

  FreeTexts(Rows rows, PersonalValues personalValues) {
    this.rows = rows;
    this.personalValues = personalValues;
  }

  /**
   * A free text.
   *
   * @param place what it is
   * @param page where it is shown
   * @param erasable whether the record lets it go; else a seal covers it as it is
   * @param earlier whether it was replaced since, so that the record alone still has it
   */
  public record Text(
      String table,
      String column,
      long row,
      String place,
      String page,
      String words,
      boolean erasable,
      boolean earlier) {
    /** What a form calls it. */
    String key() {
      return table + "." + column + "." + row;
    }
  }

  /**
   * A text that names someone.
   *
   * @param sure whether it can hardly be anyone else
   */
  @TemplateData
  public record Hit(
      String key, String place, String page, String words, boolean erasable, boolean sure) {
    /**
     * Whether it outlasts the erasing.
     *
     * @param chosen keys of texts that perhaps hold the name
     */
    public boolean stays(Set<String> chosen) {
      return !goes(erasable, sure, key, chosen);
    }
  }

  /** The keys of those that were ticked. */
  public static Set<String> ticked(Typed typed) {
    return Set.copyOf(Arrays.asList(typed.value(TICKED).split(",")));
  }

  private static boolean goes(boolean erasable, boolean sure, String key, Set<String> chosen) {
    return erasable && (sure || chosen.contains(key));
  }

  /** The end of the sentence that tells of an erasure. */
  public static String said(int texts) {
    return texts == 0 ? "." : ", and the name in " + texts + (texts == 1 ? " text." : " texts.");
  }

  /** The texts that name this person, those that surely do first. */
  public List<Hit> naming(Forgotten person) {
    return naming(all(), person);
  }

  /**
   * The same, once they are read.
   *
   * @param all as {@link #all()} answered
   */
  public List<Hit> naming(List<Text> all, Forgotten person) {
    return matching(all, person).stream()
        .map(
            found ->
                new Hit(
                    found.text().key(),
                    found.text().place(),
                    found.text().page(),
                    found.text().words(),
                    found.text().erasable(),
                    found.sure()))
        .toList();
  }

  /**
   * Takes the person's name out of every text that surely holds it and of those chosen, inside the
   * use case's transaction, and then out of what the record kept of these texts.
   *
   * @param all as {@link #all()} answered
   * @param chosen keys of texts that perhaps hold it
   * @param told writes what else there is to write, and tells it: it is given the number of texts
   * @return that number
   */
  public int takeOut(List<Text> all, Forgotten person, Set<String> chosen, IntConsumer told) {
    List<NameInText> names =
        Stream.concat(person.surely().stream(), person.perhaps().stream())
            .map(NameInText::new)
            .toList();
    List<Text> go =
        matching(all, person).stream()
            .filter(
                found -> goes(found.text().erasable(), found.sure(), found.text().key(), chosen))
            .map(Found::text)
            .toList();
    go.stream().filter(text -> !text.earlier()).forEach(text -> takeOut(text, names));
    told.accept(go.size());
    go.stream()
        .filter(text -> !text.table().equals(THE_RECORD))
        .forEach(text -> personalValues.erase(text.table(), text.row(), text.column()));
    return go.size();
  }

  private void takeOut(Text text, List<NameInText> names) {
    if (text.table().equals(THE_RECORD)) {
      rows.change("UPDATE story SET why = NULL, why_salt = NULL WHERE id = ?1", text.row());
      return;
    }
    String left = text.words();
    for (NameInText name : names) {
      left = name.replacedIn(left, GONE);
    }
    rows.change(
        "UPDATE %s SET %s = ?2 WHERE rowid = ?1".formatted(text.table(), text.column()),
        text.row(),
        left);
  }

  private record Found(Text text, boolean sure) {}

  private static List<Found> matching(List<Text> all, Forgotten person) {
    List<NameInText> surely = person.surely().stream().map(NameInText::new).toList();
    List<NameInText> perhaps = person.perhaps().stream().map(NameInText::new).toList();
    Map<String, Found> found = new LinkedHashMap<>();
    for (List<NameInText> names : List.of(surely, perhaps)) {
      for (Text text : all) {
        if (names.stream().anyMatch(name -> name.isIn(text.words()))) {
          found.putIfAbsent(text.key(), new Found(text, names == surely));
        }
      }
    }
    return List.copyOf(found.values());
  }

  private record Stored(long row, String page, String words, boolean erasable) {}

  /** Every one: what stands now, then what only the record still has. */
  public List<Text> all() {
    List<Text> all = new ArrayList<>();
    for (Column column : COLUMNS) {
      String sql =
          "SELECT t.rowid, %s, t.%s, %s FROM %s t WHERE t.%s IS NOT NULL"
              .formatted(
                  column.page(), column.name(), erasable(column), column.table(), column.name());
      for (Stored text : rows.list(Stored.class, sql)) {
        all.add(
            new Text(
                column.table(),
                column.name(),
                text.row(),
                column.said(),
                text.page(),
                text.words(),
                text.erasable(),
                false));
      }
    }
    all.addAll(earlier());
    return all;
  }

  /** Whether neither the chain holds the text nor ever held one of that field. */
  private static String erasable(Column column) {
    if (column.table().equals(THE_RECORD)) {
      return column.name().equals("why") ? "t.why_hash IS NOT NULL" : "0";
    }
    return Watched.isPersonal(column.table(), column.name())
        ? "NOT EXISTS (SELECT 1 FROM change c WHERE c.table_name = '%s' AND c.row_id = t.rowid AND c.what ->> '%s' IS NOT NULL)"
            .formatted(column.table(), column.name())
        : "0";
  }

  private record Earlier(String table, String column, long row, long entry, String words) {}

  private List<Text> earlier() {
    String fields =
        COLUMNS.stream()
            .filter(column -> Watched.isPersonal(column.table(), column.name()))
            .map(column -> "'" + column.table() + "." + column.name() + "'")
            .collect(Collectors.joining(", "));
    return rows
        .list(
            Earlier.class,
            """
            SELECT c.table_name, p.field, c.row_id, c.story_id, p.value
              FROM personal p JOIN change c ON c.id = p.change_id
             WHERE p.value IS NOT NULL AND c.table_name || '.' || p.field IN (%s)"""
                .formatted(fields))
        .stream()
        .map(
            text ->
                new Text(
                    text.table(),
                    text.column(),
                    text.row(),
                    "an earlier text in the record",
                    "/record/" + text.entry(),
                    text.words(),
                    true,
                    true))
        .toList();
  }
}
