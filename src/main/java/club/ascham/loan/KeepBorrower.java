package club.ascham.loan;

import club.ascham.people.Actor;
import club.ascham.store.Pressed;
import club.ascham.store.Writes;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;

/** Enters a borrower, or corrects what is kept of one. */
@ApplicationScoped
class KeepBorrower {
  private final BorrowerRecords borrowers;
  private final Pressed pressed;
  private final Story story;
  private final Actor actor;
  private final ClubTime time;

  KeepBorrower(
      BorrowerRecords borrowers, Pressed pressed, Story story, Actor actor, ClubTime time) {
    this.borrowers = borrowers;
    this.pressed = pressed;
    this.story = story;
    this.actor = actor;
    this.time = time;
  }

  /** What came of it. */
  sealed interface Outcome {
    record Kept(BorrowerId borrower) implements Outcome {}

    /** Someone saved first. */
    record Stale(String message) implements Outcome {}
  }

  @Writes
  Outcome enter(BorrowerDetails details, String formKey) {
    return pressed
        .ledTo(formKey)
        .map(id -> new Outcome.Kept(new BorrowerId(Long.parseLong(id))))
        .orElseGet(
            () -> {
              Borrower borrower =
                  borrowers.samePerson(details).orElseGet(() -> new Borrower(details));
              if (borrower.isNew()) {
                borrowers.persist(borrower);
                borrowers.flush();
                tell("Entered a borrower.");
              }
              pressed.leads(formKey, Long.toString(borrower.id().value()));
              return new Outcome.Kept(borrower.id());
            });
  }

  /**
   * @param version that the form was made from; null: not said
   */
  @Writes
  Outcome correct(BorrowerId id, BorrowerDetails details, Integer version) {
    Borrower borrower = borrowers.with(id).orElseThrow();
    if (version != null && version != borrower.version()) {
      return new Outcome.Stale("Someone saved first. Look at what is kept now, then correct it.");
    }
    borrower.correct(details);
    borrowers.flush();
    tell("Corrected what is kept of a borrower.");
    return new Outcome.Kept(id);
  }

  private void tell(String sentence) {
    story.tell(Story.Told.ofClub(time.now(), actor.id(), sentence));
  }
}
