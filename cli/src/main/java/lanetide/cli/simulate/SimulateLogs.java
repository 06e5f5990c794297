package lanetide.cli.simulate;

import java.util.List;
import java.util.Optional;
import lanetide.cli.output.AnswerFile;
import lanetide.cli.output.AnswerStream;
import lanetide.cli.output.CommandFailure;
import lanetide.des.TraceListener;
import lanetide.des.TraceWriter;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.Observers;
import lanetide.squads.watch.ShotObserver;

/** The files that grow while the first playing goes on: they come to their places together, when all of it is done. */
public final class SimulateLogs implements AutoCloseable {
    private static final String JSON_LINES = ".jsonl";

    private final Optional<AnswerStream> shots;
    private final Optional<AnswerStream> trace;
    private final Observers observers;

    private SimulateLogs(Optional<AnswerStream> shots, Optional<AnswerStream> trace, boolean asJson) {
        this.shots = shots;
        this.trace = trace;
        ShotObserver shotObserver =
                shots.<ShotObserver>map(stream -> new ShotCsv(stream.writer())).orElse(ShotObserver.NONE);
        List<TraceListener> listeners = trace
                .<TraceListener>map(
                        stream -> asJson ? TraceWriter.jsonLines(stream.writer()) : TraceWriter.text(stream.writer()))
                .stream()
                .toList();
        this.observers = new Observers(LaneObserver.NONE, shotObserver, listeners);
    }

    public static SimulateLogs open(Optional<AnswerFile> shotFile, Optional<AnswerFile> traceFile) {
        boolean asJson = traceFile
                .filter(file -> file.path().toString().endsWith(JSON_LINES))
                .isPresent();
        Optional<AnswerStream> shots = shotFile.map(AnswerFile::open);
        try {
            return new SimulateLogs(shots, traceFile.map(AnswerFile::open), asJson);
        } catch (CommandFailure e) {
            shots.ifPresent(AnswerStream::close);
            throw e;
        }
    }

    public Observers observers() {
        return observers;
    }

    public void commit() {
        shots.ifPresent(AnswerStream::commit);
        trace.ifPresent(AnswerStream::commit);
    }

    @Override
    public void close() {
        try {
            shots.ifPresent(AnswerStream::close);
        } finally {
            trace.ifPresent(AnswerStream::close);
        }
    }
}
