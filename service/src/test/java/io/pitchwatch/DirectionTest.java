package io.pitchwatch;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;

/** The direction of the house: a pure core, thin edges, one wiring place. */
@AnalyzeClasses(packages = "io.pitchwatch", importOptions = ImportOption.DoNotIncludeTests.class)
class DirectionTest {

  private static final String[] CORE = {
    "io.pitchwatch.attitude..",
    "io.pitchwatch.floor..",
    "io.pitchwatch.coach..",
    "io.pitchwatch.levelling..",
    "io.pitchwatch.comfort..",
    "io.pitchwatch.settling..",
    "io.pitchwatch.alarms..",
    "io.pitchwatch.visit..",
  };

  private static final Set<String> EDGES =
      Set.of("sensing", "bus", "mqtt", "page", "store", "config");

  private static final DescribedPredicate<JavaClass> WORLD =
      resideInAnyPackage(
          "java.io..",
          "java.net..",
          "java.nio.file..",
          "java.nio.channels..",
          "java.sql..",
          "java.util.concurrent..",
          "java.util.logging..");

  @ArchTest
  static final ArchRule coreImportsOnlyTheJdkItselfAndNumerics =
      classes()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .onlyDependOnClassesThat(
              resideInAnyPackage(CORE)
                  .or(resideInAnyPackage("java..", "org.hipparchus..", "org.jspecify..")));

  @ArchTest
  static final ArchRule coreTouchesNoWorld =
      noClasses().that().resideInAnyPackage(CORE).should().dependOnClassesThat(WORLD);

  @ArchTest
  static final ArchRule coreReadsNoClockAndStartsNoThread =
      noClasses()
          .that()
          .resideInAnyPackage(CORE)
          .should()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(java.time.Instant.class, "now")
          .orShould()
          .dependOnClassesThat(describe("are threads", c -> c.isAssignableTo(Thread.class)));

  @ArchTest
  static final ArchRule corePackagesHaveNoCycles =
      slices().matching("io.pitchwatch.(*)..").should().beFreeOfCycles();

  @ArchTest
  static final ArchRule edgesDoNotKnowEachOther =
      classes()
          .that(describe("are edges", c -> EDGES.contains(house(c))))
          .should(
              new ArchCondition<JavaClass>("not depend on another edge or on the wiring") {
                @Override
                public void check(JavaClass edge, ConditionEvents events) {
                  for (Dependency d : edge.getDirectDependenciesFromSelf()) {
                    String other = house(d.getTargetClass());
                    boolean stranger =
                        (EDGES.contains(other) && !other.equals(house(edge)))
                            || other.equals("command");
                    // The bus adapter implements the port that the drivers declare.
                    boolean port = house(edge).equals("bus") && other.equals("sensing");
                    if (stranger && !port) {
                      events.add(SimpleConditionEvent.violated(d, d.getDescription()));
                    }
                  }
                }
              })
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule serviceCompilesWithoutTheSimulator =
      noClasses()
          .that()
          .resideOutsideOfPackage("io.pitchwatch.sim..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("io.pitchwatch.sim..");

  @ArchTest
  static final ArchRule onlyTheBusKnowsPi4j =
      noClasses()
          .that()
          .resideOutsideOfPackages("io.pitchwatch.bus..", "io.pitchwatch.sim.pi4j..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.pi4j..");

  private static String house(JavaClass c) {
    String[] parts = c.getPackageName().split("\\.", -1);
    return parts.length > 2 && parts[0].equals("io") && parts[1].equals("pitchwatch")
        ? parts[2]
        : "";
  }
}
