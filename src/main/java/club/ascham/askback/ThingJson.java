package club.ascham.askback;

import club.ascham.concern.ConcernJson;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * A thing to be asked back, in JSON.
 *
 * @param line of the loan
 * @param rig left out: it went beside one
 * @param arrows out of a pool; left out: the whole item
 * @param because what stands against it, as on every page
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record ThingJson(
    long line, String item, String kind, Long rig, Integer arrows, List<ConcernJson> because) {
  public static ThingJson of(Thing thing) {
    return new ThingJson(
        thing.line(),
        thing.code(),
        thing.mark(),
        thing.rig() == null ? null : thing.rig().value(),
        thing.arrows(),
        ConcernJson.of(thing.against()));
  }
}
