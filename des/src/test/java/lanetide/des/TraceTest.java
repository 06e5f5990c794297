package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import lanetide.des.TraceEntry.Happening;
import org.junit.jupiter.api.Test;

class TraceTest {

    private final Simulator simulator = new Simulator();
    private final List<String> trace = new ArrayList<>();

    @Test
    void aTraceTellsEverythingThatHappensToEventsInOrder() {
        simulator.addTraceListener(entry -> trace.add(entry.toString()));
        simulator.schedule(30, 2, "last", () -> {});
        simulator.schedule(10, 1, "cause", () -> simulator.schedule(0, 0, "effect", () -> {}));
        simulator.run();
        assertThat(trace)
                .containsExactly(
                        "0 ms: scheduled 'last' for 30 ms, phase 2, number 0",
                        "0 ms: scheduled 'cause' for 10 ms, phase 1, number 1",
                        "10 ms: executed 'cause' for 10 ms, phase 1, number 1",
                        "10 ms: scheduled 'effect' for 10 ms, phase 0, number 2",
                        "10 ms: executed 'effect' for 10 ms, phase 0, number 2",
                        "30 ms: executed 'last' for 30 ms, phase 2, number 0");
    }

    @Test
    void listenersAreToldInTheOrderInWhichTheyWereAdded() {
        simulator.schedule(5, 0, "before any listener", () -> {});
        simulator.addTraceListener(entry -> trace.add("first " + entry.happening()));
        simulator.addTraceListener(entry -> trace.add("second " + entry.happening()));
        simulator.run();
        assertThat(trace).containsExactly("first EXECUTED", "second EXECUTED");
    }

    @Test
    void anEntryHoldsEachPartOfWhatHappened() {
        List<TraceEntry> entries = new ArrayList<>();
        simulator.schedule(4, 0, "now", () -> {
            simulator.addTraceListener(entries::add);
            simulator.schedule(6, 7, "release", () -> {});
        });
        simulator.run();
        assertThat(entries)
                .containsExactly(
                        new TraceEntry(4, Happening.SCHEDULED, 10, 7, 1, "release"),
                        new TraceEntry(10, Happening.EXECUTED, 10, 7, 1, "release"));
    }

    @Test
    void aRefusedCallLeavesNoTrace() {
        simulator.addTraceListener(entry -> trace.add(entry.toString()));
        assertThatIllegalArgumentException().isThrownBy(() -> simulator.schedule(-1, 0, "a", () -> {}));
        assertThat(trace).isEmpty();
    }

    /**
     * D/D/1, worked by hand: arrivals at 0, 10 and 20 ms, service 15 ms, so that departures fall at 15, 30 and 45 ms
     * and the waits are 0, 5 and 10 ms.
     */
    @Test
    void aDeterministicQueueRunsExactlyAsWorkedByHand() {
        List<Long> waitsMs = new ArrayList<>();
        Resource server = new Resource("server", 1);
        simulator.addTraceListener(entry -> trace.add(entry.clockMs() + " " + entry.happening() + " " + entry.label()));
        for (int i = 0; i < 3; i++) {
            long arrivalMs = 10L * i;
            simulator.schedule(
                    arrivalMs,
                    0,
                    "arrival",
                    () -> server.acquire(() -> {
                        waitsMs.add(simulator.nowMs() - arrivalMs);
                        simulator.schedule(15, 0, "departure", server::release);
                    }));
        }
        simulator.run();
        assertThat(waitsMs).containsExactly(0L, 5L, 10L);
        assertThat(trace)
                .containsExactly(
                        "0 SCHEDULED arrival",
                        "0 SCHEDULED arrival",
                        "0 SCHEDULED arrival",
                        "0 EXECUTED arrival",
                        "0 SCHEDULED departure",
                        "10 EXECUTED arrival",
                        "15 EXECUTED departure",
                        "15 SCHEDULED departure",
                        "20 EXECUTED arrival",
                        "30 EXECUTED departure",
                        "30 SCHEDULED departure",
                        "45 EXECUTED departure");
        ReadmeRow.says("D/D/1, three customers: waits (ms)", waitsMs.toString());
    }

    @Test
    void aTraceCanBeWrittenAsText() {
        StringBuilder text = new StringBuilder();
        simulator.addTraceListener(TraceWriter.text(text));
        simulator.schedule(10, 1, "release", () -> {});
        simulator.run();
        assertThat(text.toString().lines())
                .containsExactly(
                        "0 ms: scheduled 'release' for 10 ms, phase 1, number 0",
                        "10 ms: executed 'release' for 10 ms, phase 1, number 0");
        assertThat(text).endsWith("number 0\n");
    }

    @Test
    void aTraceCanBeWrittenAsLinesOfJson() {
        StringBuilder json = new StringBuilder();
        simulator.addTraceListener(TraceWriter.jsonLines(json));
        simulator.schedule(10, -1, "say \"a\\b\"\n\u00e9", () -> {});
        simulator.run();
        assertThat(json)
                .hasToString("{\"clockMs\":0,\"happening\":\"scheduled\",\"label\":\"say \\\"a\\\\b\\\"\\u000a\u00e9\","
                        + "\"timeMs\":10,\"phase\":-1,\"number\":0}\n"
                        + "{\"clockMs\":10,\"happening\":\"executed\",\"label\":\"say \\\"a\\\\b\\\"\\u000a\u00e9\","
                        + "\"timeMs\":10,\"phase\":-1,\"number\":0}\n");
    }

    @Test
    void aTraceThatCannotBeWrittenEndsTheRun() {
        Writer full = new Writer() {
            @Override
            public void write(char[] text, int offset, int length) throws IOException {
                throw new IOException("disk full");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        simulator.addTraceListener(TraceWriter.text(full));
        assertThatThrownBy(() -> simulator.schedule(10, 1, "release", () -> {}))
                .isInstanceOf(UncheckedIOException.class)
                .hasMessage("the trace cannot be written: disk full");
    }
}
