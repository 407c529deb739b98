package club.ascham.statistics;

import java.util.List;
import java.util.Optional;

/** How long parts last, as far as the record can say. */
public final class LifeEstimate {
  /** With fewer failures than these no single life is told (judged). */
  public static final int FEWEST_FAILURES = 5;

  /** Of the band around the survival curve, and of what the pages call <i>likely between</i>. */
  public static final double BAND = 0.95;

  private LifeEstimate() {}

  /** A life, or why there is none. */
  public sealed interface Answer {}

  public record Fitted(WeibullFit fit) implements Answer {}

  /**
   * @param why for a person, with the counts
   */
  public record Refused(String why) implements Answer {}

  /**
   * The life of parts of one kind, by maximum likelihood, refused where they are too few, or too
   * much alike, to carry it.
   */
  public static Answer of(List<Service> services) {
    Optional<Refused> refused = refused(services);
    if (refused.isPresent()) {
      return refused.get();
    }
    return WeibullFit.of(services)
        .<Answer>map(Fitted::new)
        .orElseGet(
            () ->
                new Refused(
                    "The ages of these %s do not say how long they last: no shape fits them best."
                        .formatted(parts(services.size()))));
  }

  private static Optional<Refused> refused(List<Service> services) {
    int failed = (int) services.stream().filter(Service::failed).count();
    long ages = services.stream().filter(Service::failed).map(Service::until).distinct().count();
    String counts = "%d of %s failed".formatted(failed, parts(services.size()));
    if (failed == 0) {
      return Optional.of(
          new Refused(
              services.isEmpty()
                  ? "There are no parts."
                  : "None of %s failed: nothing tells yet how long they last."
                      .formatted(parts(services.size()))));
    }
    if (ages == 1 && failed > 1) {
      return Optional.of(
          new Refused(counts + ", all at the same age: how they spread can't be told."));
    }
    return failed < FEWEST_FAILURES
        ? Optional.of(
            new Refused(
                counts + "; at least %d have to before a life is told.".formatted(FEWEST_FAILURES)))
        : Optional.empty();
  }

  private static String parts(int count) {
    return count == 1 ? "1 part" : count + " parts";
  }
}
