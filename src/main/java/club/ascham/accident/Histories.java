package club.ascham.accident;

import club.ascham.check.Verdicts;
import club.ascham.id.ItemId;
import club.ascham.store.Rows;
import club.ascham.story.Story;
import club.ascham.verdict.Given;
import io.quarkus.qute.TemplateData;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Reads all that the record knows of some items, the oldest first: twelve statements, however many
 * items and however long their past.
 */
@ApplicationScoped
class Histories {
  private final Rows rows;
  private final Verdicts verdicts;

  Histories(Rows rows, Verdicts verdicts) {
    this.rows = rows;
    this.verdicts = verdicts;
  }

  /**
   * A sentence of the record.
   *
   * @param id its number in the record
   * @param seal shortened; null: not sealed
   * @param takenIn null: it was told here
   */
  @TemplateData
  record Sentence(
      ItemId item,
      long id,
      Instant happened,
      Instant recorded,
      String by,
      String sentence,
      String why,
      String seal,
      Story.TakenIn takenIn) {}

  /** What was measured, done, lent and told, and the record's own sentences. */
  @TemplateData
  record Past(List<Event> events, List<Sentence> story) {
    static final Past NONE = new Past(List.of(), List.of());

    Past withoutNames() {
      return new Past(events.stream().map(Event::withoutNames).toList(), story);
    }
  }

  private record Known(ItemId item, Event event) {}

  /** Each thing of an accident with its past; arrows out of a pool can't be told apart. */
  Map<Accidents.Thing, Past> traced(List<Accidents.Thing> things, boolean names) {
    Map<ItemId, Past> known =
        of(
            things.stream()
                .filter(thing -> thing.arrows() == null)
                .map(Accidents.Thing::item)
                .toList());
    Map<Accidents.Thing, Past> traced = new LinkedHashMap<>();
    for (Accidents.Thing thing : things) {
      Past history = known.getOrDefault(thing.item(), Past.NONE);
      traced.put(thing, names ? history : history.withoutNames());
    }
    return traced;
  }

  private Map<ItemId, Past> of(Collection<ItemId> items) {
    if (items.isEmpty()) {
      return Map.of();
    }
    String ids =
        items.stream()
            .map(item -> Long.toString(item.value()))
            .collect(Collectors.joining(",", "[", "]"));
    Map<ItemId, List<Event>> events =
        Stream.of(
                read(HistoryFacts.Fitted.class, HistorySql.FITTED, ids),
                read(HistoryFacts.SetUp.class, HistorySql.SET_UPS, ids),
                checks(ids),
                read(HistoryFacts.Adjusted.class, HistorySql.ADJUSTMENTS, ids),
                read(HistoryFacts.Done.class, HistorySql.UPKEEP, ids),
                read(HistoryFacts.AskedFor.class, HistorySql.ASKED_FOR, ids),
                read(HistoryFacts.Withdrawn.class, HistorySql.WITHDRAWALS, ids),
                read(HistoryFacts.Told.class, HistorySql.REPORTS, ids),
                read(HistoryFacts.Lent.class, HistorySql.LOANS, ids),
                read(HistoryFacts.Weighed.class, HistorySql.WEIGHED, ids))
            .flatMap(Function.identity())
            .collect(
                Collectors.groupingBy(
                    Known::item, Collectors.mapping(Known::event, Collectors.toList())));
    Map<ItemId, List<Sentence>> stories =
        rows.list(Sentence.class, HistorySql.STORIES, ids).stream()
            .collect(Collectors.groupingBy(Sentence::item));
    Map<ItemId, Past> histories = new HashMap<>();
    for (ItemId item : items) {
      List<Event> ofItem =
          events.getOrDefault(item, List.of()).stream()
              .sorted(Comparator.comparing(Event::at))
              .toList();
      histories.put(item, new Past(ofItem, stories.getOrDefault(item, List.of())));
    }
    return histories;
  }

  private Stream<Known> checks(String ids) {
    List<HistoryFacts.Check> checks = rows.list(HistoryFacts.Check.class, HistorySql.CHECKS, ids);
    Map<Long, Given> given = verdicts.of(checks.stream().map(HistoryFacts.Check::id).toList());
    return checks.stream()
        .flatMap(
            check ->
                check.events(given.get(check.id())).map(event -> new Known(check.item(), event)));
  }

  private <R extends Record & HistoryFacts.Fact> Stream<Known> read(
      Class<R> shape, String sql, String ids) {
    return rows.list(shape, sql, ids).stream()
        .flatMap(fact -> fact.events().map(event -> new Known(fact.item(), event)));
  }
}
