package club.ascham.web;

import static io.restassured.RestAssured.given;

import io.restassured.http.ContentType;
import io.restassured.specification.RequestSpecification;

/** Whoever of the demo club calls by program, with name and password in each request. */
public final class Program {
  private Program() {}

  public static RequestSpecification as(String who) {
    return given().auth().preemptive().basic(who, "demo-fleet");
  }

  /** The same, with what it sends being JSON. */
  public static RequestSpecification sending(String who) {
    return as(who).contentType(ContentType.JSON);
  }
}
