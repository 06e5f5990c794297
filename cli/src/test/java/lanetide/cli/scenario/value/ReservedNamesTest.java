package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.notice.Notice;
import org.junit.jupiter.api.Test;

class ReservedNamesTest {
    @Test
    void aTableWithTheNameOfADeviceIsRefusedEverywhere() {
        assertThat(Scenarios.readWith("rotation: stay", "rotation: stay\nmeasured: Con.csv")
                        .notices())
                .extracting(Notice::message)
                .anyMatch(message -> message.contains("a device on Windows"));
    }

    @Test
    void aNameThatOnlyBeginsLikeADeviceIsNone() {
        assertThat(ReservedNames.isReserved("contest.csv")).isFalse();
        assertThat(ReservedNames.isReserved("nul")).isTrue();
        assertThat(ReservedNames.isReserved("LPT1.old.csv")).isTrue();
    }
}
