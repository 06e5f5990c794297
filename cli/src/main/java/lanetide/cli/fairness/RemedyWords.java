package lanetide.cli.fairness;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.squads.fairness.RemedyChange;
import lanetide.squads.model.Conditioning;
import lanetide.squads.rotation.design.RotationDesign;

/** Changes that could mend an event, in words. */
public final class RemedyWords {
    private RemedyWords() {}

    /** The kind of a change as programs read it. */
    static String kind(RemedyChange change) {
        return change.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A change, to stand in a table or inside a sentence. */
    public static String of(RemedyChange change) {
        return switch (change.kind()) {
            case AS_IT_IS -> "as it is";
            case ROTATION, OILING, OILING_AND_ROTATION ->
                Stream.concat(
                                change.oiling().map(RemedyWords::oiling).stream(),
                                change.design().map(RemedyWords::rotation).stream())
                        .collect(Collectors.joining(", "));
            case GROUPS -> "groups redrawn: styles and hands evenly";
            case SQUAD_ORDER -> "squads in reverse order";
        };
    }

    private static String oiling(Conditioning oiling) {
        return switch (oiling) {
            case STRIP_AND_OIL -> "fresh oil for every squad";
            case OIL_OVER -> "oil over before every later squad";
            case CLEAN_ENDS -> "cleaning past the end before every squad";
            case NONE -> "no oil before any squad";
        };
    }

    private static String rotation(RotationDesign design) {
        RotationDesigns.Label label = RotationDesigns.labelOf(design);
        return switch (label.name()) {
            case "stay" -> "stay on one pair";
            case "searched" -> "rotation designed by search";
            case "balanced" -> "balanced rotation";
            default -> "move " + label.move() + (label.move() == 1 ? " pair " : " pairs ") + label.name();
        };
    }
}
