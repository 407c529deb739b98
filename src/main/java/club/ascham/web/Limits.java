package club.ascham.web;

import club.ascham.Settings;
import io.quarkus.vertx.http.runtime.VertxHttpRecorder;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.json.JsonObject;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import java.util.Locale;

/**
 * How much and how often anyone may send, whether signed in or not.
 *
 * <p>Forms 64 KiB, JSON 1 MiB (and its length is said), files 8 MiB; what may be kept up is 50
 * requests a second and a thousand at once from one address. This machine itself is not counted.
 */
@Singleton
class Limits {
  static final long FORM_BYTES = 64 * 1024;
  static final long JSON_BYTES = 1024 * 1024;
  static final long FILE_BYTES = 8 * 1024 * 1024;
  static final int SECONDS_AT_ONCE = 20;

  /** The slowest that a body may come, beyond the time that any may take (judged). */
  static final int BYTES_A_SECOND = 50_000;

  private static final int AFTER_HEADERS = 900;
  private static final int CALLERS_REMEMBERED = 20_000;

  private final Clock clock;
  private final RateLimit pace;
  private final Duration bodyWithin;

  Limits(Settings settings, Clock clock) {
    this.clock = clock;
    int aSecond = settings.requestsASecond();
    this.pace =
        new RateLimit(
            aSecond * SECONDS_AT_ONCE,
            Duration.ofSeconds(1).dividedBy(aSecond),
            CALLERS_REMEMBERED);
    this.bodyWithin = settings.bodyWithin();
  }

  void everywhere(@Observes Filters filters) {
    filters.register(this::check, AFTER_HEADERS);
  }

  private void check(RoutingContext request) {
    Caller caller = Caller.of(request);
    if (!caller.here() && !pace.take(caller.address(), clock.instant()).isZero()) {
      request.response().putHeader("Retry-After", "1");
      refuse(request, 429, "Too many at once", "Too many requests from your network; try again.");
      return;
    }
    long atMost = bytesAtMost(request.request());
    if (length(request.request()) > atMost) {
      refuse(
          request,
          413,
          "Too large",
          "That is %d bytes; at most %d are taken here."
              .formatted(length(request.request()), atMost));
      return;
    }
    if (atMost == JSON_BYTES && request.request().getHeader("Transfer-Encoding") != null) {
      // The platform reads JSON that comes piece by piece up to its own limit alone.
      refuse(request, 411, "How long?", "Say with Content-Length how long the body is.");
      return;
    }
    // For a body that does not say beforehand how long it is.
    request.put(VertxHttpRecorder.MAX_REQUEST_SIZE_KEY, atMost);
    endIfItTrickles(request, atMost);
    request.next();
  }

  /** A body that never ends would hold a thread for ever, a byte a minute. */
  private void endIfItTrickles(RoutingContext request, long atMost) {
    boolean streamed = request.request().getHeader("Transfer-Encoding") != null;
    long bytes = streamed ? atMost : length(request.request());
    if (bytes == 0) {
      return;
    }
    Duration within = bodyWithin.plusSeconds(bytes / BYTES_A_SECOND);
    long timer =
        request.vertx().setTimer(within.toMillis(), now -> endUnlessAllIsHere(request, within));
    request.addEndHandler(done -> request.vertx().cancelTimer(timer));
  }

  private static void endUnlessAllIsHere(RoutingContext request, Duration within) {
    if (request.request().isEnded()) {
      return;
    }
    if (!request.response().headWritten()) {
      request.response().putHeader("Connection", "close");
      refuse(
          request,
          408,
          "Too slow",
          "Not all of it came within %d s. Nothing was changed.".formatted(within.toSeconds()));
    }
    request.request().connection().close();
  }

  private static long bytesAtMost(HttpServerRequest request) {
    String type = request.getHeader("Content-Type");
    String kind = type == null ? "" : type.toLowerCase(Locale.ROOT).strip();
    return kind.startsWith("application/x-www-form-urlencoded")
        ? FORM_BYTES
        : kind.startsWith("application/json") ? JSON_BYTES : FILE_BYTES;
  }

  private static long length(HttpServerRequest request) {
    String length = request.getHeader("Content-Length");
    return length == null || !length.matches("\\d{1,18}") ? 0 : Long.parseLong(length);
  }

  /**
   * Before any page is chosen, and so short. The body is let run out unread: its sender hears the
   * answer only once it is sent, and the platform's own limit ends it.
   */
  static void refuse(RoutingContext request, int status, String title, String detail) {
    boolean api = request.normalizedPath().startsWith("/api/");
    request.request().resume();
    request
        .response()
        .setStatusCode(status)
        .putHeader("Content-Type", api ? Problem.MEDIA_TYPE : "text/plain; charset=UTF-8")
        .end(
            api
                ? new JsonObject()
                    .put("type", "about:blank")
                    .put("title", title)
                    .put("status", status)
                    .put("detail", detail)
                    .encode()
                : title + ". " + detail + "\n");
  }
}
