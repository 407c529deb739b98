package club.ascham.register;

import club.ascham.upkeep.Work;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands against a thing that was found again: nobody knows what befell it meanwhile, so that
 * it waits for the inspections of its kind; and what was scrapped, or failed last, is out of use
 * until someone with the permit has looked at it.
 *
 * <p>An import adds and never changes, so no file brings anything back past this. A test goes
 * through every order of failing, passing, releasing, retiring and finding.
 *
 * @param inspections that it waits for; a string's is its replacement, or that it is kept on
 * @param withdrawnFor why it is withdrawn; null: it is not
 * @param work that the withdrawal asks for; null: to be decided, or it is not withdrawn
 */
record FoundAgain(List<Work> inspections, String withdrawnFor, Work work) {
  /**
   * @param kind of the item
   * @param failed work that it failed last and has not passed since
   * @param withdrawn whether a withdrawal of it was never released
   */
  static FoundAgain of(ItemKind kind, RetiredWhy was, List<Work> failed, boolean withdrawn) {
    List<Work> inspections = Work.allFor(kind.name());
    if (!failed.isEmpty()) {
      Work work = failed.get(0);
      return new FoundAgain(inspections, "Its newest " + work.said() + " was not passed.", work);
    }
    if (was == RetiredWhy.SCRAPPED) {
      // Of a riser the whole, since nobody knows that its bolts were the reason.
      Work work = inspections.isEmpty() ? null : inspections.get(inspections.size() - 1);
      return new FoundAgain(inspections, "It was scrapped.", work);
    }
    return new FoundAgain(
        inspections, withdrawn ? "It was withdrawn and never released." : null, null);
  }

  /**
   * One thing that stands against it.
   *
   * @param what for the person
   * @param endsWith what ends it
   */
  record Stands(String what, String endsWith) {}

  List<Stands> stands() {
    List<Stands> stands = new ArrayList<>();
    for (Work work : inspections) {
      stands.add(
          new Stands(
              work.capital(),
              work.isInspection()
                  ? "until it is passed"
                  : "until it is replaced, or looked over and kept on"));
    }
    withdrawnBecause()
        .ifPresent(
            because ->
                stands.add(
                    new Stands(
                        "Withdrawn: " + because,
                        "until someone with the permit has looked at it and releases it")));
    return List.copyOf(stands);
  }

  Optional<String> withdrawnBecause() {
    return Optional.ofNullable(withdrawnFor);
  }

  /** In one sentence, for whoever pressed. */
  String said() {
    if (inspections.isEmpty() && withdrawnFor == null) {
      return "It is the club's again. Look it over before it goes out.";
    }
    return "It is the club's again, and stays in. "
        + String.join(
            " ",
            stands().stream()
                .map(s -> s.what().replaceAll("[.]$", "") + ": " + s.endsWith() + ".")
                .toList());
  }
}
