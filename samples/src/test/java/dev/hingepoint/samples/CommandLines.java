package dev.hingepoint.samples;

import java.io.PrintWriter;
import java.lang.reflect.InvocationTargetException;
import java.util.Arrays;

/**
 * Runs command lines of the README in the folder that it is started in, one after another, as {@code java} would: {@code -jar} and a jar for the program,
 * {@code -cp}, a jar and a class for an example. Ends with the exit code of the first that is not done.
 */
final class CommandLines {
    private CommandLines() {}

    /** @param lines each a command line, without {@code java} */
    public static void main(String[] lines) throws ReflectiveOperationException {
        for (String line : lines) {
            String[] words = line.split("\\s+");
            if (words[0].equals("-jar")) {
                String[] arguments = Arrays.copyOfRange(words, 2, words.length);
                int code =
                        Hingepoint.run(new PrintWriter(System.out, true), new PrintWriter(System.err, true), arguments);
                if (code != 0) {
                    System.err.println("exit code " + code + ": " + line);
                    System.exit(code);
                }
            } else {
                run(Class.forName(words[2]), Arrays.copyOfRange(words, 3, words.length));
            }
        }
    }

    private static void run(Class<?> example, String[] arguments) throws ReflectiveOperationException {
        try {
            example.getMethod("main", String[].class).invoke(null, (Object) arguments);
        } catch (InvocationTargetException thrown) {
            throw new IllegalStateException(example.getName(), thrown.getCause());
        }
    }
}
