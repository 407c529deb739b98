package club.ascham.exchange;

import club.ascham.Settings;
import club.ascham.check.NoteDrift;
import club.ascham.id.AccountId;
import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import io.quarkus.arc.All;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.sql.DataSource;

/**
 * Takes files in: everything that is wrong with any of them is named, and unless nothing is,
 * nothing is changed. A dry run does the same work and takes it back, so that what it promises is
 * what an import does.
 */
@ApplicationScoped
public class Import {
  private final DataSource source;
  private final Currency currency;
  private final ClubTime time;
  private final Story story;
  private final Rows rows;
  private final NoteDrift noteDrift;
  private final Map<String, RowRules> rules;
  private final List<AfterRows> afterwards;

  Import(
      DataSource source,
      Settings settings,
      ClubTime time,
      Story story,
      Rows rows,
      NoteDrift noteDrift,
      @All List<RowRules> rules,
      @All List<AfterRows> afterwards) {
    this.source = source;
    this.currency = Currency.getInstance(settings.currency());
    this.time = time;
    this.story = story;
    this.rows = rows;
    this.noteDrift = noteDrift;
    this.rules = rules.stream().collect(Collectors.toMap(RowRules::list, Function.identity()));
    this.afterwards = afterwards;
  }

  /**
   * A file as it came.
   *
   * @param name as the person named it
   */
  public record CsvFile(String name, byte[] bytes) {}

  /** All that can be read of the files before their turn to write has come. */
  Sheets read(List<CsvFile> files) {
    return Sheets.read(files, new Surroundings(currency, 0), rules).atMost(CsvText.MOST_LINES);
  }

  /** What {@link #take} would do; changes nothing. */
  @Writes
  ImportReport tryOut(Sheets files) {
    ImportReport report = run(files, afterwards);
    QuarkusTransaction.setRollbackOnly();
    return report;
  }

  /**
   * Imports all of the files, or nothing where anything is wrong with any of them: then the report
   * is not sound, and says what.
   */
  @Writes
  ImportReport take(Sheets files, AccountId by) {
    ImportReport report = run(files, afterwards);
    if (!report.sound()) {
      QuarkusTransaction.setRollbackOnly();
      return report;
    }
    story.keepReasonsApart();
    noteWho(report, by);
    if (report.has("checks")) {
      noteDrift.all();
    }
    return report;
  }

  private void noteWho(ImportReport report, AccountId by) {
    report
        .changedRules()
        .forEach(
            rule ->
                rows.change(
                    "UPDATE upkeep_rule SET changed_by = ?2, changed_at = ?3 WHERE id = ?1",
                    rule,
                    by,
                    time.now()));
    // Where stories come along, they tell of the items already.
    boolean tellsOfItems = !report.newItems().isEmpty() && !report.has("stories");
    story.tell(
        tellsOfItems
            ? new Story.Told(
                time.now(),
                by,
                "Registered from a file.",
                null,
                null,
                report.newItems().stream().map(ItemId::new).toList(),
                List.of())
            : Story.Told.ofClub(time.now(), by, "Took in a file."));
    story.tookIn(report.newEntries());
  }

  /**
   * Fills an empty club.
   *
   * @param shiftDays how many days later every date of the files is taken to be
   * @throws IllegalStateException where anything is wrong with the files
   */
  @Writes
  public void fill(List<CsvFile> files, long shiftDays) {
    // No form was ever filled in for these: the database's own rules hold them.
    ImportReport report =
        run(Sheets.read(files, new Surroundings(currency, shiftDays), Map.of()), List.of());
    if (!report.sound()) {
      BadCell first = report.bad().get(0);
      throw new IllegalStateException(first.where() + ": " + first.message());
    }
    story.keepReasonsApart();
  }

  /** The names of all lists, in the order in which an empty club is filled. */
  public static List<String> lists() {
    return Lists.all().stream().map(CsvList::name).toList();
  }

  private ImportReport run(Sheets files, List<AfterRows> afterwards) {
    try (Connection connection = source.getConnection()) {
      return new ImportRun(connection, currency, time.today(), afterwards).run(files);
    } catch (SQLException failure) {
      throw new IllegalStateException("the database failed during an import", failure);
    }
  }
}
