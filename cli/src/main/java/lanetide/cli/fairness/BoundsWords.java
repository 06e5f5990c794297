package lanetide.cli.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.report.Figures;
import lanetide.cli.words.English;
import lanetide.squads.fairness.Bounds;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.fairness.FairnessResult;

/** In words what a verdict owes to how bowlers are reckoned to follow the lanes. */
public final class BoundsWords {
    private BoundsWords() {}

    static String explanation(Bounds bounds, int sets) {
        String holds = sets == 1
                ? "The intervals hold the luck of play alone."
                : "How bowlers follow the lanes is among what the intervals hold, as far as it was thought possible.";
        return holds + " Beside that the event was also played " + bounds.rounds()
                + " rounds with bowlers who never move, and " + bounds.rounds()
                + " with bowlers who see the oil. The truth lies between; no fact tells where."
                + (bounds.asUsual().isEmpty() ? "" : " As many were played with the usual values.");
    }

    /** What turns round between the bounds, or that nothing does. */
    public static List<String> sentences(FairnessResult result, Bounds bounds) {
        return turns(result, bounds)
                ? turning(result, bounds).map(effect -> turned(effect, bounds)).toList()
                : List.of("Between them no squad and no style is shown to change sides.");
    }

    /** Whether anything turns round. */
    static boolean turns(FairnessResult result, Bounds bounds) {
        return turning(result, bounds).findAny().isPresent();
    }

    private static Stream<Effect> turning(FairnessResult result, Bounds bounds) {
        return result.effects().stream().filter(effect -> hasBounds(effect.kind()) && bounds.mayTurnRound(effect));
    }

    private static String turned(Effect effect, Bounds bounds) {
        return English.capital(EffectWords.who(effect)) + ": " + pins(effect)
                + " pins a game as bowlers are reckoned to follow the lanes, " + pins(bounds.ifNobodyMoves(effect))
                + " if nobody moves, " + pins(bounds.ifAllKnow(effect))
                + " if all know. Who is better off hangs on that guess: take no side by this answer alone.";
    }

    private static String pins(Effect effect) {
        return Figures.signed(effect.advantagePins(), 1);
    }

    /** Squads and styles have them beside each row. */
    static boolean hasBounds(EffectKind kind) {
        return kind == EffectKind.SQUAD || kind == EffectKind.STYLE;
    }

    /** The rows of a table with columns more where the kind has bounds; the first row is the head. */
    static List<List<String>> beside(List<List<String>> rows, FairnessResult result, EffectKind kind, Bounds bounds) {
        if (!hasBounds(kind)) {
            return rows;
        }
        List<Effect> effects = result.effects().stream()
                .filter(effect -> effect.kind() == kind)
                .toList();
        List<List<String>> wider = new ArrayList<>();
        boolean usual = !bounds.asUsual().isEmpty();
        wider.add(with(rows.get(0), heads(usual)));
        for (int i = 0; i < effects.size(); i++) {
            Effect effect = effects.get(i);
            List<String> beside =
                    new ArrayList<>(List.of(pins(bounds.ifNobodyMoves(effect)), pins(bounds.ifAllKnow(effect))));
            bounds.asUsual(effect).map(BoundsWords::pins).ifPresent(beside::add);
            wider.add(with(rows.get(i + 1), beside));
        }
        return wider;
    }

    private static List<String> heads(boolean usual) {
        return usual
                ? List.of("if nobody moves", "if all know", "usual values")
                : List.of("if nobody moves", "if all know");
    }

    private static List<String> with(List<String> row, List<String> beside) {
        List<String> wider = new ArrayList<>(row);
        wider.addAll(beside);
        return wider;
    }
}
