package club.ascham.web;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;

/** Says in the description of the API what {@link InAddresses} reads: numbers, and codes. */
@OpenApiFilter
public class AddressesInOpenApi implements OASFilter {
  private static final String SHAPES = "#/components/schemas/";

  private final Set<String> read = new HashSet<>();

  @Override
  public Parameter filterParameter(Parameter parameter) {
    Schema schema = parameter.getSchema();
    if (parameter.getIn() == Parameter.In.PATH && schema != null && schema.getRef() != null) {
      String name = schema.getRef().substring(SHAPES.length());
      read.add(name);
      parameter.setSchema(name.endsWith("Id") ? number() : text());
    }
    return parameter;
  }

  private static Schema number() {
    return OASFactory.createSchema().addType(SchemaType.INTEGER).format("int64");
  }

  private static Schema text() {
    return OASFactory.createSchema().addType(SchemaType.STRING);
  }

  /** What stood in addresses alone has no shape of its own. */
  @Override
  public void filterOpenAPI(OpenAPI described) {
    Set<String> inBodies =
        described.getComponents().getSchemas().values().stream()
            .map(Schema::getProperties)
            .filter(Objects::nonNull)
            .flatMap(fields -> fields.values().stream())
            .map(Schema::getRef)
            .filter(Objects::nonNull)
            .collect(Collectors.toSet());
    read.stream()
        .filter(name -> !inBodies.contains(SHAPES + name))
        .forEach(described.getComponents()::removeSchema);
  }
}
