package club.ascham.people;

import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.store.OlderBackups;
import club.ascham.story.FreeTexts;
import club.ascham.time.ClubTime;
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
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jboss.resteasy.reactive.RestPath;

/** Who signs in, what for, and who holds the permit. */
@Path("/people")
@RolesAllowed(Role.OFFICERS)
class PeoplePages {
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

  /** A link, shown this once. */
  @CheckedTemplate(basePath = "people", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record LinkPage(String name, String link, Instant until) implements TemplateInstance {}

  private final People people;
  private final ChangeAccounts changeAccounts;
  private final ChangeSecondStep changeSecondStep;
  private final EraseAccount eraseAccount;
  private final OlderBackups backups;
  private final AccountData accountData;
  private final Actor actor;
  private final ClubTime time;

  PeoplePages(
      People people,
      ChangeAccounts changeAccounts,
      ChangeSecondStep changeSecondStep,
      EraseAccount eraseAccount,
      OlderBackups backups,
      AccountData accountData,
      Actor actor,
      ClubTime time) {
    this.people = people;
    this.changeAccounts = changeAccounts;
    this.changeSecondStep = changeSecondStep;
    this.eraseAccount = eraseAccount;
    this.backups = backups;
    this.accountData = accountData;
    this.actor = actor;
    this.time = time;
  }

  @GET
  public TemplateInstance people() {
    return page(Typed.nothing());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response invite(MultivaluedMap<String, String> form, UriInfo uri) {
    Typed typed = Forms.typed(form);
    Optional<AccountDetails> details = AccountDetails.parse(typed, true, time.today());
    if (details.isPresent() && changeAccounts.isTaken(details.get().name())) {
      typed.fault("name", "That name is taken by another account.");
    }
    if (!typed.sound()) {
      return Go.again(page(typed));
    }
    String secret = changeAccounts.invite(details.orElseThrow());
    return shown(details.get().name(), secret, uri);
  }

  /** Who must have a second step. */
  @POST
  @Path("/second-step")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response askOf(MultivaluedMap<String, String> form) {
    Typed typed = Forms.typed(form);
    DoorRule rule =
        typed.requiredWord("secondStepFor", DoorRule.class, "Who must have a second step?");
    if (!typed.sound()) {
      return Go.again(page(typed));
    }
    changeSecondStep.askOf(rule);
    return Go.to(
        "/people",
        rule == DoorRule.NOBODY
            ? "A second step is for each to choose."
            : "Whoever of them has no second step is led to it at the next press.");
  }

  @GET
  @Path("/{id}")
  public TemplateInstance account(@RestPath String id) {
    People.Listed account = listed(id);
    return page(
        account,
        Typed.nothing()
            .with("role", Words.of(account.role()))
            .with("permitUntil", account.permitUntil()));
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String id, MultivaluedMap<String, String> form) {
    People.Listed account = listed(id);
    Typed typed = Forms.typed(form);
    Optional<AccountDetails> details = AccountDetails.parse(typed, false, time.today());
    OptionalInt version = typed.version();
    if (details.isPresent()) {
      ChangeAccounts.Outcome outcome =
          changeAccounts.change(account.id(), version.orElse(-1), details.get());
      switch (outcome) {
        case STALE ->
            typed.fault(
                "version",
                "Someone changed this account since you opened it. Below is what you typed.");
        case LAST_OFFICER -> typed.fault("role", LAST_OFFICER);
        case CHANGED -> {
          return Go.to("/people", account.name() + " is changed; it holds from the next press.");
        }
      }
    }
    return Go.again(page(listed(id), typed));
  }

  @POST
  @Path("/{id}/link")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response newLink(@RestPath String id, MultivaluedMap<String, String> form, UriInfo uri) {
    People.Listed account = listed(id);
    if (account.closedOn() != null) {
      return Go.again(page(account, Typed.nothing()));
    }
    return shown(account.name(), changeAccounts.newLink(account.id()), uri);
  }

  @POST
  @Path("/{id}/end-sessions")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response endSessions(@RestPath String id, MultivaluedMap<String, String> form) {
    People.Listed account = listed(id);
    changeAccounts.endSessions(account.id());
    return Go.to("/people", account.name() + " is signed out everywhere.");
  }

  /** For who lost phone and recovery codes; one's own is turned off on one's own page. */
  @POST
  @Path("/{id}/second-step/off")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response takeSecondStepOff(@RestPath String id, MultivaluedMap<String, String> form) {
    People.Listed account = listed(id);
    Typed typed = Forms.typed(form);
    String why =
        typed.reason(
            "why", LONGEST_WHY, "Why, and how do you know it is they who ask? A few words.");
    if (account.id().equals(actor.id())) {
      typed.fault("own", "Your own second step is turned off under My account, with a code.");
    }
    if (!typed.sound()) {
      // The other form of that page shows what holds, or saving it next would end the permit.
      return Go.again(
          page(
              account,
              typed
                  .with("role", Words.of(account.role()))
                  .with("permitUntil", account.permitUntil())));
    }
    return Go.to(
        "/people",
        changeSecondStep.takeOff(account.id(), why)
            ? account.name() + " signs in with the password alone, until a new second step is on."
            : account.name() + " had no second step.");
  }

  @POST
  @Path("/{id}/close")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response close(@RestPath String id, MultivaluedMap<String, String> form) {
    People.Listed account = listed(id);
    if (changeAccounts.close(account.id()) == ChangeAccounts.Outcome.LAST_OFFICER) {
      Typed typed = Typed.nothing().with("role", Words.of(account.role()));
      typed.fault("role", LAST_OFFICER);
      return Go.again(page(account, typed));
    }
    return Go.to("/people", "The account of " + account.name() + " is closed.");
  }

  @POST
  @Path("/{id}/reopen")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response reopen(@RestPath String id, MultivaluedMap<String, String> form) {
    People.Listed account = listed(id);
    if (!changeAccounts.reopen(account.id())) {
      return Go.again(page(account, Typed.nothing()));
    }
    return Go.to("/people", "The account of " + account.name() + " is open again.");
  }

  /** Everything kept of its holder, as a file to hand to them. */
  @GET
  @Path("/{id}/data")
  @Produces(MediaType.APPLICATION_JSON)
  public Response data(@RestPath String id) {
    return accountData.file(listed(id));
  }

  @GET
  @Path("/{id}/erase")
  public TemplateInstance askToErase(@RestPath String id) {
    return erasePage(erasable(id), Typed.nothing());
  }

  @POST
  @Path("/{id}/erase")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response erase(@RestPath String id, MultivaluedMap<String, String> form) {
    People.Listed account = erasable(id);
    Typed typed = Forms.typed(form);
    String why = typed.reason("why", LONGEST_WHY, "Why is it erased? A few words for the record.");
    if (!typed.sound()) {
      return Go.again(erasePage(account, typed));
    }
    Set<String> texts = Set.copyOf(form.getOrDefault("text", List.of()));
    return eraseAccount.erase(account, why, texts)
        ? Go.to("/people", "Erased: from now on closed account " + account.id().value() + ".")
        : Go.again(erasePage(account, typed));
  }

  private TemplateInstance erasePage(People.Listed account, Typed typed) {
    return new EraseAccountPage(account, eraseAccount.naming(account), backups.older(), typed);
  }

  private People.Listed erasable(String id) {
    People.Listed account = listed(id);
    if (account.closedOn() == null || account.erasedOn() != null) {
      throw new NoSuchThing("Only a closed account can be erased, and only once.");
    }
    return account;
  }

  private static final int LONGEST_WHY = 500;
  private static final String LAST_OFFICER =
      "This is the last officer's account. Make someone else an officer first.";

  private TemplateInstance page(Typed typed) {
    return new PeoplePage(people.all(), ROLES, RULES, Words.of(people.rule()), typed);
  }

  private TemplateInstance page(People.Listed account, Typed typed) {
    return new AccountPage(account, account.id().equals(actor.id()), ROLES, typed);
  }

  private Response shown(String name, String secret, UriInfo uri) {
    String link = uri.getBaseUri().resolve("/join/" + secret).toString();
    return Go.shown(new LinkPage(name, link, time.now().plus(PasswordLinks.LASTS)));
  }

  private People.Listed listed(String id) {
    return (id.matches("\\d{1,9}")
            ? people.listed(Long.parseLong(id))
            : Optional.<People.Listed>empty())
        .orElseThrow(() -> new NoSuchThing("There is no such account."));
  }
}
