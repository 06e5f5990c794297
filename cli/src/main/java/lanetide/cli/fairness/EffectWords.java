package lanetide.cli.fairness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Table;
import lanetide.cli.words.English;
import lanetide.cli.words.UnknownWords;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.EffectKind;
import lanetide.squads.fairness.Evenness;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.Verdict;
import lanetide.squads.model.Event;

/** Advantages in words. */
public final class EffectWords {
    /** What a verdict takes no account of. */
    public static final String LEFT_OUT =
            "The schedule is judged, not the day: the scenario's breaks, changes and incidents are left out.";

    private EffectWords() {}

    /**
     * What is to be kept in mind where squads may not bowl against each other.
     *
     * @param event the event
     * @return a few sentences; empty unless squads are drawn from fields with other shares
     */
    public static Optional<String> acrossFields(Event event) {
        long fields = event.squads().stream()
                .flatMap(squad -> squad.field().stream())
                .map(drawn -> List.of(
                        drawn.mix().hands(),
                        drawn.mix().styles(),
                        drawn.mix().levels(),
                        drawn.mix().covers()))
                .distinct()
                .count();
        return fields < 2
                ? Optional.empty()
                : Optional.of("The squads are drawn from " + fields
                        + " different fields, and are compared as if all bowled for"
                        + " the same prizes. Where they do not, as the leagues of a week, only what is told of pairs and of"
                        + " groups within one squad counts.");
    }

    /** Who has it, to begin or go on with in a sentence. */
    public static String who(Effect effect) {
        return switch (effect.kind()) {
            case SQUAD -> "squad " + effect.id();
            case PAIR -> "whoever starts on pair " + effect.id();
            case GROUP -> "group " + effect.id();
            case HAND -> effect.id() + "-handers";
            case STYLE -> effect.id() + " players";
        };
    }

    /** How much it is. */
    public static String howMuch(Effect effect) {
        double pins = Math.abs(effect.advantagePins());
        String size = Figures.fixed(pins, 1) + (Figures.fixed(pins, 1).equals("1.0") ? " pin" : " pins") + " a game";
        return size + (effect.advantagePins() < 0 ? " too few" : " too many") + ", 90 % interval " + interval(effect);
    }

    /** Who has it and how much it is, to go on with in a sentence. */
    public static String inWords(Effect effect) {
        return who(effect) + ": " + howMuch(effect);
    }

    /** The same as a sentence. */
    public static String sentence(Effect effect) {
        return English.capital(inWords(effect)) + ".";
    }

    /** Those to whom an event is not fair, the worst off first. */
    public static List<Effect> unfair(FairnessResult result) {
        return result.effects().stream()
                .filter(effect -> effect.verdict() == Verdict.UNFAIR)
                .sorted(Comparator.comparingDouble(Effect::advantagePins))
                .toList();
    }

    public static String interval(Effect effect) {
        return Figures.signedInterval(effect.ci90(), 1);
    }

    public static String verdict(Verdict verdict) {
        return ConstantName.of(verdict);
    }

    /** The effects of a kind as a table under some heads. */
    public static List<List<String>> rows(FairnessResult result, EffectKind kind, List<String> head) {
        return Table.rows(
                head,
                result.effects().stream()
                        .filter(effect -> effect.kind() == kind)
                        .toList(),
                effect -> {
                    List<String> row = new ArrayList<>(List.of(
                            effect.id(),
                            String.valueOf(effect.bowlers()),
                            Figures.signed(effect.advantagePins(), 1),
                            interval(effect)));
                    if (result.sets() > 1) {
                        row.add(Figures.signedInterval(effect.luck90(), 1));
                        row.add(UnknownWords.share(effect.signShare()));
                    }
                    row.add(verdict(effect.verdict()));
                    return row;
                });
    }

    /** The head of such a table, whose first column is called as given. */
    public static List<String> head(String first, FairnessResult result) {
        return result.sets() == 1
                ? List.of(first, "bowlers", "pins a game", "90 % interval", "verdict")
                : List.of(first, "bowlers", "pins a game", "90 % interval", "luck alone", "same sign in", "verdict");
    }

    /** How evenly advantages are spread over the groups, in two sentences or so. */
    public static List<String> evenness(Evenness evenness) {
        return List.of(
                "From the worst to the best placed group, whichever that is: " + Figures.fixed(evenness.spreadPins(), 1)
                        + " pins a game. So much would the worst placed gain in the best place; the mean group would gain "
                        + Figures.fixed(evenness.meanEnvyPins(), 1) + ".",
                "Of the advantage over the worst placed group: Jain's index " + Figures.fixed(evenness.jain(), 2)
                        + " (1 is even), Gini's coefficient " + Figures.fixed(evenness.gini(), 2)
                        + " (0 is even). They say how it is shared, not how large it is.");
    }

    public static String kind(EffectKind kind) {
        return ConstantName.of(kind);
    }

    /** The heading of a table, which says what the numbers in it mean. */
    public static String heading(EffectKind kind) {
        return switch (kind) {
            case SQUAD -> "Squads: what playing in one is worth, whoever plays";
            case PAIR -> "Starting pairs: what starting there is worth, whoever starts, over all squads";
            case GROUP -> "Groups: what a place in the draw is worth, against the same bowlers over all seats";
            case HAND -> "Hands: what delivering from a side is worth, whoever does";
            case STYLE -> "Styles: what the change of the lanes gives to a style, against the whole field";
        };
    }
}
