package lanetide.squads.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.Finals;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.Stops;
import lanetide.squads.model.TieRule;
import lanetide.squads.play.Events;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;
import org.junit.jupiter.api.Test;

/** Numbered playings: what one gives depends on its number alone. */
class StudyTest {
    /** Two squads, the second on the oil that the first leaves, on lanes that stop at times. */
    private static final Event EVENT = Events.event(
                    Events.centre(2),
                    Events.stay(2, 2, 2),
                    Events.squad("A", Events.START_MS, Conditioning.STRIP_AND_OIL, Events.groups(2, 2)),
                    Events.squad("B", Events.START_MS + 90 * Events.MINUTE_MS, Conditioning.NONE, Events.groups(2, 2)))
            .withIncidents(
                    new Incidents(new Stops(30, 60_000, 0.5), Stops.NEVER, List.of(), 1, FaultResponse.WAIT, 300_000))
            .withCut(Optional.of(new Cut(
                    OptionalInt.of(2),
                    OptionalDouble.empty(),
                    TieRule.LOT,
                    true,
                    Counting.BEST,
                    Optional.of(new Finals(0, Conditioning.NONE, 0, 1, 30, Finals.roundRobin(2), true, List.of())))));

    private static final Study STUDY = new Study(Repeated.of(EVENT, 7));

    /** With windows, so that everything is compared. */
    private static List<PlayingSummary> play(Part part, int threads) {
        IntFunction<Watch<PlayingSummary>> windows =
                number -> new Watch<>(Observers.NONE, LaneRecords.WINDOWS, summary -> summary);
        return STUDY.play(part, threads, windows, done -> {});
    }

    @Test
    void aStudyInPartsIsTheWholeStudy() {
        List<PlayingSummary> joined = new ArrayList<>(play(Part.first(2), 2));
        joined.addAll(play(new Part(2, 5), 1));

        assertThat(joined).isEqualTo(play(Part.first(5), 2));
        assertThat(joined)
                .anySatisfy(summary -> assertThat(summary.result().stops()).isNotEmpty());
        assertThat(joined)
                .allSatisfy(summary -> assertThat(summary.result().finals()).isPresent());
        assertThat(joined.get(0).result().lanes())
                .allSatisfy(lane -> assertThat(lane.windows()).isNotEmpty());
    }

    @Test
    void threadsChangeNothing() {
        List<PlayingSummary> alone = play(Part.first(4), 1);

        assertThat(play(Part.first(4), 2)).isEqualTo(alone);
        assertThat(play(Part.first(4), 8)).isEqualTo(alone);
    }

    @Test
    void everyNumberHasLuckOfItsOwnAndTheUsualValues() {
        List<PlayingSummary> played = STUDY.play(new Part(4, 6), 1);

        assertThat(played)
                .extracting(PlayingSummary::playing)
                .containsExactly(new Playing(4, 4, 0, 0), new Playing(5, 5, 0, 0));
        assertThat(played.get(0).result()).isNotEqualTo(played.get(1).result());
    }

    @Test
    void aPartHasAPlayingAtLeast() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Part(3, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Part(-1, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Playing(0, 0, -1, 0));
    }
}
