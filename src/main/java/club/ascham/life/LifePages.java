package club.ascham.life;

import club.ascham.form.Typed;
import club.ascham.life.LifeDesk.Group;
import club.ascham.life.LifeDesk.Lasting;
import club.ascham.life.LifeDesk.Ruled;
import club.ascham.life.PartLife.Measure;
import club.ascham.people.Role;
import club.ascham.register.ItemKind;
import club.ascham.statistics.KaplanMeier;
import club.ascham.time.ClubTime;
import club.ascham.upkeep.ShortenRule;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** How long do our parts last, and what should the rules take from that? */
@Path("/upkeep/life")
class LifePages {
  static final List<ItemKind> KINDS =
      List.of(
          ItemKind.STRING,
          ItemKind.LIMBS,
          ItemKind.RISER,
          ItemKind.BOW,
          ItemKind.STRINGER,
          ItemKind.ARROWS);

  /** A kind as the list shows it. */
  record KindLine(String name, String href, String counts, String life) {}

  @CheckedTemplate(basePath = "life", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record KindsPage(List<KindLine> kinds) implements TemplateInstance {}

  /** A group in words. */
  record GroupLine(String name, String counts, String life) {}

  /** A row of the survival curve, in percent. */
  record Reach(
      String age,
      double at,
      String watched,
      String failed,
      boolean few,
      Share share,
      Share low,
      Share high) {
    static Reach of(KaplanMeier.Step step) {
      return new Reach(
          LifeWords.whole(step.time()),
          step.time(),
          Integer.toString(step.watched()),
          Integer.toString(step.failed()),
          step.few(),
          new Share(step.value()),
          new Share(step.low()),
          new Share(step.high()));
    }

    static Reach at(double age, boolean few, double share, double low, double high) {
      return new Reach(
          LifeWords.whole(age),
          age,
          "",
          "",
          few,
          new Share(share),
          new Share(low),
          new Share(high));
    }
  }

  /** A share, for the table and for the chart. */
  record Share(double value) {
    public String said() {
      return String.format(Locale.UK, "%.0f %%", 100 * value);
    }
  }

  /** A rule with what the record makes of it. */
  record RuleLine(
      long id, int version, String items, String every, String words, Integer shortenTo) {}

  /** A part as a row that the numbers rest on. */
  record PartLine(String code, String group, String age, String end, boolean failed) {}

  @CheckedTemplate(basePath = "life", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LifePage(
      String kind,
      String name,
      String measure,
      String together,
      List<GroupLine> groups,
      int untold,
      List<Reach> survival,
      String few,
      List<RuleLine> rules,
      List<PartLine> parts,
      Typed typed)
      implements TemplateInstance {}

  private final LifeDesk desk;
  private final ShortenRule shortenRule;
  private final ClubTime time;

  LifePages(LifeDesk desk, ShortenRule shortenRule, ClubTime time) {
    this.desk = desk;
    this.shortenRule = shortenRule;
    this.time = time;
  }

  @GET
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public TemplateInstance kinds() {
    List<KindLine> lines = new ArrayList<>();
    for (ItemKind kind : KINDS) {
      Lasting lasting = desk.of(kind, Measure.DAYS);
      lines.add(
          new KindLine(
              capital(kind.plural()),
              "/upkeep/life/" + word(kind),
              LifeWords.counts(new Group("", lasting.parts(), null)),
              LifeWords.line(lasting)));
    }
    return new KindsPage(lines);
  }

  @GET
  @Path("/{kind}")
  @RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS, Role.COMMITTEES})
  public TemplateInstance kind(@RestPath String kind, @RestQuery String in) {
    return page(desk.of(kind(kind), measure(in)), Typed.nothing());
  }

  /** Takes over what the record proposes now, and nothing else: the number is reckoned anew. */
  @POST
  @Path("/{kind}/shorten")
  @RolesAllowed(Role.OFFICERS)
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response shorten(@RestPath String kind, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    Integer rule = typed.whole("rule", 1, Integer.MAX_VALUE);
    Integer days = typed.whole("days", 1, 4000);
    Lasting lasting = desk.of(kind(kind), Measure.DAYS);
    for (Ruled ruled : desk.ruled(lasting)) {
      if (rule != null
          && days != null
          && ruled.rule().id() == rule
          && ruled.proposal() instanceof Proposal.Shorten to
          && to.days() == days
          && typed.version().isPresent()
          && shortenRule.shorten(
              rule,
              typed.version().getAsInt(),
              days,
              LifeWords.source(to, ruled, lasting, ClubTime.said(time.today())))) {
        return Go.to(
            "/upkeep/life/" + kind,
            "The rule asks after " + days + " days now; what is due follows it.");
      }
    }
    typed.fault(
        "rule", "That is no longer what the record proposes, or the rule was changed since.");
    return Go.again(page(lasting, typed));
  }

  private TemplateInstance page(Lasting lasting, Typed typed) {
    return new LifePage(
        word(lasting.kind()),
        capital(lasting.kind().plural()),
        lasting.measure().said(),
        LifeWords.line(lasting),
        lasting.groups().stream().map(group -> line(group, lasting.measure())).toList(),
        lasting.untold(),
        survival(lasting),
        LifeWords.few(lasting.survival(), lasting.measure()),
        desk.ruled(lasting).stream().map(LifePages::line).toList(),
        lasting.parts().stream().map(part -> line(part, lasting.measure())).toList(),
        typed);
  }

  private static GroupLine line(Group group, Measure measure) {
    return new GroupLine(
        group.name().isEmpty() ? "all" : group.name(),
        LifeWords.counts(group),
        group.fit() == null ? "" : LifeWords.life(group.fit(), measure));
  }

  /** From 1 at the start to the oldest part that was watched. */
  private static List<Reach> survival(Lasting lasting) {
    List<KaplanMeier.Step> steps = lasting.survival().steps();
    if (steps.isEmpty()) {
      return List.of();
    }
    List<Reach> rows = new ArrayList<>();
    rows.add(Reach.at(0, false, 1, 1, 1));
    steps.forEach(step -> rows.add(Reach.of(step)));
    KaplanMeier.Step last = steps.get(steps.size() - 1);
    double oldest =
        lasting.parts().stream().mapToDouble(part -> part.age(lasting.measure())).max().orElse(0);
    if (oldest > last.time()) {
      rows.add(Reach.at(oldest, last.few(), last.value(), last.low(), last.high()));
    }
    return rows;
  }

  private static RuleLine line(Ruled ruled) {
    return new RuleLine(
        ruled.rule().id(),
        ruled.rule().version(),
        ruled.rule().items(),
        ruled.rule().every(),
        LifeWords.proposal(ruled),
        ruled.proposal() instanceof Proposal.Shorten to ? to.days() : null);
  }

  private static PartLine line(PartLife part, Measure measure) {
    return new PartLine(
        part.code(),
        part.group(),
        LifeWords.whole(part.age(measure)),
        part.end().said(),
        part.failed());
  }

  static ItemKind kind(String word) {
    return KINDS.stream()
        .filter(kind -> word(kind).equals(word))
        .findFirst()
        .orElseThrow(
            () ->
                new NoSuchThing(
                    "Lives are told of strings, limbs, risers, bows, stringers and arrows."));
  }

  static Measure measure(String word) {
    for (Measure measure : Measure.values()) {
      if (measure.said().equals(word)) {
        return measure;
      }
    }
    return Measure.DAYS;
  }

  private static String word(ItemKind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
