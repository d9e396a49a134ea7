package dev.hingepoint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Catalogue;
import dev.hingepoint.pattern.Piece;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.lang.module.Configuration;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Polygon;

/**
 * The core as a module, for a program that is one: it compiles against the module path and runs there. That nothing shown is of a type that is not, the
 * compiler holds (lint {@code exports}, an error here).
 */
class ModuleTest {
    private static final String CORE = "dev.hingepoint.core";

    @Test
    void everyPackageIsExportedAndNothingIsOpened() throws URISyntaxException {
        ModuleDescriptor core =
                ModuleFinder.of(folder(Piece.class)).find(CORE).orElseThrow().descriptor();
        Set<String> exported = core.exports().stream()
                .filter(export -> !export.isQualified())
                .map(ModuleDescriptor.Exports::source)
                .collect(Collectors.toSet());
        assertEquals(core.packages(), exported);
        assertTrue(core.opens().isEmpty());
    }

    /** It reads JTS through the core, as the one bridge needs, and catches what the core throws. */
    @Test
    void aModuleCompilesAgainstItAndRuns(@TempDir Path folder) throws Exception {
        Path sources = Files.createDirectories(folder.resolve("consumer"));
        Path module = Files.writeString(
                sources.resolve("module-info.java"), "module consumer { requires " + CORE + "; exports consumer; }");
        Path program = Files.writeString(sources.resolve("Consumer.java"), """
                package consumer;

                import dev.hingepoint.Refusal;
                import dev.hingepoint.alter.Catalogue;
                import dev.hingepoint.curve.Path;
                import dev.hingepoint.curve.Point;
                import dev.hingepoint.pattern.JtsBridge;
                import org.locationtech.jts.geom.Polygon;

                public final class Consumer {
                    private Consumer() {}

                    public static String told() {
                        Point corner = new Point(0, 0);
                        Path ring = Path.through(corner, new Point(300, 0), new Point(300, 400), corner);
                        Polygon paper = JtsBridge.polygon(ring.flatten(0.01));
                        try {
                            return Catalogue.named("no such thing").name();
                        } catch (Refusal refusal) {
                            return Catalogue.all().size() + " alterations, " + paper.getArea() + " mm\\u00b2";
                        }
                    }
                }
                """);
        List<Path> path = List.of(folder(Piece.class), folder(Polygon.class));
        Path classes = folder.resolve("classes");
        ByteArrayOutputStream wrong = new ByteArrayOutputStream();
        ToolProvider.getSystemJavaCompiler()
                .run(
                        null,
                        wrong,
                        wrong,
                        "-Xlint:all,-requires-automatic,-requires-transitive-automatic",
                        "--module-path",
                        path.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator)),
                        "-d",
                        classes.toString(),
                        module.toString(),
                        program.toString());
        assertEquals("", wrong.toString(StandardCharsets.UTF_8));
        ModuleFinder finder =
                ModuleFinder.of(Stream.concat(path.stream(), Stream.of(classes)).toArray(Path[]::new));
        ModuleLayer boot = ModuleLayer.boot();
        Configuration resolved = boot.configuration().resolve(finder, ModuleFinder.of(), Set.of("consumer"));
        Class<?> consumer = boot.defineModulesWithOneLoader(resolved, ClassLoader.getPlatformClassLoader())
                .findLoader("consumer")
                .loadClass("consumer.Consumer");
        assertEquals("consumer", consumer.getModule().getName());
        assertEquals(
                Catalogue.all().size() + " alterations, 60000.0 mm²",
                consumer.getMethod("told").invoke(null));
    }

    private static Path folder(Class<?> type) throws URISyntaxException {
        return Path.of(type.getProtectionDomain().getCodeSource().getLocation().toURI());
    }
}
