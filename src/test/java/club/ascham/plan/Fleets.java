package club.ascham.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Fleets to reckon with, all invented. */
public final class Fleets {
  static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

  private Fleets() {}

  /** One that fails costs no more than one replaced in time. */
  static Map<Kind, Terms> terms(long price, int leadDays) {
    return terms(price, leadDays, 1);
  }

  static Map<Kind, Terms> terms(long price, int leadDays, double failureTimes) {
    Map<Kind, Terms> terms = new EnumMap<>(Kind.class);
    for (Kind kind : Kind.values()) {
      terms.put(kind, new Terms(price, leadDays, 30, failureTimes));
    }
    return terms;
  }

  /** A string on the first rig, 100 days old, with 0.1 loans and 5 shots a day. */
  static PlannedPart usedString(Routine routine) {
    return new PlannedPart(
        "S1", "string", Kind.STRING, "string", 0, 100, 0.1, 5, null, List.of(routine));
  }

  static PlannedFleet fleet(
      List<PlannedPart> parts, Map<String, Integer> spares, Map<Kind, Terms> terms) {
    int rigs = parts.stream().mapToInt(part -> part.rig() + 1).max().orElse(0);
    List<PlannedFleet.Rig> names = new ArrayList<>();
    for (int i = 0; i < rigs; i++) {
      names.add(new PlannedFleet.Rig("rig " + i, 0));
    }
    return new PlannedFleet(TODAY, names, parts, spares, terms);
  }

  static Assumptions assumed(int replications, double hoursAWeek, double usageSpread) {
    return new Assumptions(
        7,
        replications,
        hoursAWeek,
        0,
        new Assumptions.Course(3, 12, 6, 60),
        usageSpread,
        Map.of(),
        Map.of());
  }

  static PlannedPart string(int rig, Lifetime life, Routine... routines) {
    return new PlannedPart(
        "S" + rig, "string", Kind.STRING, "string, 68 in", rig, 0, 0, 0, life, List.of(routines));
  }

  static Routine replacement(int everyDays, int dueInDays) {
    return new Routine(
        "replacement", 30, everyDays, null, null, dueInDays, null, null, 60, false, true);
  }

  static Routine inspection(int everyDays, int dueInDays, int minutes, int slackDays) {
    return new Routine(
        "inspection",
        minutes,
        everyDays,
        null,
        null,
        dueInDays,
        null,
        null,
        slackDays,
        true,
        false);
  }

  /** As large a club as anyone plans for, of every age and use, by chance from a seed. */
  public static PlannedFleet large(int rigs, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<PlannedPart> parts = new ArrayList<>();
    for (int rig = 0; rig < rigs; rig++) {
      double loans = random.nextDouble() * 0.15;
      double shots = loans * 60;
      parts.add(
          new PlannedPart(
              "R" + rig,
              "riser",
              Kind.RISER,
              "riser " + rig % 4,
              rig,
              random.nextInt(4000),
              loans,
              shots,
              new Lifetime(2, 6000, "made up"),
              List.of(
                  counted("bolt inspection", 180, 12, null, random, 21, true, false),
                  counted("riser inspection", 365, null, null, random, 30, true, false))));
      parts.add(
          new PlannedPart(
              "L" + rig,
              "limbs",
              Kind.LIMBS,
              "limbs " + rig % 12,
              rig,
              random.nextInt(3000),
              loans,
              shots,
              new Lifetime(2, 3000, "made up"),
              List.of(counted("limb inspection", 365, null, null, random, 30, true, false))));
      parts.add(
          new PlannedPart(
              "S" + rig,
              "string",
              Kind.STRING,
              "string " + rig % 8,
              rig,
              random.nextInt(700),
              loans,
              shots,
              new Lifetime(2, 2500, "made up"),
              List.of(counted("string replacement", 730, null, 4000, random, 90, false, true))));
    }
    Map<String, Integer> spares = Map.of("string 0", 3, "string 1", 1, "limbs 0", 2);
    return fleet(parts, spares, terms(1150, 21));
  }

  private static Routine counted(
      String work,
      int days,
      Integer loans,
      Integer shots,
      SplittableRandom random,
      int slack,
      boolean safety,
      boolean replaces) {
    return new Routine(
        work,
        15 + random.nextInt(30),
        days,
        loans,
        shots,
        random.nextInt(days),
        loans == null ? null : 1 + random.nextInt(loans),
        shots == null ? null : 1 + random.nextInt(shots),
        slack,
        safety,
        replaces);
  }
}
