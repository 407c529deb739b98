package club.ascham.hostile;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Makes wrong texts, bodies, addresses and headers; the same seed makes the same ones. */
final class Malice {
  /** What must never come back as a tag. */
  static final String SCRIPT = "<script>hostile(1)</script>";

  private static final ObjectMapper JSON = new ObjectMapper();

  private static final List<String> TEXTS =
      List.of(
          "",
          " ",
          "0",
          "-1",
          "2147483648",
          "-2147483649",
          "9223372036854775807",
          "9223372036854775808",
          "99999999999999999999999999999999999999999",
          "1e999",
          "-1e-999",
          "0x10",
          "1_000",
          "NaN",
          "Infinity",
          "-Infinity",
          "null",
          "true",
          "undefined",
          "1,5",
          "1.5.5",
          "8 3/4",
          "8 3/0",
          "99999 mm",
          "8¾″",
          "-0",
          "１２３",
          "٣",
          "no-such-word",
          "RIGHT",
          "right",
          "2026-02-30",
          "0000-00-00",
          "31/12/999999999",
          "+999999999-12-31",
          "-999999999-01-01",
          "2026-03-15T99:99",
          "2026-03-15T18:30",
          "+1000000000-12-31T23:59:59Z",
          "-1000000000-01-01T00:00:00Z",
          "0000-01-01T00:00:00Z",
          "9999-12-31T23:59",
          "24:00",
          "1900-01-01",
          "2999-12-31",
          "R-0147-J",
          "R-0000-0",
          "O0O0O0",
          "' OR '1'='1",
          "'; DROP TABLE item; --",
          "\" OR 1=1 --",
          "%' ESCAPE '",
          "%_%",
          SCRIPT,
          "\"><img src=x onerror=hostile(1)>",
          "{7*7}",
          "{#for i in 1..9999}{/for}",
          "{inject:nothing.here}",
          "${7*7}",
          "#{7*7}",
          "${jndi:ldap://127.0.0.1/x}",
          "../../../../etc/passwd",
          "..\\..\\windows",
          "file:///etc/passwd",
          "//elsewhere.invalid/",
          "https://elsewhere.invalid/",
          "javascript:hostile(1)",
          "=1+1",
          "@SUM(1)",
          "\u0000",
          "a\u0000b",
          "\u0001\u0002\u001b[31m",
          "\u007f\u0085",
          "line\r\nSet-Cookie: hostile=1",
          "\t\t",
          "😀👩‍👩‍👧‍👦",
          "\u202eright to left\u202c",
          "\u200b\u200d\ufeff",
          "\ufffe\uffff",
          "e\u0301\u0301\u0301\u0301",
          "İıſK",
          "ﷺ",
          "A".repeat(300),
          "1".repeat(5_000),
          "é".repeat(2_001),
          "(".repeat(3_000),
          "a ".repeat(20_000));

  private static final List<String> TOKENS =
      List.of(
          "null",
          "true",
          "0",
          "-1",
          "1.5",
          "1e5",
          "1e999",
          "-1e400",
          "9223372036854775808",
          "123456789012345678901234567890.5",
          "[]",
          "{}",
          "[[]]",
          "[null]",
          "[1,\"two\",{}]",
          "{\"value\":1}",
          "{\"@class\":\"java.lang.Object\"}",
          "\"\"",
          "\"\\u0000\"",
          "\"\\ud800\"",
          "\"\\udc00\\ud800\"",
          "NaN",
          "-Infinity",
          "undefined",
          "'single'",
          "01",
          "\"unclosed");

  private static final List<String> BROKEN_PERCENTS =
      List.of("%", "%z", "%zz", "%1", "%c3%28", "%00", "%ff%fe", "%u0041", "%2e%2e%2f", "%0d%0a");

  private static final List<String> TYPES =
      List.of(
          "application/json",
          "application/x-www-form-urlencoded",
          "multipart/form-data",
          "multipart/form-data; boundary=x",
          "text/plain",
          "text/csv",
          "application/xml",
          "application/json; charset=utf-16",
          "application/json; charset=no-such",
          "application/octet-stream",
          "*/*",
          "/",
          "json",
          "a/b; c=\"");

