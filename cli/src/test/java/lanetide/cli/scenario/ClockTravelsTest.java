package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import lanetide.squads.study.DayClock;
import org.junit.jupiter.api.Test;

/** The clock of a day takes seconds to play, so that what looked at it while reading hands it on. */
class ClockTravelsTest {
    private static Scenario withClosingHour() {
        return Scenarios.readWith("  surface: hard-synthetic", "  surface: hard-synthetic\n  closes: \"23:00\"")
                .scenario()
                .orElseThrow();
    }

    @Test
    void aClockThatWasPlayedWhileReadingIsTheOneOfTheScenario() {
        Scenario scenario = withClosingHour();

        assertThat(scenario.foreseen()).containsSame(scenario.clock()).contains(DayClock.of(scenario.event(), 1));
    }

    @Test
    void aScenarioThatNeedsNoClockToBeCheckedPlaysItWhenItIsAskedFor() {
        Scenario scenario = Scenarios.read(Scenarios.SOUND).scenario().orElseThrow();

        assertThat(scenario.foreseen()).isEmpty();
        assertThat(scenario.clock()).isEqualTo(DayClock.of(scenario.event(), 1));
    }

    @Test
    void anEventThatHasChangedHasAnotherClock() {
        Scenario planned = withClosingHour();
        Scenario late = planned.with(planned.event()
                .withSquads(
                        planned.event().squads().stream()
                                .map(squad -> squad.startingAt(squad.startMs() + 3_600_000))
                                .toList(),
                        planned.event().plans()));

        assertThat(late.foreseen()).isEmpty();
        assertThat(late.clock().squads().get(0).end().meanMs())
                .isGreaterThan(planned.clock().squads().get(0).end().meanMs());
    }
}
