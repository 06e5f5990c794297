package lanetide.cli.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.preview.GameForecast;
import lanetide.cli.preview.Preview;
import lanetide.cli.preview.PreviewJson;
import lanetide.cli.preview.PreviewText;
import lanetide.cli.preview.PreviewWords;
import lanetide.cli.report.Cautions;
import lanetide.cli.report.Figures;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.report.MadeFrom;
import lanetide.cli.report.ProgramFiles;
import lanetide.cli.report.Table;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Squad;

/** A bowler's forecast as one page for his phone, which needs nothing else and prints on one or two sheets. */
public final class BowlerPage {
    private final Reading reading;
    private final Scenario scenario;
    private final Preview preview;
    private final PreviewWords words;
    private final Set<Trait> drawn;
    private final Squad squad;

    private BowlerPage(Reading reading, Preview preview, Set<Trait> drawn) {
        this.reading = reading;
        this.scenario = reading.scenario().orElseThrow();
        this.preview = preview;
        this.words = new PreviewWords(preview);
        this.drawn = drawn;
        this.squad = scenario.event().squads().get(preview.place().squad());
    }

    /**
     * Writes the page.
     *
     * @param reading the scenario as it was read, without errors
     * @param preview what the bowler will meet
     * @param drawn what was drawn of the bowler, so that it is not known
     * @return HTML
     */
    public static String write(Reading reading, Preview preview, Set<Trait> drawn) {
        StringOutput html = new StringOutput();
        TemplateEngine.createPrecompiled(ContentType.Html)
                .render("bowler.jte", new BowlerPage(reading, preview, drawn).model(), html);
        return html.toString();
    }

    private BowlerModel model() {
        return new BowlerModel(
                scenario.event().name(),
                preview.place().bowler().orElse("From pair " + firstPair()),
                where(),
                words.plays(drawn),
                List.of(
                        new PageModel.InShort("Start", words.start()),
                        new PageModel.InShort("Move", words.moves()),
                        new PageModel.InShort("Ball", words.balls())),
                games(),
                preview.games().stream().map(words::game).toList(),
                why(),
                practice(),
                Stream.concat(scenario.doubts().stream(), words.sureness(scenario.event()).stream())
                        .toList(),
                Cautions.ALL,
                MadeFrom.of(scenario, preview.replications()),
                ProgramFiles.text("/lanetide/cli/page/page.css") + ProgramFiles.text("/lanetide/cli/page/bowler.css"),
                JsonAnswer.inPage(PreviewJson.tree(reading, preview, drawn)));
    }

    private String firstPair() {
        return preview.games().get(0).pair().id();
    }

    private List<String> where() {
        List<String> where = new ArrayList<>();
        where.add("Squad " + squad.id() + ", practice from " + TimeOfDay.write(squad.startMs()) + " on lanes "
                + firstPair() + ".");
        List<Bowler> group = squad.groups().get(preview.place().group()).bowlers();
        preview.place().bowler().ifPresent(name -> {
            List<String> mates = group.stream()
                    .map(Bowler::id)
                    .filter(id -> !id.equals(name))
                    .toList();
            if (!mates.isEmpty()) {
                where.add("With " + String.join(", ", mates) + ".");
            }
        });
        return where;
    }

    private Table games() {
        return Table.of(
                "games",
                "With your " + preview.kind().cover().id() + " ball; boards from your own gutter",
                Table.rows(
                        List.of("Game", "Lanes", "Lay down", "4 of 5", "Arrows", "Leave", "Move"),
                        preview.games(),
                        game -> List.of(
                                String.valueOf(game.game()),
                                game.pair().id(),
                                told(game, start -> board(start.laydownBoard())),
                                told(
                                        game,
                                        start -> board(start.laydownSpread().low()) + "-"
                                                + board(start.laydownSpread().high())),
                                told(game, start -> board(start.arrowsBoard())),
                                told(game, start -> board(start.exitBoard())),
                                PreviewText.move(game))),
                2);
    }

    private static String told(GameForecast game, Function<GameForecast.Start, String> words) {
        return game.start().map(words).orElse("-");
    }

    private static String board(double board) {
        return Figures.fixed(board, 0);
    }

    private Optional<BowlerModel.Why> why() {
        List<GameForecast> told =
                preview.games().stream().filter(game -> game.why().isPresent()).toList();
        return told.isEmpty()
                ? Optional.empty()
                : Optional.of(new BowlerModel.Why(
                        new WearPicture(told.stream()
                                        .collect(Collectors.toMap(
                                                game -> "Game " + game.game(),
                                                game -> game.why().orElseThrow(),
                                                (one, other) -> one,
                                                LinkedHashMap::new)))
                                .svg(),
                        Table.of(
                                "why-table",
                                "Boards at the pins, higher (+) or lighter (-)",
                                PreviewText.whyRows(told),
                                1),
                        words.whys()));
    }

    private Optional<BowlerModel.Shots> practice() {
        return preview.practice()
                .map(practice -> new BowlerModel.Shots(
                        IntStream.range(0, practice.lines().size())
                                .mapToObj(line ->
                                        PreviewWords.shots(practice.lines().get(line), line + 1))
                                .toList(),
                        practice.lanes().stream()
                                .map(found -> words.found(practice, found))
                                .toList()));
    }
}
