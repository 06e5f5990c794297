package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A part of the study, with its code and its seeds. */
@Tag("slow")
class FollowingStudyTest {
    @ParameterizedTest
    @CsvSource({"elite, 1", "scratch, 2"})
    void whoLearnsLiesBetweenNeverMovingAndKnowingAllUnderSetsOfValuesToo(String level, int set) {
        FollowingStudy.Gain gain = FollowingStudy.of(level, set, FollowingStudy.PLAYINGS);
        assertThat(gain.known()).isPositive();
        assertThat(gain.learned()).isLessThan(gain.known());
        assertThat(gain.share()).isGreaterThan(-0.2);
    }
}
