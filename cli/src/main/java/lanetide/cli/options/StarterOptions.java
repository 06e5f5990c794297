package lanetide.cli.options;

import java.util.EnumMap;
import java.util.Map;
import lanetide.cli.starter.StarterQuestion;
import picocli.CommandLine.Option;

/** What is known of a scenario to begin with before anybody is asked. */
public final class StarterOptions {
    @Option(names = "--name", paramLabel = "TEXT", description = "What the event is called (default: My event).")
    private String name;

    @Option(
            names = "--lanes",
            paramLabel = "RANGE",
            description = "Lanes in use, paired from the left, such as \"1 to 8\" (default: 1 to 8).")
    private String lanes;

    @Option(
            names = "--surface",
            paramLabel = "SURFACE",
            completionCandidates = Candidates.Surfaces.class,
            description = "What the lanes are made of: ${COMPLETION-CANDIDATES} (default: hard-synthetic).")
    private String surface;

    @Option(
            names = "--length",
            paramLabel = "LENGTH",
            description = "Where the oil ends, in ft or m, such as \"40 ft\" (default: 40 ft).")
    private String length;

    @Option(
            names = "--volume",
            paramLabel = "VOLUME",
            description = "Oil on one lane in mL, such as \"24 mL\" (default: 24 mL).")
    private String volume;

    @Option(
            names = "--ratio",
            paramLabel = "RATIO",
            description = "Oil on the middle five boards over that on boards 3 to 7, such as 3:1 (default: 5:1).")
    private String ratio;

    @Option(
            names = "--games",
            paramLabel = "N",
            description = "Games a bowler plays in one squad, from 1 to 100 (default: 4).")
    private String games;

    @Option(
            names = "--practice",
            paramLabel = "TIME",
            description = "Practice before the first game, in min, such as \"10 min\" (default: 10 min).")
    private String practice;

    @Option(
            names = "--rotation",
            paramLabel = "DESIGN",
            completionCandidates = Candidates.Designs.class,
            description = "How groups move over the pairs: ${COMPLETION-CANDIDATES} (default: stay).")
    private String rotation;

    @Option(
            names = "--starts",
            paramLabel = "TIMES",
            description =
                    "When the practice of each squad starts, with commas between, such as 09:00,14:00; at most 8 (default: 19:30).")
    private String starts;

    @Option(
            names = "--oil",
            paramLabel = "OIL",
            completionCandidates = Candidates.Oilings.class,
            description =
                    "Oil before each later squad: fresh (cleaned, then oiled), over (oiled over what is left) or none (default: fresh).")
    private String oil;

    @Option(
            names = "--bowlers",
            paramLabel = "N",
            description = "Bowlers in each squad, spread evenly over the pairs; without --entries (default: 6 a pair).")
    private String bowlers;

    @Option(
            names = "--entries",
            paramLabel = "FILE",
            description =
                    "A CSV table of the bowlers, in the folder of the scenario (default: none; bowlers are drawn by shares).")
    private String entries;

    @Option(
            names = "--partners",
            paramLabel = "COLUMN",
            description =
                    "Title of the column of --entries that names doubles, trios or teams, who bowl together (default: none).")
    private String partners;

    @Option(
            names = "--draw",
            paramLabel = "WHAT",
            completionCandidates = Candidates.Draws.class,
            description = "What the lot decides for bowlers of --entries: ${COMPLETION-CANDIDATES} (default: none).")
    private String draw;

    @Option(
            names = "--cut",
            paramLabel = "NUMBER",
            description = "How many go on, or which share of all, such as 16 or \"25 %%\" (default: none).")
    private String cut;

    @Option(
            names = "--counts",
            paramLabel = "RULE",
            completionCandidates = Candidates.Counts.class,
            description =
                    "What counts at the cut of who is entered in several squads: ${COMPLETION-CANDIDATES} (default: best).")
    private String counts;

    @Option(
            names = "--finals",
            paramLabel = "FORM",
            completionCandidates = Candidates.FinalsForms.class,
            description = "How those meet who make the cut: ${COMPLETION-CANDIDATES} (default: none).")
    private String finals;

    @Option(
            names = "--finals-start",
            paramLabel = "TIME",
            description = "When the finals start (default: 10:00 on the day after the last squad).")
    private String finalsStart;

    /** The answers that were given. */
    public Map<StarterQuestion, String> given() {
        Map<StarterQuestion, String> given = new EnumMap<>(StarterQuestion.class);
        put(given, StarterQuestion.NAME, name);
        put(given, StarterQuestion.LANES, lanes);
        put(given, StarterQuestion.SURFACE, surface);
        put(given, StarterQuestion.LENGTH, length);
        put(given, StarterQuestion.VOLUME, volume);
        put(given, StarterQuestion.RATIO, ratio);
        put(given, StarterQuestion.GAMES, games);
        put(given, StarterQuestion.PRACTICE, practice);
        put(given, StarterQuestion.ROTATION, rotation);
        put(given, StarterQuestion.STARTS, starts);
        put(given, StarterQuestion.OIL, oil);
        put(given, StarterQuestion.BOWLERS, bowlers);
        put(given, StarterQuestion.ENTRIES, entries);
        put(given, StarterQuestion.PARTNERS, partners);
        put(given, StarterQuestion.DRAW, draw);
        put(given, StarterQuestion.CUT, cut);
        put(given, StarterQuestion.COUNTS, counts);
        put(given, StarterQuestion.FINALS, finals);
        put(given, StarterQuestion.FINALS_START, finalsStart);
        return given;
    }

    private static void put(Map<StarterQuestion, String> given, StarterQuestion question, String answer) {
        if (answer != null) {
            given.put(question, answer);
        }
    }
}
