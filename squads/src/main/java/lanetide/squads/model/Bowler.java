package lanetide.squads.model;

import java.util.Optional;
import lanetide.oilflow.Require;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.score.ScoreCard;

/**
 * One bowler.
 *
 * @param id name, alone in the squad
 * @param hand delivery side
 * @param style how he throws
 * @param level how good he is
 * @param cover shell of the ball he throws at full racks
 * @param spareCover shell of the ball he throws at spares
 * @param tempo time he takes over his shots, as a share of the usual, 0.2 (in a hurry) to 5 (very slow)
 * @param secondCover shell of another ball for full racks in his bag, if he has one
 * @param handicapPins pins added to each of his games, 0 to 300
 * @param person the name of the person if he is entered in several squads, where he may be called otherwise; empty for
 *     somebody who is entered once
 * @param partners the name of the doubles, trio or team with whom he bowls: they share a pair, and their pins are
 *     added; empty for somebody who bowls for himself
 */
public record Bowler(
        String id,
        Hand hand,
        PlayingStyle style,
        Level level,
        Coverstock cover,
        Coverstock spareCover,
        double tempo,
        Optional<Coverstock> secondCover,
        int handicapPins,
        Optional<String> person,
        Optional<String> partners) {
    /** The tempo of a bowler of whom nothing else is known. */
    public static final double DEFAULT_TEMPO = 1;

    /**
     * Checks the name and the ranges above.
     *
     * @throws IllegalArgumentException if {@code id} is blank, or {@code tempo} or {@code handicapPins} lies outside
     *     its range
     */
    public Bowler {
        Require.named(id, "bowler");
        Require.inRange(tempo, "tempo of bowler " + id, 0.2, 5);
        Require.inRange(handicapPins, "handicap of bowler " + id, 0, ScoreCard.PERFECT);
    }

    /**
     * A bowler who is entered once and bowls for himself.
     *
     * @param id name, alone in the squad
     * @param hand delivery side
     * @param style how he throws
     * @param level how good he is
     * @param cover shell of the ball he throws at full racks
     * @param spareCover shell of the ball he throws at spares
     * @param tempo time he takes over his shots, as a share of the usual, 0.2 to 5
     * @param secondCover shell of another ball for full racks in his bag, if he has one
     * @param handicapPins pins added to each of his games, 0 to 300
     * @throws IllegalArgumentException as above
     */
    public Bowler(
            String id,
            Hand hand,
            PlayingStyle style,
            Level level,
            Coverstock cover,
            Coverstock spareCover,
            double tempo,
            Optional<Coverstock> secondCover,
            int handicapPins) {
        this(
                id,
                hand,
                style,
                level,
                cover,
                spareCover,
                tempo,
                secondCover,
                handicapPins,
                Optional.empty(),
                Optional.empty());
    }

    /**
     * The same bowler as one of the entries of a person.
     *
     * @param name the person's name
     * @return the bowler
     */
    public Bowler ofPerson(String name) {
        return new Bowler(
                id,
                hand,
                style,
                level,
                cover,
                spareCover,
                tempo,
                secondCover,
                handicapPins,
                Optional.of(name),
                partners);
    }

    /**
     * The same bowler under another name, delivering from a side.
     *
     * @param name the name
     * @param side the side
     * @return the bowler
     */
    public Bowler as(String name, Hand side) {
        return new Bowler(
                name, side, style, level, cover, spareCover, tempo, secondCover, handicapPins, person, partners);
    }

    /**
     * The same bowler with a handicap.
     *
     * @param pins pins added to each of his games, 0 to 300
     * @return the bowler
     */
    public Bowler withHandicap(int pins) {
        return new Bowler(id, hand, style, level, cover, spareCover, tempo, secondCover, pins, person, partners);
    }

    /**
     * The same bowler with partners.
     *
     * @param name what they are called together
     * @return the bowler
     */
    public Bowler with(Optional<String> name) {
        return new Bowler(id, hand, style, level, cover, spareCover, tempo, secondCover, handicapPins, person, name);
    }
}
