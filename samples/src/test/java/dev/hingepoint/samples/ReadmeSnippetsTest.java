package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.hingepoint.alter.Fitting;
import dev.hingepoint.alter.Order;
import dev.hingepoint.fit.Planner;
import dev.hingepoint.make.MadeUp;
import dev.hingepoint.pattern.AlterationRequest;
import dev.hingepoint.pattern.Pattern;
import dev.hingepoint.svg.file.BodyReader;
import dev.hingepoint.svg.file.OrderReader;
import dev.hingepoint.svg.file.PatternFiles;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Everything that the README shows is done as it stands there, in a folder that has a copy of the samples and nothing else. */
class ReadmeSnippetsTest {
    private static final String CLASS_PATH = System.getProperty("java.class.path");

    @TempDir
    private Path folder;

    @BeforeEach
    void copySamples() throws IOException {
        Path patterns = Files.createDirectories(folder.resolve("samples/patterns"));
        try (Stream<Path> files = Files.list(Path.of("patterns"))) {
            for (Path file : files.toList()) {
                Files.copy(file, patterns.resolve(file.getFileName()));
            }
        }
    }

    /** Runs a class in a process of its own, in the folder; what it printed. */
    private String run(String classPath, List<String> classAndArguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-cp",
                classPath));
        command.addAll(classAndArguments);
        Path printed = folder.resolve("printed.txt");
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(printed.toFile())
                .start();
        assertTrue(process.waitFor(5, TimeUnit.MINUTES), "it does not end");
        String said = Files.readString(printed);
        assertEquals(0, process.exitValue(), said);
        return said;
    }

    @Test
    void javaCompilesAndRuns() throws Exception {
        List<String> snippets = Readme.blocks("java");
        assertFalse(snippets.isEmpty());
        for (int i = 0; i < snippets.size(); i++) {
            String name = "Snippet" + i;
            Path source = folder.resolve(name + ".java");
            Files.writeString(
                    source,
                    imports() + "public class " + name + " {\npublic static void main(String[] arguments) {\n"
                            + snippets.get(i) + "}\n}\n");
            StringWriter complaints = new StringWriter();
            boolean isSound = ToolProvider.getSystemJavaCompiler()
                    .getTask(
                            complaints,
                            null,
                            null,
                            List.of("-cp", CLASS_PATH, "-d", folder.toString(), "-proc:none"),
                            null,
                            ToolProvider.getSystemJavaCompiler()
                                    .getStandardFileManager(null, null, StandardCharsets.UTF_8)
                                    .getJavaFileObjects(source))
                    .call();
            assertTrue(isSound, complaints::toString);
            run(folder + System.getProperty("path.separator") + CLASS_PATH, List.of(name));
        }
        byte[] pdf = Files.readAllBytes(folder.resolve("printed/pages.pdf"));
        assertEquals("%PDF", new String(pdf, 0, 4, StandardCharsets.US_ASCII));
        assertTrue(Files.exists(folder.resolve("printed/pages/0.1.svg")));
        assertTrue(Files.exists(folder.resolve("lesson/lesson.html")));
    }

    /** The snippets leave their imports out: those of the example that has the README's lines, and every package of the library. */
    private static String imports() throws IOException {
        Set<String> packages = new TreeSet<>(Set.of("java.util.*"));
        for (String module : List.of("core", "svg-export")) {
            Path sources = Readme.TOP.resolve(module).resolve("src/main/java");
            try (Stream<Path> files = Files.walk(sources)) {
                files.filter(file -> file.endsWith("package-info.java"))
                        .map(file -> sources.relativize(file.getParent()).toString())
                        .forEach(name -> packages.add(name.replaceAll("[/\\\\]", ".") + ".*"));
            }
        }
        Path example = Path.of("src/main/java/dev/hingepoint/samples/example/FiveLines.java");
        try (Stream<String> lines = Files.lines(example)) {
            return Stream.concat(
                            lines.filter(line -> line.startsWith("import ")),
                            packages.stream().map(name -> "import " + name + ";"))
                    .collect(Collectors.joining("\n", "", "\n"));
        }
    }

    @Test
    void commandLinesRun() throws Exception {
        List<String> lines = Readme.blocks("").stream()
                .flatMap(String::lines)
                .filter(line -> line.startsWith("java "))
                .map(line -> line.replaceAll("\\s#.*", "")
                        .substring("java ".length())
                        .strip())
                .toList();
        assertTrue(lines.size() >= 7, lines::toString);
        List<String> call = new ArrayList<>(List.of("dev.hingepoint.samples.CommandLines"));
        call.addAll(lines);
        String said = run(CLASS_PATH, call);
        assertTrue(said.contains("Sew a toile before you cut good cloth."), said);
        for (String written : List.of(
                "ida-order.yaml",
                "altered/pages.pdf",
                "altered/ledger.json",
                "sheet.svg",
                "ease.svg",
                "flared/altered.svg",
                "lesson/lesson.html",
                "lessons/index.html")) {
            assertTrue(Files.size(folder.resolve(written)) > 0, written);
        }
    }

    /** A body is planned for; of an order each alteration is done by itself, and then all that is made together. */
    @Test
    void yamlIsReadAndDone() throws IOException {
        Pattern dress = PatternFiles.read(folder.resolve("samples/patterns/larkfield.yaml"));
        List<String> snippets = Readme.blocks("yaml");
        assertTrue(snippets.size() >= 4, snippets::toString);
        Path file = folder.resolve("samples/patterns/snippet.yaml");
        for (String yaml : snippets) {
            if (yaml.startsWith("unit:")) {
                Files.writeString(file, yaml);
                assertFalse(
                        Planner.plan(dress, BodyReader.read(file)).alterations().isEmpty(), yaml);
            } else {
                Files.writeString(
                        file, yaml.contains("pattern:") ? yaml : "pattern: larkfield.yaml\nsize: \"40\"\n" + yaml);
                OrderReader.ReadOrder read = OrderReader.read(file);
                Order order = read.order();
                assertFalse(order.alterations().isEmpty() && read.make().isEmpty(), yaml);
                for (AlterationRequest request : order.alterations()) {
                    Fitting fitting =
                            Fitting.of(dress, Order.of(order.size(), request).forBody(order.body()));
                    assertFalse(fitting.steps().isEmpty(), request::toString);
                }
                assertEquals(
                        read.make().size(),
                        MadeUp.of(dress, Order.of(order.size()), read.make())
                                .ledger()
                                .make()
                                .size());
            }
        }
    }

    @Test
    void theDependencyIsWhatIsBuilt() throws IOException {
        String parent = Files.readString(Readme.TOP.resolve("pom.xml"));
        String module = Files.readString(Readme.TOP.resolve("svg-export/pom.xml"));
        String shown = Readme.blocks("xml").get(0);
        for (String part : List.of("groupId", "version")) {
            assertEquals(first(parent, part), first(shown, part));
        }
        String parentless = module.replaceAll("(?s)<parent>.*</parent>", "");
        assertEquals(first(parentless, "artifactId"), first(shown, "artifactId"));
    }

    private static String first(String xml, String part) {
        Matcher found = java.util.regex.Pattern.compile("<" + part + ">(.*?)</" + part + ">")
                .matcher(xml);
        assertTrue(found.find(), part);
        return found.group(1);
    }

    /** Every class that can be run is in the table, and every one in the table can be run. */
    @Test
    void theTableNamesTheExamples() throws IOException {
        Set<String> runnable = new TreeSet<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/dev/hingepoint/samples/example"))) {
            for (Path file : files.toList()) {
                if (Files.readString(file).contains("public static void main(String[]")) {
                    runnable.add(file.getFileName().toString().replace(".java", ""));
                }
            }
        }
        String text = Readme.text();
        String table = text.substring(text.indexOf("| example | shows |"));
        Set<String> named = table.substring(0, table.indexOf("\n\n"))
                .lines()
                .filter(line -> line.startsWith("| `"))
                .map(line -> line.substring(3, line.indexOf('`', 3)))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(runnable, named);
    }

    @Test
    void everyOptionIsOneOfTheProgram() throws IOException {
        StringWriter help = new StringWriter();
        PrintWriter out = new PrintWriter(help, true);
        for (String command : List.of("plan", "alter", "print", "measure", "lesson", "walk")) {
            Hingepoint.run(out, out, command, "--help");
        }
        Set<String> known = java.util.regex.Pattern.compile("--[a-z]+")
                .matcher(help.toString())
                .results()
                .map(found -> found.group())
                .collect(Collectors.toSet());
        List<String> named = Readme.inline()
                .flatMap(code -> Stream.of(code.split("[\\s,]+")))
                .filter(word -> word.startsWith("--"))
                .toList();
        assertTrue(named.size() > 10, named::toString);
        assertEquals(
                List.of(),
                named.stream().filter(option -> !known.contains(option)).toList());
    }
}
