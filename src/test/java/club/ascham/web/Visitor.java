package club.ascham.web;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.UTF_8;

import io.restassured.filter.cookie.CookieFilter;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.net.URLEncoder;
import java.util.Map;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Someone at a browser without script: keeps cookies, sends each form's token, follows nothing. */
public final class Visitor {
  private static final Pattern TOKEN = Pattern.compile("name=\"csrf-token\" value=\"([^\"]+)\"");

  private final CookieFilter cookies = new CookieFilter();
  private String token = "";

  private Visitor() {}

  public static Visitor unknown() {
    return new Visitor();
  }

  public static Visitor signedInAs(String name) {
    Visitor visitor = new Visitor();
    visitor.get("/sign-in");
    visitor.post("/sign-in", Map.of("name", name, "password", "demo-fleet")).then().statusCode(303);
    return visitor;
  }

  public Response get(String path) {
    Response answer = request().get(path);
    Matcher token = TOKEN.matcher(answer.asString());
    if (token.find()) {
      this.token = token.group(1);
    }
    return answer;
  }

  /** Looks for words from any page's box, and answers where that led. */
  public Response look(String path, Map<String, String> form) {
    get("/me");
    Response answer = post(path, form);
    String location = answer.header("Location");
    return location != null && answer.statusCode() == 303 && location.contains(path)
        ? get(location)
        : answer;
  }

  /** Asks a page with what a form of its own would put into the address. */
  public Response ask(String path, Map<String, String> query) {
    StringJoiner address = new StringJoiner("&", path + "?", "");
    query.forEach(
        (name, value) ->
            address.add(name + "=" + URLEncoder.encode(value, UTF_8).replace("+", "%20")));
    return request().urlEncodingEnabled(false).get(address.toString());
  }

  /** Posts a form with the token of the page seen last. */
  public Response post(String path, Map<String, ?> form) {
    return request().formParam("csrf-token", token).formParams(form).post(path);
  }

  /** Posts a form, and looks at the page that it leads to. */
  public Response led(String path, Map<String, ?> form) {
    return get(post(path, form).then().statusCode(303).extract().header("Location"));
  }

  /** Posts a form's body as it is, after the token. */
  public Response postRaw(String path, String form) {
    return request()
        .urlEncodingEnabled(false)
        .contentType("application/x-www-form-urlencoded")
        .body("csrf-token=" + token + "&" + form)
        .post(path);
  }

  /**
   * Posts something that is no form, or only claims to be one.
   *
   * @param type null: it does not say what it is
   */
  public Response postBytes(String path, String type, String body) {
    RequestSpecification request = request();
    return type == null
        ? request.noContentType().post(path)
        : request.header("Content-Type", type).body(body.getBytes(UTF_8)).post(path);
  }

  /** Posts a form that carries a file. */
  public Response postFile(String path, String field, String name, byte[] bytes) {
    return request()
        .multiPart("csrf-token", token)
        .multiPart(field, name, bytes, "text/csv")
        .post(path);
  }

  /** Posts a form without any token. */
  public Response postWithoutToken(String path, Map<String, ?> form) {
    return request().formParams(form).post(path);
  }

  private RequestSpecification request() {
    return given().filter(cookies).redirects().follow(false).urlEncodingEnabled(true);
  }
}
