package club.ascham.web;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.PathItem;

/** Pages are for people: the description holds what stands under /api alone. */
@OpenApiFilter(OpenApiFilter.RunStage.BUILD)
public class ApiOnly implements OASFilter {
  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getPaths() == null) {
      return;
    }
    Map<String, PathItem> paths = new HashMap<>(description.getPaths().getPathItems());
    paths.keySet().stream()
        .filter(path -> !path.startsWith("/api/"))
        .forEach(path -> description.getPaths().removePathItem(path));
  }
}
