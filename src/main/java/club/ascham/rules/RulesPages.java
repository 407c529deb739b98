package club.ascham.rules;

import club.ascham.Settings;
import club.ascham.bow.BraceTable;
import club.ascham.bow.InPrint;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.ClubId;
import club.ascham.people.Actor;
import club.ascham.people.Role;
import club.ascham.store.Rows;
import club.ascham.units.LengthText;
import club.ascham.units.Money;
import club.ascham.upkeep.UpkeepRules;
import club.ascham.web.Forms;
import club.ascham.web.Press;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Instant;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;

/** How this club does it: each rule with its source and who changed it. */
@Path("/rules")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
class RulesPages {
  /** A published table that can be put in force. */
  public record Table(String value, String label, String hint) {}

  /** The bands for one bow length; null: none from there. */
  public record BandLine(int bowLengthIn, String ofTable, OwnBand own) {}

  /** Who last changed the club's settings; null: nobody yet. */
  public record Changed(String by, Instant at) {}

  /** The club's settings in words. */
  public record Said(
      ClubRules rules,
      String deposit,
      String mayMove,
      String table,
      String tableSource,
      String weightLost) {}

  /** What the plan takes for granted. */
  public record Planned(PlanRules.Basis basis, String minutes, List<TermsLine> terms) {}

  /** A kind of part; price null: what the club paid on average. */
  public record TermsLine(PlanRules.Terms terms, String price) {}

  @CheckedTemplate(basePath = "rules", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record RulesPage(
      Said said,
      Changed changed,
      List<BandLine> bands,
      boolean ownBands,
      List<UpkeepRules.Rule> upkeep,
      Planned plan,
      Typed typed)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "rules", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ClubPage(List<Table> tables, int version, Typed typed) implements TemplateInstance {}

  private final Club club;
  private final ChangeRules changeRules;
  private final UpkeepRules upkeepRules;
  private final PlanRules planRules;
  private final Rows rows;
  private final Actor actor;
  private final Presses presses;
  private final Currency currency;

  RulesPages(
      Club club,
      ChangeRules changeRules,
      UpkeepRules upkeepRules,
      PlanRules planRules,
      Rows rows,
      Actor actor,
      Presses presses,
      Settings settings) {
    this.club = club;
    this.changeRules = changeRules;
    this.upkeepRules = upkeepRules;
    this.planRules = planRules;
    this.rows = rows;
    this.actor = actor;
    this.presses = presses;
    this.currency = Currency.getInstance(settings.currency());
  }

  @GET
  public TemplateInstance rules() {
    return page(Typed.nothing());
  }

  @GET
  @Path("/club")
  @RolesAllowed(Role.OFFICERS)
  public TemplateInstance club() {
    ClubRules rules = club.rules();
    Typed typed =
        Typed.nothing()
            .with("name", rules.name())
            .with("braceTable", Words.of(BraceTable.valueOf(rules.braceTable())))
            .with("fullCheckEveryLooks", rules.fullCheckEveryLooks())
            .with("loanDays", rules.loanDays())
            .with("deposit", new Money(rules.depositMinor()).format(currency))
            .with("sessionsAWeek", rules.sessionsAWeek())
            .with("shotsASession", rules.shotsASession())
            .with("keepNamesDays", rules.keepNamesDays())
            .with("fewestTwists", rules.fewestTwists())
            .with("mostTwists", rules.mostTwists())
            .with("twistsSource", rules.twistsSource())
            .with("weighLimbsDays", rules.weighLimbsDays())
            .with("telephone", rules.telephone())
            .with("mail", rules.mail())
            .with("terms", rules.terms())
            .with(
                "braceMayMove",
                rules.braceMayMove() == null ? null : LengthText.exact(rules.braceMayMove()))
            .with("braceMayMoveSource", rules.braceMayMoveSource());
    return new ClubPage(tables(), rules.version(), typed);
  }

  @POST
  @Path("/club")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    Response answer =
        press(typed)
            .page(
                () ->
                    Outcome.of(
                        ClubRulesDetails.parse(typed, currency, actor.unit()), changeRules::change),
                () -> new ClubPage(tables(), club.stored().orElseThrow().version(), typed));
    club.forget();
    return answer;
  }

  private Press<ClubId> press(Typed typed) {
    return presses.form(typed, ClubId::new, changed -> "/rules");
  }

  @POST
  @Path("/bands")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response keepBand(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(typed)
        .page(
            () -> Outcome.of(OwnBand.parse(typed, actor.unit()), changeRules::keep),
            () -> page(typed));
  }

  @POST
  @Path("/bands/{bowLengthIn}/remove")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response removeBand(@RestPath int bowLengthIn, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(typed).page(() -> changeRules.remove(bowLengthIn), () -> page(typed));
  }

  private TemplateInstance page(Typed typed) {
    ClubRules rules = club.rules();
    BraceTable table = BraceTable.valueOf(rules.braceTable());
    List<BandLine> bands = bands(table);
    return new RulesPage(
        new Said(
            rules,
            new Money(rules.depositMinor()).format(currency),
            rules.braceMayMove() == null ? null : LengthText.both(rules.braceMayMove()),
            name(table),
            table.source(),
            InPrint.WEIGHT_LOST),
        changed(),
        bands,
        bands.stream().anyMatch(line -> line.own() != null),
        upkeepRules.all(),
        planned(),
        typed);
  }

  private Planned planned() {
    return new Planned(
        planRules.basis(),
        planRules.minutes().entrySet().stream()
            .map(time -> time.getKey().said() + " " + time.getValue() + " min")
            .collect(Collectors.joining(", ")),
        planRules.terms().stream()
            .map(
                terms ->
                    new TermsLine(
                        terms,
                        terms.priceMinor() == null
                            ? null
                            : new Money(terms.priceMinor()).format(currency)))
            .toList());
  }

  private Changed changed() {
    return rows.one(
            Changed.class,
            "SELECT a.name AS \"by\", c.changed_at AS at FROM club c JOIN account a ON a.id = c.changed_by")
        .orElse(null);
  }

  private List<BandLine> bands(BraceTable table) {
    Map<Integer, OwnBand> own =
        rows
            .list(
                OwnBand.class,
                "SELECT bow_length_in, low, high, source FROM club_brace_band ORDER BY 1")
            .stream()
            .collect(Collectors.toMap(OwnBand::bowLengthIn, Function.identity()));
    TreeSet<Integer> lengths = new TreeSet<>(own.keySet());
    for (int bow = 48; bow <= 72; bow++) {
      if (table.band(bow).isPresent()) {
        lengths.add(bow);
      }
    }
    return lengths.stream()
        .map(
            bow -> new BandLine(bow, table.band(bow).map(OwnBand::said).orElse(null), own.get(bow)))
        .toList();
  }

  private static List<Table> tables() {
    return Arrays.stream(BraceTable.values())
        .map(table -> new Table(Words.of(table), name(table), table.source()))
        .toList();
  }

  private static String name(BraceTable table) {
    return switch (table) {
      case TRADE_OUTREACH_2020 -> "Archery Trade Association, 2020";
      case BRITISH_DEALER -> "British dealer";
      case FRENCH_FEDERATION_2008 -> "French federation, 2008";
      case FRENCH_CLUB -> "French club";
    };
  }
}
