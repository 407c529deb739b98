package club.ascham.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What the next 24 months hold. Money is in minor units, work in minutes.
 *
 * @param jobs the work that can be foreseen, in the week in which it is best done: as it goes where
 *     nothing fails and use stays as it was
 * @param mostOut rigs out of use in the worst week
 * @param lateSafetyMinutes work for safety that the hours did not suffice for when it was due,
 *     summed over the weeks it waited
 */
public record Plan(
    Assumptions assumed,
    List<Week> weeks,
    List<Month> months,
    List<Year> years,
    List<Purchase> purchases,
    List<Job> jobs,
    EnoughHours enough,
    Spread mostOut,
    Spread lateSafetyMinutes) {

  /**
   * A week.
   *
   * @param minutes of work done
   * @param ifNothingFails minutes of work in the one course in which nothing fails and use stays as
   *     it was: none of the chances, so that it may lie outside their band
   * @param lateSafety minutes that its hours did not suffice for (likewise lateOther)
   * @param out rigs out of use
   */
  public record Week(
      LocalDate from,
      Spread minutes,
      int ifNothingFails,
      Spread lateSafety,
      Spread lateOther,
      Spread out) {}

  /**
   * A month.
   *
   * @param planned parts replaced when due, on average
   * @param unplanned parts replaced because they failed, on average
   * @param replaced all of them together
   * @param cost of what is ordered in it
   * @param costSoFar with all months before
   */
  public record Month(
      LocalDate from,
      Map<Kind, Double> planned,
      Map<Kind, Double> unplanned,
      Spread replaced,
      Spread cost,
      Spread costSoFar) {}

  /**
   * Twelve months.
   *
   * @param cost of what is ordered
   * @param besideParts what failures cost beside the parts that take their place: evenings, and
   *     what they took along
   */
  public record Year(
      LocalDate from, Spread cost, Spread besideParts, Spread replaced, Spread minutes) {}

  /**
   * What is ordered in one month of parts that may stand in for each other; none where none is
   * expected.
   */
  public record Purchase(LocalDate month, Kind kind, String alike, Spread count) {}

  /**
   * A piece of work.
   *
   * @param week the first day of the week in which it is done; null: the week it is due in has no
   *     room for it, nor any before that it may be done in
   */
  public record Job(
      LocalDate week,
      String code,
      String name,
      String work,
      LocalDate due,
      int minutes,
      boolean safety) {
    public boolean fits() {
      return week != null;
    }
  }

  /** Work that more hours would get done in time; what was due before today they would not. */
  public List<Job> unfitting() {
    LocalDate today = weeks.get(0).from();
    return jobs.stream().filter(job -> !job.fits() && !job.due().isBefore(today)).toList();
  }
}
