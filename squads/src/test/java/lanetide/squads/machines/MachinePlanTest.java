package lanetide.squads.machines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.LaneMachines;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** When lanes are cleaned and oiled, worked out by hand. */
class MachinePlanTest {
    private static final List<Integer> FOUR = List.of(1, 2, 3, 4);

    private static LaneMachines apart(int cleaners, int oilers) {
        return new LaneMachines(0, cleaners, oilers, 40_000, 50_000, 0);
    }

    @Test
    void oneMachineCleansAndOilsLaneAfterLane() {
        MachinePlan plan = MachinePlan.of(Fixtures.machines(1, 40_000, 50_000), FOUR, Conditioning.STRIP_AND_OIL);

        assertThat(plan.lanes())
                .containsExactly(
                        new MachinePlan.LaneTimes(1, 1, 0, 40_000, 90_000),
                        new MachinePlan.LaneTimes(2, 1, 90_000, 130_000, 180_000),
                        new MachinePlan.LaneTimes(3, 1, 180_000, 220_000, 270_000),
                        new MachinePlan.LaneTimes(4, 1, 270_000, 310_000, 360_000));
    }

    /** 10 s past two lanes is 5 s to the next lane, three times. */
    @Test
    void theWayFromLaneToLaneIsAdded() {
        LaneMachines machines = new LaneMachines(1, 0, 0, 40_000, 50_000, 10_000);

        assertThat(MachinePlan.of(machines, FOUR, Conditioning.STRIP_AND_OIL).durationMs())
                .isEqualTo(375_000);
        assertThat(MachinePlan.of(machines, List.of(1, 2, 9, 10), Conditioning.STRIP_AND_OIL)
                        .durationMs())
                .isEqualTo(4 * 90_000 + 5_000 + 35_000 + 5_000);
    }

    /** The oiler follows the cleaner: 40 s until it can begin, then four lanes at its own pace. */
    @Test
    void aCleanerAndAnOilerWorkOneBehindTheOther() {
        MachinePlan plan = MachinePlan.of(apart(1, 1), FOUR, Conditioning.STRIP_AND_OIL);

        assertThat(plan.lanes())
                .extracting(MachinePlan.LaneTimes::strippedMs)
                .containsExactly(40_000L, 80_000L, 120_000L, 160_000L);
        assertThat(plan.lanes())
                .extracting(MachinePlan.LaneTimes::oiledMs)
                .containsExactly(90_000L, 140_000L, 190_000L, 240_000L);
    }

    /** Where nothing is oiled a lane is done when it is clean, by the machines that clean. */
    @Test
    void theEndsOfLanesAreCleanedInTheTimeOfCleaning() {
        assertThat(MachinePlan.of(Fixtures.machines(1, 40_000, 50_000), FOUR, Conditioning.CLEAN_ENDS)
                        .lanes())
                .containsExactly(
                        new MachinePlan.LaneTimes(1, 1, 0, 40_000, 40_000),
                        new MachinePlan.LaneTimes(2, 1, 40_000, 80_000, 80_000),
                        new MachinePlan.LaneTimes(3, 1, 80_000, 120_000, 120_000),
                        new MachinePlan.LaneTimes(4, 1, 120_000, 160_000, 160_000));
        assertThat(MachinePlan.of(apart(2, 1), FOUR, Conditioning.CLEAN_ENDS).durationMs())
                .isEqualTo(80_000);
    }

    /** Two oilers wait for one cleaner: the last lane is clean at 160 s and oiled 50 s later. */
    @Test
    void twoOilersAreAsFastAsTheOneCleaner() {
        assertThat(MachinePlan.of(apart(1, 2), FOUR, Conditioning.STRIP_AND_OIL).durationMs())
                .isEqualTo(210_000);
    }

    @Test
    void oilingOverNeedsNoCleaner() {
        assertThat(MachinePlan.of(apart(1, 1), FOUR, Conditioning.OIL_OVER).durationMs())
                .isEqualTo(200_000);
        assertThat(MachinePlan.of(apart(1, 2), FOUR, Conditioning.OIL_OVER).durationMs())
                .isEqualTo(100_000);
        assertThat(MachinePlan.of(apart(1, 1), FOUR, Conditioning.NONE).durationMs())
                .isZero();
    }

    @ParameterizedTest(name = "{0} lanes, {1} machines")
    @CsvSource({"24, 1", "24, 2", "24, 5", "7, 3", "2, 9"})
    void moreMachinesAreNeverSlowerAndNeverFasterThanTheirShare(int lanes, int machines) {
        List<Integer> numbers = IntStream.rangeClosed(1, lanes).boxed().toList();
        long one = MachinePlan.of(Fixtures.machines(1, 40_000, 50_000), numbers, Conditioning.STRIP_AND_OIL)
                .durationMs();

        long several = MachinePlan.of(Fixtures.machines(machines, 40_000, 50_000), numbers, Conditioning.STRIP_AND_OIL)
                .durationMs();

        assertThat(several).isLessThanOrEqualTo(one).isGreaterThanOrEqualTo(one / machines);
        assertThat(several % 90_000).isZero();
    }
}
