package club.ascham.issue;

import club.ascham.form.Option;
import club.ascham.form.Typed;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/** The answers that stand in the address of the issue page, and addresses with one more of them. */
final class IssueAddress {
  private static final List<String> ABOUT_THE_PERSON =
      List.of(
          "hand",
          "dominantEye",
          "drawLength",
          "drawLength-unit",
          "drawEstimated",
          "armSpan",
          "armSpan-unit",
          "ageBand",
          "experience");

  private IssueAddress() {}

  /** What the next form carries along. */
  static List<Option> carried(Typed typed) {
    List<Option> carried = new ArrayList<>();
    for (String field : ABOUT_THE_PERSON) {
      add(carried, typed, field);
    }
    add(carried, typed, "rig");
    add(carried, typed, "borrower");
    return carried;
  }

  static String withRig(Typed typed, long rig) {
    return address(typed, "borrower") + "&rig=" + rig + "#rig";
  }

  static String withBorrower(Typed typed, long borrower) {
    return address(typed, "rig") + "&borrower=" + borrower + "#who";
  }

  static String withoutBorrower(Typed typed) {
    return address(typed, "rig") + "#who";
  }

  private static String address(Typed typed, String kept) {
    StringJoiner query = new StringJoiner("&", "/issue?", "");
    for (Option one : carried(typed)) {
      if (ABOUT_THE_PERSON.contains(one.value()) || one.value().equals(kept)) {
        query.add(one.value() + "=" + URLEncoder.encode(one.label(), StandardCharsets.UTF_8));
      }
    }
    return query.toString();
  }

  private static void add(List<Option> carried, Typed typed, String field) {
    if (typed.has(field)) {
      carried.add(new Option(field, typed.value(field)));
    }
  }
}
