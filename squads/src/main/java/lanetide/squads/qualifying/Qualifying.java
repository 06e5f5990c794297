package lanetide.squads.qualifying;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import lanetide.squads.model.Cut;
import lanetide.squads.model.TieRule;

/** Applies the rule of a cut to what everybody bowled. */
public final class Qualifying {
    private final Cut cut;
    private final List<Standing> standings;
    private final List<Standing> inOrder;
    private final int places;

    /**
     * What everybody bowled in one playing.
     *
     * @param cut the rule
     * @param people everybody who is entered
     * @return the same, ready to be asked; where there are no more people than places, all go on
     */
    public static Qualifying of(Cut cut, List<Entrant> people) {
        return new Qualifying(
                cut, people.stream().map(person -> Standing.of(person, cut)).toList());
    }

    private Qualifying(Cut cut, List<Standing> standings) {
        this.cut = cut;
        this.standings = standings;
        this.inOrder = standings.stream().sorted().toList();
        this.places = Math.min(cut.places(standings.size()), standings.size());
    }

    /**
     * Who goes on.
     *
     * @return chances in the order of the people
     */
    public Qualified qualified() {
        Standing last = inOrder.get(places - 1);
        int before =
                (int) inOrder.stream().filter(one -> one.compareTo(last) < 0).count();
        int level =
                (int) inOrder.stream().filter(one -> one.compareTo(last) == 0).count();
        boolean all = cut.ties() == TieRule.ALL;
        double share = all ? 1 : (double) (places - before) / level;
        return new Qualified(
                standings.stream()
                        .map(one -> chance(one.compareTo(last), share))
                        .toList(),
                all ? before + level : places,
                last.total());
    }

    private static double chance(int against, double ofLast) {
        return against < 0 ? 1 : against > 0 ? 0 : ofLast;
    }

    /**
     * The order in which people stand.
     *
     * @param lot a list of their places in the list of people, in the order in which those stand whom no rule parts
     * @return the same, the best first
     */
    public List<Integer> order(List<Integer> lot) {
        return lot.stream().sorted(Comparator.comparing(standings::get)).toList();
    }

    /**
     * The same if one person had entered once.
     *
     * @param person his place in the list of people
     * @param alone him with one of his squads alone
     * @return what everybody bowled otherwise
     */
    public Qualifying with(int person, Entrant alone) {
        Standing other = Standing.of(alone, cut);
        return new Qualifying(
                cut,
                Stream.concat(
                                Stream.concat(standings.subList(0, person).stream(), Stream.of(other)),
                                standings.subList(person + 1, standings.size()).stream())
                        .toList());
    }
}
