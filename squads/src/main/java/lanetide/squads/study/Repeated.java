package lanetide.squads.study;

import java.util.function.Function;
import lanetide.des.random.RandomStreams;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.play.Setup;
import lanetide.squads.unknown.ValueSets;

/**
 * One event again and again, each time with the luck of its number, under sets of values in turn.
 *
 * @param events the event under its sets
 * @param streams source of all chance
 * @param luck whose luck is whose in a playing
 */
public record Repeated(PossibleEvents events, RandomStreams streams, Function<RandomStreams, LuckSource> luck)
        implements Design {
    /**
     * An event with luck that is used up ball by ball, all values as usual.
     *
     * @param event the event
     * @param seed master seed of all chance
     * @return the design
     */
    public static Repeated of(Event event, long seed) {
        return of(new PossibleEvents(event, 1), seed);
    }

    /**
     * The same under sets of values.
     *
     * @param events the event under its sets
     * @param seed master seed of all chance
     * @return the design
     */
    public static Repeated of(PossibleEvents events, long seed) {
        return new Repeated(events, new RandomStreams(seed), LuckSource::byBall);
    }

    @Override
    public Playing playing(int number) {
        return new Playing(number, number, ValueSets.ofRound(number, events.sets()), 0);
    }

    @Override
    public Setup setup(Playing playing) {
        RandomStreams round = streams.forReplication(playing.luck());
        return events.under(events.inRound(playing.luck(), round), playing.set())
                .setup(luck.apply(round));
    }
}
