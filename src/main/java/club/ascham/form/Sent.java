package club.ascham.form;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The values of a form or a body in one canonical order, so that what is sent again is known as the
 * same: the order of fields, blanks around them and how a number is written make no difference.
 */
public final class Sent {
  private final Map<String, Object> values;

  private Sent(Map<String, Object> values) {
    this.values = values;
  }

  /**
   * @param body a record, or a map by field; null: nothing was sent
   */
  public static Sent of(Object body) {
    return new Sent(body == null ? new TreeMap<>() : fields(body));
  }

  /** The text of one field; empty where there is none. */
  public String text(String field) {
    Object value = values.get(field);
    return value == null ? "" : value.toString().strip();
  }

  /** SHA-256 of all but some fields, in hexadecimal digits. */
  public String digest(Set<String> leftOut) {
    Map<String, Object> digested = new TreeMap<>(values);
    digested.keySet().removeAll(leftOut);
    MessageDigest into = sha256();
    add(digested, into);
    return HexFormat.of().formatHex(into.digest());
  }

  private static void add(Object value, MessageDigest into) {
    if (value instanceof byte[] bytes) {
      begin('b', bytes.length, into);
      into.update(bytes);
    } else if (value instanceof Collection<?> list) {
      begin('l', list.size(), into);
      list.forEach(each -> add(each == null ? "" : each, into));
    } else if (value instanceof Map || value instanceof Record) {
      Map<String, Object> fields = fields(value);
      begin('m', fields.size(), into);
      fields.forEach(
          (name, each) -> {
            add(name, into);
            add(each, into);
          });
    } else {
      byte[] text = text(value).getBytes(StandardCharsets.UTF_8);
      begin('t', text.length, into);
      into.update(text);
    }
  }

  /** Each part says how long it is: what stands in one field never looks like two. */
  private static void begin(char kind, int length, MessageDigest into) {
    into.update(ByteBuffer.allocate(1 + Integer.BYTES).put((byte) kind).putInt(length).array());
  }

  private static String text(Object value) {
    return value instanceof Number number && !isBeyondNumbers(number)
        ? new BigDecimal(number.toString()).stripTrailingZeros().toPlainString()
        : value.toString().strip();
  }

  private static boolean isBeyondNumbers(Number number) {
    return number instanceof Double && !Double.isFinite(number.doubleValue());
  }

  /** What is empty was not sent. */
  private static Map<String, Object> fields(Object of) {
    Map<String, Object> fields = new TreeMap<>();
    if (of instanceof Map<?, ?> map) {
      map.forEach((name, value) -> put(String.valueOf(name), value, fields));
      return fields;
    }
    for (RecordComponent component : of.getClass().getRecordComponents()) {
      try {
        component.getAccessor().setAccessible(true);
        put(component.getName(), component.getAccessor().invoke(of), fields);
      } catch (ReflectiveOperationException impossible) {
        throw new IllegalStateException(impossible);
      }
    }
    return fields;
  }

  private static void put(String name, Object value, Map<String, Object> fields) {
    if (value != null && !(value instanceof String text && text.isBlank())) {
      fields.put(name, value);
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
