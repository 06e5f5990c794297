package lanetide.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.fairness.RemedyChange;
import lanetide.squads.model.Conditioning;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;

class FairnessSectionTest {
    private static final Remedy AS_IT_IS =
            new Remedy(RemedyChange.of(RemedyChange.Kind.AS_IT_IS), 13, 0, OptionalDouble.of(0), 0, 0, true);

    @Test
    void ofChangesThatMendAlikeTheCheaperAndQuickerIsTold() {
        Remedy slow = new Remedy(rotation(new RowComplete()), 2.2, 10.8, OptionalDouble.of(2.3), 12, 363, true);
        Remedy quick = new Remedy(oiling(Conditioning.STRIP_AND_OIL), 2.3, 10.7, OptionalDouble.of(2.2), 1, 363, true);
        Remedy cheap = new Remedy(oiling(Conditioning.OIL_OVER), 10.1, 2.9, OptionalDouble.of(1.1), 2, 198, true);

        assertThat(FairnessSection.mended(List.of(AS_IT_IS, slow, quick, cheap), "EUR"))
                .contains(
                        "of what was tried: fresh oil for every squad. ", "10.7 pins a game less (standard error 2.2)")
                .contains("+1 min", "+363 EUR");
    }

    @Test
    void aGainWithinTwoStandardErrorsIsNoneThatIsShown() {
        Remedy perhaps = new Remedy(rotation(new RowComplete()), 11.7, 1.3, OptionalDouble.of(3.1), 15, 0, true);
        Remedy unknown = new Remedy(rotation(new Stay()), 9, 4, OptionalDouble.empty(), -15, 0, true);

        assertThat(FairnessSection.mended(List.of(AS_IT_IS, perhaps, unknown), "EUR"))
                .isEqualTo("No change that was tried is shown to make it more even.");
    }

    private static RemedyChange oiling(Conditioning oiling) {
        return new RemedyChange(RemedyChange.Kind.OILING, Optional.empty(), Optional.of(oiling));
    }

    private static RemedyChange rotation(RotationDesign design) {
        return new RemedyChange(RemedyChange.Kind.ROTATION, Optional.of(design), Optional.empty());
    }
}
