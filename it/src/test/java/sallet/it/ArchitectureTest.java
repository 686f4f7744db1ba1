package sallet.it;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The arrows between the rooms of the house, and what may not come through their doors. */
class ArchitectureTest {
  private static final JavaClasses SALLET =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .withImportOption(location -> !location.contains("-tests.jar"))
          .withImportOption(location -> !location.contains("test-classes"))
          .importPackages("sallet");

  /** The packages of core and which others each may know; a new package must be entered here. */
  private static final Map<String, List<String>> CORE =
      Map.ofEntries(
          entry("units", List.of()),
          entry("household", List.of("units")),
          entry("weather", List.of("household", "units")),
          entry("light", List.of("weather", "household", "units")),
          entry("air", List.of("weather", "household", "units")),
          entry("crop", List.of("light", "air", "household", "units")),
          entry("feed", List.of("household", "units")),
          entry("journal", List.of()),
          entry("learn", List.of("journal", "crop", "light", "air", "household", "units")),
          entry(
              "water",
              List.of("cost", "crop", "light", "air", "feed", "weather", "household", "units")),
          entry("cost", List.of("household", "units")));

  private static final String[] CORE_PACKAGES =
      CORE.keySet().stream().map(name -> "sallet." + name + "..").toArray(String[]::new);

  private static final String[] CORE_LIBRARIES = {
    "org.hipparchus..", "net.e175.klaus.solarpositioning..", "de.siegmar.fastcsv..", "org.ojalgo.."
  };

  private static final String[] PURE =
      Stream.concat(Stream.of("sallet.plan.."), Stream.of(CORE_PACKAGES)).toArray(String[]::new);

  @Test
  void everyPackageHasItsArrows() {
    Set<String> rooms = new TreeSet<>();
    SALLET.forEach(type -> rooms.add(type.getPackageName().split("\\.", -1)[1]));
    rooms.removeAll(CORE.keySet());
    assertThat(rooms).isSubsetOf("plan", "app", "it");
  }

  @TestFactory
  Stream<DynamicTest> packagesOfCoreKnowOnlyWhatTheyMay() {
    return CORE.entrySet().stream()
        .filter(room -> SALLET.containPackage("sallet." + room.getKey()))
        .map(
            room ->
                DynamicTest.dynamicTest(
                    room.getKey(),
                    () ->
                        Rules.knowsOnly(
                                "sallet." + room.getKey() + "..",
                                Stream.concat(
                                        Stream.of(CORE_LIBRARIES),
                                        room.getValue().stream()
                                            .map(name -> "sallet." + name + ".."))
                                    .toArray(String[]::new))
                            .check(SALLET)));
  }

  @Test
  void planKnowsCoreAndTheSolver() {
    Rules.knowsOnly(
            "sallet.plan..",
            Stream.concat(Stream.of("com.google.ortools.."), Stream.of(CORE_PACKAGES))
                .toArray(String[]::new))
        .check(SALLET);
  }

  @Test
  void onlyPlanKnowsTheSolver() {
    Rules.onlyHome("com.google.ortools..", "sallet.plan..").check(SALLET);
  }

  @Test
  void cropSeesTheResultsOfLightNotItsWorkings() {
    Set<String> seen = new TreeSet<>();
    SALLET.stream()
        .filter(type -> type.getPackageName().startsWith("sallet.crop"))
        .flatMap(type -> type.getDirectDependenciesFromSelf().stream())
        .map(dependency -> dependency.getTargetClass().getBaseComponentType())
        .filter(type -> type.getPackageName().startsWith("sallet.light"))
        .forEach(type -> seen.add(type.getSimpleName()));
    assertThat(seen).isSubsetOf("HourlyLight");
  }

  @Test
  void fileAndReportsKnowNeitherEachOtherNorTheCommandLine() {
    String[] file = {"sallet.app.file.."};
    String[] report = {"sallet.app.report.."};
    String[] use = {"sallet.app.use.."};
    Rules.knowsNothingOf(file, "sallet.app.report..", "sallet.app.use..", "sallet.app.cli..")
        .check(SALLET);
    Rules.knowsNothingOf(report, "sallet.app.file..", "sallet.app.use..", "sallet.app.cli..")
        .check(SALLET);
    Rules.knowsNothingOf(use, "sallet.app.cli..").check(SALLET);
  }

  @Test
  void noCycles() {
    slices().matching("sallet.(*)..").should().beFreeOfCycles().check(SALLET);
    slices().matching("sallet.app.(*)..").should().beFreeOfCycles().check(SALLET);
    slices()
        .matching("sallet.plan.(*)..")
        .should()
        .beFreeOfCycles()
        .allowEmptyShould(true)
        .check(SALLET);
  }

  @Test
  void coreAndPlanDoNotTouchTheWorld() {
    Rules.noOutsideWorld(PURE).check(SALLET);
  }

  @Test
  void coreAndPlanReadNoClock() {
    Rules.noClock(PURE).check(SALLET);
  }

  @Test
  void onlyOneClassOfPlanReadsTheStopwatch() {
    List<String> readers =
        Rules.stopwatches(SALLET).stream().filter(name -> !name.startsWith("sallet.app.")).toList();
    assertThat(readers)
        .hasSizeLessThanOrEqualTo(1)
        .allMatch(name -> name.startsWith("sallet.plan."));
  }

  @Test
  void coreAndPlanThrowNoUnseededDice() {
    Rules.noUnseededRandom(PURE).check(SALLET);
  }

  @Test
  void coreAndPlanKeepNoState() {
    Rules.noStaticState(PURE).check(SALLET);
  }

  @Test
  void typesOfCoreAreClosed() {
    Rules.closedTypes(CORE_PACKAGES).check(SALLET);
  }

  @Test
  void theRulesNoticeWhatIsWrong() {
    JavaClasses wrong = new ClassFileImporter().importPackages("sallet.it.wrong");
    String here = "sallet.it.wrong..";
    assertThat(
            Stream.of(
                Rules.knowsOnly(here, "java.lang.."),
                Rules.knowsNothingOf(new String[] {here}, "sallet.household.."),
                Rules.noOutsideWorld(here),
                Rules.noClock(here),
                Rules.noUnseededRandom(here),
                Rules.noStaticState(here),
                Rules.closedTypes(here)))
        .allMatch(rule -> rule.evaluate(wrong).hasViolation());
    assertThat(Rules.stopwatches(wrong)).hasSize(1);
    assertThat(wrong).extracting(JavaClass::getSimpleName).contains("TouchesTheWorld");
  }
}
