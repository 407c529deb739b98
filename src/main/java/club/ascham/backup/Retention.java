package club.ascham.backup;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Which backups stay: everything of the last two days, then the newest of each of the last 7 days,
 * 5 weeks and 12 months that have one, and the last 3 that were made before a migration.
 *
 * <p>What earlier backups still hold of whom the club erases is said at the press, with the day on
 * which this rota ends the last of them.
 */
final class Retention {
  static final int DAYS = 7;
  static final int WEEKS = 5;
  static final int MONTHS = 12;
  static final int BEFORE_MIGRATIONS = 3;
  static final Duration ALL_STAY = Duration.ofDays(2);

  private Retention() {}

  /**
   * The names that may go.
   *
   * @param zone whose days, weeks (from Monday) and months count
   */
  static Set<BackupName> superfluous(Collection<BackupName> all, Instant now, ZoneId zone) {
    List<BackupName> newestFirst = all.stream().sorted(BackupName.NEWEST_FIRST).toList();
    Set<BackupName> stay = new HashSet<>();
    newestFirst.stream()
        .filter(one -> one.moment().isAfter(now.minus(ALL_STAY)))
        .forEach(stay::add);
    stay.addAll(newestOfEach(newestFirst, DAYS, one -> day(one, zone)));
    stay.addAll(newestOfEach(newestFirst, WEEKS, one -> monday(one, zone)));
    stay.addAll(newestOfEach(newestFirst, MONTHS, one -> YearMonth.from(day(one, zone))));
    stay.addAll(lastBeforeMigrations(all));
    Set<BackupName> go = new HashSet<>(all);
    go.removeAll(stay);
    return go;
  }

  private static List<BackupName> newestOfEach(
      List<BackupName> newestFirst, int many, Function<BackupName, Object> period) {
    Map<Object, BackupName> newest = new LinkedHashMap<>();
    newestFirst.forEach(one -> newest.putIfAbsent(period.apply(one), one));
    return new ArrayList<>(newest.values()).subList(0, Math.min(many, newest.size()));
  }

  private static LocalDate day(BackupName one, ZoneId zone) {
    return LocalDate.ofInstant(one.moment(), zone);
  }

  private static LocalDate monday(BackupName one, ZoneId zone) {
    return day(one, zone).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }

  /**
   * When those there are now are gone.
   *
   * @param lastDay the day on which the last of them goes, if one is made each night; null: there
   *     is none that goes by itself
   * @param stay those whose day nobody knows: the last before a migration, and what a wrong clock
   *     dated ahead
   */
  record End(LocalDate lastDay, int stay) {}

  /** Goes through the nights to come, by the same rule that thins them out. */
  static End end(Collection<BackupName> all, Instant now, ZoneId zone) {
    Set<BackupName> stay = new HashSet<>(lastBeforeMigrations(all));
    all.stream().filter(one -> one.moment().isAfter(now)).forEach(stay::add);
    Set<BackupName> go = new HashSet<>(all);
    go.removeAll(stay);
    if (go.isEmpty()) {
      return new End(null, stay.size());
    }
    Set<BackupName> there = new HashSet<>(all);
    Instant night = now;
    while (there.stream().anyMatch(go::contains)) {
      night = night.plus(Duration.ofDays(1));
      there.add(new BackupName(night.truncatedTo(ChronoUnit.SECONDS), "", null));
      there.removeAll(superfluous(there, night, zone));
    }
    return new End(LocalDate.ofInstant(night, zone), stay.size());
  }

  private static List<BackupName> lastBeforeMigrations(Collection<BackupName> all) {
    return all.stream()
        .filter(one -> one.before() != null)
        .sorted(BackupName.NEWEST_FIRST)
        .limit(BEFORE_MIGRATIONS)
        .toList();
  }
}
