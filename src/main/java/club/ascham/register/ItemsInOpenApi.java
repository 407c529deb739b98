package club.ascham.register;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.Operation;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.Paths;
import org.eclipse.microprofile.openapi.models.media.Content;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.media.Schema.SchemaType;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.parameters.RequestBody;
import org.eclipse.microprofile.openapi.models.responses.APIResponses;

/**
 * Describes the six lists of {@link ItemsApi} to programs: addresses of its own for each, with the
 * fields of {@link ItemFields} as its schema.
 */
@OpenApiFilter(OpenApiFilter.RunStage.RUNTIME_STARTUP)
public class ItemsInOpenApi implements OASFilter {
  private static final String ANY_LIST = "/api/{list}";
  private static final String JSON = "application/json";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** A named body to send. */
  private record Example(String name, String json) {}

  /**
   * One list.
   *
   * @param one one of its things, after "a"
   * @param code of one of them
   * @param schema of one, and of a page of them
   */
  private record Described(
      ItemKind kind,
      String title,
      String about,
      String one,
      String code,
      String schema,
      String page,
      Example add,
      Example change) {}

  private static final List<Described> LISTS =
      List.of(
          new Described(
              ItemKind.RISER,
              "Risers",
              "The handle parts that limbs are fitted to",
              "riser",
              "R-0101-E",
              "RiserJson",
              "RiserPage",
              new Example(
                  "a riser",
                  """
                  {"build": "adjustable", "hand": "right", "lengthIn": 25, "limbFitting": "ILF", "maxTurnsOut": 4,
                   "maker": "Alderfen", "model": "Fenlight 25", "boughtOn": "2026-03-15", "price": "139.00"}"""),
              new Example(
                  "another maker, read as version 0",
                  """
                  {"version": 0, "build": "adjustable", "hand": "right", "lengthIn": 25, "limbFitting": "ILF",
                   "maker": "Kestrow"}""")),
          new Described(
              ItemKind.LIMBS,
              "Limbs",
              "Matched pairs, upper and lower",
              "pair of limbs",
              "L-0101-L",
              "LimbsJson",
              "LimbsPage",
              new Example(
                  "a pair of limbs",
                  """
                  {"build": "adjustable", "size": "medium", "markedLb": 22, "markedRiserIn": 25, "limbFitting": "ILF",
                   "hmpeTips": "yes", "maker": "Alderfen", "model": "Sedge", "serialUpper": "A22303U",
                   "serialLower": "A22303L"}"""),
              new Example(
                  "marked weight corrected",
                  """
                  {"version": 0, "build": "adjustable", "size": "medium", "markedLb": 24, "limbFitting": "ILF"}""")),
          new Described(
              ItemKind.BOW,
              "One-piece bows",
              "Riser and limbs in one",
              "one-piece bow",
              "B-0011-C",
              "BowJson",
              "BowsPage",
              new Example(
                  "a one-piece bow",
                  """
                  {"bowLengthIn": 54, "markedLb": 12, "markedAtIn": 24, "hmpeTips": "no", "maker": "Thornsea",
                   "model": "Wren 54"}"""),
              new Example(
                  "either hand",
                  """
                  {"version": 0, "bowLengthIn": 54, "markedLb": 12, "markedAtIn": 24}""")),
          new Described(
              ItemKind.STRING,
              "Strings",
              "The bow length a string is made for, and its own length",
              "string",
              "S-0201-B",
              "StringJson",
              "StringsPage",
              new Example(
                  "a string",
                  """
                  {"forBowIn": 68, "measuredLength": "1647 mm", "material": "hmpe", "strands": 16,
                   "strandDiameter": "0.45 mm", "maker": "Marlwick", "model": "Longline", "batch": "M07-2026"}"""),
              new Example(
                  "twists counted",
                  """
                  {"version": 0, "forBowIn": 68, "material": "hmpe", "strands": 16, "twists": 20}""")),
          new Described(
              ItemKind.STRINGER,
              "Stringers",
              "What bows are strung and unstrung with",
              "stringer",
              "T-0031-K",
              "StringerJson",
              "StringersPage",
              new Example(
                  "a stringer",
                  """
                  {"stringerKind": "tip-to-tip", "bowFromIn": 48, "bowToIn": 60, "maker": "Marlwick"}"""),
              new Example(
                  "for longer bows",
                  """
                  {"version": 0, "stringerKind": "tip-to-tip", "bowFromIn": 60, "bowToIn": 70}""")),
          new Described(
              ItemKind.ARROWS,
              "Kit items",
              "Arrows, tabs, bracers and whatever else goes out beside a bow",
              "kit item",
              "K-0302-X",
              "KitItemJson",
              "KitItemsPage",
              new Example(
                  "a pool of arrows",
                  """
                  {"kind": "arrows", "arrowLength": "26 in", "spine": 1300, "arrowMassGr": 214, "arrowCount": 36,
                   "pool": true, "maker": "Quaysley"}"""),
              new Example(
                  "fewer arrows",
                  """
                  {"version": 0, "arrowLength": "26 in", "spine": 1300, "arrowCount": 34, "pool": true}""")));

