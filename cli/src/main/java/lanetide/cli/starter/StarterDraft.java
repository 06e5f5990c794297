package lanetide.cli.starter;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.Severity;

/** A scenario to begin with while it is being asked for: what is answered, and the usual for all else. Immutable. */
public final class StarterDraft {
    /** The answer of those who have no table of bowlers, no draw, no partners, no cut or no finals. */
    static final String NONE = "none";

    private static final Pattern DAY = Pattern.compile("day (\\d{1,2}) .*");

    private static final int DEFAULT_BOWLERS_ON_A_PAIR = 6;

    private final Map<StarterQuestion, String> answers;
    private final String file;

    /**
     * A draft.
     *
     * @param answers what is known
     * @param file where the scenario will be; its tables are looked for beside it
     */
    public StarterDraft(Map<StarterQuestion, String> answers, String file) {
        this.answers = new EnumMap<>(StarterQuestion.class);
        this.answers.putAll(answers);
        this.file = file;
    }

    /** The draft with one more answer. */
    StarterDraft with(StarterQuestion question, String answer) {
        StarterDraft more = new StarterDraft(answers, file);
        more.answers.put(question, answer);
        return more;
    }

    /** Whether an answer is missing that makes a difference. */
    boolean lacks(StarterQuestion question) {
        return !answers.containsKey(question)
                && switch (question) {
                    case OIL -> starts() > 1;
                    case PARTNERS -> has(StarterQuestion.ENTRIES);
                    case BOWLERS -> !has(StarterQuestion.ENTRIES);
                    case COUNTS -> has(StarterQuestion.CUT) && has(StarterQuestion.ENTRIES) && starts() > 1;
                    case FINALS -> has(StarterQuestion.CUT);
                    case FINALS_START -> has(StarterQuestion.CUT) && has(StarterQuestion.FINALS);
                    default -> true;
                };
    }

    /** What was answered, else the usual. */
    String answer(StarterQuestion question) {
        if (answers.containsKey(question)) {
            return answers.get(question);
        }
        return switch (question) {
            case BOWLERS -> String.valueOf(DEFAULT_BOWLERS_ON_A_PAIR * pairs());
            case FINALS_START -> "day " + (lastDay() + 1) + " 10:00";
            default -> question.otherwise();
        };
    }

    private boolean has(StarterQuestion question) {
        return !answer(question).equals(NONE);
    }

    /** The day on which the last squad starts. */
    private int lastDay() {
        String[] starts = answer(StarterQuestion.STARTS).split(",", -1);
        Matcher day = DAY.matcher(starts[starts.length - 1].strip());
        return day.matches() ? Integer.parseInt(day.group(1)) : 1;
    }

    /** The scenario in YAML. */
    public String text() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (StarterQuestion question : StarterQuestion.values()) {
            String answer = answer(question);
            texts.put(
                    question.key(), answer.equals(NONE) && question.otherwise().equals(NONE) ? "" : answer);
        }
        return Starter.write(texts);
    }

    /** What a reader makes of it. */
    public Reading reading() {
        return new ScenarioReader(OptionalLong.empty()).read(file, text().getBytes(StandardCharsets.UTF_8));
    }

    /** What keeps it from being played. */
    public List<Notice> errors() {
        return reading().notices().stream()
                .filter(notice -> notice.severity() == Severity.ERROR)
                .toList();
    }

    /** How many squads it has. */
    public int starts() {
        return answer(StarterQuestion.STARTS).split(",", -1).length;
    }

    /** Pairs of the lanes that were answered; one bowler can play on whatever is left of them. */
    private int pairs() {
        return with(StarterQuestion.BOWLERS, "1")
                .reading()
                .scenario()
                .map(scenario -> scenario.event().centre().pairs().size())
                .orElse(1);
    }
}
