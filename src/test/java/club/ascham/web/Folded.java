package club.ascham.web;

import io.quarkus.test.junit.callback.QuarkusTestBeforeClassCallback;
import io.restassured.RestAssured;
import io.restassured.builder.ResponseBuilder;
import io.restassured.filter.Filter;
import io.restassured.filter.FilterContext;
import io.restassured.response.Response;
import io.restassured.specification.FilterableRequestSpecification;
import io.restassured.specification.FilterableResponseSpecification;
import java.util.regex.Pattern;

/**
 * Every page that a test is given reads as a person sees it: where its template breaks a line there
 * is one blank.
 */
public final class Folded implements QuarkusTestBeforeClassCallback, Filter {
  /** White space, but for what somebody typed into a box of several lines. */
  private static final Pattern BLANKS =
      Pattern.compile("(?s)(<textarea\\b[^>]*>.*?</textarea>)|\\s+");

  public static String page(String html) {
    return BLANKS.matcher(html).replaceAll(found -> found.group(1) == null ? " " : "$1");
  }

  @Override
  public void beforeClass(Class<?> testClass) {
    RestAssured.replaceFiltersWith(this);
  }

  @Override
  public Response filter(
      FilterableRequestSpecification request,
      FilterableResponseSpecification expected,
      FilterContext chain) {
    Response answer = chain.next(request, expected);
    String type = answer.contentType();
    return type != null && type.startsWith("text/html")
        ? new ResponseBuilder().clone(answer).setBody(page(answer.asString())).build()
        : answer;
  }
}
