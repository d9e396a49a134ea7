package dev.hingepoint.svg.lesson;

import java.io.IOException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** One browser for all tests of a class. */
abstract class InBrowser {
    static Browser browser;

    @BeforeAll
    static void start() throws IOException {
        browser = Browser.start();
    }

    @AfterAll
    static void end() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }
}
