package club.ascham.people;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import club.ascham.store.Scrubbing;
import club.ascham.store.Writes;
import club.ascham.story.Forgotten;
import club.ascham.story.FreeTexts;
import club.ascham.story.PersonalValues;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;

/** Makes a closed account a number: what was done with it stays, and nobody can tell who did it. */
@ApplicationScoped
class EraseAccount {
  private final Rows rows;
  private final Scrubbing scrubbing;
  private final Accounts accounts;
  private final FreeTexts freeTexts;
  private final PersonalValues personalValues;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  EraseAccount(
      Rows rows,
      Scrubbing scrubbing,
      Accounts accounts,
      FreeTexts freeTexts,
      PersonalValues personalValues,
      Story story,
      Actor actor,
      ClubTime time) {
    this.rows = rows;
    this.scrubbing = scrubbing;
    this.accounts = accounts;
    this.freeTexts = freeTexts;
    this.personalValues = personalValues;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** The texts that name its holder, or may. */
  List<FreeTexts.Hit> naming(People.Listed listed) {
    return freeTexts.naming(forgotten(listed), "/people/" + listed.id().value());
  }

  private Forgotten forgotten(People.Listed listed) {
    return Forgotten.of(listed.name())
        .and(Forgotten.of(personalValues.ever("account", listed.id().value(), "name"), List.of()));
  }

  /**
   * @param why it is done, as asked of the officer
   * @param texts keys of texts that may mean its holder
   */
  @Writes
  Outcome<AccountId> erase(People.Listed listed, String why, Set<String> texts) {
    Account account = accounts.findById(listed.id().value());
    if (account.isOpen() || account.isErased()) {
      return Outcome.refused(
          Refusal.now("Not closed", "Only a closed account can be erased, and only once."));
    }
    freeTexts.takeOut(
        freeTexts.all(),
        forgotten(listed),
        texts,
        count -> {
          account.erase(time.today());
          story.tell(actor.id(), "Erased what was kept of an account" + FreeTexts.said(count), why);
        });
    personalValues.erase("account", listed.id().value());
    rows.change("DELETE FROM second_step WHERE account_id = ?1", listed.id());
    // When someone came and went goes with the name.
    rows.change("DELETE FROM session WHERE account_id = ?1", listed.id());
    rows.change("DELETE FROM password_link WHERE account_id = ?1", listed.id());
    scrubbing.onceSaved();
    return Outcome.done(
        listed.id(), "Erased: from now on closed account " + listed.id().value() + ".");
  }
}
