package club.ascham.session;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import jakarta.inject.Singleton;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lends bows for an evening and takes all of them back. */
@Singleton
public class SessionDoor {
  private final LendSession lendSession;
  private final ReturnDesk returnDesk;
  private final ReturnSession returnSession;

  SessionDoor(LendSession lendSession, ReturnDesk returnDesk, ReturnSession returnSession) {
    this.lendSession = lendSession;
    this.returnDesk = returnDesk;
    this.returnSession = returnSession;
  }

  public Outcome<LoanId> lend(String leader, List<RigId> rigs) {
    Map<String, String> form = new HashMap<>(Map.of("leader", leader));
    rigs.forEach(rig -> form.put("rig-" + rig.value(), "on"));
    return lendSession.lend(SessionDetails.parse(Typed.of(form)));
  }

  public Outcome<LoanId> takeBack(LoanId loan) {
    return returnSession.takeBack(loan, returnDesk.read(loan, Typed.nothing()));
  }
}
