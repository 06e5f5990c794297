package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Severity;
import lanetide.squads.model.Break;
import lanetide.squads.model.Event;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LaneCourtesy;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.PlannedFault;
import lanetide.squads.model.Stops;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a scenario says of the day: pace, courtesy, machines, breaks, who comes, what fails. */
class DayReaderTest {
    private static final long HOUR_MS = 3_600_000;
    private static final String SQUAD = "{id: A, start: \"18:00\", oil: fresh}";

    private static Event event(String passage, String replacement) {
        Reading reading = Scenarios.readWith(passage, replacement);
        assertThat(reading.notices()).noneMatch(notice -> notice.severity() == Severity.ERROR);
        return reading.scenario().orElseThrow().event();
    }

    @Test
    void thePaceIsReadPartByPart() {
        Event event = event(
                "field:\n",
                "pace: {firstShot: 20 s, spread: 35 %, pinsetter: 9 s, ballReturn: 12 s, courtesy: two, approach: 5 s}\nfield:\n");

        assertThat(event.pace().firstShotMs()).isEqualTo(20_000);
        assertThat(event.pace().spread()).isCloseTo(0.35, within(1e-12));
        assertThat(event.pace().pinsetterMs()).isEqualTo(9_000);
        assertThat(event.pace().ballReturnMs()).isEqualTo(12_000);
        assertThat(event.pace().courtesy()).isEqualTo(new LaneCourtesy(2, 5_000));
    }

    @Test
    void slowBowlersAreCountedOutLikeAnyOtherShare() {
        Event event = event("perSquad: 8", "perSquad: 8\n  slow: 25 %\n  slowTempo: 160 %");

        assertThat(event.squads().get(0).everybody().stream().filter(bowler -> bowler.tempo() == 1.6))
                .hasSize(2);
    }

    @Test
    void cleanersAndOilersStandInPlaceOfMachines() {
        Event event = event(
                "surface: hard-synthetic",
                "surface: hard-synthetic\n  cleaners: 2\n  oilers: 1\n  stripTime: 30 s\n  oilTime: 50 s\n  machineWalk: 8 s");

        assertThat(event.centre().machines()).isEqualTo(new LaneMachines(0, 2, 1, 30_000, 50_000, 8_000));
    }

    @Test
    void sparePairsAreInUseAndHaveNoGroup() {
        Event event = event("lanes: 1 to 4", "lanes: 1 to 6\n  spare: [3-4]");

        assertThat(event.centre().spare()).containsExactly(new LanePair(3, 4));
        assertThat(event.centre().pairs()).hasSize(3);
        assertThat(event.centre().laneNumbers()).containsExactly(1, 2, 3, 4, 5, 6);
        assertThat(event.squads().get(0).groups()).hasSize(2);
        assertThat(event.rotations().get(0).visits(1)).isFalse();
    }

    @Test
    void sparePairsMayBeAmongPairsThatAreListed() {
        Event event = event("lanes: 1 to 4", "pairs: [1-2, 9-10, 5-6]\n  spare: [9-10]");

        assertThat(event.centre().spare()).containsExactly(new LanePair(9, 10));
        assertThat(event.centre().rotationPairs()).containsExactly(new LanePair(1, 2), new LanePair(5, 6));
    }

    @Test
    void breaksComeAfterAGameOrAtATime() {
        Event event = event(
                SQUAD,
                "{id: A, start: \"18:00\", oil: fresh, breaks: [{after: 1, length: 15 min}, {at: \"19:00\", length: 5 min}]}");

        assertThat(event.squads().get(0).arrangements().breaks())
                .containsExactly(new Break(1, 0, 900_000), new Break(1, 19 * HOUR_MS, 300_000));
    }

