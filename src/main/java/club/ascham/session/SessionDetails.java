package club.ascham.session;

import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.loan.ItemAsked;
import club.ascham.rig.AdviceOverridden;
import java.util.ArrayList;
import java.util.List;

/**
 * What is to go out together.
 *
 * @param beside what goes beside the bows
 * @param overrideWhy why what is spoken against goes out all the same; null: no reason given
 */
record SessionDetails(String leader, List<RigId> rigs, List<ItemAsked> beside, String overrideWhy) {

  /**
   * Reads the leader, the rigs ticked as {@code rig-NUMBER}, what goes beside them (as every kit is
   * asked for) and the reason. Ask {@code typed.sound()} before using it.
   */
  static SessionDetails parse(Typed typed) {
    List<RigId> rigs = new ArrayList<>();
    for (String field : typed.all().keySet()) {
      if (field.matches("rig-\\d{1,9}") && typed.ticked(field)) {
        rigs.add(new RigId(Long.parseLong(field.substring("rig-".length()))));
      }
    }
    if (rigs.isEmpty()) {
      typed.fault("rigs", "Tick at least one rig.");
    }
    return new SessionDetails(
        typed.required("leader", 80, "Who leads the session?"),
        rigs,
        ItemAsked.parse(typed),
        AdviceOverridden.why(typed));
  }
}
