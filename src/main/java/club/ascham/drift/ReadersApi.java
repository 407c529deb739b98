package club.ascham.drift;

import club.ascham.people.Role;
import club.ascham.statistics.Scatter;
import club.ascham.statistics.Scatter.Offset;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** How readings differ, as JSON. */
@Path("/api/readers")
@Produces(MediaType.APPLICATION_JSON)
@RolesAllowed(Role.OFFICERS)
@Tag(name = "Upkeep")
class ReadersApi {
  static final String EXAMPLE =
      """
      {"day": "2026-11-25", "readings": 640,
       "brace": {"repeatability": 0.9, "between": 0.8, "reproducibility": 1.2, "changeFrom": 4.8},
       "tiller": {"repeatability": 0.9, "between": 0.7, "reproducibility": 1.1, "changeFrom": 4.5},
       "readers": [{"name": "Alex Fenwick", "brace": {"offset": 0.6, "low": 0.1, "high": 1.1},
         "tiller": {"offset": -0.2, "low": -0.7, "high": 0.3}}]}
      """;

  /**
   * Standard deviations of a figure, in mm.
   *
   * @param repeatability of one person again
   * @param between people
   * @param reproducibility of anybody
   * @param changeFrom how far two readings of one bow by two people may lie apart before it counts
   *     as changed
   */
  public record ScatterJson(
      double repeatability, double between, double reproducibility, double changeFrom) {
    static ScatterJson of(Scatter of) {
      return new ScatterJson(
          of.repeatability(), of.between(), of.reproducibility(), ClubScatter.change(of));
    }
  }

  /** What someone reads more than the others, in mm; 9 times in 10 between low and high. */
  public record OffsetJson(double offset, double low, double high) {
    static OffsetJson of(Offset offset) {
      double reach = ClubScatter.LIKELY * offset.sd();
      return new OffsetJson(offset.mean(), offset.mean() - reach, offset.mean() + reach);
    }
  }

  /** One who measured. */
  public record ReaderJson(String name, OffsetJson brace, OffsetJson tiller) {}

  /**
   * @param day on which it was reckoned; anew each day
   * @param readings it was reckoned from
   */
  public record ReadersJson(
      LocalDate day,
      int readings,
      ScatterJson brace,
      ScatterJson tiller,
      List<ReaderJson> readers) {}

  private final ReadersOffsets offsets;

  ReadersApi(ReadersOffsets offsets) {
    this.offsets = offsets;
  }

  @GET
  @Operation(summary = "How far the club's readings scatter, and who reads high or low")
  @APIResponse(
      responseCode = "200",
      description = "In mm; a reader's offset lies 9 times in 10 between low and high",
      content =
          @Content(
              schema = @Schema(implementation = ReadersJson.class),
              examples = @ExampleObject(name = "the form", value = EXAMPLE)))
  public ReadersJson readers() {
    ReadersOffsets.Told told = offsets.today();
    ClubScatter.Known known = told.known();
    return new ReadersJson(
        known.day(),
        known.readings(),
        ScatterJson.of(known.brace()),
        ScatterJson.of(known.tiller()),
        told.readers().stream()
            .map(r -> new ReaderJson(r.name(), OffsetJson.of(r.brace()), OffsetJson.of(r.tiller())))
            .toList());
  }
}
