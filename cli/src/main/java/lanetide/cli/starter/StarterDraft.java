package lanetide.cli.starter;

import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.Severity;

/** A scenario to begin with while it is being asked for: what is answered, and the usual for all else. Immutable. */
public final class StarterDraft {
    /** The answer of those who have no table of bowlers. */
    static final String NO_TABLE = "none";

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
                    case BOWLERS -> answer(StarterQuestion.ENTRIES).equals(NO_TABLE);
                    default -> true;
                };
    }

    /** What was answered, else the usual. */
    String answer(StarterQuestion question) {
        String usual = question == StarterQuestion.BOWLERS && !answers.containsKey(question)
                ? String.valueOf(DEFAULT_BOWLERS_ON_A_PAIR * pairs())
                : question.otherwise();
        return answers.getOrDefault(question, usual);
    }

    /** The scenario in YAML. */
    public String text() {
        Map<String, String> texts = new LinkedHashMap<>();
        for (StarterQuestion question : StarterQuestion.values()) {
            texts.put(question.key(), answer(question));
        }
        texts.computeIfPresent(StarterQuestion.ENTRIES.key(), (key, table) -> table.equals(NO_TABLE) ? "" : table);
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
