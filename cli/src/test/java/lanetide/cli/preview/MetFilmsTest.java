package lanetide.cli.preview;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import lanetide.cli.scenario.Scenarios;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilFilm;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.play.Setup;
import lanetide.squads.play.TournamentSimulation;
import lanetide.squads.result.LaneState;
import lanetide.squads.watch.Observers;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The films a group is said to meet are those that the groups before it left. */
class MetFilmsTest {
    @ParameterizedTest
    @ValueSource(strings = {"stay", "right", "left"})
    void everyGameIsMetAsTheLastGroupOnThePairLeftIt(String design) {
        Event event = Scenarios.readWith("rotation: stay", "rotation: {design: " + design + "}")
                .scenario()
                .orElseThrow()
                .event();
        // Two groups on three pairs, so that a pair stands empty in every game.
        Event roomy = Scenarios.read(Scenarios.SOUND
                        .replace("lanes: 1 to 4", "lanes: 1 to 6")
                        .replace("rotation: stay", "rotation: {design: " + design + "}")
                        .replace("perSquad: 8", "perSquad: 2"))
                .scenario()
                .orElseThrow()
                .event();
        assertThat(roomy.squads().get(0).groups()).hasSize(2);
        check(event, 1);
        check(roomy, 1);
    }

    private static void check(Event event, int group) {
        Place place = new Place(0, group, Optional.empty());
        Physics physics = Physics.under(event.laws());
        MetFilms films = new MetFilms(event, place);
        List<LaneState> states = new TournamentSimulation(Setup.of(
                                event,
                                physics,
                                new StartingLines(event, physics),
                                LuckSource.byBall(new RandomStreams(1).forReplication(0)))
                        .watchedBy(Observers.of(films)))
                .play()
                .lanes();

        for (int game = 0; game < place.rotation(event).games(); game++) {
            LanePair pair = place.pair(event, game);
            List<Double> met = films.byGame().get(game).stream()
                    .map(MetFilms.LaneMet::film)
                    .map(OilFilm::volumeMl)
                    .sorted()
                    .toList();
            List<Double> left = new ArrayList<>();
            for (int lane : List.of(pair.left(), pair.right())) {
                left.add(lastBefore(states, lane, game + 1).volumeMl());
            }
            left.sort(null);
            assertThat(met).as("game %d", game + 1).isEqualTo(left);
        }
    }

    private static LaneState lastBefore(List<LaneState> states, int lane, int game) {
        OptionalInt last = states.stream()
                .filter(state -> state.lane() == lane && state.afterGame() < game)
                .mapToInt(LaneState::afterGame)
                .max();
        return states.stream()
                .filter(state -> state.lane() == lane && state.afterGame() == last.getAsInt())
                .findFirst()
                .orElseThrow();
    }
}
