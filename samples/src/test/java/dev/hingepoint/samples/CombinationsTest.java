package dev.hingepoint.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Any two alterations of the catalogue go together, or are refused with a reason; the table in the docs says so, and is what the program does. */
class CombinationsTest {
    @Test
    void anyTwoAlterationsWalkOrAreRefused() throws IOException {
        String table = Combinations.table();
        assertFalse(table.contains(Combinations.BROKEN), table);
        assertEquals(
                Files.readString(Path.of("combinations.md")), table, "write the table anew, as DEVELOPERS.md says");
    }
}
