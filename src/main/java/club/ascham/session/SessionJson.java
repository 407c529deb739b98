package club.ascham.session;

import club.ascham.concern.ConcernJson;
import club.ascham.form.Typed;
import club.ascham.loan.ItemBody;
import club.ascham.receive.LineBody;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The shapes in which sessions are sent and asked for. */
final class SessionJson {
  private SessionJson() {}

  /** A session in a list; its leader is named to those who lend, not in lists. */
  record SessionLine(
      long id,
      Instant issuedAt,
      LocalDate dueOn,
      int rigs,
      int rigsOut,
      int besideOut,
      List<ConcernJson> concerns) {}

  record Page(List<SessionLine> items, int page, int size, long total) {}

  record RigLine(long rigId, String code, boolean out) {}

  /**
   * Something that went beside the rigs.
   *
   * @param arrows how many went out with it; null: not known, or no arrows
   * @param missing of those, how many did not come back; null: nobody counted
   */
  record BesideLine(String code, String kind, Integer arrows, boolean out, Integer missing) {}

  /**
   * An archer who shares a rig, without a name.
   *
   * @param ageBand null: noted before it was asked
   * @param arrows null: none noted
   */
  record ArcherLine(
      long rigId,
      String ageBand,
      String draw,
      String arrows,
      String overrideWhy,
      String overrideCoach) {}

  /** A session with its rigs and archers, and what stands today against what of it is out. */
  record SessionBody(
      long id,
      String leader,
      Instant issuedAt,
      LocalDate dueOn,
      List<RigLine> rigs,
      List<BesideLine> beside,
      List<ArcherLine> archers,
      List<ConcernJson> concerns) {}

  /**
   * A set to go out.
   *
   * @param items what goes beside the rigs
   * @param overrideWhy where something speaks against one of them
   */
  record LendBody(
      String leader, List<Long> rigIds, List<ItemBody> items, String overrideWhy, String onceKey) {
    /** The rigs become ticks {@code rig-3}, and the items fields as everywhere. */
    Typed typed() {
      Typed typed = Typed.of(this);
      Optional.ofNullable(rigIds).orElse(List.of()).stream()
          .filter(Objects::nonNull)
          .forEach(rig -> typed.with("rig-" + rig, "yes"));
      ItemBody.into(typed, items);
      return typed;
    }
  }

  /**
   * A rig back: where nothing was seen or told it was looked over and is fine.
   *
   * @param seen in words
   * @param signs crack, fell, loosed-without-arrow and the like
   * @param part riser, limbs, string, a code, or not-known
   * @param notSo true: no sign belongs to what the words sound like
   * @param dryLooseOrFall one tick for two signs
   * @param stranger a code that is on it and not on its list
   * @param strangerAnswer put-right, withdraw-both, correct-record or exchanged
   */
  record RigBackBody(
      Long rigId,
      String seen,
      List<String> signs,
      String part,
      Boolean notSo,
      Boolean dryLooseOrFall,
      Boolean cameBackStrung,
      String stranger,
      String strangerAnswer) {}

  /** {@code lines}: what is back of the rest; left out: it comes back with the last rig. */
  record ReturnBody(List<RigBackBody> rigs, List<LineBody> lines, String onceKey) {}

  /** What became of a rig, and why. */
  record BecameLine(long rigId, String code, String became, String why) {}

  record ReturnedBody(String said, List<BecameLine> rigs) {}

  /**
   * An archer who shares a rig, without a name.
   *
   * @param estimated whether the draw was reckoned from the arm span
   * @param arrows the code of a set or pool; null: none yet
   * @param overrideWhy where the bow is heavier than the start of a course for this age, or
   *     something speaks against the arrows
   * @param overrideCoach who agreed to that weight
   */
  record ArcherBody(
      Long rig,
      String ageBand,
      String draw,
      Boolean estimated,
      String arrows,
      String overrideWhy,
      String overrideCoach,
      String onceKey) {}

  record Said(String said) {}
}
