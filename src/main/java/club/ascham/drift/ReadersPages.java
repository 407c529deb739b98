package club.ascham.drift;

import club.ascham.people.Role;
import club.ascham.statistics.Scatter;
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

  private final ReadersOffsets offsets;

  ReadersPages(ReadersOffsets offsets) {
    this.offsets = offsets;
  }

  @GET
  public TemplateInstance readers() {
    ReadersOffsets.Told told = offsets.today();
    ClubScatter.Known known = told.known();
    return new ReadersPage(
        known,
        List.of(quantity("Brace", known.brace()), quantity("Tiller", known.tiller())),
        told.readers().stream().map(ReadersPages::reader).toList());
  }

  private static Quantity quantity(String name, Scatter of) {
    return new Quantity(
        name,
        mm(of.repeatability()),
        mm(of.between()),
        mm(of.reproducibility()),
        mm(ClubScatter.change(of)));
  }

  private static Reader reader(ReadersOffsets.Reader reader) {
    return new Reader(reader.name(), offset(reader.brace()), offset(reader.tiller()));
  }

  /** With its 90 % range. */
  private static String offset(Scatter.Offset offset) {
    double mean = Math.round(10 * offset.mean()) / 10.0;
    return String.format(
            Locale.UK, "%+.1f ± %.1f mm", mean == 0 ? 0 : mean, ClubScatter.LIKELY * offset.sd())
        .replace('-', '−');
  }

  private static String mm(double mm) {
    return String.format(Locale.UK, "%.1f mm", mm);
  }
}
