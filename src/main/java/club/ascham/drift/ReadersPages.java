package club.ascham.drift;

import club.ascham.people.Role;
import club.ascham.statistics.Scatter;
import club.ascham.store.Rows;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import java.util.List;
import java.util.Locale;

/** How much do our readings differ, and who reads high or low? */
@Path("/check/readers")
@RolesAllowed(Role.OFFICERS)
class ReadersPages {
  @CheckedTemplate(basePath = "drift", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
  record ReadersPage(ClubScatter.Known known, List<Quantity> quantities, List<Reader> readers)
      implements TemplateInstance {}

  /** One quantity, in mm with one decimal. */
  record Quantity(String name, String repeat, String between, String anybody, String change) {}

  /** One who measured. */
  record Reader(String name, String brace, String tiller) {}

  private record Account(long id, String name) {}

  private final ClubScatter scatter;
  private final Rows rows;

  ReadersPages(ClubScatter scatter, Rows rows) {
    this.scatter = scatter;
    this.rows = rows;
  }

  @GET
  public TemplateInstance readers() {
    ClubScatter.Known known = scatter.today();
    List<Reader> readers =
        rows.list(Account.class, "SELECT id, name FROM account ORDER BY name").stream()
            .filter(account -> known.brace().offsets().containsKey(Long.toString(account.id())))
            .map(account -> reader(account, known))
            .toList();
    return new ReadersPage(
        known,
        List.of(quantity("Brace", known.brace()), quantity("Tiller", known.tiller())),
        readers);
  }

  private static Quantity quantity(String name, Scatter of) {
    return new Quantity(
        name,
        mm(of.repeatability()),
        mm(of.between()),
        mm(of.reproducibility()),
        mm(ClubScatter.change(of)));
  }

  private static Reader reader(Account account, ClubScatter.Known known) {
    String id = Long.toString(account.id());
    return new Reader(
        account.name(), offset(known.brace().offsetOf(id)), offset(known.tiller().offsetOf(id)));
  }

  /** With its 90 % range. */
  private static String offset(Scatter.Offset offset) {
    double mean = Math.round(10 * offset.mean()) / 10.0;
    return String.format(Locale.UK, "%+.1f ± %.1f mm", mean == 0 ? 0 : mean, 1.645 * offset.sd())
        .replace('-', '−');
  }

  private static String mm(double mm) {
    return String.format(Locale.UK, "%.1f mm", mm);
  }
}