  @Override
  public void filterOpenAPI(OpenAPI api) {
    Map<String, PathItem> known = new LinkedHashMap<>(api.getPaths().getPathItems());
    Paths paths = OASFactory.createPaths();
    known.forEach(
        (address, item) -> {
          if (address.startsWith(ANY_LIST)) {
            for (Described list : LISTS) {
              paths.addPathItem(
                  address.replace("{list}", list.kind().slug()), of(list, address, item));
            }
          } else {
            paths.addPathItem(address, item);
          }
        });
    api.setPaths(paths);
    for (Described list : LISTS) {
      api.addTag(OASFactory.createTag().name(list.title()).description(list.about()));
      api.getComponents()
          .addSchema(list.schema(), schema(list))
          .addSchema(
              list.page(),
              object()
                  .addProperty("items", array(reference(list.schema())))
                  .addProperty("page", number(SchemaType.INTEGER))
                  .addProperty("size", number(SchemaType.INTEGER))
                  .addProperty("total", number(SchemaType.INTEGER).format("int64")));
    }
  }

  // ---- what each address takes and answers

  private static PathItem of(Described list, String address, PathItem any) {
    PathItem item = OASFactory.createPathItem();
    any.getOperations()
        .forEach((verb, told) -> item.setOperation(verb, of(list, address, verb, told)));
    return item;
  }

  private static Operation of(
      Described list, String address, PathItem.HttpMethod verb, Operation any) {
    boolean whole = address.equals(ANY_LIST);
    boolean one = address.equals(ANY_LIST + "/{code}");
    Operation told =
        OASFactory.createOperation()
            .summary(any.getSummary().replace("{many}", list.title()).replace("{one}", list.one()))
            .description(any.getDescription())
            .tags(List.of(list.title()))
            .security(any.getSecurity())
            .requestBody(any.getRequestBody())
            .responses(any.getResponses());
    List<Parameter> parameters = new ArrayList<>();
    if (any.getParameters() != null) {
      for (Parameter parameter : any.getParameters()) {
        if (!parameter.getName().equals("list")) {
          parameters.add(verb == PathItem.HttpMethod.GET ? withCode(list, parameter) : parameter);
        }
      }
    }
    if (!parameters.isEmpty()) {
      told.parameters(parameters);
    }
    if (verb == PathItem.HttpMethod.POST && whole) {
      told.requestBody(body(list, list.add()));
    } else if (verb == PathItem.HttpMethod.PUT) {
      told.requestBody(body(list, list.change()));
    }
    if (whole && verb == PathItem.HttpMethod.GET) {
      told.responses(answering(any.getResponses(), list.page()));
    } else if (one || address.endsWith("/retire")) {
      told.responses(answering(any.getResponses(), list.schema()));
    }
    return told;
  }

