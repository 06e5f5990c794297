package lanetide.cli.page;

import java.util.List;
import java.util.Optional;
import lanetide.cli.report.PagePolicy;
import lanetide.cli.report.Table;

/**
 * All that a page shows, section by section, in the order of the page.
 *
 * @param event what the event is called
 * @param subtitle what the page is, in one sentence
 * @param inShort three answers in a line each: is it fair, when to oil again, what to expect late
 * @param verdict the answer in words, one thing a sentence
 * @param timetable when what happens
 * @param fairness whether the event is fair; empty if that was not studied
 * @param reoil when to oil again; empty if that was not studied
 * @param scores what squads score
 * @param lane the lane from above
 * @param windows the oil and the exit windows by game
 * @param rotation who bowls where
 * @param bowlers the pages of the bowlers; empty where none are written
 * @param basis what it rests on
 * @param assets style, scripts and data, ready to stand in the page
 */
public record PageModel(
        String event,
        String subtitle,
        List<InShort> inShort,
        List<String> verdict,
        Timetable timetable,
        Optional<Fairness> fairness,
        Optional<Reoil> reoil,
        Scores scores,
        Lane lane,
        Windows windows,
        Rotations rotation,
        List<SquadLinks> bowlers,
        Grounds basis,
        Assets assets) {
    /**
     * When what happens.
     *
     * @param tables the timetable, one for each squad
     * @param notes how much it varies, one sentence a squad
     */
    public record Timetable(List<Table> tables, List<String> notes) {}

    /**
     * Whether the event is fair.
     *
     * @param verdict the verdict, with its margin
     * @param unfair to whom it is not fair, by how much
     * @param sureness what the intervals hold, what would decide, and what to choose if nothing does
     * @param hangsOn what the least sure advantage hangs on; empty if that was not asked for
     * @param settles measurements that would narrow it; empty if that was not asked for
     * @param evenness how evenly it is spread over the groups; empty for a single one
     * @param reasons facts that go with it
     * @param wear what each stretch of the worn lanes does to styles; none where that was not looked at
     * @param effects all advantages, a table for each kind
     * @param remedies what would mend it; empty if nothing was tried
     */
    public record Fairness(
            String verdict,
            List<String> unfair,
            List<String> sureness,
            List<String> hangsOn,
            List<String> settles,
            List<String> evenness,
            List<String> reasons,
            List<Table> wear,
            List<Table> effects,
            Optional<Table> remedies) {}

    /**
     * When to oil again.
     *
     * @param recommendation the interval, with how sure it is
     * @param others the interval on other grounds
     * @param curve the curve behind it
     */
    public record Reoil(String recommendation, List<String> others, Table curve) {}

    /**
     * What squads score.
     *
     * @param squads mean and interval by squad
     * @param byGame means by squad and game
     * @param note what the interval covers
     * @param teams how teams stand; empty if everybody bowls for himself
     */
    public record Scores(Table squads, Table byGame, String note, Optional<Table> teams) {}

    /**
     * The lane from above.
     *
     * @param laneByLane every lane when each squad has left
     */
    public record Lane(Table laneByLane) {}

    /**
     * The oil and the exit windows by game.
     *
     * @param squads one for each squad
     * @param moves how far lines go over what is not known; empty where all values were as usual
     */
    public record Windows(List<SquadWindows> squads, Optional<Table> moves) {}

    /**
     * The same of one squad.
     *
     * @param squad its name
     * @param changes what its play does to the lanes, in sentences
     * @param oil means over its lanes
     * @param windows middle windows over its lanes
     */
    public record SquadWindows(String squad, List<String> changes, Table oil, Table windows) {}

    /**
     * Who bowls where.
     *
     * @param design how groups move, in words
     * @param squads one for squads that move alike
     */
    public record Rotations(String design, List<SquadRotation> squads) {}

    /**
     * The rotation of squads that move alike.
     *
     * @param squads their names, as a heading
     * @param table the pair of every group in every game
     * @param findings what a director should know of it
     */
    public record SquadRotation(String squads, Table table, List<String> findings) {}

    /**
     * The pages of a squad's bowlers.
     *
     * @param squad its name
     * @param bowlers each with the address of his page
     */
    public record SquadLinks(String squad, List<Link> bowlers) {}

    /**
     * A way to another page.
     *
     * @param name what it leads to
     * @param address where that lies, seen from this page
     */
    public record Link(String name, String address) {}

    /**
     * What the page rests on.
     *
     * @param assumptions values that the scenario does not state, with their sources
     * @param oil where the oil went
     * @param marks seed, version, hash and playings
     * @param cautions what every reader must keep in mind
     */
    public record Grounds(Table assumptions, Table oil, Table marks, List<String> cautions) {}

    /**
     * Style, scripts and data.
     *
     * @param style style sheet
     * @param charts the chart library
     * @param script what moves the page
     * @param answer the answer of {@code simulate}, as JSON that can stand in a page
     * @param fairness the answer of {@code fairness} likewise, null where there is none
     * @param reoil the answer of {@code reoil} likewise, null where there is none
     * @param data what charts and pictures need besides, likewise
     */
    public record Assets(
            String style, String charts, String script, String answer, String fairness, String reoil, String data) {
        /** What the page may do in a browser; only this style and these scripts. */
        public String policy() {
            return PagePolicy.of(List.of(style), List.of(charts, script));
        }
    }

    /**
     * One answer in a line.
     *
     * @param question what it answers, in a word or two
     * @param answer the answer
     */
    public record InShort(String question, String answer) {}

    /** Copies the lists. */
    public PageModel {
        inShort = List.copyOf(inShort);
        verdict = List.copyOf(verdict);
    }
}
