package club.ascham.worksheet;

import java.time.Instant;

/**
 * Work done, as JSON.
 *
 * @param replacedBy the code of the string that took its place; null: none did
 */
public record WorkJson(
    long id,
    String code,
    String work,
    String result,
    Instant happened,
    Instant recorded,
    String by,
    String found,
    String measured,
    String partsUsed,
    String replacedBy) {

  static WorkJson of(WorkRecords.Done done) {
    return new WorkJson(
        done.id(),
        done.code(),
        done.work().word(),
        done.result().word(),
        done.happened(),
        done.recorded(),
        done.by(),
        done.found(),
        done.measured(),
        done.partsUsed(),
        done.newCode());
  }
}
