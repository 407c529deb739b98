package club.ascham.rig;

import club.ascham.measured.Measurement;
import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;

/** Says in the description of the API what each measurement is, as its table has it. */
@OpenApiFilter
public class MeasurementsInApi implements OASFilter {
  @Override
  public void filterOpenAPI(OpenAPI described) {
    described.getComponents().getSchemas().values().stream()
        .map(Schema::getProperties)
        .filter(fields -> fields != null && isOfABow(fields))
        .forEach(MeasurementsInApi::describe);
  }

  /** Else a name such as twists is another thing's. */
  private static boolean isOfABow(Map<String, Schema> fields) {
    return fields.containsKey(Measurement.TILLER_UPPER.field())
        || fields.containsKey(Measurement.TWISTS_ADDED.field());
  }

  private static void describe(Map<String, Schema> fields) {
    for (Measurement one : Measurement.values()) {
      if (fields.containsKey(one.field())) {
        fields.get(one.field()).setDescription(one.described());
      }
    }
  }
}
