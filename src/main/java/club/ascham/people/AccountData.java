package club.ascham.people;

import club.ascham.form.Words;
import club.ascham.id.AccountId;
import club.ascham.store.Rows;
import club.ascham.story.PersonalValues;
import club.ascham.story.Story;
import club.ascham.time.ClubTime;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Everything that is kept of an account's holder, to be handed to them. */
@ApplicationScoped
public class AccountData {
  private final Rows rows;
  private final PersonalValues personalValues;
  private final SignedInSessions sessions;
  private final ClubTime time;

  AccountData(Rows rows, PersonalValues personalValues, SignedInSessions sessions, ClubTime time) {
    this.rows = rows;
    this.personalValues = personalValues;
    this.sessions = sessions;
    this.time = time;
  }

  /**
   * All of it.
   *
   * @param handedOut when this was written
   * @param permitUntil null: no permit
   * @param secondStepSince null: it has no second step
   * @param closedOn null: it is open
   * @param told what was done with it, as the record tells it, oldest first
   * @param changes of its name
   */
  public record Everything(
      Instant handedOut,
      long number,
      String name,
      String role,
      LocalDate permitUntil,
      String lengthUnit,
      boolean hasAccessKey,
      Instant secondStepSince,
      LocalDate closedOn,
      List<Instant> signedInSince,
      List<Told> told,
      List<PersonalValues.Kept> changes) {}

  /**
   * An entry that it told.
   *
   * @param takenIn how it came from a file, which says so; null: it was told here
   */
  public record Told(
      long entry,
      Instant happened,
      Instant recorded,
      String sentence,
      String why,
      Story.TakenIn takenIn) {}

  public Response file(People.Listed account) {
    return Response.ok(of(account))
        .header(
            "Content-Disposition",
            "attachment; filename=\"account-" + account.id().value() + ".json\"")
        .build();
  }

  private Everything of(People.Listed account) {
    AccountId id = account.id();
    return new Everything(
        time.now(),
        id.value(),
        account.name(),
        Words.of(account.role()),
        account.permitUntil(),
        rows.texts("SELECT lower(length_unit) FROM account WHERE id = ?1", id).get(0),
        account.hasKey(),
        account.secondStepSince(),
        account.closedOn(),
        sessions.open(id).stream().map(SignedInSessions.Open::since).toList(),
        rows.list(
            Told.class,
            "SELECT s.id AS entry, s.happened_at AS happened, s.recorded_at AS recorded, s.sentence, s.why,"
                + Story.TakenIn.OF_ENTRY
                + "FROM story s WHERE s.account_id = ?1 ORDER BY s.id",
            id),
        personalValues.of("account", id.value()));
  }
}
