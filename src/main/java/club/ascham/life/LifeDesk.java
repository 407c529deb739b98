package club.ascham.life;

import club.ascham.life.PartLife.Measure;
import club.ascham.plan.Kind;
import club.ascham.register.ItemKind;
import club.ascham.rules.PlanRules;
import club.ascham.statistics.KaplanMeier;
import club.ascham.statistics.LifeEstimate;
import club.ascham.statistics.PooledLife;
import club.ascham.statistics.Service;
import club.ascham.statistics.WeibullFit;
import club.ascham.upkeep.UpkeepRules;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Lays out how long the parts of one kind last, group by group, and what its rules could become.
 */
@ApplicationScoped
public class LifeDesk {
  private final PartLives lives;
  private final UpkeepRules rules;
  private final PlanRules planRules;

  LifeDesk(PartLives lives, UpkeepRules rules, PlanRules planRules) {
    this.lives = lives;
    this.rules = rules;
    this.planRules = planRules;
  }

  /**
   * One group of a kind.
   *
   * @param name empty: the kind has no groups
   * @param fit its life, leaning on its kind while it is small; null: the kind carries none
   */
  record Group(String name, List<PartLife> parts, WeibullFit fit) {
    long failed() {
      return parts.stream().filter(PartLife::failed).count();
    }

    long inUse() {
      return parts.stream().filter(part -> part.end() == End.IN_USE).count();
    }

    long leftOtherwise() {
      return parts.size() - failed() - inUse();
    }
  }

  /**
   * A rule whose interval in days is about replacing, and what the record makes of it.
   *
   * @param failureTimes what a part that fails costs, in costs of one replaced in time
   */
  record Ruled(UpkeepRules.Rule rule, double failureTimes, Proposal proposal) {}

  /**
   * @param untold parts that tell nothing in this measure
   * @param refusal why no life is told; null: one is
   * @param survival of all of the kind
   */
  record Lasting(
      ItemKind kind,
      Measure measure,
      List<Group> groups,
      WeibullFit together,
      int untold,
      String refusal,
      KaplanMeier survival) {
    List<PartLife> parts() {
      return groups.stream().flatMap(group -> group.parts().stream()).toList();
    }
  }

  /** The life in days of all parts of a kind; empty where the record does not carry one. */
  public Optional<WeibullFit> inDays(ItemKind kind) {
    return LifeEstimate.of(services(lives.of(kind), Measure.DAYS))
            instanceof LifeEstimate.Fitted fitted
        ? Optional.of(fitted.fit())
        : Optional.empty();
  }

  Lasting of(ItemKind kind, Measure measure) {
    Map<String, List<PartLife>> byGroup =
        lives.of(kind).stream()
            .collect(Collectors.groupingBy(PartLife::group, TreeMap::new, Collectors.toList()));
    Map<String, List<Service>> services = new LinkedHashMap<>();
    byGroup.forEach((group, parts) -> services.put(group, services(parts, measure)));
    List<Service> all = services.values().stream().flatMap(List::stream).toList();
    int parts = byGroup.values().stream().mapToInt(List::size).sum();
    Optional<PooledLife> pooled = PooledLife.of(services);
    List<Group> groups = new ArrayList<>();
    byGroup.forEach(
        (name, of) ->
            groups.add(new Group(name, of, pooled.map(p -> p.groups().get(name)).orElse(null))));
    String refusal =
        LifeEstimate.of(all) instanceof LifeEstimate.Refused refused ? refused.why() : null;
    return new Lasting(
        kind,
        measure,
        groups,
        pooled.map(PooledLife::together).orElse(null),
        parts - all.size(),
        refusal,
        KaplanMeier.of(all, LifeEstimate.BAND));
  }

  private static List<Service> services(List<PartLife> parts, Measure measure) {
    return parts.stream().flatMap(part -> part.service(measure).stream()).toList();
  }

  /** The rules that replace such parts after so many days; none for a life in loans or shots. */
  List<Ruled> ruled(Lasting lasting) {
    if (lasting.measure() != Measure.DAYS) {
      return List.of();
    }
    double times =
        planRules.terms().stream()
            .filter(terms -> terms.kind() == Kind.valueOf(lasting.kind().name()))
            .mapToDouble(PlanRules.Terms::failureTimes)
            .findFirst()
            .orElse(1);
    return rules.all().stream()
        .filter(rule -> rule.itemKind().equals(lasting.kind().name()))
        .filter(rule -> !rule.work().isInspection() && rule.everyDays() != null)
        .map(rule -> new Ruled(rule, times, proposal(lasting, rule, times)))
        .toList();
  }

  private static Proposal proposal(Lasting lasting, UpkeepRules.Rule rule, double times) {
    WeibullFit fit =
        rule.material() == null
            ? lasting.together()
            : lasting.groups().stream()
                .filter(group -> group.name().equals(PartLife.groupSaid(rule.material().name())))
                .map(Group::fit)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    if (fit != null) {
      return Proposal.of(fit, times, rule.everyDays());
    }
    return new Proposal.Untold(
        lasting.refusal() == null ? "No such part was in use." : lasting.refusal());
  }
}