  private static final List<String> VERBS =
      List.of(
          "GET",
          "HEAD",
          "POST",
          "PUT",
          "DELETE",
          "PATCH",
          "OPTIONS",
          "TRACE",
          "PROPFIND",
          "get",
          "FETCH",
          "A");

  private final Random random;

  Malice(Random random) {
    this.random = random;
  }

  boolean oneIn(int times) {
    return random.nextInt(times) == 0;
  }

  <T> T anyOf(List<T> some) {
    return some.get(random.nextInt(some.size()));
  }

  String text() {
    return switch (random.nextInt(12)) {
      case 0 -> Long.toString(random.nextLong());
      case 1 -> noise(1 + random.nextInt(40), 0x10FFFF);
      case 2 -> noise(1 + random.nextInt(12), 0x7F);
      case 3 -> anyOf(TEXTS) + anyOf(TEXTS);
      default -> anyOf(TEXTS);
    };
  }

  private String noise(int length, int below) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      text.appendCodePoint(random.nextInt(below));
    }
    return text.toString();
  }

  String verb() {
    return anyOf(VERBS);
  }

  String contentType() {
    return anyOf(TYPES);
  }

  /** For a place in a path: encoded, or not quite. */
  String segment() {
    return oneIn(4) ? anyOf(BROKEN_PERCENTS) : shortened(encoded(text()));
  }

  /** Addresses that are too long are tried by headers that are too large. */
  private String shortened(String encoded) {
    int end = Math.min(encoded.length(), 2_000);
    while (end > 0 && encoded.substring(Math.max(0, end - 2), end).contains("%")) {
      end--;
    }
    return encoded.substring(0, end);
  }

  String query(List<String> names) {
    List<String> pairs = new ArrayList<>();
    int many = 1 + random.nextInt(3);
    for (int i = 0; i < many; i++) {
      String name = names.isEmpty() || oneIn(8) ? encoded(text()) : encoded(anyOf(names));
      String value = oneIn(6) ? anyOf(BROKEN_PERCENTS) : encoded(text());
      pairs.add(name + (oneIn(10) ? "" : "=" + value));
      if (oneIn(6)) {
        pairs.add(name + "=" + encoded(text()));
      }
    }
    return shortened(String.join(oneIn(12) ? ";" : "&", pairs));
  }

  /** A form's fields, some of them changed, doubled or left out. */
  String formOf(Map<String, String> fields, boolean untouched) {
    List<String> pairs = new ArrayList<>();
    Map<String, String> changed = new LinkedHashMap<>(fields);
    if (!untouched) {
      List<String> names = new ArrayList<>(fields.keySet());
      for (int i = 1 + random.nextInt(4); i > 0 && !names.isEmpty(); i--) {
        changed.put(anyOf(names), text());
      }
      if (oneIn(6)) {
        changed.put(text(), text());
      }
      if (oneIn(6) && !names.isEmpty()) {
        changed.remove(anyOf(names));
      }
    }
    changed.forEach((name, value) -> pairs.add(encoded(name) + "=" + encoded(value)));
    if (!untouched && oneIn(5) && !pairs.isEmpty()) {
      pairs.add(anyOf(pairs).split("=")[0] + "=" + encoded(text()));
    }
    if (!untouched && oneIn(10)) {
      pairs.add("broken=" + anyOf(BROKEN_PERCENTS));
    }
    if (!untouched && oneIn(10)) {
      pairs.add("=&&&==");
    }
    return String.join("&", pairs);
  }

  byte[] multipart(Map<String, String> fields, String boundary) {
    StringBuilder body = new StringBuilder();
    fields.forEach(
        (name, value) ->
            body.append("--")
                .append(boundary)
                .append("\r\n")
                .append("Content-Disposition: form-data; name=\"")
                .append(name)
                .append("\"")
                .append(oneIn(2) ? "; filename=\"" + anyOf(TEXTS).replace("\r\n", "") + "\"" : "")
                .append("\r\n\r\n")
                .append(oneIn(2) ? value : text())
                .append("\r\n"));
    if (!oneIn(5)) {
      body.append("--").append(boundary).append("--\r\n");
    }
    return body.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** A JSON body like the example, with something wrong in it or around it. */
  byte[] jsonLike(String example, boolean untouched) {
    if (untouched) {
      return example.getBytes(StandardCharsets.UTF_8);
    }
    String body =
        switch (random.nextInt(14)) {
          case 0 -> "[" + example + "]";
          case 1 -> example.substring(0, random.nextInt(example.length() + 1));
          case 2 -> "[".repeat(random.nextInt(20_000)) + example;
          case 3 -> "{\"a\":".repeat(random.nextInt(5_000)) + "1";
          case 4 -> anyOf(TOKENS);
          case 5 -> "\ufeff" + example;
          case 6 -> example + example;
          default -> changed(example);
        };
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    if (bytes.length > 0 && oneIn(15)) {
      bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
    }
    return oneIn(40) ? body.getBytes(StandardCharsets.UTF_16) : bytes;
  }

  private String changed(String example) {
    Map<String, String> fields = new LinkedHashMap<>();
    try {
      for (Map.Entry<String, JsonNode> field : JSON.readTree(example).properties()) {
        fields.put(field.getKey(), field.getValue().toString());
      }
      List<String> names = new ArrayList<>(fields.keySet());
      for (int i = 1 + random.nextInt(3); i > 0 && !names.isEmpty(); i--) {
        fields.put(anyOf(names), value());
      }
      if (fields.containsKey("onceKey") && oneIn(3)) {
        fields.put("onceKey", "\"the-same\"");
      }
      if (oneIn(6) && !names.isEmpty()) {
        fields.remove(anyOf(names));
      }
      if (oneIn(8)) {
        fields.put("no-such-field", value());
      }
      StringBuilder json = new StringBuilder("{");
      for (Map.Entry<String, String> field : fields.entrySet()) {
        json.append(json.length() == 1 ? "" : ",")
            .append(JSON.writeValueAsString(field.getKey()))
            .append(':')
            .append(field.getValue());
        if (oneIn(12)) {
          json.append(",\"").append(field.getKey()).append("\":").append(value());
        }
      }
      return json.append("}").toString();
    } catch (JsonProcessingException noObject) {
      return example + text();
    }
  }

  private String value() throws JsonProcessingException {
    return switch (random.nextInt(5)) {
      case 0, 1 -> anyOf(TOKENS);
      case 2 -> "[".repeat(3) + JSON.writeValueAsString(text()) + "]".repeat(3);
      default -> JSON.writeValueAsString(text());
    };
  }

  /** A CSV file like the example, with bytes changed. */
  byte[] csvLike(String example) {
    StringBuilder text = new StringBuilder(example);
    for (int i = random.nextInt(4); i >= 0; i--) {
      text.insert(
          random.nextInt(text.length() + 1),
          oneIn(2) ? text() : anyOf(List.of("\"", ",", "\n", ";", "\u0000")));
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Lines of a head that is odd, each ended. */
  String headers() {
    if (!oneIn(4)) {
      return "";
    }
    String text = text().replaceAll("[\\r\\n\\x00]", "");
    return switch (random.nextInt(14)) {
      case 0 -> "X-Large: " + "x".repeat(1_000 + random.nextInt(40_000)) + "\r\n";
      case 1 -> "X-Many: 1\r\n".repeat(1 + random.nextInt(300));
      case 2 ->
          "Accept: " + anyOf(List.of("nothing/here", "*", "text/html;q=x", "", "a;b;c")) + "\r\n";
      case 3 -> "Accept-Language: " + text + "\r\n";
      case 4 -> "Range: bytes=9-1,-5\r\n";
      case 5 -> "X-Forwarded-For: " + text + "\r\nX-Forwarded-Proto: gopher\r\n";
      case 6 -> "Origin: " + text + "\r\n";
      case 7 -> "Sec-Fetch-Site: " + text + "\r\n";
      case 8 -> "Cookie: ascham-said=" + text + "; ascham-csrf=" + text + "\r\n";
      case 9 -> "Cookie: ascham-session=" + text + "; ascham-location=" + text + "\r\n";
      case 10 -> "If-Modified-Since: never\r\nIf-None-Match: " + text + "\r\n";
      case 11 -> "Expect: " + anyOf(List.of("100-continue", "the-worst")) + "\r\n";
      case 12 -> "Content-Encoding: " + anyOf(List.of("gzip", "br", "none")) + "\r\n";
      default -> "Accept-Encoding: identity;q=0, *;q=0\r\n";
    };
  }

  static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
