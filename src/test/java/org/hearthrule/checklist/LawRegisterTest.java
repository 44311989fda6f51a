package org.hearthrule.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profile;
import org.hearthrule.terms.Basis;
import org.hearthrule.terms.Wording;
import org.junit.jupiter.api.Test;

/** The register that readers of the repository see is the one that the files make. */
class LawRegisterTest {

    private static final Path REGISTER = Path.of("jurisdictions", "README.md");

    /** {@code -Drewrite-expected=true} writes it anew, as the command in its first lines does. */
    @Test
    void registerIsTheOneTheFilesMake() throws Exception {
        String register = LawRegister.markdown(Packaged.all(), Wording.english());
        if (Boolean.getBoolean("rewrite-expected")) {
            Files.writeString(REGISTER, register);
        }
        assertThat(register).isEqualTo(Files.readString(REGISTER));
    }

    @Test
    void everyDutyIsCountedOnceInItsState() throws Exception {
        for (Profile profile : Packaged.all()) {
            Reading reading = Reading.of(profile);
            int asked = profile.pathways().stream().mapToInt(pathway -> pathway.asks().size()).sum();
            assertThat(reading.byBasis().values().stream().mapToInt(Integer::intValue).sum()).isEqualTo(asked);
            assertThat(reading.requirements()).isEqualTo(asked);
        }
    }

    /** 899 of 1,000 are not nine tenths: a share is never rounded up. */
    @Test
    void sharesAreCutDown() {
        Reading reading = new Reading(1, 1000, java.util.Map.of(Basis.TEXT, 500, Basis.AGENCY, 399, Basis.SECONDARY, 101,
                Basis.MEMORY, 0), 0);
        assertThat(reading.percentAtSource()).isEqualTo(89);
        assertThat(reading.percent(Basis.AGENCY)).isEqualTo(39);
    }
}
