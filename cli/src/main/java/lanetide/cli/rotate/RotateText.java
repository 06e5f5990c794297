package lanetide.cli.rotate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.report.Ending;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.words.English;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.SearchObjective;

/** What {@code rotate} answers, for people: the verdict first, then who bowls where, the checks, the alternatives. */
public final class RotateText {
    private static final int ROOM_FOR_PAIRS = Page.WIDTH - 24;

    private final Scenario scenario;
    private final RotationAnswer answer;
    private final Optional<LateChanges> changes;
    private final Page page = new Page();

    private RotateText(Scenario scenario, RotationAnswer answer, Optional<LateChanges> changes) {
        this.scenario = scenario;
        this.answer = answer;
        this.changes = changes;
    }

    /**
     * Writes the answer.
     *
     * @param scenario the scenario
     * @param answer what there is to say
     * @param changes late changes that it tells of, if any
     * @return the page
     */
    public static String write(Scenario scenario, RotationAnswer answer, Optional<LateChanges> changes) {
        RotateText text = new RotateText(scenario, answer, changes);
        text.page.line(scenario.event().name());
        text.page.line("Who bowls on which pair, and what that does before a ball is bowled.");
        text.write();
        return text.page.text();
    }

    private void write() {
        changes.ifPresent(late -> {
            page.heading("What changes, and for whom");
            ChangeWords.of(late, answer.pairs()).forEach(page::item);
        });
        page.heading(changes.isPresent() ? "Verdict on the new schedule" : "Verdict");
        for (SquadRotation squad : answer.squads()) {
            String who = answer.squads().size() == 1 ? "" : names(squad) + ": ";
            List<String> sentences = RotateWords.verdict(squad);
            page.item(who + sentences.get(0));
            sentences.stream().skip(1).forEach(page::item);
        }
        page.item("The rotation: " + answer.note().description());
        answer.squads().forEach(this::table);
        answer.squads().forEach(this::checks);
        ExposureTable.add(page, answer.event(), answer.wear());
        page.heading("Checks of the event");
        answer.checks().forEach(this::check);
        answer.squads().forEach(this::alternatives);
        answer.squads().forEach(this::block);
        changedBlock();
        howToRead();
        Ending.cautions(page, scenario);
    }

    private static String names(SquadRotation squad) {
        List<String> ids = squad.squads();
        return (ids.size() == 1 ? "Squad " : "Squads ") + English.joined(ids);
    }

    private void table(SquadRotation squad) {
        Rotation rotation = squad.planned().rotation();
        int width = 2
                + answer.pairs().pairs().stream()
                        .mapToInt(pair -> pair.id().length())
                        .max()
                        .orElse(0);
        int games = Math.max(1, ROOM_FOR_PAIRS / Math.max(width, 8));
        for (int from = 0; from < rotation.games(); from += games) {
            int to = Math.min(rotation.games(), from + games);
            page.heading(names(squad) + ": pairs by group and game"
                    + (rotation.games() > games ? ", games " + (from + 1) + " to " + to : ""));
            page.table(rows(squad, rotation, from, to), 1);
        }
    }

    private List<List<String>> rows(SquadRotation squad, Rotation rotation, int from, int to) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(Stream.concat(
                        Stream.of("Group", "Bowlers"), IntStream.range(from, to).mapToObj(game -> "Game " + (game + 1)))
                .toList());
        for (int group = 0; group < rotation.groups(); group++) {
            int here = group;
            rows.add(Stream.concat(
                            Stream.of(
                                    squad.groups().get(group).id(),
                                    String.valueOf(squad.groups().get(group).size())),
                            IntStream.range(from, to)
                                    .mapToObj(game -> answer.pairs().name(rotation.pairOf(game, here))))
                    .toList());
        }
        return rows;
    }

    private void checks(SquadRotation squad) {
        page.heading("Checks of " + names(squad).replaceFirst("^S", "s"));
        squad.checks().forEach(this::check);
    }

    private void check(CheckLine check) {
        String outcome = switch (check.outcome()) {
            case HOLDS -> "Good. ";
            case FAILS -> "Bad. ";
            case NOTE -> "Note. ";
        };
        page.item(outcome + check.text());
    }

    private void alternatives(SquadRotation squad) {
        page.heading("Designs compared, " + names(squad).replaceFirst("^S", "s"));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("Design", "Carry-over", "Repeats", "Follows", "Walk", "Longest", "Figure", ""));
        rows.add(row(squad, squad.planned(), "as planned"));
        squad.alternatives().forEach(other -> rows.add(row(squad, other, "")));
        page.table(rows, 1);
        squad.search().ifPresent(found -> page.item(RotateWords.search(found)));
        squad.refused()
                .forEach(refused -> page.item("Not possible: `"
                        + RotationDesigns.labelOf(refused.design()).words() + "`. " + refused.reason()));
    }

    private static List<String> row(SquadRotation squad, Alternative other, String remark) {
        int fewest = other.report().fewestPredecessors();
        int most = other.report().mostPredecessors();
        String best = other.equals(squad.best()) ? "best" : "";
        return List.of(
                other.label().words(),
                String.valueOf(other.report().carryOverIndex()),
                String.valueOf(other.report().repeatedVisits().size()),
                fewest == most ? String.valueOf(most) : fewest + "-" + most,
                Figures.fixed(other.walk().pairsPerGame(), 1),
                Figures.plain(other.walk().longestPairs(), 1),
                Figures.fixed(other.cost(), 3),
                Stream.of(remark, best).filter(word -> !word.isEmpty()).collect(Collectors.joining(", ")));
    }

    /** A rotation that was searched for, ready to be put into the scenario. */
    private void block(SquadRotation squad) {
        squad.search().ifPresent(found -> {
            page.heading("To use the rotation found, put this into the scenario");
            Rotation rotation =
                    squad.alternatives().get(squad.alternatives().size() - 1).rotation();
            RotationBlock.lines(rotation, answer.pairs()).forEach(page::line);
        });
    }

    /** The changed rotation, so that every other command can be asked about it. */
    private void changedBlock() {
        changes.filter(LateChanges::isPasteable).ifPresent(late -> {
            page.heading("To ask other commands about the new schedule, put this into the scenario");
            RotationBlock.lines(late.change().event().rotations().get(0), answer.pairs())
                    .forEach(page::line);
        });
    }

    private void howToRead() {
        SearchObjective weights = answer.objective();
        String source = weights.equals(SearchObjective.DEFAULT) ? "an assumption" : "as you have weighed it";
        page.heading("How to read it");
        page.item("Pairs are named by their lanes. A group stays together; its first half starts on the left lane.");
        page.item(
                "Carry-over: for every two groups, how often one is the next on a pair after the other, squared and added"
                        + " up (K. G. Russell, Biometrika 67, 1980). The oil waits on an empty pair for the next group; a group that stays follows"
                        + " itself.");
        page.item("Follows: how many different groups a group takes over from. Walk: pairs per move, by lane numbers.");
        page.item("Figure: what the designs are ranked by, " + source + ": " + Figures.plain(weights.repeat(), 2)
                + " for each game on a pair bowled before, " + Figures.plain(weights.carryOver(), 2)
                + " for each of the index above its minimum a group, " + Figures.plain(weights.wear(), 2)
                + " for each game of difference in lane age between groups, " + Figures.plain(weights.walk(), 2)
                + " for each pair of walking a move. Small is good.");
        page.item("All this is exact. What it is worth in pins depends on oil and bowlers.");
    }
}
