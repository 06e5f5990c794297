package lanetide.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.OilTime;
import org.junit.jupiter.api.Test;

/** What squads of a scenario may have of their own: patterns, lanes, rotations, times of oiling. */
class SquadsOwnKeysTest {
    private static final String HEAD = """
            name: Practice night
            centre: {lanes: 1 to 8, surface: hard-synthetic, stripTime: 40 s, oilTime: 50 s, machineWalk: 10 s}
            pattern: {name: House, length: 39 ft, volume: 23 mL, ratio: 4:1}
            patterns:
              Sport: {length: 42 ft, volume: 26 mL, ratio: 3:1}
            games: 2
            field:
              perSquad: 8
              hands: {right: 100 %}
              styles: {tweener: 100 %}
              levels: {league: 100 %}
              covers: {medium-reactive: 100 %}
            """;

    private static Reading read(String rest) {
        return new ScenarioReader(OptionalLong.empty())
                .read("scenario.yaml", (HEAD + rest).getBytes(StandardCharsets.UTF_8));
    }

    private static Event event(String rest) {
        Reading reading = read(rest);
        assertThat(reading.scenario()).as("%s", reading.notices()).isPresent();
        return reading.scenario().orElseThrow().event();
    }

    private static List<String> laid(Event event, int squad) {
        return event.plans().get(squad).lanes(event.centre()).stream()
                .map(lane -> event.pattern(squad, lane).id())
                .toList();
    }

    @Test
    void aSquadHasItsOwnPatternElseTheEventsAndWithoutOilingWhatWasLaidLast() {
        Event event = event("""
                lanePatterns: [{pattern: Sport, lanes: [3-4, 8]}]
                squads:
                  - {id: A, start: "09:00", oil: fresh}
                  - {id: B, start: "11:00", oil: fresh, pattern: Sport}
                  - {id: C, start: "13:00", oil: fresh, lanes: 1 to 4, lanePatterns: [{pattern: Sport, lanes: left lanes}]}
                  - {id: D, start: "15:00", oil: none}
                """);

        assertThat(laid(event, 0))
                .containsExactly("House", "House", "Sport", "Sport", "House", "House", "House", "Sport");
        assertThat(laid(event, 1)).containsOnly("Sport").hasSize(8);
        assertThat(laid(event, 2)).containsExactly("Sport", "House", "Sport", "House");
        assertThat(laid(event, 3))
                .containsExactly("Sport", "House", "Sport", "House", "Sport", "Sport", "Sport", "Sport");
        assertThat(event.patterns()).extracting(OilPattern::id).containsExactly("Sport", "House");
    }

    @Test
    void lanesAreNamedByRangesNumbersPairsAndWords() {
        for (String[] words : new String[][] {
            {"3 to 6", "3, 4, 5, 6"},
            {"[1-2, 5]", "1, 2, 5"},
            {"odd pairs", "1, 2, 5, 6"},
            {"even pairs", "3, 4, 7, 8"},
            {"right lanes", "2, 4, 6, 8"}
        }) {
            Event event = event("lanePatterns: [{pattern: Sport, lanes: " + words[0] + "}]\n"
                    + "squads: [{id: A, start: \"09:00\", oil: fresh}]\n");
            List<String> sport = IntStream.rangeClosed(1, 8)
                    .filter(lane -> event.pattern(0, lane).id().equals("Sport"))
                    .mapToObj(String::valueOf)
                    .toList();
            assertThat(String.join(", ", sport)).as(words[0]).isEqualTo(words[1]);
        }
    }

    @Test
    void aSquadMovesOnItsOwnPairsByItsOwnRotation() {
        Reading reading = read("""
                rotation: right
                squads:
                  - {id: A, start: "09:00", oil: fresh}
                  - {id: B, start: "09:00", oil: fresh, lanes: [5-6, 7-8], rotation: {design: listed, table: [[7-8, 5-6], [5-6, 7-8]]}}
                """);
        assertThat(reading.scenario()).isEmpty();
        assertThat(reading.notices()).extracting(notice -> notice.code()).contains(NoticeCode.SQUAD_OVERLAPS);

        Scenario scenario = read("""
                        rotation: right
                        squads:
                          - {id: A, start: "09:00", oil: fresh, lanes: 1 to 4, rotation: left}
                          - {id: B, start: "09:15", oil: fresh, lanes: [5-6, 7-8], rotation: {design: listed, table: [[7-8, 5-6], [5-6, 7-8]]}}
                        """).scenario().orElseThrow();
        Event event = scenario.event();
        assertThat(event.shareLanes(0, 1)).isFalse();
        assertThat(event.plans().get(1).own()).containsExactly(new LanePair(5, 6), new LanePair(7, 8));
        assertThat(List.of(
                        event.rotations().get(1).pairOf(0, 0),
                        event.rotations().get(1).pairOf(1, 0)))
                .containsExactly(3, 2);
        assertThat(scenario.designs())
                .extracting(design -> RotationDesigns.labelOf(design).name())
                .containsExactly("left", "listed");
    }

    @Test
    void allPairsOfTheCentreAreNoLanesOfItsOwn() {
        assertThat(event("squads: [{id: A, start: \"09:00\", oil: fresh, lanes: 1 to 8}]\n"))
                .isEqualTo(event("squads: [{id: A, start: \"09:00\", oil: fresh}]\n"));
    }

    /** One machine, 90 s a lane and 5 s to the next: four lanes in 375 s, eight in 755 s. */
    @Test
    void whoCannotBeReadyIsNamed() {
        Reading reading = read("""
                squads:
                  - {id: A, start: "09:00", oil: fresh, oilAt: "08:40", oilRest: 10 min}
                  - {id: B, start: "15:00", oil: fresh, lanes: 1 to 4}
                  - {id: C, start: "15:02", oil: fresh, lanes: 5 to 8}
                """);
        Event event = reading.scenario().orElseThrow().event();
        assertThat(event.squads().get(1).arrangements().oiling()).isEqualTo(OilTime.LAST_MINUTE);
        assertThat(reading.notices())
                .filteredOn(notice ->
                        notice.code() == NoticeCode.LANES_NOT_READY || notice.code() == NoticeCode.MACHINES_AT_WORK)
                .extracting(notice -> notice.field() + ": " + notice.message())
                .containsExactly(
                        "squads[1].oilAt: squads[1].oilAt is `08:40`, but then the machines are done at 08:53 and the oil has"
                                + " lain long enough at 09:03, after practice is to start at 09:00: squad A would start late."
                                + " Oil earlier, or start later.",
                        "squads[3].start: squads[3].start is `15:02`, so that the lane machines would have to begin at 14:56,"
                                + " but they are at work for squad B until 15:00: the squad would start late. Oil for one of"
                                + " the two earlier with `oilAt`, or start it later.");
    }

    @Test
    void aPatternThatIsNeverLaidIsRemarkedOn() {
        Reading reading = read("squads: [{id: A, start: \"09:00\", oil: fresh}]\n");

        assertThat(reading.notices())
                .filteredOn(notice -> notice.code() == NoticeCode.VALUE_WITHOUT_EFFECT)
                .extracting(notice -> notice.value())
                .containsExactly("Sport");
    }
}
