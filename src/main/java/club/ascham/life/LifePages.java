package club.ascham.life;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.RuleId;
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
import club.ascham.web.NoSuchThing;
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
  private final Presses presses;

  LifePages(LifeDesk desk, ShortenRule shortenRule, ClubTime time, Presses presses) {
    this.desk = desk;
    this.shortenRule = shortenRule;
    this.time = time;
    this.presses = presses;
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
              "/upkeep/life/" + Words.of(kind),
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
    Lasting lasting = desk.of(kind(kind), Measure.DAYS);
    List<Ruled> proposed = desk.ruled(lasting);
    return presses
        .form(typed, RuleId::new, rule -> "/upkeep/life/" + kind)
        .page(() -> shortened(lasting, proposed, typed), () -> page(lasting, typed));
  }

  private Outcome<RuleId> shortened(Lasting lasting, List<Ruled> proposed, Typed typed) {
    for (Ruled ruled : proposed) {
      if (typed.value("rule").equals(Long.toString(ruled.rule().id()))
          && ruled.proposal() instanceof Proposal.Shorten to
          && typed.value("days").equals(Integer.toString(to.days()))) {
        return shortenRule.shorten(
            new RuleId(ruled.rule().id()),
            typed.version(),
            to.days(),
            LifeWords.source(to, ruled, lasting, ClubTime.said(time.today())));
      }
    }
    return Outcome.refused("rule", "That is no longer what the record proposes.");
  }

  private TemplateInstance page(Lasting lasting, Typed typed) {
    return new LifePage(
        Words.of(lasting.kind()),
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
        .filter(kind -> Words.of(kind).equals(word))
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

  private static String capital(String words) {
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
