package io.pitchwatch.sim;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** The simulator stands alone: it never knows the product that it exercises. */
@AnalyzeClasses(
    packages = "io.pitchwatch.sim",
    importOptions = ImportOption.DoNotIncludeTests.class)
class SimulatorDirectionTest {

  @ArchTest
  static final ArchRule neverImportsTheService =
      noClasses()
          .should()
          .dependOnClassesThat(
              resideInAPackage("io.pitchwatch..").and(not(resideInAPackage("io.pitchwatch.sim.."))))
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule onlyOnePackageKnowsPi4j =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.pitchwatch.sim.pi4j..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.pi4j..")
          .allowEmptyShould(true);
}
