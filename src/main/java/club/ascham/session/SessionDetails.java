package club.ascham.session;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.report.PartChoice;
import club.ascham.report.Telling;
import java.util.ArrayList;
import java.util.List;

/** Reads what a leader typed, for going out and for coming back. */
final class SessionDetails {

  private SessionDetails() {}

  /** The rigs ticked as {@code rig-NUMBER}. */
  static List<RigId> rigs(Typed typed) {
    List<RigId> rigs = new ArrayList<>();
    for (String field : typed.all().keySet()) {
      if (field.matches("rig-\\d{1,9}") && typed.ticked(field)) {
        rigs.add(new RigId(Long.parseLong(field.substring("rig-".length()))));
      }
    }
    if (rigs.isEmpty()) {
      typed.fault("rigs", "Tick at least one rig.");
    }
    return rigs;
  }

  static String leader(Typed typed) {
    return typed.required("leader", 80, "Who leads the session?");
  }

  /**
   * What is said of each rig that is out: {@code out-RIG} ticked: not back yet; what was told of it
   * (as everywhere, each field with the rig's number after it); {@code seen-RIG} ticked with {@code
   * words-RIG}; else looked over, fine.
   *
   * @param parts what is out
   */
  static List<ReturnSession.RigBack> back(
      Typed typed, List<Sessions.Out> rigs, List<PartChoice> parts) {
    List<ReturnSession.RigBack> back = new ArrayList<>();
    for (Sessions.Out rig : rigs) {
      if (rig.isOut() && typed.ticked(rig.stillOutField())) {
        continue;
      }
      if (!rig.isOut()) {
        // Somebody was quicker; what this hand tells of it is kept, and nobody is asked twice.
        Telling.Fields fields = Telling.Fields.of(rig.rig());
        Telling late =
            Telling.parse(
                typed.with(fields.notSo(), "on"),
                fields,
                parts.stream().filter(part -> rig.rig().equals(part.rig())).toList(),
                Telling.WordsAlone.SOMETHING_ELSE);
        if (!late.isNothing()) {
          back.add(new ReturnSession.RigBack(rig.rig(), late));
        }
        continue;
      }
      Telling told =
          Telling.parse(
              typed,
              Telling.Fields.of(rig.rig()),
              parts.stream().filter(part -> rig.rig().equals(part.rig())).toList(),
              Telling.WordsAlone.SOMETHING_ELSE);
      if (typed.ticked(rig.seenField()) && told.isNothing()) {
        typed.fault(rig.wordsField(), "What was seen? Tick it, or say it in a few words.");
      }
      back.add(new ReturnSession.RigBack(rig.rig(), told));
    }
    if (back.isEmpty()) {
      typed.fault("rigs", "None of them is back: there is nothing to save.");
    }
    return back;
  }
}
