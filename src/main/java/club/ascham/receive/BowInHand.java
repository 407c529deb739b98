package club.ascham.receive;

import club.ascham.check.StrangerAsked;
import club.ascham.check.StrangerBack;
import club.ascham.check.Strangers;
import club.ascham.form.Typed;
import club.ascham.id.RigId;
import club.ascham.loan.LoanLine;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.units.ItemCode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The bow that is out with a loan, and a code in the hand that is not on its list. */
@ApplicationScoped
class BowInHand {
  private static final StrangerBack.Fields FIELDS = StrangerBack.Fields.PLAIN;

  private final RigSpecs specs;
  private final Strangers strangers;

  BowInHand(RigSpecs specs, Strangers strangers) {
    this.specs = specs;
    this.strangers = strangers;
  }

  /** What was said of such a code; null: nothing, or a fault stands at its field. */
  StrangerBack stranger(Typed typed, List<LoanLine> out) {
    if (!typed.has(FIELDS.code())) {
      return null;
    }
    ItemCode code = Typed.nothing().with("code", typed.value(FIELDS.code())).code("code");
    Optional<RigCard> bow = bow(out);
    if (code != null && out.stream().anyMatch(line -> line.bareCode().equals(code.bare()))) {
      typed.fault(FIELDS.code(), code.display() + " is on the list of this loan.");
      return null;
    }
    if (bow.isEmpty()) {
      typed.fault(
          FIELDS.code(),
          "No one bow is out with this loan: look that code up, and lay the thing aside.");
      return null;
    }
    return strangers.read(typed, FIELDS, bow.get()).orElse(null);
  }

  /** The fields as the page shows them; null: not one bow is out. */
  StrangerAsked asked(Typed typed, List<LoanLine> out) {
    return bow(out).map(card -> strangers.asked(typed, FIELDS, card)).orElse(null);
  }

  private Optional<RigCard> bow(List<LoanLine> out) {
    List<RigId> rigs = out.stream().map(LoanLine::rig).filter(Objects::nonNull).distinct().toList();
    return rigs.size() == 1 ? specs.of(rigs.get(0)) : Optional.empty();
  }
}
