package club.ascham.web;

import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpMethod;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.event.Observes;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Sends a page's address on to its plain spelling before anyone is asked to sign in: the platform
 * keeps the address in a cookie meanwhile, and where a cookie can't hold one of its characters the
 * request would never be answered. Programs are never asked. A wish for kinds of content that names
 * none is taken for a wish for any, as the platform would fail on it; wishes for a language or a
 * charset are not heard, since there is one of each.
 */
class Addresses {
  /** Before the platform asks who it is. */
  private static final int FIRST = 1_000;

  private static final String NOT_IN_A_COOKIE = "\",;\\";

  /** RFC 9110: media ranges, each with its parameters; a quality is 0 to 1. */
  private static final Pattern KINDS =
      Pattern.compile(
          "%1$s(,%1$s)*+"
              .formatted(
                  " *+[\\w!#$&^.+*-]++/[\\w!#$&^.+*-]++(;\\s*+(q=[01](\\.\\d{1,3})?|(?!q=)[\\w-]++=[\\w.+\\-/]++)\\s*+)*+ *+"));

  private static final Pattern CODINGS =
      Pattern.compile("%1$s(,%1$s)*+".formatted(" *+[\\w*.-]++(;\\s*+q=[01](\\.\\d{1,3})?)? *+"));

  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  void register(@Observes Filters filters) {
    filters.register(Addresses::plainOnly, FIRST);
  }

  private static void plainOnly(RoutingContext routing) {
    HttpServerRequest request = routing.request();
    // RFC 9112, 3.2: of two, nobody knows which the proxy before us believed.
    List<String> hosts = request.headers().getAll("Host");
    if (hosts.size() > 1 || !hosts.stream().allMatch(Addresses::isPlain)) {
      routing.response().setStatusCode(400).end();
      return;
    }
    String wish = request.getHeader("Accept");
    if (wish != null && !namesKinds(wish)) {
      request.headers().set("Accept", "*/*");
    }
    request.headers().remove("Accept-Language").remove("Accept-Charset");
    String coding = request.getHeader("Accept-Encoding");
    if (coding != null && !CODINGS.matcher(coding).matches()) {
      request.headers().remove("Accept-Encoding");
    }
    String address = request.uri();
    if (isPlain(address) || address.startsWith("/api/")) {
      routing.next();
      return;
    }
    boolean asks = request.method() == HttpMethod.GET || request.method() == HttpMethod.HEAD;
    if (asks && address.startsWith("/") && !address.startsWith("//")) {
      routing.response().setStatusCode(308).putHeader("Location", plain(address)).end();
    } else {
      routing.response().setStatusCode(400).end();
    }
  }

  static boolean isPlain(String address) {
    return address.chars().allMatch(Addresses::isPlain);
  }

  /** The same address with what a cookie can't hold escaped (RFC 3986, RFC 6265). */
  static String plain(String address) {
    StringBuilder plain = new StringBuilder();
    for (byte octet : address.getBytes(StandardCharsets.UTF_8)) {
      if (isPlain(octet & 0xFF)) {
        plain.append((char) octet);
      } else {
        plain.append('%').append(HEX.toHexDigits(octet));
      }
    }
    return plain.toString();
  }

  /** Whether the platform can read a wish for kinds of content. */
  static boolean namesKinds(String wish) {
    return KINDS.matcher(wish).matches();
  }

  private static boolean isPlain(int character) {
    return character > ' ' && character < 0x7F && NOT_IN_A_COOKIE.indexOf(character) < 0;
  }
}
