package lanetide.squads.study;

import java.util.function.Function;
import lanetide.des.random.RandomStreams;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.play.Setup;

/**
 * One event again and again, each time with the luck of its number.
 *
 * @param playable the event
 * @param streams source of all chance
 * @param luck whose luck is whose in a playing
 */
public record Repeated(Playable playable, RandomStreams streams, Function<RandomStreams, LuckSource> luck)
        implements Design {
    /**
     * An event with luck that is used up ball by ball.
     *
     * @param event the event
     * @param seed master seed of all chance
     * @return the design
     */
    public static Repeated of(Event event, long seed) {
        return new Repeated(Playable.of(event), new RandomStreams(seed), LuckSource::byBall);
    }

    @Override
    public Playing playing(int number) {
        return new Playing(number, number, Playing.DEFAULT_SET, 0);
    }

    @Override
    public Setup setup(Playing playing) {
        return playable.setup(luck.apply(streams.forReplication(playing.luck())));
    }
}
