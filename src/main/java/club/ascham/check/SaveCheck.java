package club.ascham.check;

import club.ascham.rig.RigCard;
import club.ascham.verdict.Verdict;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Saves a check, and then looks whether the bow is changing. The look stands outside the save: it
 * reads much and seldom asks for anything, and others wait at the gate meanwhile. Were it cut off,
 * the next check would ask. A bow that is to be adjusted or withdrawn is being worked on already.
 */
@ApplicationScoped
class SaveCheck {
  private final RecordCheck recordCheck;
  private final NoteDrift noteDrift;

  SaveCheck(RecordCheck recordCheck, NoteDrift noteDrift) {
    this.recordCheck = recordCheck;
    this.noteDrift = noteDrift;
  }

  CheckOutcome save(RigCard card, CheckEntry entry, String formKey) {
    CheckOutcome outcome = recordCheck.record(card.id(), entry, formKey);
    if (outcome instanceof CheckOutcome.Judged judged
        && judged.verdict().kind() == Verdict.Kind.FIT
        && entry.measured().reading().isPresent()) {
      noteDrift.of(card);
    }
    return outcome;
  }
}
