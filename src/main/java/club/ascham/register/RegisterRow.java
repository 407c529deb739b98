package club.ascham.register;

import club.ascham.bow.Build;
import club.ascham.bow.Hand;
import club.ascham.bow.LimbSize;
import club.ascham.bow.StringMaterial;
import club.ascham.form.Words;
import club.ascham.id.ItemId;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.standing.State;
import club.ascham.units.ItemCode;
import club.ascham.units.Length;
import club.ascham.units.LengthText;
import io.quarkus.qute.TemplateData;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A line of the register's list.
 *
 * @param rigCode the bare code of the riser or bow of the rig that it is fitted to or kept with
 * @param keptWith whether it lives with that rig without being fitted
 */
@TemplateData
public record RegisterRow(
    ItemId id,
    String bareCode,
    ItemKind kind,
    String maker,
    String model,
    LocalDate boughtOn,
    Build build,
    Hand hand,
    Integer lengthIn,
    String fitting,
    LimbSize limbSize,
    Integer bowIn,
    Double markedLb,
    StringMaterial material,
    Integer strands,
    Integer bowFromIn,
    Integer bowToIn,
    String size,
    Length arrowLength,
    Integer spine,
    Integer arrowCount,
    boolean pool,
    State state,
    LoanId loan,
    LocalDate dueBack,
    RigId rig,
    boolean keptWith,
    String rigCode) {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.UK);

  public String code() {
    return new ItemCode(bareCode).display();
  }

  /** When it was bought: {@code 20 Aug 2024}. */
  public String bought() {
    return boughtOn == null ? null : DAY.format(boughtOn);
  }

  /** The address of its page. */
  public String page() {
    return "/items/" + code();
  }

  /** Maker and model where known, else its kind. */
  public String what() {
    String words =
        Stream.of(maker, model).filter(Objects::nonNull).collect(Collectors.joining(" "));
    return words.isEmpty() ? kind.said() : words;
  }

  /** What tells it from others of its kind: {@code right · 25 in · ILF}. */
  public String summary() {
    List<String> said = new ArrayList<>();
    said.add(kind.said());
    if (build == Build.SCREW_IN) {
      said.add("screw-in");
    }
    if (pool) {
      said.add("given out by count");
    }
    if (hand != null) {
      said.add(Words.said(hand) + "-handed");
    }
    inches(said, lengthIn);
    said.add(limbSize == null ? null : Words.said(limbSize));
    inches(said, bowIn);
    said.add(bowFromIn == null ? null : "for bows of " + bowFromIn + " to " + bowToIn + " in");
    said.add(markedLb == null ? null : pounds(markedLb));
    said.add(fitting);
    said.add(material == null ? null : said(material));
    said.add(strands == null ? null : strands + " strands");
    said.add(size);
    said.add(arrowLength == null ? null : LengthText.inches(arrowLength));
    said.add(spine == null ? null : "spine " + spine);
    said.add(arrowCount == null ? null : arrowCount + (arrowCount == 1 ? " arrow" : " arrows"));
    return said.stream().filter(Objects::nonNull).collect(Collectors.joining(" · "));
  }

  /** The code of its rig's body; where that has none, the rig's number. */
  public String rigLabel() {
    return rigCode == null ? Long.toString(rig.value()) : new ItemCode(rigCode).display();
  }

  static String pounds(double lb) {
    return (lb == Math.rint(lb) ? Long.toString(Math.round(lb)) : Double.toString(lb)) + " lb";
  }

  static String said(StringMaterial material) {
    return switch (material) {
      case POLYESTER -> "polyester";
      case HMPE -> "HMPE";
      case LCP -> "LCP";
      case OTHER -> "another material";
    };
  }

  private static void inches(List<String> said, Integer inches) {
    if (inches != null) {
      said.add(inches + " in");
    }
  }
}