  private static Parameter withCode(Described list, Parameter code) {
    return OASFactory.createParameter()
        .name(code.getName())
        .in(code.getIn())
        .required(code.getRequired())
        .schema(code.getSchema())
        .example(list.code());
  }

  private static RequestBody body(Described list, Example example) {
    try {
      return OASFactory.createRequestBody()
          .required(true)
          .content(
              json(
                  list.schema(),
                  MAPPER.readValue(example.json(), LinkedHashMap.class),
                  example.name()));
    } catch (JsonProcessingException slip) {
      throw new IllegalStateException("the example of " + example.name(), slip);
    }
  }

  private static Content json(String schema, Object value, String name) {
    return OASFactory.createContent()
        .addMediaType(
            JSON,
            OASFactory.createMediaType()
                .schema(reference(schema))
                .addExample(name, OASFactory.createExample().value(value)));
  }

  private static APIResponses answering(APIResponses any, String schema) {
    APIResponses responses = OASFactory.createAPIResponses();
    any.getAPIResponses().forEach(responses::addAPIResponse);
    return responses.addAPIResponse(
        "200",
        OASFactory.createAPIResponse()
            .description("OK")
            .content(
                OASFactory.createContent()
                    .addMediaType(JSON, OASFactory.createMediaType().schema(reference(schema)))));
  }

  // ---- the fields

  private static Schema schema(Described list) {
    Schema schema =
        object()
            .addProperty("code", text().readOnly(true).addExample("R-0101-E"))
            .addProperty(
                "kind",
                text().description("of kit items; elsewhere the address says it").addExample("tab"))
            .addProperty("state", text().readOnly(true).addExample("ready"))
            .addProperty(
                "version",
                number(SchemaType.INTEGER).description("sent back with a change").addExample(0));
    ItemFields.of(list.kind()).forEach(field -> schema.addProperty(field.name(), property(field)));
    if (list.kind() == ItemKind.ARROWS) {
      schema.addProperty(
          "soundUpToLb",
          number(SchemaType.NUMBER)
              .readOnly(true)
              .description("the heaviest weight on the fingers that arrows of this mass are for"));
    }
    return schema
        .addProperty("registeredOn", day().readOnly(true))
        .addProperty("retiredOn", day().readOnly(true))
        .addProperty("retiredWhy", text().readOnly(true).addExample("sold"))
        .addProperty("retiredNote", text().readOnly(true))
        .addProperty(
            "concerns",
            array(reference("ConcernJson"))
                .readOnly(true)
                .description("what stands against it, the heaviest first"));
  }

  private static Schema property(ItemField<?> field) {
    Class<?> type = field.values().type();
    Schema schema;
    if (type == Integer.class) {
      schema = number(SchemaType.INTEGER);
    } else if (type == Double.class) {
      schema = number(SchemaType.NUMBER);
    } else if (type == Boolean.class) {
      schema = OASFactory.createSchema().addType(SchemaType.BOOLEAN);
    } else {
      schema = type == LocalDate.class ? day() : text();
    }
    if (field.example() != null) {
      schema.addExample(
          Number.class.isAssignableFrom(type) ? Double.valueOf(field.example()) : field.example());
    }
    return schema.description(field.description());
  }

  private static Schema object() {
    return OASFactory.createSchema().addType(SchemaType.OBJECT);
  }

  private static Schema array(Schema of) {
    return OASFactory.createSchema().addType(SchemaType.ARRAY).items(of);
  }

  private static Schema text() {
    return OASFactory.createSchema().addType(SchemaType.STRING);
  }

  private static Schema day() {
    return text().format("date");
  }

  private static Schema number(SchemaType type) {
    return OASFactory.createSchema()
        .addType(type)
        .format(type == SchemaType.INTEGER ? "int32" : "double");
  }

  private static Schema reference(String name) {
    return OASFactory.createSchema().ref(name);
  }
}
