package club.ascham;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import club.ascham.upkeep.Due;
import club.ascham.upkeep.Work;
import club.ascham.worksheet.Inspected;
import club.ascham.worksheet.InspectionList;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import io.quarkus.security.Authenticated;
import jakarta.annotation.security.PermitAll;
import jakarta.annotation.security.RolesAllowed;
import jakarta.persistence.Entity;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.HttpMethod;
import jakarta.ws.rs.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;

/** The arrows of the house: a newcomer is told by a red test and not by a review. */
@AnalyzeClasses(packages = "club.ascham", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  @ArchTest
  static final ArchRule computing_knows_only_java =
      classes()
          .that()
          .resideInAnyPackage("..units..", "..bow..", "..verdict..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "club.ascham.units..",
              "club.ascham.bow..",
              "club.ascham.verdict..",
              "club.ascham.mechanics..");

  @ArchTest
  static final ArchRule what_goes_along_when_parts_move_is_decided_by_a_plain_function =
      classes()
          .that()
          .haveSimpleName("Carried")
          .or()
          .haveSimpleName("History")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "club.ascham.bow..",
              "club.ascham.id..",
              "club.ascham.learnt..",
              "club.ascham.mechanics..",
              "club.ascham.units..",
              "club.ascham.verdict..");

  @ArchTest
  static final ArchRule mechanics_knows_only_java_and_a_numeric_library =
      classes()
          .that()
          .resideInAPackage("..mechanics..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("java..", "org.hipparchus..", "club.ascham.mechanics..");

  @ArchTest
  static final ArchRule statistics_know_only_java_a_numeric_library_and_how_readings_scatter =
      classes()
          .that()
          .resideInAPackage("..statistics..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..", "org.hipparchus..", "club.ascham.mechanics..", "club.ascham.statistics..");

  @ArchTest
  static final ArchRule the_plan_is_reckoned_by_java_alone =
      classes()
          .that()
          .resideInAPackage("club.ascham.plan..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage("java..", "club.ascham.plan..");

  @ArchTest
  static final ArchRule what_is_due_and_what_an_inspection_means_is_decided_by_plain_functions =
      classes()
          .that()
          .belongToAnyOf(Due.class, Work.class, InspectionList.class, Inspected.class)
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..",
              "club.ascham.bow..",
              "club.ascham.form..",
              "club.ascham.verdict..",
              "club.ascham.upkeep..",
              "club.ascham.worksheet..");

  @ArchTest
  static final ArchRule the_plan_knows_nothing_of_who_carries_it_out =
      noClasses()
          .that()
          .resideInAPackage("..upkeep..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("..worksheet..", "..recall..", "..withdrawal..");

  @ArchTest
  static final ArchRule lengths_depend_on_nothing_of_ours =
      noClasses()
          .that()
          .resideInAPackage("..units..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("club.ascham.bow..", "club.ascham.verdict..");

  @ArchTest
  static final ArchRule what_was_typed_knows_no_framework =
      classes()
          .that()
          .resideInAnyPackage("..form..", "..id..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "java..", "club.ascham.units..", "club.ascham.form..", "club.ascham.id..");

  /** From the ground up; what is told of each stands in the tour for developers. */
  private static final List<String> STOREYS =
      List.of(
          "id time units bow mechanics statistics plan verdict form measured drawing",
          "store story standing drift web",
          "people door record backup server",
          "upkeep rules withdrawal report recall concern askback undo register learnt life",
          "rig setup assembly weighing planning bench borrower loan issue changes worksheet check accident receive session",
          "fleet exchange home demo start");

  @ArchTest
  static void arrows_run_downward(JavaClasses house) {
    for (int storey = 0; storey < STOREYS.size() - 1; storey++) {
      noClasses()
          .that()
          .resideInAnyPackage(packages(STOREYS.subList(0, storey + 1)))
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(packages(STOREYS.subList(storey + 1, STOREYS.size())))
          .check(house);
    }
  }

  @ArchTest
  static final ArchRule every_room_stands_in_a_storey =
      classes()
          .that()
          .resideOutsideOfPackage("club.ascham")
          .should()
          .resideInAnyPackage(packages(STOREYS));

  private static String[] packages(List<String> storeys) {
    return Arrays.stream(String.join(" ", storeys).split(" "))
        .map(room -> "club.ascham." + room + "..")
        .toArray(String[]::new);
  }

  @ArchTest
  static final ArchRule no_rooms_lean_on_each_other =
      slices().matching("club.ascham.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule entities_stay_in_their_room =
      noClasses()
          .that()
          .areAnnotatedWith(Path.class)
          .should()
          .dependOnClassesThat()
          .areAnnotatedWith(Entity.class)
          .because("pages show records and call use cases; a live entity never meets a template");

  @ArchTest
  static final ArchRule pages_hold_no_transaction =
      noClasses()
          .that()
          .areAnnotatedWith(Path.class)
          .should()
          .dependOnClassesThat()
          .areAssignableTo(PanacheRepository.class)
          .orShould()
          .beAnnotatedWith(Transactional.class);

  @ArchTest
  static final ArchRule every_route_says_who_may =
      methods()
          .that()
          .areMetaAnnotatedWith(HttpMethod.class)
          .should()
          .beAnnotatedWith(RolesAllowed.class)
          .orShould()
          .beAnnotatedWith(PermitAll.class)
          .orShould()
          .beDeclaredInClassesThat()
          .areAnnotatedWith(Authenticated.class)
          .orShould()
          .beDeclaredInClassesThat()
          .areAnnotatedWith(RolesAllowed.class);

  @ArchTest
  static final ArchRule routes_are_public_or_the_platform_passes_them_over =
      methods().that().areMetaAnnotatedWith(HttpMethod.class).should().bePublic();

  @ArchTest
  static final ArchRule the_clock_is_handed_in =
      noClasses()
          .that()
          .resideOutsideOfPackage("..time..")
          .should()
          .callMethod(LocalDate.class, "now")
          .orShould()
          .callMethod(Instant.class, "now")
          .orShould()
          .callMethod(LocalDateTime.class, "now")
          .orShould()
          .callMethod(ZonedDateTime.class, "now");
}
