package lanetide.cli.check;

import lanetide.cli.report.ConstantName;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.entries.DrawnTraits;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.scenario.notice.Severity;
import tools.jackson.databind.node.ObjectNode;

/** What {@code check} answers, for programs. */
public final class CheckJson {
    private CheckJson() {}

    /**
     * Writes the answer for programs.
     *
     * @param reading what came of reading the scenario
     * @return the JSON text
     */
    public static String write(Reading reading) {
        ObjectNode answer = JsonAnswer.opening(reading);
        answer.put("errors", reading.count(Severity.ERROR));
        answer.put("warnings", reading.count(Severity.WARNING));
        JsonAnswer.putAll(answer, "notices", reading.notices(), (node, notice) -> {
            node.put("code", notice.code().code());
            node.put("severity", ConstantName.of(notice.severity()));
            node.put("file", notice.file());
            node.put("line", notice.line());
            node.put("column", notice.column());
            node.put("field", notice.field());
            node.put("value", notice.value());
            node.put("limit", notice.limit());
            node.put("message", notice.message());
        });
        reading.scenario()
                .map(Scenario::changes)
                .filter(changes -> !changes.isEmpty())
                .ifPresent(changes -> changes.forEach(answer.putArray("changes")::add));
        reading.scenario()
                .map(Scenario::drawn)
                .filter(entries -> !entries.sayAll())
                .ifPresent(entries -> write(answer.putObject("entries"), entries));
        return JsonAnswer.write(answer);
    }

    /** What of how many bowlers the entries leave open. */
    private static void write(ObjectNode node, DrawnTraits entries) {
        node.put("bowlers", entries.bowlers());
        node.put("levelByAverage", entries.byAverage());
        ObjectNode drawn = node.putObject("drawn");
        for (Trait trait : Trait.values()) {
            drawn.put(trait.id(), entries.count(trait));
        }
    }
}
