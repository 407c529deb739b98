package club.ascham.borrower;

import club.ascham.form.Outcome;
import club.ascham.form.Refusal;
import club.ascham.people.Actor;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.OptionalInt;

/** Enters a borrower, or corrects what is kept of one. */
@ApplicationScoped
public class KeepBorrower {
  private final BorrowerRecords borrowers;
  private final Story story;
  private final Actor actor;

  KeepBorrower(BorrowerRecords borrowers, Story story, Actor actor) {
    this.borrowers = borrowers;
    this.story = story;
    this.actor = actor;
  }

  @Writes
  Outcome<BorrowerId> enter(BorrowerDetails details) {
    Borrower borrower = borrowers.samePerson(details).orElseGet(() -> new Borrower(details));
    if (!borrower.details().agreesWith(details)) {
      return Outcome.refused(
          Refusal.now(
              "Kept already",
              "Someone of this name and contact is kept already, with another age, guardian or member"
                  + " number: number "
                  + borrower.id().value()
                  + ". Nothing was changed; correct it there."));
    }
    if (borrower.isNew()) {
      borrowers.persist(borrower);
      story.tell(actor.id(), "Entered a borrower.");
    }
    return Outcome.done(borrower.id(), "");
  }

  /**
   * @param version that the form was made from; null: not said
   */
  @Writes
  public Outcome<BorrowerId> correct(BorrowerId id, BorrowerDetails details, OptionalInt version) {
    Borrower borrower = borrowers.with(id).orElseThrow();
    if (version.orElse(borrower.version()) != borrower.version()) {
      return Outcome.refused(
          Refusal.now(
              "Someone saved first",
              "Someone saved first. Look at what is kept now, then correct it."));
    }
    borrower.correct(details);
    story.tell(actor.id(), "Corrected what is kept of a borrower.");
    return Outcome.done(id, "Corrected.");
  }
}
