package lanetide.cli.scenario.measured;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.SourceText;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.measured.Measurements;
import lanetide.squads.model.Event;
import lanetide.squads.study.DayClock;

/** Reads the tables of measurements that a scenario names. */
public record MeasuredFiles(NamedFiles files) {
    /**
     * Reads them. Every file is opened whether or not there is an event, but only an event tells what its rows may say.
     *
     * @param scenario the whole file
     * @param event where it was measured; empty if it is faulty
     * @param seed master seed of all chance
     * @param clock when squads of the event are done, if that was played
     * @return what was measured, without what is wrong
     */
    public Measurements read(Section scenario, Optional<Event> event, long seed, Optional<DayClock> clock) {
        Optional<MeasuredReader> reader = event.map(known ->
                new MeasuredReader(known, () -> clock.orElseGet(() -> DayClock.of(known, seed)), Measurements.NONE));
        Set<String> seen = new HashSet<>();
        for (Value name : names(scenario)) {
            Optional<byte[]> bytes = files.read(name);
            if (bytes.isPresent() && !seen.add(SourceText.sha256(bytes.get()))) {
                name.refuse(
                        NoticeCode.TABLE_TWICE,
                        ", and a table before it holds the same; each must be read once. Take one of the two out.");
            } else if (bytes.isPresent() && reader.isPresent()) {
                reader.get().read(files.path(name.plain()), bytes.get(), scenario.notices());
            }
        }
        return reader.map(MeasuredReader::measurements).orElse(Measurements.NONE);
    }

    private static List<Value> names(Section scenario) {
        Optional<Value> written = scenario.value(EventKeys.MEASURED);
        return written.filter(Value::isScalar)
                .map(List::of)
                .orElseGet(() -> written.flatMap(Value::list).orElse(List.of()));
    }
}
