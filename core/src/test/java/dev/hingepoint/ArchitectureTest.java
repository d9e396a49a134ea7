package dev.hingepoint;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.Architectures;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** The order of the packages, and what no package may do. */
class ArchitectureTest {
    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.hingepoint");

    @Test
    void importsRunOneWay() {
        Architectures.layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("curve")
                .definedBy("dev.hingepoint.curve")
                .layer("pattern")
                .definedBy("dev.hingepoint.pattern")
                .layer("move")
                .definedBy("dev.hingepoint.move")
                .layer("check")
                .definedBy("dev.hingepoint.check")
                .layer("alter")
                .definedBy("dev.hingepoint.alter")
                .layer("allowance")
                .definedBy("dev.hingepoint.allowance")
                .layer("fit")
                .definedBy("dev.hingepoint.fit")
                .layer("make")
                .definedBy("dev.hingepoint.make")
                .whereLayer("make")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("fit")
                .mayOnlyBeAccessedByLayers("make")
                .whereLayer("alter")
                .mayOnlyBeAccessedByLayers("fit", "make")
                .whereLayer("allowance")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("check")
                .mayOnlyBeAccessedByLayers("alter", "allowance", "fit", "make")
                .whereLayer("move")
                .mayOnlyBeAccessedByLayers("check", "alter", "allowance", "fit", "make")
                .whereLayer("pattern")
                .mayOnlyBeAccessedByLayers("move", "check", "alter", "allowance", "fit", "make")
                .check(CORE);
    }

    @Test
    void noPackagesDependOnEachOtherInACircle() {
        slices().matching("dev.hingepoint.(*)..").should().beFreeOfCycles().check(CORE);
    }

    @Test
    void onlyTheBridgeShowsJts() {
        List<String> showing = CORE.stream()
                .filter(type -> !type.getSimpleName().equals("JtsBridge"))
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .flatMap(ArchitectureTest::publicSignatures)
                .filter(name -> name.startsWith("org.locationtech"))
                .toList();
        Assertions.assertEquals(List.of(), showing);
    }

    private static Stream<String> publicSignatures(JavaClass type) {
        return type.getMethods().stream()
                .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
                .flatMap(method -> Stream.concat(
                        Stream.of(method.getRawReturnType().getName()),
                        method.getRawParameterTypes().stream().map(JavaClass::getName)));
    }

    /** Math leaves these to the machine, within an ulp or two; StrictMath gives the same bits everywhere. */
    @Test
    void theSameInputGivesTheSameBits() {
        for (String loose : List.of("sin", "cos", "tan", "asin", "acos", "atan", "exp", "log", "cbrt")) {
            ArchRuleDefinition.noClasses()
                    .should()
                    .callMethod(Math.class, loose, double.class)
                    .check(CORE);
        }
        for (String loose : List.of("atan2", "pow", "hypot")) {
            ArchRuleDefinition.noClasses()
                    .should()
                    .callMethod(Math.class, loose, double.class, double.class)
                    .check(CORE);
        }
    }

    @Test
    void noClockAndNoDefaultLocale() {
        ArchRuleDefinition.noClasses()
                .should()
                .dependOnClassesThat()
                .belongToAnyOf(Clock.class, Instant.class, LocalDate.class)
                .check(CORE);
        ArchRuleDefinition.noClasses()
                .should()
                .callMethod(Locale.class, "getDefault")
                .check(CORE);
        ArchRuleDefinition.noClasses()
                .should()
                .callMethod(String.class, "format", String.class, Object[].class)
                .check(CORE);
    }
}
