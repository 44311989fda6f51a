package org.hearthrule.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.hearthrule.law.Packaged;
import org.hearthrule.law.Profile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each duty of each state applies in some case and stays away in another; a state has enough cases to be held by. */
class RuleCoverageTest {

    /** A state that asks almost nothing has fewer. */
    private static final int FEW_DUTIES = 8;
    private static final int CASES = 8;
    private static final int CASES_OF_FEW = 4;

    static List<String> codes() {
        return Packaged.profiles().codes();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("codes")
    void everyDutyAppliesInOneCaseAndStaysAwayInAnother(String code) throws Exception {
        assertThat(RuleCoverage.gaps(Packaged.profiles().find(code), LawCase.of(code))).isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("codes")
    void stateHasEnoughCases(String code) throws Exception {
        Profile profile = Packaged.profiles().find(code);
        int duties = profile.pathways().stream().mapToInt(pathway -> pathway.asks().size()).sum();
        assertThat(LawCase.of(code)).hasSizeGreaterThanOrEqualTo(duties < FEW_DUTIES ? CASES_OF_FEW : CASES);
    }
}
