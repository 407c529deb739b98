package club.ascham.check;

import club.ascham.rig.RigCard;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Saves a check, and then looks whether the bow is changing. The look stands outside the save: it
 * reads much and seldom asks for anything, and others wait at the gate meanwhile. Were it cut off,
 * the next check would ask.
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
    if (outcome instanceof CheckOutcome.Judged && entry.measured().reading().isPresent()) {
      noteDrift.of(card);
    }
    return outcome;
  }
}
