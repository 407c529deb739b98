package club.ascham.store;

import club.ascham.id.AnswerId;
import club.ascham.time.ClubTime;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * What was answered to presses that make no one thing, for as long as their keys are kept: it can't
 * be read off anything else when the same press comes again.
 */
@ApplicationScoped
public class KeptAnswers {
  private final Rows rows;
  private final ClubTime time;
  private final ObjectMapper json;

  KeptAnswers(Rows rows, ClubTime time, ObjectMapper json) {
    this.rows = rows;
    this.time = time;
    this.json = json;
  }

  @Writes
  public AnswerId keep(Record answer) {
    rows.change("DELETE FROM kept_answer WHERE at < ?1", time.now().minus(IdempotencyKeys.KEPT));
    try {
      return new AnswerId(
          rows.number(
              "INSERT INTO kept_answer (answer, at) VALUES (?1, ?2) RETURNING id",
              json.writeValueAsString(answer),
              time.now()));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("an answer can't be written: " + answer, impossible);
    }
  }

  public <A extends Record> A of(AnswerId id, Class<A> shape) {
    try {
      return json.readValue(
          rows.texts("SELECT answer FROM kept_answer WHERE id = ?1", id).get(0), shape);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("an answer can't be read: " + id, impossible);
    }
  }
}
