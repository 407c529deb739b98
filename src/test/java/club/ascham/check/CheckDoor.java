package club.ascham.check;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.CheckId;
import club.ascham.id.Made;
import club.ascham.id.MoveId;
import club.ascham.id.RigId;
import club.ascham.rig.RigSpecs;
import jakarta.inject.Singleton;
import java.util.Map;

/** Checks bows, and does what their verdicts say. */
@Singleton
public class CheckDoor {
  private final RecordCheck recordCheck;
  private final RecordAdjustment recordAdjustment;
  private final PutBack putBack;
  private final RigSpecs specs;

  CheckDoor(
      RecordCheck recordCheck, RecordAdjustment recordAdjustment, PutBack putBack, RigSpecs specs) {
    this.recordCheck = recordCheck;
    this.recordAdjustment = recordAdjustment;
    this.putBack = putBack;
    this.specs = specs;
  }

  public Outcome<CheckId> check(RigId rig, Map<String, String> form) {
    Typed typed = Typed.of(form);
    Outcome<CheckId> done = recordCheck.check(specs.known(rig), typed);
    if (!typed.sound()) {
      throw new IllegalArgumentException(typed.faults().toString());
    }
    return done;
  }

  public Outcome<Made> adjust(CheckId check, Map<String, String> form) {
    return recordAdjustment.record(check.value(), AdjustmentDone.parse(Typed.of(form)));
  }

  public Outcome<MoveId> putBack(CheckId check) {
    return putBack.putBack(check.value());
  }
}
