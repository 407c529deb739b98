package club.ascham.rig;

import club.ascham.bow.AgainstAdvice;
import club.ascham.form.Named;
import club.ascham.form.Typed;

/** Reads why a thing is given although advice speaks against it, the same at every door. */
public final class AdviceOverridden {
  private static final int LONGEST_WHY = 500;

  private AdviceOverridden() {}

  /** What was said of it; each answer may be left out, and one that can't be read stands there. */
  public static AgainstAdvice parse(Typed typed) {
    return new AgainstAdvice(why(typed), Named.ifAny(typed, AgainstAdvice.COACH));
  }

  /** The reason alone, where no coach is asked; null: none was given. */
  public static String why(Typed typed) {
    return typed.reasonIfAny(AgainstAdvice.WHY, LONGEST_WHY);
  }
}
