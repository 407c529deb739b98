package club.ascham.concern;

import club.ascham.form.Words;
import club.ascham.id.RigId;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.LocalDate;
import java.util.List;

/**
 * Something that stands against a thing, in JSON, in the same words as on the pages.
 *
 * @param item the code of the part it lies in; left out: the rig as a whole
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ConcernJson(
    String weight,
    String matter,
    LocalDate since,
    String item,
    RigId rig,
    String said,
    String ends) {

  /** The heaviest first; empty where nothing stands against it. */
  public static List<ConcernJson> of(Against against) {
    return against.all().stream()
        .map(
            one ->
                new ConcernJson(
                    one.weight().word(),
                    Words.of(one.matter()),
                    one.since(),
                    one.item() == null ? null : one.code(),
                    one.rig(),
                    one.said(),
                    one.ends()))
        .toList();
  }
}
