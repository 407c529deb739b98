package club.ascham.concern;

import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.store.Rows;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What stands against items, rigs and loans on any day: as things happened, known now. Three
 * statements for rigs and for loans, one for items, however many there are; two more for a day that
 * is over.
 *
 * <p>For a day that is over, what is planned now is taken where nothing was passed since: reckoning
 * every spell costs as much as ten pages.
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
    return read(rigs, moment(day)).on(day);
  }

  /** What stands against rigs on two days. */
  public record NowAndThen(Map<RigId, Against> now, Map<RigId, Against> then) {}

  /** Against each of these rigs today, and on a day to come as far as is known now: one reading. */
  public NowAndThen nowAndOn(Collection<RigId> rigs, LocalDate later) {
    RigFacts facts = read(rigs, moment(later));
    return new NowAndThen(facts.on(time.today()), facts.on(later));
  }

  /** What is known of rigs and of the parts fitted to them. */
  private record RigFacts(
      Collection<RigId> rigs,
      Map<RigId, List<Fact>> own,
      List<Fitted> parts,
      Map<ItemId, List<Fact>> ofParts) {

    Map<RigId, Against> on(LocalDate day) {
      Map<RigId, Against> against = new LinkedHashMap<>();
      rigs.forEach(rig -> against.put(rig, Weighing.on(day, own.getOrDefault(rig, List.of()))));
      parts.forEach(
          part ->
              against.merge(
                  part.rig(),
                  Weighing.on(day, ofParts.getOrDefault(part.item(), List.of())),
                  Against::and));
      return against;
    }
  }

  private RigFacts read(Collection<RigId> rigs, Moment moment) {
    if (rigs.isEmpty()) {
      return new RigFacts(rigs, Map.of(), List.of(), Map.of());
    }
    String ids = ids(rigs.stream().map(RigId::value).toList());
    List<Fitted> parts = rows.list(Fitted.class, ConcernFacts.PARTS, ids, moment.at());
    return new RigFacts(
        rigs,
        rows.list(ConcernFacts.RigRow.class, ConcernFacts.OF_RIGS, ids, moment.at()).stream()
            .flatMap(row -> row.facts(time::dayOf).stream())
            .collect(Collectors.groupingBy(Fact::rig)),
        parts,
        facts(parts.stream().map(Fitted::item).toList(), moment));
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
    Map<ItemId, List<Fact>> facts = facts(items, moment);
    Map<ItemId, Against> against = new LinkedHashMap<>();
    items.forEach(
        item -> against.put(item, Weighing.on(moment.day(), facts.getOrDefault(item, List.of()))));
    return against;
  }

  private Map<ItemId, List<Fact>> facts(Collection<ItemId> items, Moment moment) {
    if (items.isEmpty()) {
      return Map.of();
    }
    Object[] of = {ids(items.stream().map(ItemId::value).toList()), moment.at(), moment.day()};
    List<ConcernFacts.ItemRow> found =
        new ArrayList<>(
            rows.list(
                ConcernFacts.ItemRow.class,
                moment.past() ? ConcernFacts.OF_ITEMS_THEN : ConcernFacts.OF_ITEMS_NOW,
                of));
    List<String> plannedAnew =
        moment.past() ? rows.texts(ConcernFacts.ANOTHER_PLAN_THEN, of) : List.of();
    if (!plannedAnew.isEmpty()) {
      found.addAll(
          rows.list(ConcernFacts.ItemRow.class, ConcernFacts.overdueThen(plannedAnew), of));
    }
    return found.stream()
        .map(row -> row.fact(time::dayOf))
        .collect(Collectors.groupingBy(Fact::item));
  }

  /** Against all that is out with a loan today. */
  public Against of(LoanId loan) {
    return of(loan, time.today());
  }

  /** Against all that was out with a loan on a day. */
  public Against of(LoanId loan, LocalDate day) {
    return ofLoans(List.of(loan), day).get(loan);
  }

  private record OutWith(LoanId loan, ItemId item, RigId rig) {}

  /**
   * Against all that is out with each of these loans, and against the set-up of each bow among it;
   * each has its entry. That a bow was not checked since it came back is no matter of a loan.
   */
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
    Map<RigId, Against> setUps =
        setUps(out.stream().map(OutWith::rig).filter(Objects::nonNull).distinct().toList(), moment);
    out.stream()
        .filter(one -> setUps.containsKey(one.rig()))
        .forEach(one -> against.merge(one.loan(), setUps.get(one.rig()), Against::and));
    return against;
  }

  /** What a line of a list says of each of these loans today; no entry: nothing. */
  public Map<LoanId, Beside> besideLoans(Collection<LoanId> loans) {
    return beside(ofLoans(loans, time.today()));
  }

  /** The same of what was read already. */
  public static Map<LoanId, Beside> beside(Map<LoanId, Against> against) {
    return against.entrySet().stream()
        .filter(one -> !one.getValue().isNothing())
        .collect(Collectors.toMap(Map.Entry::getKey, one -> one.getValue().beside()));
  }

  /** What the set-up of each bow lacks; no entry: nothing. */
  private Map<RigId, Against> setUps(Collection<RigId> rigs, Moment moment) {
    return rows
        .list(
            ConcernFacts.RigRow.class,
            ConcernFacts.OF_RIGS,
            ids(rigs.stream().map(RigId::value).toList()),
            moment.at())
        .stream()
        .flatMap(row -> row.facts(time::dayOf).stream())
        .filter(fact -> fact.matter() == Matter.NOT_SET_UP)
        .collect(
            Collectors.toMap(
                Fact::rig, fact -> Weighing.on(moment.day(), List.of(fact.named())), Against::and));
  }

  private record Lent(ItemId item, Instant outAt) {}

  /** Against all that went out as this loan was issued, at that very moment. */
  public Against whenLent(LoanId loan) {
    List<Lent> lent = rows.list(Lent.class, ConcernFacts.LENT, loan);
    if (lent.isEmpty()) {
      return Against.NOTHING;
    }
    Instant at = lent.get(0).outAt();
    Moment moment = new Moment(time.dayOf(at), at, true);
    return ofItems(lent.stream().map(Lent::item).toList(), moment).values().stream()
        .reduce(Against.NOTHING, Against::and);
  }

  private record Kept(ItemId item) {}

  /** Every item in use that something keeps in today, by code, with all that stands against it. */
  public Map<ItemId, Against> keptIn() {
    List<ItemId> perhaps =
        rows.list(Kept.class, ConcernFacts.KEPT_IN, time.today()).stream().map(Kept::item).toList();
    Map<ItemId, Against> kept = new LinkedHashMap<>(ofItems(perhaps));
    kept.values().removeIf(against -> !against.blocks());
    return kept;
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
