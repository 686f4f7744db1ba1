package sallet.it;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethodCall;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import java.io.File;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** The house rules as ArchUnit rules over given packages. */
final class Rules {
  private static final Set<String> CLOCKS =
      Set.of(
          "java.time.LocalDate.now",
          "java.time.LocalTime.now",
          "java.time.LocalDateTime.now",
          "java.time.ZonedDateTime.now",
          "java.time.OffsetDateTime.now",
          "java.time.Instant.now",
          "java.time.Year.now",
          "java.time.YearMonth.now",
          "java.lang.System.currentTimeMillis");

  private static final Set<String> UNSEEDED =
      Set.of(
          "java.lang.Math.random",
          "java.util.UUID.randomUUID",
          "java.util.Collections.shuffle",
          "java.util.random.RandomGenerator.getDefault");

  private Rules() {}

  /** Classes of one package know, besides the JDK, only the packages named. */
  static ArchRule knowsOnly(String of, String... known) {
    String[] allowed =
        Stream.concat(Stream.of(of, "java..", "org.jspecify.."), Arrays.stream(known))
            .toArray(String[]::new);
    return classes()
        .that()
        .resideInAPackage(of)
        .should()
        .onlyDependOnClassesThat(
            resideInAnyPackage(allowed).or(DescribedPredicate.describe("arrays", Rules::isPlain)))
        .because("an arrow of ARCHITECTURE.md does not point there");
  }

  private static boolean isPlain(JavaClass type) {
    return type.getBaseComponentType().isPrimitive();
  }

  /** Classes of some packages know none of others. */
  static ArchRule knowsNothingOf(String[] of, String... unknown) {
    return noClasses()
        .that()
        .resideInAnyPackage(of)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(unknown)
        .because("an arrow of ARCHITECTURE.md does not point there");
  }

  /** No files, no network, no database, no logging. */
  static ArchRule noOutsideWorld(String... packages) {
    return noClasses()
        .that()
        .resideInAnyPackage(packages)
        .should()
        .dependOnClassesThat(
            resideInAnyPackage(
                    "java.sql..",
                    "javax.sql..",
                    "java.net..",
                    "java.nio.file..",
                    "java.util.logging..",
                    "org.slf4j..",
                    "org.apache.logging..")
                .or(DescribedPredicate.describe("File", type -> type.isEquivalentTo(File.class)))
                .or(JavaClass.Predicates.assignableTo("java.lang.System$Logger"))
                .or(JavaClass.Predicates.assignableTo("java.io.FileInputStream"))
                .or(JavaClass.Predicates.assignableTo("java.io.FileOutputStream")))
        .because("time, files and databases live at the edge");
  }

  /** No clock: dates come in as arguments. */
  static ArchRule noClock(String... packages) {
    return noClasses()
        .that()
        .resideInAnyPackage(packages)
        .should()
        .callMethodWhere(
            DescribedPredicate.describe(
                "a clock is read",
                call ->
                    CLOCKS.contains(name(call))
                        || call.getTargetOwner().isEquivalentTo(java.time.Clock.class)))
        .because("the same input must give the same output");
  }

  /** No dice without a seed. */
  static ArchRule noUnseededRandom(String... packages) {
    return noClasses()
        .that()
        .resideInAnyPackage(packages)
        .should()
        .callMethodWhere(
            DescribedPredicate.describe(
                "random numbers have no seed", call -> UNSEEDED.contains(name(call))))
        .orShould()
        .callConstructor(java.util.Random.class)
        .orShould()
        .callConstructor(SplittableRandom.class)
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.security.SecureRandom")
        .because("a result must be repeatable from its seed");
  }

  /** Static fields are final and hold nothing that is made to change. */
  static ArchRule noStaticState(String... packages) {
    return fields()
        .that()
        .areStatic()
        .and()
        .areDeclaredInClassesThat(resideInAnyPackage(packages))
        .should()
        .beFinal()
        .andShould()
        .haveRawType(
            DescribedPredicate.describe("a type that does not change", Rules::doesNotChange))
        .because("state makes answers depend on what was asked before");
  }

  private static boolean doesNotChange(JavaClass type) {
    return Stream.of(
                "java.util.AbstractCollection",
                "java.util.AbstractMap",
                "java.util.concurrent.ConcurrentMap",
                "java.lang.AbstractStringBuilder",
                "java.lang.ThreadLocal",
                "java.util.random.RandomGenerator")
            .noneMatch(type::isAssignableTo)
        && !type.getPackageName().equals("java.util.concurrent.atomic");
  }

  /** Values and pure functions: public types are closed or are contracts. */
  static ArchRule closedTypes(String... packages) {
    return classes()
        .that()
        .resideInAnyPackage(packages)
        .and()
        .arePublic()
        .and(DescribedPredicate.describe("are classes", type -> !type.isInterface()))
        .should()
        .haveModifier(JavaModifier.FINAL)
        .orShould()
        .beEnums()
        .orShould()
        .beAssignableTo(Throwable.class)
        .orShould(
            com.tngtech.archunit.lang.ArchCondition.from(
                DescribedPredicate.describe(
                    "be sealed", (JavaClass type) -> type.reflect().isSealed())))
        .because("nobody outside may give a value of the core another meaning");
  }

  /** Only the packages named know the library. */
  static ArchRule onlyHome(String library, String... homes) {
    return noClasses()
        .that(resideInAPackage("sallet..").and(resideOutsideOfPackages(homes)))
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library)
        .because("a library has one home");
  }

  /** The classes that read the stopwatch of the machine. */
  static List<String> stopwatches(Iterable<JavaClass> types) {
    return Stream.iterate(types.iterator(), java.util.Iterator::hasNext, x -> x)
        .map(java.util.Iterator::next)
        .filter(
            type ->
                type.getMethodCallsFromSelf().stream()
                    .anyMatch(call -> name(call).equals("java.lang.System.nanoTime")))
        .map(JavaClass::getName)
        .toList();
  }

  private static String name(JavaMethodCall call) {
    return call.getTargetOwner().getName() + "." + call.getName();
  }
}
