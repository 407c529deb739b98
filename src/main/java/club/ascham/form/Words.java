package club.ascham.form;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** How an enum constant is written for people and in addresses, JSON and CSV. */
public final class Words {
  /** Written once each: pages ask for the same few words in every row. */
  private static final Map<Enum<?>, String> WRITTEN = new ConcurrentHashMap<>();

  private Words() {}

  /** {@code SCREW_IN} as {@code screw-in}. */
  public static String of(Enum<?> constant) {
    return constant == null ? "" : WRITTEN.computeIfAbsent(constant, Words::written);
  }

  private static String written(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** {@code IN_THE_WORKSHOP} as {@code in the workshop}. */
  public static String said(Enum<?> constant) {
    return constant == null ? "" : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Several remarks as sentences, each ended: some of them are written without a full stop. */
  public static String sentences(List<String> remarks) {
    return remarks.stream()
        .map(remark -> remark.matches(".*[.!?:]") ? remark : remark + ".")
        .collect(Collectors.joining(" "));
  }
}
