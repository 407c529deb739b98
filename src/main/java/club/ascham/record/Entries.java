package club.ascham.record;

import club.ascham.Settings;
import club.ascham.store.Rows;
import club.ascham.story.Seal;
import club.ascham.story.Story;
import club.ascham.units.ItemCode;
import club.ascham.verdict.Remark;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the entries of the record. */
@ApplicationScoped
class Entries {
  private final Rows rows;
  private final ObjectMapper json;
  private final Currency currency;

  Entries(Rows rows, ObjectMapper json, Settings settings) {
    this.rows = rows;
    this.json = json;
    this.currency = Currency.getInstance(settings.currency());
  }

  /**
   * One entry.
   *
   * @param by the account's name, or the program's own
   * @param seal 64 hexadecimal digits
   * @param itemCodes of the first few things that it is about, bare and parted by blanks; null:
   *     none
   * @param rig that it is about; null: none
   * @param changed how many rows it changed
   * @param takenIn null: it was told here
   */
  public record Entry(
      long id,
      Instant happened,
      Instant recorded,
      String by,
      String sentence,
      String why,
      Long loanId,
      String seal,
      String itemCodes,
      Long rig,
      long changed,
      Story.TakenIn takenIn) {
    public List<String> things() {
      return itemCodes == null
          ? List.of()
          : Arrays.stream(itemCodes.split(" ")).map(code -> new ItemCode(code).display()).toList();
    }

    public String shortSeal() {
      return Seal.shortened(seal);
    }
  }

  /** One changed field of a row, in words. */
  public record FieldChange(String field, String from, String to) {}

  /** One changed row, in words. */
  public record RowChange(String thing, long number, List<FieldChange> fields) {}

  private record StoredChange(long id, String table, long row, String what) {}

  private record StoredPersonal(long change, String field, String value) {}

  private static final String ENTRY =
      """
      SELECT s.id, s.happened_at AS happened, s.recorded_at AS recorded, coalesce(a.name, 'Ascham') AS "by", s.sentence,
             iif(s.why IS NULL AND s.why_hash IS NOT NULL, '[erased]', s.why) AS why, s.loan_id, s.hash AS seal,
             (SELECT group_concat(code, ' ') FROM (
               SELECT i.code FROM story_about t JOIN item i ON i.id = t.item_id WHERE t.story_id = s.id LIMIT 3)) AS item_codes,
             (SELECT min(t.rig_id) FROM story_about t WHERE t.story_id = s.id) AS rig,
             (SELECT count(*) FROM change c WHERE c.story_id = s.id) AS changed,"""
          + Story.TakenIn.OF_ENTRY
          + """
        FROM story s LEFT JOIN account a ON a.id = s.account_id
      """;

  /**
   * Newest first.
   *
   * @param before entries with smaller numbers only
   */
  List<Entry> before(long before, int atMost) {
    return rows.list(
        Entry.class, ENTRY + "WHERE s.id < ?1 ORDER BY s.id DESC LIMIT ?2", before, atMost);
  }

  Optional<Entry> numbered(long id) {
    return rows.one(Entry.class, ENTRY + "WHERE s.id = ?1", id);
  }

  /** What the entry changed, row by row in the order in which it was written. */
  List<RowChange> changes(long entry, int atMost) {
    Map<Long, List<StoredPersonal>> personal =
        rows
            .list(
                StoredPersonal.class,
                "SELECT p.change_id, p.field, p.value FROM personal p JOIN change c ON c.id = p.change_id WHERE c.story_id = ?1",
                entry)
            .stream()
            .collect(Collectors.groupingBy(StoredPersonal::change));
    return rows
        .list(
            StoredChange.class,
            "SELECT id, table_name AS \"table\", row_id, what FROM change WHERE story_id = ?1 ORDER BY id LIMIT ?2",
            entry,
            atMost)
        .stream()
        .map(change -> said(change, personal.getOrDefault(change.id(), List.of())))
        .toList();
  }

  private RowChange said(StoredChange change, List<StoredPersonal> personal) {
    List<FieldChange> fields = new ArrayList<>();
    JsonNode what = read(change.what());
    what.properties()
        .forEach(
            field ->
                fields.add(
                    field.getKey().equals("said_of")
                        ? inWords(what)
                        : said(field.getKey(), field.getValue())));
    for (StoredPersonal value : personal) {
      fields.add(
          value.value() == null
              ? new FieldChange(FieldSaid.field(value.field()), "erased", "erased")
              : said(value.field(), read(value.value())));
    }
    return new RowChange(FieldSaid.thing(change.table()), change.row(), fields);
  }

  /** What a verdict said is kept as data; people read it as it was shown. */
  private FieldChange inWords(JsonNode line) {
    List<Object> of =
        json.convertValue(
            read(line.get("said_of").get(1).textValue()), new TypeReference<List<Object>>() {});
    return new FieldChange(
        "words", "nothing", Remark.read(line.get("saying").get(1).textValue(), of).words());
  }

  private FieldChange said(String column, JsonNode pair) {
    return new FieldChange(
        FieldSaid.field(column),
        FieldSaid.value(column, pair.get(0), currency),
        FieldSaid.value(column, pair.get(1), currency));
  }

  private JsonNode read(String text) {
    try {
      return json.readTree(text);
    } catch (JsonProcessingException broken) {
      throw new IllegalStateException("a change is not JSON: " + text, broken);
    }
  }
}
