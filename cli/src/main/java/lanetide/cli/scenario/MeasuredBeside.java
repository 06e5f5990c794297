package lanetide.cli.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import lanetide.cli.scenario.measured.MeasuredReader;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import lanetide.cli.scenario.value.SourceText;
import lanetide.squads.measured.Measurements;

/**
 * A table of measurements that a scenario does not name.
 *
 * @param file where it was read
 * @param bytes its bytes; of a file larger than {@link ScenarioReader#MAX_BYTES}, one more than that will do
 */
@SuppressWarnings("ArrayRecordComponent") // nobody asks whether two of them are alike
public record MeasuredBeside(Path file, byte[] bytes) {
    /**
     * Adds what such tables hold to what a scenario names itself.
     *
     * @param reading a scenario without errors
     * @param tables the tables, in the order in which they are read
     * @return the scenario with all measurements, or without a scenario if a table has errors; its notices, hashes and
     *     inputs are those of the scenario and, behind them, of the tables
     */
    public static Reading add(Reading reading, List<MeasuredBeside> tables) {
        Scenario scenario = reading.scenario().orElseThrow();
        Notices notices = new Notices(scenario.file());
        MeasuredReader reader = new MeasuredReader(scenario.event(), scenario::clock, scenario.measurements());
        Map<String, String> sha256 = new TreeMap<>(reading.namedFiles());
        for (MeasuredBeside table : tables) {
            String hash = SourceText.sha256(table.bytes());
            if (sha256.containsValue(hash)) {
                twice(table, notices);
            } else {
                sha256.put(nameAmong(sha256, table.file()), hash);
                reader.read(table.file().toString(), table.bytes(), notices);
            }
        }
        Measurements all = reader.measurements();
        List<Notice> told = new ArrayList<>(reading.notices());
        told.addAll(notices.list());
        return new Reading(
                reading.sha256(),
                sha256,
                Stream.concat(reading.inputs().stream(), tables.stream().map(MeasuredBeside::file))
                        .toList(),
                notices.hasErrors() ? Optional.empty() : Optional.of(scenario.with(all)),
                told,
                reading.source());
    }

    private static void twice(MeasuredBeside table, Notices notices) {
        String name = Notices.quote(table.file().toString());
        notices.in(table.file().toString())
                .add(
                        NoticeCode.TABLE_TWICE,
                        Place.START,
                        "",
                        name,
                        "The table `" + name
                                + "` holds the same as one that is read already; each must be read once. Leave it out.");
    }

    /** The file's name without its folder, numbered where another file has it. */
    private static String nameAmong(Map<String, String> names, Path file) {
        String name = file.getFileName().toString();
        String free = name;
        for (int number = 2; names.containsKey(free); number++) {
            free = name + " (" + number + ")";
        }
        return free;
    }
}
