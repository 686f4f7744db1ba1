package sallet.it;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ServiceLoader;
import org.junit.jupiter.api.Test;
import sallet.cases.Checks;

/** No subject's checks are forgotten by the case runner. */
class AllChecksTest {
  @Test
  void everySubjectNamesItsChecks() {
    assertThat(ServiceLoader.load(Checks.class))
        .as("META-INF/services/%s", Checks.class.getName())
        .extracting(checks -> checks.getClass().getName())
        .containsExactlyInAnyOrderElementsOf(
            new ClassFileImporter()
                .importPackages("sallet").stream()
                    .filter(type -> type.isAssignableTo(Checks.class) && !type.isInterface())
                    .map(JavaClass::getName)
                    .toList());
  }
}
