package club.ascham.receive;

import club.ascham.form.Typed;
import club.ascham.units.ItemCode;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What came back of one line, in JSON; words in {@code damage} withdraw it. */
public record LineBody(String code, Boolean back, String damage, Integer count) {
  /**
   * Turns lines named by code into the fields of the form; answers the numbers of those that are
   * back.
   *
   * @param out the lines still out
   * @param notOut what is said of a code that is none of theirs
   */
  public static Set<Long> into(
      Typed typed, List<LineBody> given, List<LineAsked> out, String notOut) {
    Set<Long> back = new HashSet<>();
    for (int i = 0; i < given.size(); i++) {
      LineBody one = given.get(i);
      if (one == null) {
        typed.fault("lines[" + i + "]", "No line stands here.");
        continue;
      }
      String field = "lines[" + i + "].code";
      ItemCode code = Typed.nothing().with(field, one.code()).code(field);
      Optional<LineAsked> line =
          out.stream()
              .filter(asked -> code != null && asked.line().bareCode().equals(code.bare()))
              .findFirst();
      if (line.isEmpty()) {
        typed.fault(field, notOut);
        continue;
      }
      if (!Boolean.FALSE.equals(one.back())) {
        back.add(line.get().line().id());
      }
      typed.with(line.get().damageField(), one.damage());
      typed.with(line.get().countField(), one.count());
    }
    return back;
  }
}
