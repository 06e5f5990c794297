package lanetide.cli.compare;

import java.util.List;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fairness.Difference;
import tools.jackson.databind.node.ObjectNode;

/** What {@code compare} answers, for programs. */
public final class CompareJson {
    private CompareJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the first scenario as it was read, without errors
     * @param second the second scenario
     * @param replications how often each was played
     * @param sets sets of values that the playings went through in turn
     * @param differences what came of it
     * @return the JSON text
     */
    public static String write(
            Reading reading, Scenario second, int replications, int sets, List<Difference> differences) {
        ObjectNode answer = JsonAnswer.opening(reading);
        JsonAnswer.putDoubts(answer, second.doubts());
        answer.put("otherScenarioSha256", second.sha256());
        answer.put("replications", replications);
        answer.put("sets", sets);
        JsonAnswer.putAll(answer, "differences", differences, CompareJson::difference);
        JsonAnswer.putCautions(answer);
        return JsonAnswer.write(answer);
    }

    private static void difference(ObjectNode node, Difference difference) {
        node.put("quantity", CompareWords.quantity(difference));
        node.put("unit", CompareWords.unit(difference));
        JsonAnswer.put(node, "a", difference.a(), 4);
        JsonAnswer.put(node, "b", difference.b(), 4);
        JsonAnswer.put(node, "difference", difference.difference(), 4);
        JsonAnswer.put(node, "ci95", difference.ci95(), 4);
        JsonAnswer.put(node, "p", difference.p(), 6);
        JsonAnswer.put(node, "signShare", difference.signShare(), 3);
        node.put("isReal", difference.isReal());
        node.put("known", ConstantName.of(difference.known()));
    }
}
