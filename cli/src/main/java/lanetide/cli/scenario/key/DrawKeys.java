package lanetide.cli.scenario.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.cli.scenario.key.Form.Choice;

/** Keys of how listed bowlers are drawn into squads and groups. */
public final class DrawKeys {
    /** The draw. */
    public static final Block DRAW = new Block("draw");

    public static final Key<Boolean> HANDS = rule("hands", "left-handers");
    public static final Key<Boolean> STYLES = rule("styles", "playing styles");
    public static final Key<Boolean> AVERAGES = rule("averages", "averages, as far as they are listed");
    public static final Key<Boolean> SQUADS = DRAW.key(
                    "squads",
                    new Choice<>("rule for squads", squads()),
                    "where entries that name no squad go: drawn into squads by lot, or each must have its own named")
            .usual("drawn", false);
    public static final Key<Long> SEED = DRAW.key(
                    "seed", EventKeys.SEEDS, "of the draw alone, which then stays whatever seed is played with")
            .optional("7", "the event's");

    private DrawKeys() {}

    private static Key<Boolean> rule(String name, String what) {
        return DRAW.key(
                        name,
                        new Choice<>("rule", rules()),
                        "whether " + what + " are spread over the groups of a squad")
                .usual(true);
    }

    private static Map<String, Boolean> squads() {
        Map<String, Boolean> rules = new LinkedHashMap<>();
        rules.put("drawn", true);
        rules.put("named", false);
        return Collections.unmodifiableMap(rules);
    }

    private static Map<String, Boolean> rules() {
        Map<String, Boolean> rules = new LinkedHashMap<>();
        rules.put("even", true);
        rules.put("free", false);
        return Collections.unmodifiableMap(rules);
    }
}
