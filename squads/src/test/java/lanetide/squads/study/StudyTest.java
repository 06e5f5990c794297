package lanetide.squads.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
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

/** Numbered playings: what one gives depends on its number alone, and can be written and read back exactly. */
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
                    Optional.of(new Finals(0, Conditioning.NONE, 0, 1, 30, Finals.roundRobin(2), true)))));

    private static final Study STUDY = new Study(Repeated.of(EVENT, 7));

    /** With windows, so that every kind of number is in it. */
    private static List<PlayingSummary> play(Part part, int threads) {
        IntFunction<Watch<PlayingSummary>> windows =
                number -> new Watch<>(Observers.NONE, LaneRecords.WINDOWS, summary -> summary);
        return STUDY.play(part, threads, windows, done -> {});
    }

    private static byte[] written(List<PlayingSummary> summaries) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SummaryFormat.write(summaries, out);
        return out.toByteArray();
    }

    private static List<PlayingSummary> read(byte[] bytes) throws IOException {
        return SummaryFormat.read(new ByteArrayInputStream(bytes), STUDY.design());
    }

    @Test
    void summariesAreReadBackToTheLastBit() throws IOException {
        List<PlayingSummary> played = play(Part.first(3), 2);
        byte[] bytes = written(played);

        assertThat(read(bytes)).isEqualTo(played);
        assertThat(written(read(bytes))).isEqualTo(bytes);
        assertThat(played)
                .anySatisfy(summary -> assertThat(summary.result().stops()).isNotEmpty());
        assertThat(played)
                .allSatisfy(summary -> assertThat(summary.result().finals()).isPresent());
        assertThat(played.get(0).result().lanes())
                .allSatisfy(lane -> assertThat(lane.windows()).isNotEmpty());
    }

    @Test
    void aStudyInPartsIsTheWholeStudy() throws IOException {
        List<PlayingSummary> joined = new ArrayList<>(read(written(play(Part.first(2), 2))));
        joined.addAll(read(written(play(new Part(2, 5), 1))));

        assertThat(written(joined)).isEqualTo(written(play(Part.first(5), 2)));
    }

    @Test
    void threadsChangeNothing() throws IOException {
        byte[] alone = written(play(Part.first(4), 1));

        assertThat(written(play(Part.first(4), 2))).isEqualTo(alone);
        assertThat(written(play(Part.first(4), 8))).isEqualTo(alone);
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
    void whatIsNoFileOfPlayingsIsRefused() throws IOException {
        byte[] bytes = written(play(Part.first(1), 1));

        assertThatExceptionOfType(EOFException.class).isThrownBy(() -> read(Arrays.copyOf(bytes, bytes.length - 1)));
        assertThatExceptionOfType(IOException.class)
                .isThrownBy(() -> read("\0\7another".getBytes(StandardCharsets.US_ASCII)));
    }

    @Test
    void aPartHasAPlayingAtLeast() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Part(3, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Part(-1, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Playing(0, 0, -1, 0));
    }
}
