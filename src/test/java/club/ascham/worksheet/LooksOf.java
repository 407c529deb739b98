package club.ascham.worksheet;

import club.ascham.bow.Build;
import club.ascham.form.Words;
import club.ascham.upkeep.Work;
import java.util.Arrays;
import java.util.List;

/** The looks that an inspection of an adjustable bow asks for, for tests of other rooms. */
public final class LooksOf {
  private LooksOf() {}

  /** Keys in the order in which they are asked. */
  public static List<String> keys(String work) {
    Work which =
        Arrays.stream(Work.values())
            .filter(one -> Words.of(one).equals(work))
            .findFirst()
            .orElseThrow();
    return InspectionList.of(which, Build.ADJUSTABLE, null).looks().stream()
        .map(Look::key)
        .toList();
  }
}
