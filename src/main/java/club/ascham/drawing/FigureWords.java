package club.ascham.drawing;

import club.ascham.bow.BracePoint;
import club.ascham.bow.Gauge;
import club.ascham.bow.SetUpFigures;
import club.ascham.units.LengthText;

/** Set-up figures in words; each must have been measured. */
public final class FigureWords {
  private FigureWords() {}

  public static String brace(SetUpFigures figures) {
    return LengthText.both(figures.brace())
        + (figures.braceFrom() == BracePoint.BUTTON ? " to the button" : " to the throat");
  }

  public static String tiller(SetUpFigures figures) {
    return Gauge.signed(figures.tiller())
        + " (upper "
        + LengthText.both(figures.tillerUpper())
        + ", lower "
        + LengthText.both(figures.tillerLower())
        + ")";
  }

  public static String nocking(SetUpFigures figures) {
    return LengthText.both(figures.nocking()) + " above square";
  }
}
