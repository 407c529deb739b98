package club.ascham.concern;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What stands against items, rigs and loans on any day: as things happened, known now. Three
 * statements for rigs, one for items, however many there are.
 */
@ApplicationScoped
public class Concerns {
  /** Of today and later all counts that is known, whatever the clock says: it may be set back. */
  private static final Instant ALL_THAT_IS_KNOWN = Instant.parse("9999-12-31T23:59:59.999Z");

  private final Rows rows;
  private final ClubTime time;

  Concerns(Rows rows, ClubTime time) {
    this.rows = rows;
    this.time = time;
  }

  private record Fitted(RigId rig, ItemId item) {}

  /** Against this rig and each part of it, today. */
  public Against of(RigId rig) {
    return ofRigs(List.of(rig)).get(rig);
  }

  /** Against this rig on a day; of a day to come, as far as is known now. */
  public Against of(RigId rig, LocalDate day) {
    return ofRigs(List.of(rig), day).get(rig);
  }

  /** Against each of these rigs today; each has its entry. */
  public Map<RigId, Against> ofRigs(Collection<RigId> rigs) {
    return ofRigs(rigs, time.today());
  }

  public Map<RigId, Against> ofRigs(Collection<RigId> rigs, LocalDate day) {
    if (rigs.isEmpty()) {
      return Map.of();
    }
    Moment moment = moment(day);
    String ids = ids(rigs.stream().map(RigId::value).toList());
    List<Fitted> parts = rows.list(Fitted.class, ConcernFacts.PARTS, ids, moment.at());
    Map<ItemId, Against> ofParts = ofItems(parts.stream().map(Fitted::item).toList(), moment);
    Map<RigId, List<Fact>> own =
        rows.list(ConcernFacts.RigRow.class, ConcernFacts.OF_RIGS, ids, moment.at()).stream()
            .flatMap(row -> row.facts(time::dayOf).stream())
            .collect(Collectors.groupingBy(Fact::rig));
    Map<RigId, Against> against = new LinkedHashMap<>();
    rigs.forEach(rig -> against.put(rig, Weighing.on(day, own.getOrDefault(rig, List.of()))));
    parts.forEach(part -> against.merge(part.rig(), ofParts.get(part.item()), Against::and));
    return against;
  }

  /** Against this item today. */
  public Against of(ItemId item) {
    return ofItems(List.of(item)).get(item);
  }

  public Against of(ItemId item, LocalDate day) {
    return ofItems(List.of(item), day).get(item);
  }

  /** Against each of these items today, wherever they are; each has its entry. */
  public Map<ItemId, Against> ofItems(Collection<ItemId> items) {
    return ofItems(items, time.today());
  }

  public Map<ItemId, Against> ofItems(Collection<ItemId> items, LocalDate day) {
    return ofItems(items, moment(day));
  }

  private Map<ItemId, Against> ofItems(Collection<ItemId> items, Moment moment) {
    if (items.isEmpty()) {
      return Map.of();
    }
    Map<ItemId, List<Fact>> facts =
        rows
            .list(
                ConcernFacts.ItemRow.class,
                moment.past() ? ConcernFacts.OF_ITEMS_THEN : ConcernFacts.OF_ITEMS_NOW,
                ids(items.stream().map(ItemId::value).toList()),
                moment.at(),
                moment.day())
            .stream()
            .map(row -> row.fact(time::dayOf))
            .collect(Collectors.groupingBy(Fact::item));
    Map<ItemId, Against> against = new LinkedHashMap<>();
    items.forEach(
        item -> against.put(item, Weighing.on(moment.day(), facts.getOrDefault(item, List.of()))));
    return against;
  }

  /** Against all that is out with a loan today. */
  public Against of(LoanId loan) {
    return of(loan, time.today());
  }

  /** Against all that was out with a loan on a day. */
  public Against of(LoanId loan, LocalDate day) {
    return ofLoans(List.of(loan), day).get(loan);
  }

  private record OutWith(LoanId loan, ItemId item) {}

  /** Against all that is out with each of these loans; each has its entry. */
  public Map<LoanId, Against> ofLoans(Collection<LoanId> loans, LocalDate day) {
    if (loans.isEmpty()) {
      return Map.of();
    }
    Moment moment = moment(day);
    List<OutWith> out =
        rows.list(
            OutWith.class,
            ConcernFacts.OUT,
            ids(loans.stream().map(LoanId::value).toList()),
            moment.at());
    Map<ItemId, Against> ofItems =
        ofItems(out.stream().map(OutWith::item).distinct().toList(), moment);
    Map<LoanId, Against> against = new LinkedHashMap<>();
    loans.forEach(loan -> against.put(loan, Against.NOTHING));
    out.forEach(one -> against.merge(one.loan(), ofItems.get(one.item()), Against::and));
    return against;
  }

  /**
   * @param at as things had happened by then
   * @param past whether the day is over
   */
  private record Moment(LocalDate day, Instant at, boolean past) {}

  private Moment moment(LocalDate day) {
    boolean past = day.isBefore(time.today());
    return new Moment(
        day,
        past ? time.momentOf(day.plusDays(1).atStartOfDay()).minusMillis(1) : ALL_THAT_IS_KNOWN,
        past);
  }

  private static String ids(Collection<Long> ids) {
    return ids.stream().map(String::valueOf).collect(Collectors.joining(",", "[", "]"));
  }
}
