package lanetide.cli.scenario.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.cli.scenario.Scenarios;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Group;
import lanetide.squads.model.LaneCourtesy;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import org.junit.jupiter.api.Test;

class PlayEstimateTest {
    private final PlayEstimate estimate = new PlayEstimate(PaceOfPlay.USUAL);

    /** By hand: 2 bowlers, 1 game: (10 x 36 s + 2 x 28 s) x 2 bowlers / 2 lanes = 416 s, after 600 s of practice. */
    @Test
    void theFastestSquadThrowsStrikesOnly() {
        PlayEstimate steady = new PlayEstimate(pace(0, LaneCourtesy.USUAL));

        assertThat(steady.fastestMs(squadOf(2, 1), 1)).isEqualTo(1_016_000);
        assertThat(estimate.fastestMs(squadOf(2, 1), 1)).isLessThan(1_016_000);
    }

    /** By hand: his own 10 x 22 s + 2 x 14 s of the 416 s above take half as long again. */
    @Test
    void aSlowBowlerTakesLongerOnlyOverHisOwnPart() {
        PlayEstimate steady = new PlayEstimate(pace(0, LaneCourtesy.USUAL));

        assertThat(steady.fastestMs(squadOf(2, 1.5), 1)).isEqualTo(1_016_000 + 124_000);
    }

    /** The usual pace but for spread and courtesy. */
    private static PaceOfPlay pace(double spread, LaneCourtesy courtesy) {
        PaceOfPlay usual = PaceOfPlay.USUAL;
        return new PaceOfPlay(
                usual.firstShotMs(),
                usual.spareShotMs(),
                spread,
                usual.pinsetterMs(),
                usual.ballReturnMs(),
                usual.movePerPairMs(),
                usual.settleMs(),
                courtesy);
    }

    private static Squad squadOf(int bowlers, double tempo) {
        Bowler usual = Scenarios.oneBowler();
        List<Bowler> group = IntStream.range(0, bowlers)
                .mapToObj(i -> new Bowler(
                        "b" + i,
                        usual.hand(),
                        usual.style(),
                        usual.level(),
                        usual.cover(),
                        usual.spareCover(),
                        tempo,
                        java.util.Optional.empty(),
                        0))
                .toList();
        return new Squad(
                "A", 0, Conditioning.STRIP_AND_OIL, 600_000, List.of(new Group("1", group)), Arrangements.NONE);
    }

    @Test
    void twoMachinesHalveTheTimeToOil() {
        List<Integer> lanes = List.of(1, 2, 3, 4, 5, 6, 7, 8);
        assertThat(MachinePlan.of(new LaneMachines(1, 0, 0, 40_000, 50_000, 0), lanes, Conditioning.STRIP_AND_OIL)
                        .durationMs())
                .isEqualTo(8 * 90_000);
        assertThat(MachinePlan.of(new LaneMachines(2, 0, 0, 40_000, 50_000, 0), lanes, Conditioning.OIL_OVER)
                        .durationMs())
                .isEqualTo(4 * 50_000);
    }
}
