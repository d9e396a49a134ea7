package dev.hingepoint.svg;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.Architectures;
import org.junit.jupiter.api.Test;

/** Imports run one way: what is printed knows of files and of the geometry of laying, and these of nothing else here. */
class PackagesTest {
    @Test
    void importsRunOneWay() {
        Architectures.layeredArchitecture()
                .consideringOnlyDependenciesInLayers()
                .layer("file")
                .definedBy("dev.hingepoint.svg.file")
                .layer("lay")
                .definedBy("dev.hingepoint.svg.lay")
                .layer("page")
                .definedBy("dev.hingepoint.svg.page")
                .layer("print")
                .definedBy("dev.hingepoint.svg.print")
                .layer("figure")
                .definedBy("dev.hingepoint.svg.figure")
                .layer("lesson")
                .definedBy("dev.hingepoint.svg.lesson")
                .whereLayer("lesson")
                .mayNotBeAccessedByAnyLayer()
                .whereLayer("print")
                .mayOnlyBeAccessedByLayers("lesson")
                .whereLayer("figure")
                .mayOnlyBeAccessedByLayers("lesson")
                .whereLayer("page")
                .mayOnlyBeAccessedByLayers("print", "figure", "lesson")
                .whereLayer("file")
                .mayOnlyBeAccessedByLayers("page", "print", "figure", "lesson")
                .whereLayer("lay")
                .mayOnlyBeAccessedByLayers("print")
                .check(new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("dev.hingepoint.svg"));
    }
}
