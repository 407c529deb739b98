package club.ascham.form;

import java.util.Locale;

/** How an enum constant is written for people and in addresses, JSON and CSV. */
public final class Words {
  private Words() {}

  /** {@code SCREW_IN} as {@code screw-in}. */
  public static String of(Enum<?> constant) {
    return constant == null ? "" : constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** {@code IN_THE_WORKSHOP} as {@code in the workshop}. */
  public static String said(Enum<?> constant) {
    return constant == null ? "" : constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
