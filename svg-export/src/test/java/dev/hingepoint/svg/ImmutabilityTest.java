package dev.hingepoint.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Nothing of core or svg-export that an embedder can hold ever changes, so that all of it can be shared between threads. */
class ImmutabilityTest {
    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.hingepoint");

    /** What is built up step by step within one call, and thrown away at its end. */
    private static final Set<String> BUILDERS = Set.of(
            "dev.hingepoint.check.SewnRun",
            "dev.hingepoint.fit.Planner",
            "dev.hingepoint.svg.file.DrawingReader",
            "dev.hingepoint.svg.file.PathData",
            "dev.hingepoint.svg.lay.Board",
            "dev.hingepoint.svg.lay.PagesInUse",
            "dev.hingepoint.svg.lay.Sheet$Best",
            "dev.hingepoint.svg.lay.Sheet$Choices",
            "dev.hingepoint.svg.lay.SheetSearch",
            "dev.hingepoint.svg.lay.StripLayout",
            "dev.hingepoint.svg.lesson.PathWriter",
            "dev.hingepoint.svg.lesson.TextSheets",
            "dev.hingepoint.svg.print.Columns");

    /** What is found when it is first asked for, and is the same whoever asks first. */
    private static final Set<String> FOUND_LATE =
            Set.of("dev.hingepoint.curve.Path.travelled", "dev.hingepoint.pattern.Piece.grain");

    @Test
    void everyFieldIsFinal() {
        assertTrue(ALL.contain("dev.hingepoint.pattern.Piece"), "core is not among the classes");
        Set<String> changing = ALL.stream()
                .flatMap(type -> type.getFields().stream())
                .filter(field -> !field.getModifiers().contains(JavaModifier.FINAL))
                .map(field -> field.getOwner().getName())
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(BUILDERS), changing);
    }

    /** A builder is made by its own class or within its package alone, and no public method hands one out. */
    @Test
    void noBuilderEscapes() {
        for (String name : BUILDERS) {
            JavaClass builder = ALL.get(name);
            assertTrue(
                    !isPublic(builder)
                            || builder.getConstructors().stream()
                                    .allMatch(made -> made.getModifiers().contains(JavaModifier.PRIVATE)),
                    name);
            List<String> escapes = seen().flatMap(type -> type.getMethods().stream())
                    .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
                    .filter(method -> method.getRawReturnType().equals(builder))
                    .map(JavaMember::getFullName)
                    .toList();
            assertEquals(List.of(), escapes);
        }
    }

    @Test
    void onlyWhatIsFoundLateIsHeldInAtoms() {
        Set<String> atoms = ALL.stream()
                .flatMap(type -> type.getFields().stream())
                .filter(field -> field.getRawType().getPackageName().equals(AtomicReference.class.getPackageName())
                        || field.getRawType().isAssignableTo(ThreadLocal.class))
                .map(JavaMember::getFullName)
                .collect(Collectors.toSet());
        assertEquals(FOUND_LATE, atoms);
    }

    /** A list that was given can be changed by who gave it: a copy cannot. */
    @Test
    void everyPublicRecordCopiesItsCollections() {
        List<String> sharing = seen().filter(JavaClass::isRecord)
                .filter(type -> copies(type) < collections(type))
                .map(JavaClass::getName)
                .toList();
        assertEquals(List.of(), sharing);
        assertTrue(seen().filter(JavaClass::isRecord).count() > 50, "where are the records?");
    }

    private static long collections(JavaClass type) {
        return type.getFields().stream()
                .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
                .filter(ImmutabilityTest::isCollection)
                .count();
    }

    private static boolean isCollection(JavaField field) {
        return field.getRawType().isAssignableTo(Collection.class)
                || field.getRawType().isAssignableTo(Map.class);
    }

    /** In its constructors, and in what they call of its own. */
    private static long copies(JavaClass type) {
        return type.getCodeUnits().stream()
                .filter(unit -> unit.isConstructor()
                        || unit.getModifiers().containsAll(Set.of(JavaModifier.PRIVATE, JavaModifier.STATIC)))
                .flatMap(made -> made.getMethodCallsFromSelf().stream())
                .map(call -> call.getTarget().getName())
                .filter(name -> name.equals("copyOf") || name.startsWith("unmodifiable") || name.equals("toList"))
                .count();
    }

    @Test
    void noPublicTypeHoldsAnArray() {
        List<String> arrays = seen().flatMap(type -> type.getFields().stream())
                .filter(field -> field.getRawType().isArray())
                .filter(field -> !(field.getModifiers().contains(JavaModifier.STATIC)
                        && field.getModifiers().contains(JavaModifier.PRIVATE)))
                .map(JavaMember::getFullName)
                .toList();
        assertEquals(List.of(), arrays);
    }

    /** The types that an embedder sees. */
    private static Stream<JavaClass> seen() {
        return ALL.stream().filter(ImmutabilityTest::isPublic);
    }

    private static boolean isPublic(JavaClass type) {
        return type.getModifiers().contains(JavaModifier.PUBLIC)
                && type.getEnclosingClass().map(ImmutabilityTest::isPublic).orElse(true);
    }
}
