package lanetide.cli.scenario.reader;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.centre.CentreFile;
import lanetide.cli.scenario.centre.PatternMark;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.measured.When;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;
import lanetide.squads.unknown.ValueSets;
import org.junit.jupiter.api.Test;

class FindingsReaderTest {
    private static final Event EVENT =
            Scenarios.read(Scenarios.SOUND).scenario().orElseThrow().event();
    private static final String MARK = PatternMark.of(EVENT.pattern());
    private static final List<ValueSet> SETS = ValueSets.shipped().subList(0, 20);

    private static final TapeTaken ON_ONE = tape(1, 0, 38, "tapes.csv line 2");
    private static final TapeTaken ON_TWO = tape(2, 0, 31, "tapes.csv line 3");
    private static final TapeTaken PLAYED_ON = tape(1, 2, 25, "tapes.csv line 4");

    private final Assumptions assumptions = new Assumptions();

    @Test
    void nothingMeasuredLeavesTheEventAsItIs() {
        assertThat(found(Optional.empty(), List.of())).isEqualTo(Findings.NONE);
        assertThat(assumptions.list()).isEmpty();
    }

    @Test
    void aScenarioOwnTapesOnFreshOilAreItsLanesFilm() {
        assertThat(found(Optional.empty(), List.of(ON_TWO, ON_ONE, PLAYED_ON)))
                .isEqualTo(new Findings(List.of(), List.of(ON_TWO, ON_ONE), List.of()));
        assertThat(assumptions.list())
                .containsExactly(new Assumption("lanes 1, 2", "the fresh oil is what tapes read of it", "2 tapes"));
    }

    @Test
    void theFileOfTheCentreGivesItsSetsAndItsTapes() {
        assertThat(found(file(MARK, ON_ONE, ON_TWO), List.of()))
                .isEqualTo(new Findings(SETS, List.of(ON_ONE, ON_TWO), List.of()));
        assertThat(assumptions.list().stream().map(Assumption::name)).containsExactly("centre.fitted", "lanes 1, 2");
    }

    @Test
    void noTapeCountsTwiceWhereverItStands() {
        TapeTaken sameElsewhere = tape(1, 0, 38, "copy.csv line 9");
        TapeTaken another = tape(1, 0, 38.5, "copy.csv line 10");

        assertThat(found(file(MARK, ON_ONE), List.of(sameElsewhere, another)).laid())
                .containsExactly(ON_ONE, another);
    }

    @Test
    void tapesOfAnotherPatternAreLeftOutButTheSetsHold() {
        assertThat(found(file("another", ON_ONE), List.of(ON_TWO)))
                .isEqualTo(new Findings(SETS, List.of(ON_TWO), List.of()));
        assertThat(assumptions.list().stream().map(Assumption::name)).containsExactly("centre.fitted", "lane 2");
    }

    private Findings found(Optional<CentreFile> file, List<TapeTaken> own) {
        return new FindingsReader(assumptions, file)
                .applied(EVENT, new Measurements(own, List.of(), List.of(), List.of()))
                .centre()
                .findings();
    }

    private static Optional<CentreFile> file(String pattern, TapeTaken... fresh) {
        List<TapeTaken> tapes =
                Stream.concat(Stream.of(fresh), Stream.of(PLAYED_ON)).toList();
        return Optional.of(new CentreFile(
                ValueSets.mark(),
                "lanetide fit monday.yaml --centre lanes.json",
                List.of(new CentreFile.Day(
                        "monday.yaml",
                        "0123",
                        "Monday",
                        pattern,
                        new Measurements(tapes, List.of(), List.of(), List.of()),
                        List.of(fresh))),
                SETS));
    }

    private static TapeTaken tape(int lane, int afterGame, double units, String place) {
        return new TapeTaken(lane, new When("A", afterGame), 6.7, 20, units, 2, place);
    }
}
