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
 * stays is listed as staying: the program's own sentences, what a check saw and said, readings as
 * they were typed, the sources of rules, and what is kept of somebody else.
 *
 * <p>Every column of text is among these, or can't hold a name: a test goes through the schema.
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
  record Column(String table, String name, String said, String page) {
    /** Its words as SQL: of what is kept as data, those within it. */
    String words() {
      return name.equals("said_of")
          ? "(SELECT group_concat(atom, ' ') FROM json_tree(t.said_of) WHERE type = 'text' AND atom GLOB '*[^A-Z_]*')"
          : "t." + name;
    }

    /** Whether the record keeps it apart, so that a name in it goes with whom it names. */
    boolean isKeptApart() {
      return !WHO_ELSE.contains(table) && Watched.isPersonal(table, name);
    }
  }

  /** What is kept of somebody else is theirs, and goes with them. */
  private static final Set<String> WHO_ELSE = Set.of("borrower", "account");

  private static final String ITEM = "'/items/' || t.code";
  private static final String ITS_ITEM =
      "'/items/' || (SELECT code FROM item WHERE id = t.item_id)";
  private static final String PART = "'/items/' || (SELECT code FROM item WHERE id = t.id)";
  private static final String LOAN = "'/loans/' || t.id";
  private static final String RIG = "'/rigs/' || t.rig_id";
  private static final String ITS_CHECK =
      "'/rigs/' || (SELECT rig_id FROM bow_check WHERE id = t.check_id)";
  private static final String BORROWER = "'/borrowers/' || t.id";
  private static final String RULES = "'/rules'";

  static final List<Column> COLUMNS =
      List.of(
          new Column("item", "notes", "notes of an item", ITEM),
          new Column("item", "retired_note", "note of a retirement", ITEM),
          new Column("item", "maker", "maker of an item", ITEM),
          new Column("item", "model", "model of an item", ITEM),
          new Column("item", "batch", "batch of an item", ITEM),
          new Column("item", "serial", "serial of an item", ITEM),
          new Column("riser", "limb_fitting", "limb fitting", PART),
          new Column("riser", "limb_model", "model of limbs", PART),
          new Column("limbs", "limb_fitting", "limb fitting", PART),
          new Column("limbs", "serial_upper", "serial of a limb", PART),
          new Column("limbs", "serial_lower", "serial of a limb", PART),
          new Column("kit_item", "size", "size of an item", PART),
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
          new Column("check_sign", "words", "what a check saw", ITS_CHECK),
          new Column("verdict_line", "said_of", "what a verdict says", ITS_CHECK),
          new Column("bow_check", "brace_typed", "a reading as typed", RIG),
          new Column("bow_check", "upper_typed", "a reading as typed", RIG),
          new Column("bow_check", "lower_typed", "a reading as typed", RIG),
          new Column("set_up", "brace_typed", "a reading as typed", RIG),
          new Column("set_up", "upper_typed", "a reading as typed", RIG),
          new Column("set_up", "lower_typed", "a reading as typed", RIG),
          new Column("set_up", "nocking_typed", "a reading as typed", RIG),
          new Column("set_up", "steps_done", "steps of a set-up", RIG),
          new Column("adjustment", "words", "words of an adjustment", RIG),
          new Column("withdrawal", "why", "reason of a withdrawal", ITS_ITEM),
          new Column("withdrawal", "release_why", "reason of a release", ITS_ITEM),
          new Column("withdrawal", "no_work_why", "why no inspection fits", ITS_ITEM),
          new Column("withdrawal", "looked_at", "what was looked at", ITS_ITEM),
          new Column("withdrawal", "looked_by_name", "who looked at it", ITS_ITEM),
          new Column("accident", "words", "what happened in an accident", "'/accidents/' || t.id"),
          new Column("accident", "end_why", "why a keeping ended", "'/accidents/' || t.id"),
          new Column("upkeep_record", "found", "what an inspection found", ITS_ITEM),
          new Column("upkeep_record", "measured", "what an inspection measured", ITS_ITEM),
          new Column("upkeep_record", "parts_used", "parts used", ITS_ITEM),
          new Column("upkeep_task", "why", "reason of work asked for", ITS_ITEM),
          new Column("upkeep_rule", "source", "source of an upkeep rule", RULES),
          new Column("club_brace_band", "source", "source of a brace band", RULES),
          new Column("club", "name", "the club’s name", RULES),
          new Column("club", "telephone", "whom the slip says to call", RULES),
          new Column("club", "mail", "whom the slip says to write to", RULES),
          new Column("club", "twists_source", "source of the twists", RULES),
          new Column("club", "terms", "the club’s terms of a loan", RULES),
          new Column("club", "brace_may_move_source", "source of a brace rule", RULES),
          new Column("replacement_terms", "source", "source of a price", RULES),
          new Column("plan_rule", "source", "source of the plan", RULES),
          new Column("borrower", "name", "another borrower", BORROWER),
          new Column("borrower", "contact", "contact of another borrower", BORROWER),
          new Column("borrower", "member_no", "member number of another", BORROWER),
          new Column("borrower", "guardian", "guardian of another borrower", BORROWER),
          new Column("account", "name", "another account", "'/people/' || t.id"),
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

    private Hit hit(boolean sure) {
      return new Hit(key(), place, page, words, erasable, sure, earlier);
    }
  }

  /**
   * A text that names someone.
   *
   * @param sure whether it can hardly be anyone else
   * @param earlier whether it was replaced since, so that the record alone still has it
   */
  @TemplateData
  public record Hit(
      String key,
      String place,
      String page,
      String words,
      boolean erasable,
      boolean sure,
      boolean earlier) {
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

  /**
   * The texts that name this person, those that surely do first.
   *
   * @param own the page of what is kept of them, which goes as a whole
   */
  public List<Hit> naming(Forgotten person, String own) {
    return naming(all(), person, own);
  }

  /**
   * The same, once they are read.
   *
   * @param all as {@link #all()} answered
   */
  public List<Hit> naming(List<Text> all, Forgotten person, String own) {
    return matching(all, person).stream()
        .filter(found -> !found.text().page().equals(own))
        .map(found -> found.text().hit(found.sure()))
        .toList();
  }

  /**
   * A text that outlasted an erasing, by what it was then.
   *
   * @param key of the text
   */
  public record Stayed(String key, boolean earlier, boolean sure) {}

  /** Those that are there still, with the words that they have now. */
  public List<Hit> still(List<Stayed> stayed) {
    Map<String, Text> all =
        all().stream()
            .collect(
                Collectors.toMap(
                    text -> text.key() + text.earlier(), text -> text, (one, more) -> one));
    return stayed.stream()
        .filter(one -> all.containsKey(one.key() + one.earlier()))
        .map(one -> all.get(one.key() + one.earlier()).hit(one.sure()))
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
          "SELECT t.rowid AS row, %1$s AS page, %2$s AS words, %3$s AS erasable FROM %4$s t WHERE %2$s IS NOT NULL"
              .formatted(column.page(), column.words(), erasable(column), column.table());
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
    return column.isKeptApart()
        ? "NOT EXISTS (SELECT 1 FROM change c WHERE c.table_name = '%s' AND c.row_id = t.rowid AND c.what ->> '%s' IS NOT NULL)"
            .formatted(column.table(), column.name())
        : "0";
  }

  private record Earlier(String table, String column, long row, long entry, String words) {}

  private List<Text> earlier() {
    String fields =
        COLUMNS.stream()
            .filter(Column::isKeptApart)
            .map(column -> "'" + column.table() + "." + column.name() + "'")
            .collect(Collectors.joining(", "));
    return rows
        .list(
            Earlier.class,
            """
            SELECT c.table_name AS "table", p.field AS column, c.row_id, c.story_id AS entry, p.value AS words
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
