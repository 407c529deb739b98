package club.ascham.worksheet;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.WorkId;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
import jakarta.inject.Singleton;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Inspects what all is fine with, and puts new strings on. */
@Singleton
public class WorksheetDoor {
  private final InspectItem inspectItem;
  private final ReplaceString replaceString;
  private final Subjects subjects;
  private final ClubTime time;

  WorksheetDoor(
      InspectItem inspectItem, ReplaceString replaceString, Subjects subjects, ClubTime time) {
    this.inspectItem = inspectItem;
    this.replaceString = replaceString;
    this.subjects = subjects;
    this.time = time;
  }

  public Outcome<WorkId> pass(ItemCode item, Work work) {
    Subject subject = subjects.coded(item).orElseThrow();
    InspectionList list = subject.list(work);
    Map<String, String> form = new HashMap<>();
    list.looks().forEach(look -> form.put(look.key(), "fine"));
    form.put("words", "Looked over in good light; all as it should be.");
    form.put("upperTurnsOut", "2");
    form.put("lowerTurnsOut", "2");
    Typed typed = Typed.of(form);
    return Inspection.parse(typed, subject, list, List.of(), time)
        .map(inspection -> inspectItem.inspect(subject, list, inspection))
        .orElseThrow(() -> new IllegalArgumentException(typed.faults().toString()));
  }

  public Outcome<WorkId> replace(ItemCode old, ItemCode fresh) {
    Typed typed = Typed.of(Map.of("newString", fresh.display(), "oldString", "scrapped"));
    return Replacement.parse(typed, time.today())
        .map(replacement -> replaceString.replace(old, replacement))
        .orElseThrow(() -> new IllegalArgumentException(typed.faults().toString()));
  }
}