    @Test
    void whoDoesNotBowlAsListedIsRead() {
        Event event = event("field:\n", """
                changes:
                  - {bowler: A-02}
                  - {bowler: A-03, arrives: "18:30"}
                  - bowler: A-04
                    from: 2
                    substitute: {id: Guest, hand: left, style: stroker, level: league, cover: urethane, tempo: 120 %}
                field:
                """);

        List<LineUpChange> changes = event.squads().get(0).arrangements().changes();
        assertThat(changes.get(0)).isEqualTo(new LineUpChange.Absence("A-02", 1));
        assertThat(changes.get(1)).isEqualTo(new LineUpChange.LateArrival("A-03", 18 * HOUR_MS + 1_800_000));
        assertThat(changes.get(2)).isInstanceOfSatisfying(LineUpChange.Substitution.class, substitution -> {
            assertThat(substitution.fromGame()).isEqualTo(2);
            assertThat(substitution.substitute().id()).isEqualTo("Guest");
            assertThat(substitution.substitute().tempo()).isEqualTo(1.2);
        });
    }

    @Test
    void incidentsAreCountedInFrames() {
        Event event = event("field:\n", """
                incidents:
                  jams: {every: 60 games, work: 2 min}
                  faults: {every: 900 games, work: 30 min, spread: 80 %}
                  planned: [{lane: 3, at: "18:45", work: 20 min}]
                  crews: 2
                  remedy: split
                  patience: 8 min
                field:
                """);

        assertThat(event.incidents())
                .isEqualTo(new Incidents(
                        new Stops(600, 120_000, 0.5),
                        new Stops(9_000, 1_800_000, 0.8),
                        List.of(new PlannedFault(3, 18 * HOUR_MS + 2_700_000, 1_200_000)),
                        2,
                        FaultResponse.SPLIT,
                        480_000));
    }

    @Test
    void whereNothingIsSaidAllLanesAreInOrderAndThatIsAnAssumption() {
        Reading reading = Scenarios.read(Scenarios.SOUND);

        assertThat(reading.scenario().orElseThrow().event().incidents()).isEqualTo(Incidents.NONE);
        assertThat(reading.scenario().orElseThrow().assumptions())
                .anyMatch(assumption -> assumption.name().equals("incidents"))
                .anyMatch(assumption -> assumption.name().equals("pace.courtesy"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "surface: hard-synthetic | surface: hard-synthetic\\n  oilTime: 90 s | lane_time_long | take 135 s together",
                "start: \"18:00\" | start: \"00:02\" | lanes_not_ready | machines that begin at midnight are done at 00:06",
                "oil: fresh} | oil: fresh, breaks: [{at: \"23:30\", length: 5 min}]} | break_after_end | nobody would rest",
                "field:\\n | changes: [{bowler: A-03, arrives: \"23:00\"}]\\nfield:\\n | arrives_after_end | he would bowl no game"
            })
    void whatCannotBeMeantIsWarnedOf(String passage, String replacement, String code, String words) {
        Reading reading = Scenarios.readWith(passage.replace("\\n", "\n"), replacement.replace("\\n", "\n"));

        assertThat(reading.scenario()).isPresent();
        assertThat(reading.notices())
                .filteredOn(notice -> notice.code().code().equals(code))
                .singleElement()
                .satisfies(notice -> {
                    assertThat(notice.severity()).isEqualTo(Severity.WARNING);
                    assertThat(notice.message()).contains(words);
                });
    }

    /**
     * A squad that cannot be done in time is told the minute and what would mend it; every fault of the file at once.
     */
    @Test
    void aTimetableThatCannotFitNamesTheMinuteAndTheRemedies() {
        Reading reading = Scenarios.readWith(
                "  - " + SQUAD,
                "  - " + SQUAD
                        + "\n  - {id: B, start: \"18:20\", oil: none, machines: 4, breaks: [{after: 3, length: 5 min}]}");

        assertThat(reading.scenario()).isEmpty();
        assertThat(reading.notices())
                .filteredOn(notice -> notice.severity() == Severity.ERROR)
                .extracting(notice -> notice.code().code())
                .contains("too_few_machines", "out_of_range");
        Reading late =
                Scenarios.readWith("  - " + SQUAD, "  - " + SQUAD + "\n  - {id: B, start: \"18:20\", oil: none}");
        assertThat(late.notices())
                .filteredOn(notice -> notice.code() == NoticeCode.SQUAD_OVERLAPS)
                .singleElement()
                .satisfies(notice -> assertThat(notice.message())
                        .containsPattern("cannot be done before 18:\\d\\d")
                        .containsPattern("Start at \\d\\d:\\d\\d or later, or give squad A fewer bowlers a pair"));
    }
}
