package org.hearthrule.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** Tests that change the demo family's book: each visits a copy of its own, on the family's day. */
public abstract class DemoVisit {

    /** Where everything of the visit lies. */
    @TempDir
    protected Path folder;
    protected Visit visit;

    @BeforeEach
    protected void open() {
        visit = Visit.demo(folder);
    }

    @AfterEach
    protected void close() {
        visit.close();
    }

    /** @return the file of the school year that the family's day lies in, as it is now */
    protected String year() throws IOException {
        return Files.readString(visit.book().resolve("2025-26.json"));
    }

    /** @return the file of the family, as it is now */
    protected String family() throws IOException {
        return Files.readString(visit.book().resolve("family.json"));
    }
}
