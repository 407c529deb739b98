package club.ascham.bow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.units.Length;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompatibilityTest {

  @Test
  void misfits_partsOfOneStandard_none() {
    assertEquals(List.of(), Compatibility.misfits(Bows.adjustableRig(24, Style.SPLIT_FINGER)));
    assertEquals(List.of(), Compatibility.misfits(Bows.screwInRig(62, 18)));
    assertEquals(List.of(), Compatibility.misfits(Bows.onePieceRig(54, 14)));
  }

  @Test
  void misfits_anotherBuild_refusedOnceAndNothingElseAsked() {
    assertEquals(
        Set.of(Misfit.Kind.BUILD),
        kinds(Compatibility.misfits(Bows.adjustableRiser(25), Bows.screwInLimbs(68, 20))));
    assertEquals(
        Set.of(Misfit.Kind.BUILD),
        kinds(Compatibility.misfits(Bows.screwInRiser(21), Bows.slotInLimbs(LimbSize.MEDIUM, 20))));
  }

  // Source: myarchery.net/turning-up-your-limb-weight/ and lancasterarchery.com 28 Feb 2018 (R)
  @Test
  @DisplayName(
      "ILF limbs and those of a maker's own fitting do not interchange (a coach's and a dealer's"
          + " page)")
  void misfits_anotherFittingStandard() {
    List<Misfit> misfits =
        Compatibility.misfits(
            Bows.adjustableRiser(25, Hand.RIGHT, "ILF"),
            Bows.slotInLimbs(LimbSize.MEDIUM, 24, "Alderfen own fitting", Known.YES, null));
    assertEquals(Set.of(Misfit.Kind.FITTING), kinds(misfits));
    assertTrue(misfits.get(0).reason().contains("ILF"));
    assertTrue(misfits.get(0).remedy().contains("Alderfen own fitting"));
  }

  @Test
  void misfits_ownFitting_goesByTheMakersName() {
    assertEquals(Set.of(), ownFittings("Alderfen own fitting", "Alderfen own fitting"));
    assertEquals(
        Set.of(Misfit.Kind.FITTING), ownFittings("Alderfen own fitting", "Kestrow own fitting"));
    assertEquals(Set.of(Misfit.Kind.FITTING), ownFittings("own fitting", "Own fitting"));
    assertEquals(Set.of(Misfit.Kind.FITTING), ownFittings("ILF", "own fitting"));
  }

  private static Set<Misfit.Kind> ownFittings(String ofRiser, String ofLimbs) {
    return kinds(
        Compatibility.misfits(
            Bows.adjustableRiser(25, Hand.RIGHT, ofRiser),
            Bows.slotInLimbs(LimbSize.MEDIUM, 24, ofLimbs, Known.YES, null)));
  }

  @Test
  void misfits_fittingTypedInAnotherCase_isTheSameStandard() {
    assertEquals(
        List.of(),
        Compatibility.misfits(
            Bows.adjustableRiser(25, Hand.LEFT, " ilf "), Bows.slotInLimbs(LimbSize.LONG, 24)));
  }

  @Test
  void misfits_fittingNotRecorded_isNotGuessed() {
    assertEquals(
        Set.of(Misfit.Kind.FITTING),
        kinds(
            Compatibility.misfits(
                Bows.adjustableRiser(25, Hand.RIGHT, null),
                Bows.slotInLimbs(LimbSize.MEDIUM, 24, null, Known.YES, null))));
  }

  @ParameterizedTest(name = "limbs of model \"{0}\": fit {1}")
  @CsvSource(
      value = {"Reedling, true", "reedling, true", "Bittern, false", "NULL, false"},
      nullValues = "NULL")
  void misfits_screwInLimbs_goByTheMakersModel(String model, boolean fit) {
    LimbsSpec limbs =
        new LimbsSpec(Build.SCREW_IN, null, 62, null, model, 18, 28, null, Known.NO, null);
    assertEquals(
        fit ? Set.of() : Set.of(Misfit.Kind.MODEL),
        kinds(Compatibility.misfits(Bows.screwInRiser(19), limbs)));
  }

  @ParameterizedTest(name = "{0} in bow: fits {1}")
  @CsvSource({"47, false", "48, true", "72, true", "73, false"})
  void misfits_bowLength_isThatOfARecurveBow(int bowIn, boolean fits) {
    assertEquals(
        fits ? Set.of() : Set.of(Misfit.Kind.BOW_LENGTH),
        kinds(Compatibility.misfits(Bows.onePieceRig(bowIn, 14))));
  }

  @Test
  void misfits_limbsWithoutSizeOrLength_bowLengthIsAskedFor() {
    LimbsSpec limbs =
        new LimbsSpec(Build.ADJUSTABLE, null, null, "ILF", null, 24, 28, 25, Known.YES, null);
    assertEquals(
        Set.of(Misfit.Kind.BOW_LENGTH),
        kinds(Compatibility.misfits(Bows.adjustableRiser(25), limbs)));
  }

  // Source: AMO standards 1987 p. 1 and FP-3 (2000) p. 1: bow length = string master + 3 in; the
  // master carries the bow length designation, and the "AMO 66" one measures 63 in (R)
  @Test
  @DisplayName("An AMO 66 master measures 63 in and serves a 66 in bow: AMO 1987, FP-3 2000 (R)")
  void string_amoMaster() {
    assertEquals(Set.of(), stringOn(66, 63.0, 66));
    assertEquals(Set.of(Misfit.Kind.STRING_DESIGNATION), stringOn(66, 63.0, 68));
  }

  // Source: lancasterarchery.com, 5 Jun 2020: a 68 in AMO string really measures 64 to 65 1/4 in
  // (R)
  @ParameterizedTest(name = "68 in string measuring {0} in: accepted {1}")
  @DisplayName("A 68 in AMO string measures 64 to 65 1/4 in (a dealer's page, 2020)")
  @CsvSource({
    "64, true",
    "64.5, true",
    "65, true",
    "65.25, true",
    "63, true",
    "65.5, true",
    "68, false",
    "66.5, false",
    "62, false"
  })
  void string_measuredLength(double measuredIn, boolean accepted) {
    assertEquals(
        accepted ? Set.of() : Set.of(Misfit.Kind.STRING_MEASURED), stringOn(68, measuredIn, 68));
  }

  @Test
  void string_measuredAsLongAsItsBow_labelAndLengthAreConfused() {
    StringSpec string = Bows.string(68, Length.ofInches(68), StringMaterial.POLYESTER);
    assertTrue(Compatibility.measuredLength(string).orElseThrow().reason().contains("confused"));
  }

  @Test
  void string_notMeasured_isJudgedByItsLabelAlone() {
    assertEquals(Optional.empty(), Compatibility.measuredLength(Bows.polyesterString(68)));
  }

  // Source: chisesbows.com, aspectoutdoors.co.nz, bogen.online: low-stretch strings only on limbs
  // marked for them (R); polyester when unknown, exerciseequipments.com (R)
  @ParameterizedTest(name = "{0} on tips fit for HMPE {1}: accepted {2}")
  @DisplayName("Low-stretch strings only on tips made for them, polyester when unknown (R)")
  @CsvSource({
    "POLYESTER, NO, true",
    "POLYESTER, UNKNOWN, true",
    "POLYESTER, YES, true",
    "HMPE, YES, true",
    "HMPE, NO, false",
    "HMPE, UNKNOWN, false",
    "LCP, YES, true",
    "LCP, UNKNOWN, false",
    "OTHER, UNKNOWN, false",
    "OTHER, YES, true"
  })
  void string_material(StringMaterial material, Known tips, boolean accepted) {
    RigSpec rig =
        Bows.rig(
            Bows.adjustableRiser(25),
            Bows.slotInLimbs(LimbSize.MEDIUM, 24, "ILF", tips, null),
            Bows.string(68, null, material),
            Style.SPLIT_FINGER);
    assertEquals(
        accepted ? Set.of() : Set.of(Misfit.Kind.STRING_MATERIAL),
        kinds(Compatibility.misfits(rig)));
  }

  @ParameterizedTest(name = "stringer for 60 to 70 in on {0} in: serves {1}")
  @CsvSource({"59, false", "60, true", "70, true", "71, false"})
  void stringer_bowLength(int bowIn, boolean serves) {
    Optional<Misfit> misfit =
        Compatibility.misfit(new StringerSpec(StringerKind.TIP_AND_SADDLE, 60, 70), bowIn);
    assertEquals(serves, misfit.isEmpty());
  }

  @Test
  void everyMisfit_saysWhyAndWhatWouldMakeItPossible() {
    RigSpec rig =
        Bows.rig(
            Bows.adjustableRiser(29, Hand.RIGHT, "ILF"),
            Bows.slotInLimbs(LimbSize.LONG, 24, "Alderfen own fitting", Known.NO, null),
            Bows.string(68, Length.ofInches(68), StringMaterial.HMPE),
            Style.SPLIT_FINGER);
    List<Misfit> misfits = Compatibility.misfits(rig);
    assertEquals(
        EnumSet.of(
            Misfit.Kind.FITTING,
            Misfit.Kind.BOW_LENGTH,
            Misfit.Kind.STRING_DESIGNATION,
            Misfit.Kind.STRING_MEASURED,
            Misfit.Kind.STRING_MATERIAL),
        kinds(misfits));
    for (Misfit misfit : misfits) {
      assertFalse(misfit.reason().isBlank());
      assertFalse(misfit.remedy().isBlank());
    }
  }

  private static Set<Misfit.Kind> stringOn(int labelIn, double measuredIn, int bowIn) {
    LimbSize size = bowIn == 66 ? LimbSize.SHORT : LimbSize.MEDIUM;
    return kinds(
        Compatibility.misfits(
            Bows.rig(
                Bows.adjustableRiser(25),
                Bows.slotInLimbs(size, 24),
                Bows.string(labelIn, Length.ofInches(measuredIn), StringMaterial.POLYESTER),
                Style.SPLIT_FINGER)));
  }

  private static Set<Misfit.Kind> kinds(List<Misfit> misfits) {
    Set<Misfit.Kind> kinds = EnumSet.noneOf(Misfit.Kind.class);
    misfits.forEach(misfit -> kinds.add(misfit.kind()));
    return kinds;
  }

  @Test
  void misfits_anotherBuild_saysWhichLimbsEachIsFor() {
    String reason =
        Compatibility.misfits(Bows.adjustableRiser(25), Bows.screwInLimbs(68, 20)).get(0).reason();
    assertEquals("The riser is for slot-in limbs, and these are screw-in limbs.", reason);
  }

  @Test
  void misfits_fittingNotRecorded_saysOfWhichPart() {
    assertTrue(
        Compatibility.misfits(
                Bows.adjustableRiser(25, Hand.RIGHT, " "), Bows.slotInLimbs(LimbSize.MEDIUM, 24))
            .get(0)
            .reason()
            .startsWith("The limb fitting of the riser is not recorded"));
    assertTrue(
        Compatibility.misfits(
                Bows.adjustableRiser(25, Hand.RIGHT, "ILF"),
                Bows.slotInLimbs(LimbSize.MEDIUM, 24, " ", Known.YES, null))
            .get(0)
            .reason()
            .startsWith("The limb fitting of the limbs is not recorded"));
  }
}
