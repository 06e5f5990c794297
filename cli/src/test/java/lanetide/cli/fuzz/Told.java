package lanetide.cli.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/** What an answer may say, whatever was asked; and what was found so far that it may not. */
final class Told {
    /** The words in which a program talks to programmers, and numbers that are none. */
    private static final List<String> UNSAID =
            List.of("\tat ", "Exception", "java.", "NaN", "Infinity", "\u221e", "Optional[");

    /** A sentence that also says what to try is longer (letters). */
    private static final int SHORTEST_ADVICE = 40;

    private static final int FAILURES_TOLD = 10;
    private static final int LONGEST_FAILURE = 6_000;

    private final List<String> failures = new ArrayList<>();

    /** Looks at one scenario. */
    interface Look {
        void look() throws Exception;
    }

    /** Looks and goes on, whatever comes. */
    void look(String what, Look look) throws Exception {
        try {
            look.look();
        } catch (AssertionError | RuntimeException e) {
            String why = String.valueOf(e);
            failures.add(what + "\n" + why.substring(0, Math.min(why.length(), LONGEST_FAILURE)));
        }
    }

    void noneFailed(String asked) {
        assertThat(failures.stream().limit(FAILURES_TOLD).toList())
                .as("%d failures; %s", failures.size(), asked)
                .isEmpty();
    }

    static void said(String answer, String what) {
        for (String word : UNSAID) {
            int at = answer.indexOf(word);
            assertThat(at < 0 ? "" : answer.substring(Math.max(0, at - 200), Math.min(answer.length(), at + 100)))
                    .as("%s in the answer to %s", word, what)
                    .isEmpty();
        }
    }

    static void finite(JsonNode node, String what) {
        if (node.isNumber()) {
            assertThat(node.doubleValue()).as(what).isFinite();
        }
        node.forEach(child -> finite(child, what));
    }

    /** Every notice has a place, and tells what must be or what to try. */
    static void notices(JsonNode answer, String what) {
        for (JsonNode notice : answer.get("notices")) {
            assertThat(notice.get("line").asInt()).as(what).isPositive();
            assertThat(notice.get("column").asInt()).as(what).isPositive();
            assertThat(notice.get("file").asString()).as(what).isNotEmpty();
            assertThat(notice.get("message").asString()).as(what).endsWith(".").doesNotContain(UNSAID);
            boolean tellsWhatMustBe = !notice.get("limit").asString().isEmpty()
                    || notice.get("message").asString().length() > SHORTEST_ADVICE;
            assertThat(tellsWhatMustBe).as("advice: %s in %s", notice, what).isTrue();
        }
    }
}
