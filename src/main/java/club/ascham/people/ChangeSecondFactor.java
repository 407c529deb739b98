package club.ascham.people;

import club.ascham.form.Outcome;
import club.ascham.id.AccountId;
import club.ascham.id.ClubId;
import club.ascham.store.Rows;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;

/**
 * Turns second steps on and off. Whatever changes of one ends every session of its account: who is
 * at the browser begins a new one.
 */
@ApplicationScoped
public class ChangeSecondFactor {
  private final Rows rows;
  private final SecondFactors secondSteps;
  private final SignedInSessions sessions;
  private final Story story;
  private final Actor actor;

  ChangeSecondFactor(
      Rows rows, SecondFactors secondSteps, SignedInSessions sessions, Story story, Actor actor) {
    this.rows = rows;
    this.secondSteps = secondSteps;
    this.sessions = sessions;
    this.story = story;
    this.actor = actor;
  }

  /**
   * One's own, after a code proved that the phone knows the secret.
   *
   * @param stepOfTheProof that code's time step: it is taken with it
   * @return recovery codes, told this once; none: it is on already, and nothing was changed
   */
  @Writes
  public List<RecoveryCode> turnOn(AccountId account, SharedSecret secret, long stepOfTheProof) {
    if (!secondSteps.add(account, secret, stepOfTheProof)) {
      return List.of();
    }
    sessions.endAll(account);
    story.tell(account, "Turned the second step on.");
    return secondSteps.newRecoveryCodes(account);
  }

  /** One's own. False: it was off; nothing was changed. */
  @Writes
  public boolean turnOff(AccountId account) {
    if (!secondSteps.remove(account)) {
      return false;
    }
    sessions.endAll(account);
    story.tell(account, "Turned the second step off.");
    return true;
  }

  /** None: it is off, and nothing was changed. */
  @Writes
  public List<RecoveryCode> newRecoveryCodes(AccountId account) {
    if (secondSteps.of(account).isEmpty()) {
      return List.of();
    }
    sessions.endAll(account);
    story.tell(account, "Made new recovery codes.");
    return secondSteps.newRecoveryCodes(account);
  }

  /** False: it is none of the account's, or was used; nothing was changed. */
  @Writes
  public boolean useRecoveryCode(AccountId account, RecoveryCode code) {
    if (!secondSteps.use(account, code)) {
      return false;
    }
    story.tell(account, "Used a recovery code in the place of the second step.");
    return true;
  }

  /**
   * Someone else's, for who lost phone and recovery codes.
   *
   * @param why as asked of the officer
   */
  @Writes
  Outcome<AccountId> takeOff(People.Listed account, String why) {
    AccountId id = account.id();
    if (id.equals(actor.id())) {
      return Outcome.refused(
          "", "Your own second step is turned off under My account, with a code.");
    }
    if (!secondSteps.remove(id)) {
      return Outcome.done(id, account.name() + " had no second step.");
    }
    sessions.endAll(id);
    story.tell(actor.id(), "Took the second step off an account.", why);
    return Outcome.done(
        id, account.name() + " signs in with the password alone, until a new second step is on.");
  }

  @Writes
  Outcome<ClubId> askOf(DoorRule rule) {
    rows.change("UPDATE door_rule SET second_step_for = ?1", rule);
    story.tell(actor.id(), "Set who must have a second step: " + rule.said() + ".");
    return Outcome.done(
        ClubId.ONE,
        rule == DoorRule.NOBODY
            ? "A second step is for each to choose."
            : "Whoever of them has no second step is led to it at the next press.");
  }
}
