package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import sallet.cases.Checks;

/** No subject's checks are forgotten by the case runner. */
class AllChecksTest {
  @TestFactory
  Stream<DynamicTest> everySubjectIsNamed() {
    return new ClassFileImporter()
        .importPackages("sallet").stream()
            .filter(type -> type.isAssignableTo(Checks.class) && !type.isInterface())
            .map(
                type ->
                    DynamicTest.dynamicTest(
                        type.getName(),
                        () ->
                            assertThat(AllChecks.byFile())
                                .as("META-INF/services/%s", Checks.class.getName())
                                .containsKeys(files(type))));
  }

  private static String[] files(JavaClass type) throws ReflectiveOperationException {
    Checks checks = (Checks) type.reflect().getDeclaredConstructor().newInstance();
    return checks.byFile().keySet().toArray(String[]::new);
  }
}
