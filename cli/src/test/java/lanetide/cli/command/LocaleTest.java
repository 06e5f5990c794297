package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Stream;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Same scenario, same bytes: nothing follows the language, the digits or the time zone of the machine. On machines that
 * differ in more: {@link SameBytesTest}.
 */
class LocaleTest {
    private static final List<String> LOCALES = List.of("ar-EG", "fa-IR", "th-TH-u-nu-thai", "tr-TR");
    private static final String PLAYED = " SCENARIO --quiet --replications 2";
    private static final List<String> LINES = List.of(
            "simulate" + PLAYED + " --shot-log INTO/shots.csv --trace INTO/trace.txt",
            "simulate" + PLAYED + " --format json",
            "simulate" + PLAYED + " --format csv",
            "fairness" + PLAYED + " --remedies 0 --bounds 2",
            "reoil" + PLAYED + " --games 3",
            "lines SCENARIO --style stroker --hand left",
            "pattern SCENARIO",
            "rotate SCENARIO --format csv --dot INTO/map.dot --graphml INTO/map.graphml",
            "preview" + PLAYED,
            "report" + PLAYED + " --fairness 2 --remedies 2 --reoil 2 -o INTO/page.html",
            "sheets" + PLAYED + " --into INTO/print --first-day 2027-03-06",
            "check SCENARIO",
            "check SCENARIO --format json",
            "check " + Scenarios.FOLDER.resolve("faulty/group-zero.yaml"),
            "check " + Scenarios.FOLDER.resolve("faulty/control-character.yaml"),
            "check " + Scenarios.FOLDER.resolve("faulty/rotation-repeats.yaml"),
            "schema scenario",
            "completion bash");

    @TempDir
    Path folder;

    /** Any locale will do for the tests that follow, since nothing hangs on it. */
    @AfterEach
    void leaveTheMachine() {
        Locale.setDefault(Locale.ROOT);
        TimeZone.setDefault(null);
    }

    @Test
    void answersAboutOnePairAreTheSame() throws IOException {
        assertSameBytes("one-pair.yaml");
    }

    /** In Turkish the capital of i is no I, by which a library would sort the options of a command. */
    @Test
    void helpIsTheSameOnATurkishMachine() {
        String turkish = "-Duser.language=tr -Duser.country=TR";

        Program.Outcome help = new Shell(folder).run("lanetide simulate --help", Map.of("JDK_JAVA_OPTIONS", turkish));

        assertThat(help.out()).isEqualTo(Program.run("simulate", "--help").out());
    }

    private void assertSameBytes(String scenario) throws IOException {
        Map<String, String> here = answers("en-US", "UTC", scenario);
        for (String locale : LOCALES) {
            Map<String, String> there = answers(locale, "Asia/Kathmandu", scenario);

            assertThat(there).as(locale).containsOnlyKeys(here.keySet());
            here.forEach((what, bytes) ->
                    assertThat(there.get(what)).as("%s: %s", locale, what).isEqualTo(bytes));
        }
    }

    /** What every command prints and writes, by command line and by file. */
    private Map<String, String> answers(String locale, String zone, String scenario) throws IOException {
        Locale.setDefault(Locale.forLanguageTag(locale));
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        Map<String, String> answers = new LinkedHashMap<>();
        for (String line : LINES) {
            Object[] words = Stream.of(line.split(" "))
                    .map(word -> word.replace(
                            "SCENARIO", Scenarios.FOLDER.resolve(scenario).toString()))
                    .map(word -> word.replace("INTO", folder.toString()))
                    .toArray();
            Program.Outcome outcome = Program.run(words);
            assertThat(outcome.exitCode()).as(line + outcome.err()).isLessThan(ExitCode.FILE_TROUBLE);
            answers.put(line, outcome.exitCode() + outcome.out() + outcome.err());
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                answers.put(folder.relativize(file).toString(), Files.readString(file));
            }
        }
        return answers;
    }
}
