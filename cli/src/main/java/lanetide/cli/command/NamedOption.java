package lanetide.cli.command;

import java.util.List;
import java.util.Map;
import lanetide.cli.scenario.Nearest;

/** Options whose value is a name that a scenario could use. */
final class NamedOption {
    private NamedOption() {}

    /**
     * What a name stands for.
     *
     * @throws CommandFailure if it stands for nothing; the nearest name is offered
     */
    static <T> T of(String option, String typed, Map<String, T> known) {
        T value = known.get(typed);
        if (value == null) {
            String nearest = Nearest.to(typed, known.keySet())
                    .map(name -> " Did you mean `" + name + "`?")
                    .orElse("");
            throw CommandFailure.wrongUse(option + " is `" + typed + "`, which this scenario does not know." + nearest
                    + " It knows " + String.join(", ", known.keySet()) + ".");
        }
        return value;
    }

    /** The same for a list of names. */
    static <T> List<T> all(String option, List<String> typed, Map<String, T> known) {
        return typed.stream().map(name -> of(option, name, known)).toList();
    }
}
