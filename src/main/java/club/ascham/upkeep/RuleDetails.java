package club.ascham.upkeep;

import club.ascham.bow.Build;
import club.ascham.bow.StringMaterial;
import club.ascham.form.Typed;
import jakarta.persistence.Embeddable;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.util.Optional;

/**
 * A rule as a person gives it: what is done to which items, and how often.
 *
 * @param build null: every build (likewise material)
 * @param everyDays null: days do not count (likewise loans and shots); one at least is given
 * @param soonDays the days before, within which it is due soon
 * @param blocks whether an item stays in once it is overdue
 * @param beyondPercent of its interval beyond which an item stays in although being overdue does
 *     not block; null: it never does
 */
@Embeddable
record RuleDetails(
    String itemKind,
    @Enumerated(EnumType.STRING) Build build,
    @Enumerated(EnumType.STRING) StringMaterial material,
    @Enumerated(EnumType.STRING) Work work,
    Integer everyDays,
    Integer everyLoans,
    Integer everyShots,
    int soonDays,
    boolean blocks,
    Integer beyondPercent,
    String source) {
  private static final int LONGEST_SOURCE = 500;
  private static final int USUALLY_SOON_DAYS = 14;

  /** Reads the components by their names. */
  static Optional<RuleDetails> parse(Typed typed) {
    DueFilter.Kind kind =
        typed.requiredWord("itemKind", DueFilter.Kind.class, "For which kind of item?");
    Work work = typed.requiredWord("work", Work.class, "What is to be done?");
    if (kind != null && work != null && !work.isFor(kind.name())) {
      typed.fault("work", "That is not done to such an item.");
    }
    Build build = typed.word("build", Build.class);
    if (build != null
        && kind != null
        && (build == Build.ONE_PIECE
            || (kind != DueFilter.Kind.RISER && kind != DueFilter.Kind.LIMBS))) {
      typed.fault("build", "Only risers and limbs are of one build or another.");
    }
    StringMaterial material = typed.word("material", StringMaterial.class);
    if (material != null && kind != null && kind != DueFilter.Kind.STRING) {
      typed.fault("material", "Only strings have a material.");
    }
    Integer days = typed.whole("everyDays", 1, 4000);
    Integer loans = typed.whole("everyLoans", 1, 1000);
    Integer shots = typed.whole("everyShots", 1, 1_000_000);
    if (typed.sound() && days == null && loans == null && shots == null) {
      typed.fault("everyDays", "How often: after so many days, loans or shots? One at least.");
    }
    Integer beyond = typed.whole("beyondPercent", 0, 400);
    Integer soon = typed.whole("soonDays", 0, 365);
    String source =
        typed.source(
            "source", LONGEST_SOURCE, "Where does it come from? If from nowhere: common practice.");
    return typed.sound()
        ? Optional.of(
            new RuleDetails(
                kind.name(),
                build,
                material,
                work,
                days,
                loans,
                shots,
                soon == null ? USUALLY_SOON_DAYS : soon,
                typed.ticked("blocks"),
                beyond,
                source))
        : Optional.empty();
  }

  /** The same, after so many days. */
  RuleDetails every(int days, String from) {
    return new RuleDetails(
        itemKind,
        build,
        material,
        work,
        days,
        everyLoans,
        everyShots,
        soonDays,
        blocks,
        beyondPercent,
        from);
  }
}
