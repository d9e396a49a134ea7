package dev.hingepoint.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Who calls a public method can name what it takes and gives. In the core, which is a module, the compiler holds that. */
class ShownTypesTest {
    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.hingepoint.svg");

    @Test
    void noPublicMethodShowsAHiddenType() {
        List<JavaCodeUnit> shown = CLASSES.stream()
                .filter(ShownTypesTest::isShown)
                .flatMap(type -> type.getCodeUnits().stream())
                .filter(unit -> unit.getModifiers().contains(JavaModifier.PUBLIC))
                .toList();
        assertFalse(shown.isEmpty());
        assertEquals(
                List.of(),
                shown.stream()
                        .filter(unit -> unit.getAllInvolvedRawTypes().stream()
                                .map(JavaClass::getBaseComponentType)
                                .filter(type -> type.getPackageName().startsWith("dev.hingepoint"))
                                .filter(type -> !type.equals(unit.getOwner()))
                                .anyMatch(type -> !isShown(type)))
                        .map(JavaCodeUnit::getFullName)
                        .toList());
    }

    /** Public, and so is what it is nested in. */
    private static boolean isShown(JavaClass type) {
        Optional<JavaClass> outer = type.getEnclosingClass();
        return type.getModifiers().contains(JavaModifier.PUBLIC)
                && outer.map(ShownTypesTest::isShown).orElse(true);
    }
}
