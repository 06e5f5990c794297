package lanetide.cli.fit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.squads.fit.Fit;
import lanetide.squads.fit.FitDay;
import lanetide.squads.fit.FitPlan;
import lanetide.squads.model.Costs;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;
import lanetide.squads.recondition.ReoilPlan;
import lanetide.squads.recondition.ReoilStudy;
import lanetide.squads.study.EventStudy;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Playings;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.StudyResult;
import lanetide.squads.unknown.ValueSets;
import lanetide.squads.watch.Observers;

/** A day with a reading or two of every kind, small enough to be fitted in a test. */
public final class SmallDay {
    /** One pair, one squad of two bowlers of one kind, two games. */
    public static final String SCENARIO = """
            name: Small day
            seed: 1
            centre:
              lanes: 1 to 2
              surface: hard-synthetic
            pattern: {name: House, length: 40 ft, volume: 24 mL, ratio: 5:1}
            games: 2
            practice: 0 min
            squads:
              - {id: A, start: "18:00", oil: fresh}
            entries:
              - {id: Anchor, hand: right, style: stroker, level: league, cover: urethane}
              - {id: Leadoff, hand: right, style: stroker, level: league, cover: urethane}
            measured: [tapes.csv, balls.csv, scores.csv, ends.csv]
            """;

    /** Its tapes: lane 1 has too much oil in the heads. */
    public static final String TAPES = """
            lane,after,distance,board,units
            1,fresh,8,20,38
            1,fresh,22,20,9
            1,fresh,38,20,4
            2,fresh,8,20,29
            1,all,8,20,31
            2,all,38,20,5
            """;

    private static final String BALLS = """
            lane,bowler,laydown,arrows,met,speed
            1,Anchor,14,11,17.5,17
            2,Anchor,14,11,16.5,
            """;

    private static final String SCORES = """
            game,bowler,score
            1,Anchor,187
            2,Anchor,201
            1,Leadoff,160
            2,Leadoff,148
            """;

    private static final String ENDS = """
            game,ended
            1,18:11
            2,18:22
            """;

    /** The fewest sets that a fit takes. */
    private static final int SETS = 20;

    private SmallDay() {}

    /** Writes the scenario as {@code small.yaml}, and its tables beside it. */
    public static Path write(Path folder) throws IOException {
        Files.writeString(folder.resolve("tapes.csv"), TAPES);
        Files.writeString(folder.resolve("balls.csv"), BALLS);
        Files.writeString(folder.resolve("scores.csv"), SCORES);
        Files.writeString(folder.resolve("ends.csv"), ENDS);
        return Files.writeString(folder.resolve("small.yaml"), SCENARIO);
    }

    /** The day read, from a folder to which it was written. */
    static Reading read(Path folder) throws IOException {
        Path file = folder.resolve("small.yaml");
        return new ScenarioReader(OptionalLong.empty()).read(file.toString(), Files.readAllBytes(file));
    }

    /** The day fitted, from few sets. */
    public static FitAnswer fitted(Path folder, int threads) throws IOException {
        write(folder);
        Reading reading = read(folder);
        Scenario day = reading.scenario().orElseThrow();
        return new FitAnswer(
                reading,
                List.of(day),
                Fit.run(
                        List.of(new FitDay(day.event(), day.measurements())),
                        ValueSets.shipped().subList(0, SETS),
                        new FitPlan(day.seed(), threads),
                        done -> {}),
                Optional.empty());
    }

    /** The same with what it changes, over very few playings. */
    public static FitAnswer told(Path folder) throws IOException {
        FitAnswer answer = fitted(folder, 1);
        Event event = answer.scenario().event();
        Findings known = new Findings(answer.result().sets(), List.of(), List.of());
        return new FitAnswer(
                answer.reading(),
                answer.days(),
                answer.result(),
                Optional.of(new FitChanges(
                        played(event), played(event.in(event.centre().with(known))))));
    }

    private static FitChanges.Told played(Event event) {
        PossibleEvents events = new PossibleEvents(event, 2);
        Execution execution = Execution.on(1);
        StudyResult study = EventStudy.run(events, 1, Playings.fixed(4), execution, done -> {}, Observers.NONE);
        ReoilPlan plan = new ReoilPlan(1, 4, 6, 2, 1.5, Costs.USUAL);
        return new FitChanges.Told(study, ReoilStudy.run(events, plan, execution, done -> {}));
    }
}
