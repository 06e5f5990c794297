package lanetide.cli.scenario.entries;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lanetide.cli.scenario.entries.DrawnTraits.Who;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.FieldMix;

/**
 * Fills in what the entries leave open, and keeps account of it. Every bowler has streams of his own, keyed by his
 * squad and name, so that one bowler more changes nobody else.
 */
final class Blanks {
    private final TraitShares shares;
    private final RandomStreams streams;
    private final Map<Who, Set<Trait>> drawn = new LinkedHashMap<>();
    private int bowlers;
    private int byAverage;

    /**
     * A bowler, and the first place where he is listed, which keys his streams.
     *
     * @param who his squad and the name under which he bowls there
     * @param firstSquad the first squad he is listed in
     * @param name his name in the list
     */
    record Person(Who who, String firstSquad, String name) {}

    /** Blanks to be drawn by shares from a family outside any replication. */
    Blanks(TraitShares shares, RandomStreams streams) {
        this.shares = shares;
        this.streams = streams;
    }

    TraitShares shares() {
        return shares;
    }

    /** Takes note of a listed bowler. */
    void addBowler() {
        bowlers++;
    }

    /** Takes note of a bowler whose level is told by his average. */
    void addByAverage() {
        byAverage++;
    }

    /** What a bowler of whom it is not said is taken for. */
    <T> T draw(Person person, TraitShare<T> share) {
        drawn.computeIfAbsent(person.who(), key -> EnumSet.noneOf(Trait.class)).add(share.trait());
        String key = "squad/" + person.firstSquad() + "/bowler/" + person.name() + "/entry/"
                + share.trait().id();
        return FieldMix.one(share.kinds(), streams, key);
    }

    /** Tells once, not for each bowler, what the answers rest on. */
    void tell(LevelLimits limits, Assumptions assumptions) {
        DrawnTraits all = drawnTraits();
        if (byAverage > 0) {
            assumptions.add(
                    DrawnTraits.ASSUMED + Trait.LEVEL.id(),
                    of(Trait.LEVEL, byAverage) + "by average: " + limits.inWords(),
                    limits.source());
        }
        for (TraitShare<?> share :
                List.of(shares.hands(), shares.styles(), shares.levels(), shares.covers(), shares.tempos())) {
            int count = (int) all.count(share.trait());
            if (count > 0) {
                assumptions.add(
                        DrawnTraits.ASSUMED + share.trait().id(),
                        of(share.trait(), count) + "drawn by shares: " + share.inWords(),
                        share.isStated() ? "shares of the scenario's field" : "assumption");
            }
        }
    }

    private String of(Trait trait, int count) {
        return trait.id() + " of " + count + " of " + bowlers + (bowlers == 1 ? " bowler " : " bowlers ");
    }

    DrawnTraits drawnTraits() {
        return new DrawnTraits(bowlers, byAverage, drawn);
    }
}
