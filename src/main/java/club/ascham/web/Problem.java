package club.ascham.web;

import club.ascham.form.Refusal;
import club.ascham.form.Typed;
import com.fasterxml.jackson.annotation.JsonInclude;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * RFC 9457 problem details.
 *
 * @param errors each wrong field with what is wrong with it; empty where no field is at fault
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Problem(
    String type, String title, int status, String detail, List<FieldError> errors) {
  static final String MEDIA_TYPE = "application/problem+json";

  /** One wrong field. */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record FieldError(String field, String message, String suggestion) {}

  public static Response response(int status, String title, String detail) {
    return response(new Problem("about:blank", title, status, detail, List.of()));
  }

  /** 422: each fault at its field. */
  public static Response of(Typed typed) {
    List<FieldError> errors = new ArrayList<>();
    typed
        .faultsInOrder()
        .forEach(
            entry ->
                errors.add(
                    new FieldError(
                        entry.getKey(),
                        entry.getValue().message(),
                        entry.getValue().suggestion())));
    return response(
        new Problem("about:blank", "Not accepted", 422, "Nothing was changed.", errors));
  }

  /** What was refused: by who asks (403), by how things stand (409), else each at its field. */
  static Response of(Typed typed, List<Refusal> refusals) {
    for (Refusal.Cause cause : List.of(Refusal.Cause.WHO_ASKS, Refusal.Cause.HOW_IT_STANDS)) {
      List<Refusal> so = refusals.stream().filter(one -> one.cause() == cause).toList();
      if (!so.isEmpty()) {
        return response(
            cause == Refusal.Cause.WHO_ASKS ? 403 : 409,
            so.get(0).title(),
            so.stream().map(Refusal::words).collect(Collectors.joining(" ")));
      }
    }
    Refusal.at(typed, refusals, "");
    return of(typed);
  }

  private static Response response(Problem problem) {
    return Response.status(problem.status()).type(MEDIA_TYPE).entity(problem).build();
  }
}
