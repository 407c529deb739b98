package club.ascham.people;

import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.AccountId;
import club.ascham.id.ClubId;
import club.ascham.store.OlderBackups;
import club.ascham.story.FreeTexts;
import club.ascham.time.ClubTime;
import club.ascham.web.Forms;
import club.ascham.web.Go;
import club.ascham.web.NoSuchThing;
import club.ascham.web.Presses;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;
import java.util.List;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestPath;

/** Who signs in, what for, and who holds the permit. */
@Path("/people")
@RolesAllowed(Role.OFFICERS)
class PeoplePages {
  private static final String HERE = "/people";
  private static final int LONGEST_WHY = 500;

  /** A role to choose. */
  public record RoleOption(String value, String label, String hint) {}

  private static final List<RoleOption> ROLES =
      List.of(
          new RoleOption("officer", "officer", "everything"),
          new RoleOption(
              "volunteer", "volunteer", "receives, checks, and inspects within the permit"),
          new RoleOption("committee", "committee", "reads only"));

  private static final List<RoleOption> RULES =
      List.of(
          new RoleOption("nobody", "nobody", "each may have one"),
          new RoleOption("officers", "officers", null),
          new RoleOption("everyone", "everyone", null));

  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record PeoplePage(
      List<People.Listed> accounts,
      List<RoleOption> roles,
      List<RoleOption> rules,
      String rule,
      Typed typed)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record AccountPage(People.Listed account, boolean oneself, List<RoleOption> roles, Typed typed)
      implements TemplateInstance {}

  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record EraseAccountPage(
      People.Listed account, List<FreeTexts.Hit> hits, OlderBackups.Older older, Typed typed)
      implements TemplateInstance {}

  /** A link, shown to the browser that asked for it. */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LinkPage(String name, String link, Instant until) implements TemplateInstance {}

  private final People people;
  private final ChangeAccounts changeAccounts;
  private final ChangeSecondFactor changeSecondStep;
  private final FreshSecrets fresh;
  private final EraseAccount eraseAccount;
  private final OlderBackups backups;
  private final AccountData accountData;
  private final Actor actor;
  private final ClubTime time;
  private final Presses presses;

  PeoplePages(
      People people,
      ChangeAccounts changeAccounts,
      ChangeSecondFactor changeSecondStep,
      FreshSecrets fresh,
      EraseAccount eraseAccount,
      OlderBackups backups,
      AccountData accountData,
      Actor actor,
      ClubTime time,
      Presses presses) {
    this.people = people;
    this.changeAccounts = changeAccounts;
    this.changeSecondStep = changeSecondStep;
    this.fresh = fresh;
    this.eraseAccount = eraseAccount;
    this.backups = backups;
    this.accountData = accountData;
    this.actor = actor;
    this.time = time;
    this.presses = presses;
  }

  @GET
  public TemplateInstance people() {
    return page(Typed.nothing());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response invite(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, AccountId::new, PeoplePages::linkOf)
        .whole("name")
        .page(
            () ->
                Outcome.of(AccountDetails.parse(typed, true, time.today()), changeAccounts::invite),
            () -> page(typed));
  }

