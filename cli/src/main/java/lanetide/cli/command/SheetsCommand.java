package lanetide.cli.command;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import lanetide.cli.doubt.ScoreDoubts;
import lanetide.cli.options.ChangeOptions;
import lanetide.cli.options.CommonOptions;
import lanetide.cli.options.Format;
import lanetide.cli.options.OptionCheck;
import lanetide.cli.options.SetsOption;
import lanetide.cli.output.AnswerFolder;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.preview.StartsStudy;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.sheets.Paper;
import lanetide.cli.sheets.Sheets;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.StudyResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Writes what is printed and handed out. */
@Command(
        name = "sheets",
        customSynopsis = "lanetide sheets [OPTIONS] --into=FOLDER SCENARIO",
        header = "Writes what is printed and handed out",
        description = {
            "Writes lane assignments, the oiling plan for the lane technician and a card for every bowler, each a page (.html) to open in a browser and print from there, on paper or as PDF; the assignments as a table (.csv); and with --first-day a calendar (.ics).",
            "",
            "The files go to FOLDER; their names go to standard output, or to FILE with --out. Progress, warnings and failures go to standard error."
        },
        exitCodeList = {
            HelpText.DONE,
            HelpText.WRONG_SCENARIO,
            HelpText.FILE_TROUBLE,
            HelpText.BROKEN_RULE,
            HelpText.INTERRUPTED
        },
        footer = {
            "  lanetide sheets scenarios/club-night.yaml --into print",
            "  lanetide sheets scenarios/club-final.yaml --into print --paper letter",
            "  lanetide sheets my-event.yaml --into print --first-day 2027-03-06"
        })
public final class SheetsCommand implements Callable<Integer> {
    /**
     * Playings in which every bowler's lanes are read for his card, which takes long: ten lanes for each of his games.
     */
    private static final int PLAYINGS_FOR_CARDS = 6;

    @Mixin
    private CommonOptions options;

    @Mixin
    private SetsOption sets;

    @Mixin
    private ChangeOptions changes;

    @Option(
            names = "--into",
            paramLabel = "FOLDER",
            required = true,
            description = "Folder the files go to; it is made if only its last part is missing. Required.")
    private Path folder;

    @Option(
            names = "--paper",
            paramLabel = "SIZE",
            defaultValue = "a4",
            description = "Size of the paper: a4 or letter (default: a4).")
    private Paper paper;

    @Option(
            names = "--first-day",
            paramLabel = "DATE",
            converter = DayConverter.class,
            description =
                    "Date of the first day, such as 2027-03-06; with it a calendar is written too (default: none is written).")
    private LocalDate firstDay;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "40",
            description =
                    "How often the event is played, from 1 to 100000; the calendar ends a squad when its latest one did, and cards rest on the first six (default: 40).")
    private int replications;

    @Override
    public Integer call() {
        OptionCheck.requireReplications(replications, 1);
        if (options.format() != Format.TEXT) {
            throw CommandFailure.wrongUse("sheets writes files of its own forms; leave --format out.");
        }
        options.threads(); // a wrong number is told before the next
        AnswerFolder into = options.folder(folder, Sheets.names(firstDay != null));
        return options.answer((reading, scenario) -> {
            Map<String, String> files = write(reading, changes.changed(scenario));
            into.write(files);
            return files.keySet().stream()
                    .map(name -> folder.resolve(name) + "\n")
                    .collect(Collectors.joining());
        });
    }

    private Map<String, String> write(Reading reading, Scenario scenario) {
        StartsStudy starts =
                new StartsStudy(scenario, Math.min(replications, PLAYINGS_FOR_CARDS), sets.of(replications));
        StudyResult study = options.progressing(
                "playings",
                replications,
                told -> EventStudy.watched(
                        new PossibleEvents(scenario.withFinals(), sets.of(replications)),
                        scenario.seed(),
                        replications,
                        options.threads(),
                        told,
                        starts::observers));
        Reading judged = options.doubting(ScoreDoubts.told(reading.with(scenario), study));
        return Sheets.write(
                judged.scenario().orElseThrow(), study, starts.forecasts(), paper, Optional.ofNullable(firstDay));
    }

    /** Reads a date (ISO 8601). */
    static final class DayConverter implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeException e) {
                throw new TypeConversionException("`" + text + "` must be a date such as 2027-03-06");
            }
        }
    }
}
