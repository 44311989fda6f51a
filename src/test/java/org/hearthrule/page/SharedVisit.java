package org.hearthrule.page;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** Tests that only look at the demo family's book, or leave it as it was: all of a class share one copy of it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public abstract class SharedVisit {

    protected Visit visit;

    @BeforeAll
    protected void open(@TempDir Path folder) {
        visit = Visit.demo(folder);
    }

    @AfterAll
    protected void close() {
        visit.close();
    }
}