  /** Who must have a second step. */
  @POST
  @Path("/second-step")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response askOf(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, ClubId::new, club -> HERE)
        .page(
            () -> {
              DoorRule rule =
                  typed.requiredWord(
                      "secondStepFor", DoorRule.class, "Who must have a second step?");
              return typed.sound() ? changeSecondStep.askOf(rule) : Outcome.unread();
            },
            () -> page(typed));
  }

  @GET
  @Path("/{id}")
  public TemplateInstance account(@RestPath long id) {
    return asItIs(id, Typed.nothing());
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath long id, MultivaluedMap<String, String> form) {
    AccountId account = listed(id).id();
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, AccountId::new, changed -> HERE)
        .page(
            () ->
                Outcome.of(
                    AccountDetails.parse(typed, false, time.today()),
                    details -> changeAccounts.change(account, typed.version(), details)),
            () -> page(listed(id), typed));
  }

  @POST
  @Path("/{id}/link")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response newLink(@RestPath long id, MultivaluedMap<String, String> form) {
    return press(id, Forms.typed(form), PeoplePages::linkOf, of -> changeAccounts.newLink(of.id()));
  }

  /** The link that was just made here for it. */
  @GET
  @Path("/{id}/link")
  public Response link(@RestPath long id, UriInfo uri) {
    People.Listed account = listed(id);
    return fresh
        .newest(PasswordLinks.Fresh.class)
        .filter(link -> link.account().equals(account.id()))
        .map(
            link ->
                Go.shown(
                    new LinkPage(
                        account.name(),
                        uri.getBaseUri().resolve("/join/" + link.secret()).toString(),
                        link.until())))
        .orElseGet(() -> Go.to(HERE + "/" + account.id().value()));
  }

  @POST
  @Path("/{id}/end-sessions")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response endSessions(@RestPath long id, MultivaluedMap<String, String> form) {
    return press(id, Forms.typed(form), of -> changeAccounts.endSessions(of.id()));
  }

  /** For who lost phone and recovery codes; one's own is turned off on one's own page. */
  @POST
  @Path("/{id}/second-step/off")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response takeSecondStepOff(@RestPath long id, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    return press(
        id,
        typed,
        of -> {
          String why = why(typed, "Why, and how do you know it is they who ask? A few words.");
          return typed.sound() ? changeSecondStep.takeOff(of, why) : Outcome.unread();
        });
  }

  @POST
  @Path("/{id}/close")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response close(@RestPath long id, MultivaluedMap<String, String> form) {
    return press(id, Forms.typed(form), of -> changeAccounts.close(of.id()));
  }

  @POST
  @Path("/{id}/reopen")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response reopen(@RestPath long id, MultivaluedMap<String, String> form) {
    return press(id, Forms.typed(form), of -> changeAccounts.reopen(of.id()));
  }

  private Response press(long id, Typed typed, Function<People.Listed, Outcome<AccountId>> work) {
    return press(id, typed, done -> HERE, work);
  }

  private Response press(
      long id,
      Typed typed,
      Function<AccountId, String> page,
      Function<People.Listed, Outcome<AccountId>> work) {
    People.Listed account = listed(id);
    return presses
        .form(typed, AccountId::new, page)
        .page(() -> work.apply(account), () -> asItIs(id, typed));
  }

  /** Everything kept of its holder, as a file to hand to them. */
  @GET
  @Path("/{id}/data")
  @Produces(MediaType.APPLICATION_JSON)
  public Response data(@RestPath long id) {
    return accountData.file(listed(id));
  }

  @GET
  @Path("/{id}/erase")
  public TemplateInstance askToErase(@RestPath long id) {
    return erasePage(erasable(id), Typed.nothing());
  }

  @POST
  @Path("/{id}/erase")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response erase(@RestPath long id, MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form, FreeTexts.TICKED);
    return presses
        .form(typed, AccountId::new, erased -> HERE)
        .page(
            () -> {
              People.Listed account = erasable(id);
              String why = why(typed, "Why is it erased? A few words for the record.");
              return typed.sound()
                  ? eraseAccount.erase(account, why, FreeTexts.ticked(typed))
                  : Outcome.unread();
            },
            () -> erasePage(erasable(id), typed));
  }

  private static String why(Typed typed, String prompt) {
    return typed.reason("why", LONGEST_WHY, prompt);
  }

  private TemplateInstance erasePage(People.Listed account, Typed typed) {
    return new EraseAccountPage(account, eraseAccount.naming(account), backups.older(), typed);
  }

  private People.Listed erasable(long id) {
    People.Listed account = listed(id);
    if (account.closedOn() == null || account.erasedOn() != null) {
      throw new NoSuchThing("Only a closed account can be erased, and only once.");
    }
    return account;
  }

  private TemplateInstance page(Typed typed) {
    return new PeoplePage(people.all(), ROLES, RULES, Words.of(people.rule()), typed);
  }

  private TemplateInstance page(People.Listed account, Typed typed) {
    return new AccountPage(account, account.id().equals(actor.id()), ROLES, typed);
  }

  /** With what holds in its first form: saved next, it changes nothing. */
  private TemplateInstance asItIs(long id, Typed typed) {
    People.Listed account = listed(id);
    return page(
        account,
        typed.with("role", Words.of(account.role())).with("permitUntil", account.permitUntil()));
  }

  private static String linkOf(AccountId account) {
    return HERE + "/" + account.value() + "/link";
  }

  private People.Listed listed(long id) {
    return people.listed(id).orElseThrow(() -> new NoSuchThing("There is no such account."));
  }
}
