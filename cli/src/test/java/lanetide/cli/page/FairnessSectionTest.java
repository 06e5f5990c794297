package lanetide.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.fairness.RemedyChange;
import lanetide.squads.fairness.SpreadGain;
import lanetide.squads.model.Conditioning;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;

class FairnessSectionTest {
    private static final Remedy AS_IT_IS =
            new Remedy(RemedyChange.of(RemedyChange.Kind.AS_IT_IS), 40, true, 13, 0, gain(0, 0, 0), 0, 0, true, false);

    @Test
    void ofChangesThatMendAlikeTheCheaperAndQuickerIsTold() {
        Remedy slow =
                new Remedy(rotation(new RowComplete()), 40, true, 2.2, 10.8, gain(10.8, 2.3, 1), 12, 363, true, false);
        Remedy quick = new Remedy(
                oiling(Conditioning.STRIP_AND_OIL), 40, true, 2.3, 10.7, gain(10.7, 2.2, 1), 1, 363, true, false);
        Remedy cheap =
                new Remedy(oiling(Conditioning.OIL_OVER), 40, true, 10.1, 2.9, gain(2.9, 1.1, 1), 2, 198, true, false);

        assertThat(FairnessSection.mended(List.of(AS_IT_IS, slow, quick, cheap), "EUR"))
                .contains(
                        "of what was tried: fresh oil for every squad. ",
                        "10.7 pins a game less (90 % interval +8.5 to +12.9)")
                .contains("+1 min", "+363 EUR");
    }

    @Test
    void aGainThatIsNotShownInNineOfTenSetsOfValuesIsNone() {
        Remedy perhaps =
                new Remedy(rotation(new RowComplete()), 40, true, 11.7, 1.3, gain(1.3, 3.1, 0.8), 15, 0, true, false);
        Remedy unknown = new Remedy(rotation(new Stay()), 40, true, 9, 4, Optional.empty(), -15, 0, true, false);

        assertThat(FairnessSection.mended(List.of(AS_IT_IS, perhaps, unknown), "EUR"))
                .isEqualTo("No change that was tried is shown to make it more even.");
    }

    private static Optional<SpreadGain> gain(double pins, double error, double shown) {
        return Optional.of(
                new SpreadGain(error, new ConfidenceInterval(pins - error, pins + error, 0.9), List.of(pins), shown));
    }

    private static RemedyChange oiling(Conditioning oiling) {
        return new RemedyChange(RemedyChange.Kind.OILING, Optional.empty(), Optional.of(oiling));
    }

    private static RemedyChange rotation(RotationDesign design) {
        return new RemedyChange(RemedyChange.Kind.ROTATION, Optional.of(design), Optional.empty());
    }
}
