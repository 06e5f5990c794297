package lanetide.squads.study;

import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.play.Setup;
import lanetide.squads.play.WithoutOil;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;

/**
 * An event played for its times alone, with the bowlers of the scenario, each time with the luck of its number. What is
 * not known of the pace is shared out among the playings: each has the mean of its part of the sets, so that few
 * playings go through all of them.
 *
 * @param event the event
 * @param shared what its playings share
 * @param sets sets of values that are gone through, a multiple of {@code playings}
 * @param playings how many playings go through them once
 * @param streams source of all chance
 */
record ClockDesign(Event event, WithoutOil shared, int sets, int playings, RandomStreams streams) implements Design {
    @Override
    public Playing playing(int number) {
        return new Playing(number, number, Playing.DEFAULT_SET, number % playings);
    }

    @Override
    public Setup setup(Playing playing) {
        return shared.setup(
                event.withPace(pace(playing.seating())), LuckSource.byBall(streams.forReplication(playing.luck())));
    }

    private PaceOfPlay pace(int part) {
        List<PaceOfPlay> paces = IntStream.range(0, sets)
                .filter(round -> round % playings == part)
                .mapToObj(round -> PlayModel.pace(event.pace(), ValueSets.of(event, ValueSets.ofRound(round, sets))))
                .toList();
        return new PaceOfPlay(
                mean(paces, PaceOfPlay::firstShotMs),
                mean(paces, PaceOfPlay::spareShotMs),
                event.pace().spread(),
                event.pace().pinsetterMs(),
                event.pace().ballReturnMs(),
                event.pace().movePerPairMs(),
                mean(paces, PaceOfPlay::settleMs),
                event.pace().courtesy());
    }

    private static long mean(List<PaceOfPlay> paces, ToLongFunction<PaceOfPlay> time) {
        return Math.round(paces.stream().mapToLong(time).average().orElseThrow());
    }
}
