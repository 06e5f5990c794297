package lanetide.cli.starter;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.ScenarioFile;
import lanetide.cli.report.Page;
import lanetide.cli.scenario.notice.Notice;

/**
 * Asks a person for what a scenario to begin with lacks. An answer that makes no scenario is told why, and asked for
 * again.
 */
public final class Interview {
    private final BufferedReader in;
    private final PrintWriter out;

    /**
     * An interview.
     *
     * @param in where answers come from, one a line
     * @param out where questions go
     */
    public Interview(Reader in, PrintWriter out) {
        this.in = new BufferedReader(in);
        this.out = out;
    }

    /**
     * Asks for all that a draft lacks.
     *
     * @throws CommandFailure if the input ends before the last answer
     */
    public StarterDraft complete(StarterDraft given) {
        StarterDraft draft = given;
        for (StarterQuestion question : StarterQuestion.values()) {
            if (draft.lacks(question)) {
                draft = ask(draft, question);
            }
        }
        return draft;
    }

    private StarterDraft ask(StarterDraft draft, StarterQuestion question) {
        while (true) {
            String usual = draft.answer(question);
            out.print(question.words() + " [" + usual + "]: ");
            out.flush();
            String line = line();
            StarterDraft answered = draft.with(question, line.isBlank() ? usual : line.strip());
            List<String> faults = faults(draft, answered);
            if (faults.isEmpty()) {
                return answered;
            }
            Page page = new Page();
            faults.forEach(page::item);
            out.print(page.text());
        }
    }

    private String line() {
        try {
            String line = in.readLine();
            if (line == null) {
                out.println();
                throw CommandFailure.wrongUse("The answers ended before the last question; nothing was written.");
            }
            return line;
        } catch (IOException e) {
            throw CommandFailure.fileTrouble("The answers cannot be read (" + ScenarioFile.reason(e) + ").");
        }
    }

    /** What is wrong now and was not wrong before. */
    private static List<String> faults(StarterDraft before, StarterDraft now) {
        if (now.starts() > Starter.MAX_SQUADS) {
            return List.of(tooManySquads());
        }
        Set<String> known = before.errors().stream().map(Interview::kind).collect(Collectors.toSet());
        return now.errors().stream()
                .filter(error -> !known.contains(kind(error)))
                .map(Notice::message)
                .distinct()
                .toList();
    }

    public static String tooManySquads() {
        return "There are more than " + Starter.MAX_SQUADS + " times; add further squads to the file by hand.";
    }

    private static String kind(Notice notice) {
        return notice.code() + " " + notice.field();
    }
}
