package club.ascham.packaged;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;

/** A ready rig of the demo club that tests lend and check over the API, with what it measured. */
record Bow(long rig, String hand, String body, Map<String, String> seen, JsonNode figures) {
  private static final int ALL = 200;
  private static final ZoneId CLUB = ZoneId.of("Europe/London");

  /**
   * Every ready rig whose tiller can be set (of the others a reading that changes keeps the bow in)
   * and of which nothing is told that a check would have to answer.
   */
  static List<Bow> ready(ApiCaller officer) throws IOException, InterruptedException {
    List<Bow> bows = new ArrayList<>();
    for (JsonNode line : officer.get("/api/rigs?state=ready&size=" + ALL).body().path("items")) {
      boolean told =
          line.path("concerns").findValuesAsText("matter").stream().anyMatch("reported"::equals);
      if (line.path("build").asText().equals("adjustable") && !told) {
        String body = line.path("body").asText();
        JsonNode looks =
            officer.get("/api/inspections/lists/" + body + "/bolt-inspection").body().path("looks");
        Map<String, String> seen = new HashMap<>();
        looks.forEach(look -> seen.put(look.path("key").asText(), "fine"));
        JsonNode whole = officer.get("/api/rigs/" + line.path("id").asLong()).body();
        String hand = line.path("hand").asText();
        bows.add(new Bow(line.path("id").asLong(), hand, body, seen, whole.path("setUp")));
      }
    }
    return bows;
  }

  /** A kit of nothing but this rig. */
  Map<String, Object> issue(String name) {
    Map<String, Object> body = new HashMap<>();
    body.put("rig", rig);
    body.put("name", name);
    body.put("contact", name + "@example.org");
    body.put("hand", hand);
    body.put("drawLength", "27 in");
    body.put("ageBand", "adult");
    body.put("experience", "improver");
    body.put("overrideWhy", "The test lends whatever is ready.");
    body.put("overrideCoach", "Bo Tarn");
    body.put("deposit", "20.00");
    body.put("depositHow", "cash");
    body.put("termsAccepted", true);
    body.put("briefingGiven", true);
    return body;
  }

  /** Measured as it was set up, and nothing seen. */
  Map<String, Object> check() {
    Map<String, Object> body = new HashMap<>();
    body.put("rig", Long.toString(rig));
    body.put("allAsListed", true);
    for (String figure : List.of("brace", "braceFrom", "tillerUpper", "tillerLower")) {
      body.put(figure, figures.path(figure).asText());
    }
    body.put("answers", Map.of("string", "fine", "limbs", "fine", "bolts", "fine"));
    return body;
  }

  /** Its bolts inspected, and found as they should be. */
  Map<String, Object> boltInspection() {
    return Map.of("item", body, "work", "bolt-inspection", "seen", seen);
  }

  /** The lines of a loan that came in an answer. */
  static long lines(JsonNode loan) {
    return StreamSupport.stream(loan.path("lines").spliterator(), false).count();
  }

  static String due(int days) {
    return LocalDate.now(CLUB).plusDays(days).toString();
  }
}
