package club.ascham.withdrawal;

import club.ascham.form.Option;
import club.ascham.form.Outcome;
import club.ascham.form.Typed;
import club.ascham.form.Words;
import club.ascham.id.WithdrawalId;
import club.ascham.people.Role;
import club.ascham.time.ClubTime;
import club.ascham.units.ItemCode;
import club.ascham.upkeep.Work;
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
import java.util.Arrays;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;

/** Takes one item out of use. */
@Path("/items/{code}/withdraw")
@RolesAllowed({Role.OFFICERS, Role.VOLUNTEERS})
class WithdrawPages {

  @CheckedTemplate(basePath = "withdrawal", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record WithdrawPage(Withdrawals.Subject item, List<Option> works, Typed typed)
      implements TemplateInstance {}

  private final Withdrawals withdrawals;
  private final WithdrawItem withdrawItem;
  private final ClubTime time;
  private final Presses presses;

  WithdrawPages(
      Withdrawals withdrawals, WithdrawItem withdrawItem, ClubTime time, Presses presses) {
    this.withdrawals = withdrawals;
    this.withdrawItem = withdrawItem;
    this.time = time;
    this.presses = presses;
  }

  @GET
  public TemplateInstance withdraw(@RestPath ItemCode code) {
    return page(subject(code), Typed.nothing());
  }

  private Withdrawals.Subject subject(ItemCode code) {
    return withdrawals
        .subject(code)
        .orElseThrow(() -> new NoSuchThing("The club has nothing with that code."));
  }

  private static WithdrawPage page(Withdrawals.Subject item, Typed typed) {
    return new WithdrawPage(
        item,
        Arrays.stream(Work.values())
            .filter(work -> work.isFor(item.kind()))
            .map(work -> new Option(Words.of(work), work.said()))
            .toList(),
        typed);
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response withdrawn(@RestPath ItemCode code, MultivaluedMap<String, String> form) {
    Withdrawals.Subject item = subject(code);
    Typed typed = Forms.typed(form);
    return presses
        .form(typed, WithdrawalId::new, withdrawal -> WithdrawalPages.HOME)
        .page(
            () ->
                Reason.parse(typed, item.kind())
                    .map(reason -> withdrawn(item, reason))
                    .orElseGet(Outcome::unread),
            () -> page(item, typed));
  }

  /** A second person who stops it is told so: it is out of use either way. */
  private Outcome<WithdrawalId> withdrawn(Withdrawals.Subject item, Reason reason) {
    return withdrawItem.withdraw(item.id(), reason, time.now())
            instanceof Outcome.Done<WithdrawalId> done
        ? Outcome.done(
            done.made(), item.code() + " is withdrawn until someone with the permit releases it.")
        : Outcome.done(
            new WithdrawalId(withdrawals.newestOf(item.id()).orElseThrow()),
            item.code() + " was withdrawn before; that withdrawal stands.");
  }
}
