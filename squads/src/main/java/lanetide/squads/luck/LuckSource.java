package lanetide.squads.luck;

import java.util.function.BiFunction;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.Bowler;

/** Whose luck is whose: gives every bowler of a playing his own. */
public interface LuckSource {
    /**
     * A bowler's luck from its beginning.
     *
     * @param squad the squad he plays in
     * @param bowler the bowler
     * @return a new object
     */
    Luck of(String squad, Bowler bowler);

    /**
     * Streams of each bowler, keyed by his squad and his name, and used up ball by ball.
     *
     * @param streams source of all chance
     * @return the luck of a single playing
     */
    static LuckSource byBall(RandomStreams streams) {
        return of(streams, (squad, bowler) -> new BallLuck(streams, "squad/" + squad + "/bowler/" + bowler.id()));
    }

    /**
     * Luck for comparing playings: it is keyed by the bowler's name alone, wherever he sits, and starts anew with every
     * frame, so that a frame in which he needs one ball more in one playing does not shift his luck in all later ones
     * (common random numbers, synchronised: A. M. Law, "Simulation Modeling and Analysis", 5th ed. 2015, section 11.2).
     *
     * @param streams source of all chance; bowlers' names must be different over all squads
     * @return the luck of a playing
     */
    static LuckSource byFrame(RandomStreams streams) {
        return of(streams, (squad, bowler) -> new FrameLuck(streams, "bowler/" + bowler.id()));
    }

    /**
     * The same for comparing events, in which bowlers of one name may play in several squads: it is keyed by squad and
     * name.
     *
     * @param streams source of all chance
     * @return the luck of a playing
     */
    static LuckSource byFrameInSquads(RandomStreams streams) {
        return of(streams, (squad, bowler) -> new FrameLuck(streams, "bowler/" + squad + "/" + bowler.id()));
    }

    /**
     * The chance of the lanes: their stops.
     *
     * @return the streams, from which each lane has its own by its number
     */
    RandomStreams lanes();

    private static LuckSource of(RandomStreams streams, BiFunction<String, Bowler, Luck> bowlers) {
        return new LuckSource() {
            @Override
            public Luck of(String squad, Bowler bowler) {
                return bowlers.apply(squad, bowler);
            }

            @Override
            public RandomStreams lanes() {
                return streams;
            }
        };
    }
}
