package club.ascham.web;

import club.ascham.form.Typed;
import club.ascham.store.DatabaseRefusal;
import club.ascham.store.FileTrouble;
import club.ascham.store.GateIsFull;
import club.ascham.store.SameFile;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import io.vertx.core.http.HttpClosedException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** What can go wrong in any request, as a page for people and as problem details for programs. */
class Failures {
  private static final Logger LOG = Logger.getLogger(Failures.class);

  /**
   * The platform's own: of a form with a broken escape, a field without a name or an end that never
   * came they just fail.
   */
  private static final List<String> READERS_OF_FORMS =
      List.of(
          "org.jboss.resteasy.reactive.common.util.URLUtils",
          "org.jboss.resteasy.reactive.common.providers.serialisers.MapAsFormUrlEncodedProvider",
          "org.jboss.resteasy.reactive.server.core.multipart.");

  /** The platform's own as well: it does not catch what it throws of a kind like “/”. */
  private static final String READER_OF_KINDS =
      "org.jboss.resteasy.reactive.common.headers.MediaTypeHeaderDelegate";

  private final SameFile sameFile;

  Failures(SameFile sameFile) {
    this.sameFile = sameFile;
  }

  @CheckedTemplate(basePath = "web", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record FailurePage(String heading, String message) implements TemplateInstance {}

  @ServerExceptionMapper
  Response noSuchThing(NoSuchThing failure, UriInfo uri) {
    return answer(uri, 404, "Not found", failure.getMessage());
  }

  @ServerExceptionMapper
  Response refused(DatabaseRefusal refusal, UriInfo uri) {
    return answer(
        uri, 409, "Not possible any more", refusal.getMessage() + " Nothing was changed.");
  }

  @ServerExceptionMapper
  Response gateIsFull(GateIsFull full, UriInfo uri) {
    Response answer =
        answer(uri, 503, "Busy", "Many people are saving at once. Nothing was changed; try again.");
    return Response.fromResponse(answer).header("Retry-After", "2").build();
  }

  @ServerExceptionMapper
  Response fileTrouble(FileTrouble trouble, UriInfo uri) {
    sameFile.found(trouble);
    // Where the file is, no trace tells: one line a refusal.
    LOG.errorf(trouble.getCause(), "the club's file: %s: %s", trouble.kind(), trouble.getMessage());
    Response answer =
        answer(uri, trouble.kind().status(), trouble.kind().heading(), trouble.getMessage());
    return trouble.kind().passes()
        ? Response.fromResponse(answer).header("Retry-After", "5").build()
        : answer;
  }

  @ServerExceptionMapper
  Response forbidden(ForbiddenException failure, UriInfo uri) {
    return answer(
        uri,
        403,
        "Not yours to do",
        "Your account may look at this, but not do it. Ask an officer.");
  }

  @ServerExceptionMapper
  Response unauthorized(UnauthorizedException failure, UriInfo uri) {
    if (isForPrograms(uri)) {
      return Response.fromResponse(
              Problem.response(401, "Sign in", "Give name and password, or an access key."))
          .header("WWW-Authenticate", "Basic realm=\"Ascham\"")
          .build();
    }
    return Go.to("/sign-in");
  }

  /** JSON of another shape than is described: a list where an object stands, and the like. */
  @ServerExceptionMapper
  Response misshapen(MismatchedInputException failure, UriInfo uri) {
    String field =
        failure.getPath().stream()
            .map(JsonMappingException.Reference::getFieldName)
            .filter(Objects::nonNull)
            .collect(Collectors.joining("."));
    return Problem.response(
        400,
        "Not understood",
        field.isEmpty()
            ? "The body must be one JSON object, as /q/openapi describes it."
            : "What stands at “" + field + "” has another shape than /q/openapi describes.");
  }

  @ServerExceptionMapper
  Response web(WebApplicationException failure, UriInfo uri) {
    int status = failure.getResponse().getStatus();
    if (status < 400) {
      return failure.getResponse();
    }
    return switch (status) {
      case 404 ->
          unreadableNumber(failure, uri)
              .orElseGet(() -> answer(uri, 404, "Not found", "There is nothing at this address."));
      case 405 -> answer(uri, 405, "Not this way", "This address does not take that request.");
      case 413 -> answer(uri, 413, "Too large", "That is larger than this page takes.");
      case 415 -> notThatKind(uri);
      default -> answer(uri, status, "Not understood", "That request could not be read.");
    };
  }

  @ServerExceptionMapper
  Response unexpected(RuntimeException failure, UriInfo uri) {
    if (isUnreadableForm(failure)) {
      return notAForm(uri);
    }
    if (isHungUp(failure)) {
      return brokenOff(uri);
    }
    if (thrownIn(failure, List.of(READER_OF_KINDS))) {
      return notThatKind(uri);
    }
    Optional<FileTrouble> trouble = FileTrouble.in(failure);
    if (trouble.isPresent()) {
      return fileTrouble(trouble.get(), uri);
    }
    LOG.error("a request failed: " + uri.getPath(), failure);
    return answer(
        uri,
        500,
        "Something broke",
        "Something in the program broke. Nothing half-done was kept; the log says what it was.");
  }

  @ServerExceptionMapper
  Response cutShort(IOException failure, UriInfo uri) {
    return isUnreadableForm(failure)
        ? notAForm(uri)
        : unexpected(new UncheckedIOException(failure), uri);
  }

  /** Nobody is there any more to read the answer; that nothing was changed goes without saying. */
  private static Response brokenOff(UriInfo uri) {
    LOG.infof("whoever sent %s hung up in the middle of it; nothing was changed", uri.getPath());
    return answer(uri, 400, "Broken off", "Not all of it came. Nothing was changed.");
  }

  private static boolean isHungUp(Throwable failure) {
    return Stream.iterate(failure, Objects::nonNull, Throwable::getCause)
        .anyMatch(one -> one instanceof HttpClosedException);
  }

  private static boolean isUnreadableForm(Exception failure) {
    return thrownIn(failure, READERS_OF_FORMS);
  }

  private static boolean thrownIn(Exception failure, List<String> readers) {
    return Arrays.stream(failure.getStackTrace())
        .limit(3)
        .anyMatch(frame -> readers.stream().anyMatch(frame.getClassName()::startsWith));
  }

  private static Response notThatKind(UriInfo uri) {
    return answer(uri, 415, "Not that kind", "This address takes another kind of content.");
  }

  private static Response notAForm(UriInfo uri) {
    return answer(uri, 400, "Not understood", "What was sent is not a form that can be read.");
  }

  private static Response answer(UriInfo uri, int status, String heading, String message) {
    if (isForPrograms(uri)) {
      return Problem.response(status, heading, message);
    }
    return Response.status(status)
        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
        .entity(new FailurePage(heading, message))
        .build();
  }

  /** A word in the query where a number belongs arrives here as an address that does not exist. */
  private static Optional<Response> unreadableNumber(WebApplicationException failure, UriInfo uri) {
    if (!isForPrograms(uri) || !(failure.getCause() instanceof NumberFormatException cause)) {
      return Optional.empty();
    }
    return uri.getQueryParameters().entrySet().stream()
        .filter(
            one ->
                one.getValue().stream()
                    .anyMatch(
                        typed -> String.valueOf(cause.getMessage()).contains('"' + typed + '"')))
        .findFirst()
        .map(
            one -> {
              Typed typed = Typed.nothing();
              typed.fault(one.getKey(), "A whole number, please.");
              return Problem.of(typed);
            });
  }

  private static boolean isForPrograms(UriInfo uri) {
    return uri.getPath().startsWith("/api/") || uri.getPath().startsWith("/q/");
  }
}
