package club.ascham.loan;

import club.ascham.askback.AskBack;
import club.ascham.askback.Asked;
import club.ascham.bow.BracePoint;
import club.ascham.bow.Newcomer;
import club.ascham.bow.SetUpFigures;
import club.ascham.bow.WeightOnFingers;
import club.ascham.concern.Concern;
import club.ascham.concern.Concerns;
import club.ascham.concern.Matter;
import club.ascham.id.LoanId;
import club.ascham.id.RigId;
import club.ascham.people.Role;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import club.ascham.rules.Club;
import club.ascham.rules.ClubRules;
import club.ascham.units.LengthText;
import club.ascham.units.Money;
import club.ascham.web.NoSuchThing;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jboss.resteasy.reactive.RestPath;

/**
 * The borrower's slip: what was lent, what the bow should measure, and how to care for it.
 *
 * <p>It speaks of what was lent and of what the club stands behind: whom to call, the terms, and
 * how far brace may move are the club's own. Without a figure of its own it asks about any change,
 * rather than name one given for another kind of bow.
 */
@Path("/loans/{loan}/slip")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class SlipPages {
  /** A quantity of the bow with the figure it was set up to, in both units. */
  record Figure(String name, String value) {}

  /**
   * Who lends, and what the club stands behind.
   *
   * @param reachedAt telephone and mail; may be empty
   * @param mayMove how far the brace height may be from its set-up; null: the club names no figure
   */
  record Lender(String reachedAt, List<String> terms, String mayMove) {}

  /**
   * What was said and shown as it was handed over.
   *
   * @param draw the archer's draw length; null: a session
   * @param shortestArrow null: a session
   * @param arrows whether arrows are out (likewise stringer): only what was lent is spoken of
   */
  record Handed(
      List<LoanLine> lent,
      String draw,
      String shortestArrow,
      String deposit,
      boolean arrows,
      boolean stringer) {}

  /**
   * One bow of the slip.
   *
   * @param weight on these fingers; null: a session, or it can't be reckoned
   * @param brace null: not set up (and {@code others} empty)
   * @param others what the club sets and nobody at home has to measure
   * @param checked the day it was last measured, in a check or a set-up; null: never yet
   */
  record Bow(
      String name,
      String about,
      String weight,
      Figure brace,
      List<Figure> others,
      LocalDate checked,
      List<Inspections.Last> inspected) {}

  /**
   * @param askBack what of it must not be shot as of this printing; null: nothing
   * @param advice that speaks against a bow for this archer
   */
  @CheckedTemplate(basePath = "loan", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record SlipPage(
      LoanSheet loan,
      Lender club,
      Handed handed,
      Asked askBack,
      List<Bow> bows,
      List<String> advice,
      List<String> known)
      implements TemplateInstance {}

  /** What only the club can see to, and nobody at home would notice. */
  private static final Set<Matter> FOR_THE_CLUB =
      EnumSet.of(Matter.WEIGHING_DUE, Matter.ARROWS_NOT_WEIGHED, Matter.ARROWS_MISSING);

  private final Loans loans;
  private final LoanLines lines;
  private final AskBack askBack;
  private final RigSpecs specs;
  private final Inspections inspections;
  private final Concerns concerns;
  private final Lending lending;
  private final Club club;

  SlipPages(
      Loans loans,
      LoanLines lines,
      AskBack askBack,
      RigSpecs specs,
      Inspections inspections,
      Concerns concerns,
      Lending lending,
      Club club) {
    this.loans = loans;
    this.lines = lines;
    this.askBack = askBack;
    this.specs = specs;
    this.inspections = inspections;
    this.concerns = concerns;
    this.lending = lending;
    this.club = club;
  }

  @GET
  public TemplateInstance slip(@RestPath LoanId loan) {
    LoanSheet sheet =
        loans
            .sheet(loan)
            .orElseThrow(() -> new NoSuchThing("There is no loan " + loan.value() + "."));
    List<LoanLine> lent = lines.of(sheet.id()).stream().filter(LoanLine::isOut).toList();
    List<RigId> rigs =
        lent.stream().map(LoanLine::rig).filter(Objects::nonNull).distinct().toList();
    List<Inspections.Last> inspected = inspections.lastOf(sheet.id());
    Map<RigId, LocalDate> checked = inspections.checked(sheet.id());
    Archer archer = Archer.of(sheet).orElse(null);
    Collection<RigCard> cards = specs.of(rigs).values();
    List<Bow> bows = cards.stream().map(card -> bow(card, archer, checked, inspected)).toList();
    return new SlipPage(
        sheet,
        lender(),
        handed(sheet, archer, lent),
        askBack.of(sheet.id()).orElse(null),
        bows,
        archer == null ? List.of() : LentAdvice.against(archer, cards).toList(),
        known(sheet.id()));
  }

  private Lender lender() {
    ClubRules rules = club.rules();
    return new Lender(
        rules.reachedAt(),
        rules.termLines(),
        rules.braceMayMove() == null ? null : LengthText.both(rules.braceMayMove()));
  }

  private Handed handed(LoanSheet sheet, Archer archer, List<LoanLine> lent) {
    return new Handed(
        lent,
        sheet.drawLength() == null ? null : LengthText.both(sheet.drawLength()),
        archer == null ? null : Newcomer.fit(archer.answers()).shortestArrow().said(),
        new Money(sheet.depositMinor()).format(lending.currency()),
        lent.stream().anyMatch(LoanLine::isArrows),
        lent.stream().anyMatch(LoanLine::isStringer));
  }

  /**
   * What whoever shoots it should know and is no reason to bring it back at once; that its set-up
   * is not done, although that keeps a bow in.
   */
  private List<String> known(LoanId loan) {
    return concerns.of(loan).all().stream()
        .filter(one -> !FOR_THE_CLUB.contains(one.matter()))
        .filter(one -> !one.blocks() || one.matter() == Matter.NOT_SET_UP)
        .map(Concern::said)
        .toList();
  }

  private static Bow bow(
      RigCard card,
      Archer archer,
      Map<RigId, LocalDate> checked,
      List<Inspections.Last> inspected) {
    return new Bow(
        card.name(),
        card.spec().map(RigWords::about).orElse(""),
        archer == null ? null : archer.weightOf(card).map(SlipPages::said).orElse(null),
        card.setUp() == null ? null : brace(card.setUp()),
        card.setUp() == null ? List.of() : others(card.setUp()),
        checked.get(card.id()),
        inspected.stream().filter(one -> card.id().value() == one.rig()).toList());
  }

  private static String said(WeightOnFingers weight) {
    return "about %s, %s to %s"
        .formatted(
            RigWords.lb(Math.rint(weight.lb())),
            RigWords.lb(Math.floor(weight.lowLb())),
            RigWords.lb(Math.ceil(weight.highLb())));
  }

  private static Figure brace(SetUpFigures setUp) {
    return new Figure(
        setUp.braceFrom() == BracePoint.BUTTON
            ? "Brace height, string to button"
            : "Brace height, string to the throat of the grip",
        LengthText.both(setUp.brace()));
  }

  private static List<Figure> others(SetUpFigures setUp) {
    return List.of(
        new Figure("Upper tiller distance", LengthText.both(setUp.tillerUpper())),
        new Figure("Lower tiller distance", LengthText.both(setUp.tillerLower())),
        new Figure("Nocking point above square", LengthText.both(setUp.nocking())));
  }
}
