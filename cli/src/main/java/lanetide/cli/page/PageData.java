package lanetide.cli.page;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.Figures;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.report.OilUnits;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.simulate.SquadLanes;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.model.Event;
import lanetide.squads.result.StyleWindow;
import lanetide.squads.study.StudyResult;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What the charts and pictures of a page need beside the answer. */
public final class PageData {
    private PageData() {}

    static ObjectNode tree(Scenario scenario, StudyResult study, FilmReel reel, OilUnits units) {
        ObjectNode data = JsonNodeFactory.instance.objectNode();
        film(data.putObject("film"), reel, scenario.event(), units);
        windows(data.putArray("windows"), SquadLanes.of(study.first().lanes()));
        scenario.event()
                .squads()
                .forEach(squad -> data.withObject("/starts").put(squad.id(), TimeOfDay.write(squad.startMs())));
        rotations(data.putArray("rotations"), scenario.event());
        return data;
    }

    private static void film(ObjectNode film, FilmReel reel, Event event, OilUnits units) {
        Collection<List<FilmReel.Frame>> lanes = reel.frames().values();
        double unitsAStep = FilmCode.mostUnits(lanes) / FilmCode.MAX;
        film.put("boards", LaneGeometry.BOARDS);
        film.put("feet", FilmReel.FEET);
        film.put("pathPoints", FilmReel.PATH_POINTS);
        film.put("stepsABoard", FilmCode.STEPS_A_BOARD);
        film.put("noPath", FilmCode.NONE);
        film.put("steps", FilmCode.MAX);
        film.put("most", FilmCode.mostUnits(lanes) * (units.metric() ? OilFilm.UNIT_UM : 1));
        film.put("unit", units.name());
        film.put("shownPerUnit", units.metric() ? OilFilm.UNIT_UM : 1);
        film.put("umPerUnit", Figures.fixed(OilFilm.UNIT_UM, 2));
        film.put("metric", units.metric());
        film.put("patternFt", event.pattern().lengthM() / LaneGeometry.FOOT_M);
        FilmColours.list().forEach(film.putArray("colours")::add);
        film.put("films", FilmCode.films(lanes, unitsAStep));
        film.put("paths", FilmCode.paths(lanes));
    }

    private static void windows(ArrayNode windows, List<SquadLanes> squads) {
        for (SquadLanes.StyleHand kind : squads.get(0).kinds()) {
            ObjectNode node = windows.addObject();
            node.put("style", kind.style());
            node.put("hand", ConstantName.of(kind.hand()));
            ArrayNode points = node.putArray("points");
            for (SquadLanes squad : squads) {
                for (int game : squad.games()) {
                    Optional<StyleWindow.Boards> window = squad.window(game, kind);
                    ObjectNode point = points.addObject();
                    point.put("squad", squad.squad());
                    point.put("game", game);
                    JsonAnswer.put(point, "low", window, StyleWindow.Boards::low, 2);
                    JsonAnswer.put(point, "high", window, StyleWindow.Boards::high, 2);
                    JsonAnswer.put(point, "best", window, StyleWindow.Boards::best, 2);
                }
            }
        }
    }

    private static void rotations(ArrayNode rotations, Event event) {
        for (RotationPlan plan : RotationPlan.of(event)) {
            ObjectNode node = rotations.addObject();
            node.put("squads", plan.heading());
            plan.pairs().forEach(node.putArray("pairs")::add);
            plan.groups().forEach(node.putArray("groups")::add);
            ArrayNode games = node.putArray("pairByGameAndGroup");
            for (int game = 0; game < plan.rotation().games(); game++) {
                ArrayNode row = games.addArray();
                for (int group = 0; group < plan.groups().size(); group++) {
                    row.add(plan.rotation().pairOf(game, group));
                }
            }
        }
    }
}
