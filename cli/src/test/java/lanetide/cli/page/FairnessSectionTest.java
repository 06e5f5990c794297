package lanetide.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lanetide.squads.fairness.Remedy;
import org.junit.jupiter.api.Test;

class FairnessSectionTest {
    private static final Remedy AS_IT_IS = new Remedy("as it is", 13, 0, 0, 0, 0, true);

    @Test
    void ofChangesThatMendAlikeTheCheaperAndQuickerIsTold() {
        Remedy slow = new Remedy("fresh oil, other rotation", 2.2, 10.8, 2.3, 12, 363, true);
        Remedy quick = new Remedy("fresh oil", 2.3, 10.7, 2.2, 1, 363, true);
        Remedy cheap = new Remedy("oil over", 10.1, 2.9, 1.1, 2, 198, true);

        assertThat(FairnessSection.mended(List.of(AS_IT_IS, slow, quick, cheap), "EUR"))
                .contains("of what was tried: fresh oil. ", "10.7 pins a game less (standard error 2.2)")
                .contains("+1 min", "+363 EUR");
    }

    @Test
    void aGainWithinTwoStandardErrorsIsNoneThatIsShown() {
        Remedy perhaps = new Remedy("balanced rotation", 11.7, 1.3, 3.1, 15, 0, true);
        Remedy unknown = new Remedy("stay on one pair", 9, 4, Double.NaN, -15, 0, true);

        assertThat(FairnessSection.mended(List.of(AS_IT_IS, perhaps, unknown), "EUR"))
                .isEqualTo("No change that was tried is shown to make it more even.");
    }
}
