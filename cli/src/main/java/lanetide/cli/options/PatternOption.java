package lanetide.cli.options;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.film.OilPattern;
import picocli.CommandLine.Option;

/** Which of a scenario's patterns is asked for. */
public final class PatternOption {
    @Option(
            names = "--pattern",
            paramLabel = "NAME",
            description =
                    "The pattern of that name, where squads or lanes have several (default: one after the other).")
    private String name;

    /**
     * The scenario for each pattern that is asked for, as if it lay on all lanes before every squad.
     *
     * @param scenario the scenario
     * @return itself where it has one pattern
     * @throws CommandFailure if it has none of that name
     */
    public List<Scenario> chosen(Scenario scenario) {
        Map<String, OilPattern> known = new LinkedHashMap<>();
        scenario.event().patterns().forEach(pattern -> known.put(pattern.id(), pattern));
        Optional<OilPattern> asked = Optional.ofNullable(name).map(id -> NamedOption.of("--pattern", id, known));
        if (known.size() == 1) {
            return List.of(scenario);
        }
        return known.values().stream()
                .filter(pattern -> asked.isEmpty() || asked.get().equals(pattern))
                .map(pattern -> scenario.with(scenario.event().on(pattern)))
                .toList();
    }

    /**
     * The one that is asked for, of an answer that is a table of one pattern.
     *
     * @param chosen what {@link #chosen} gives
     * @return the only one
     * @throws CommandFailure if there are several
     */
    public static Scenario only(List<Scenario> chosen) {
        if (chosen.size() > 1) {
            throw CommandFailure.wrongUse("--format csv holds one pattern, and the scenario has "
                    + String.join(
                            ", ",
                            chosen.stream()
                                    .map(each -> each.event().pattern().id())
                                    .toList())
                    + ". Name one with --pattern.");
        }
        return chosen.get(0);
    }
}
