package lanetide.squads.qualifying;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.SquadResult;

/**
 * Who is entered in an event. An entry is one bowler in one squad; a person may have several of them, but one in each
 * squad. Entries are numbered squad by squad, group by group, in bowling order.
 */
public final class People {
    private final Map<String, Integer> entryOf = new HashMap<>();
    private final Map<String, Integer> personOf = new HashMap<>();
    private final List<Integer> personOfEntry = new ArrayList<>();
    private final List<Bowler> firstEntries = new ArrayList<>();
    private int count;

    /**
     * Everybody who is listed in an event.
     *
     * @param event the event as it is drawn
     */
    public People(Event event) {
        for (Squad squad : event.squads()) {
            for (Group group : squad.groups()) {
                group.bowlers().forEach(bowler -> add(nameOfEntry(squad.id(), bowler.id()), bowler));
            }
        }
    }

    private void add(String entry, Bowler bowler) {
        entryOf.put(entry, personOfEntry.size());
        Integer known = bowler.person().map(personOf::get).orElse(null);
        int person = known == null ? count++ : known;
        if (known == null) {
            firstEntries.add(bowler.as(bowler.person().orElse(bowler.id()), bowler.hand()));
        }
        bowler.person().ifPresent(name -> personOf.put(name, person));
        personOfEntry.add(person);
    }

    /**
     * What an entry is called: no other one is.
     *
     * @param squad the squad in which a bowler is listed
     * @param bowler his name there
     * @return such as {@code A/Kim}
     */
    public static String nameOfEntry(String squad, String bowler) {
        return squad + "/" + bowler;
    }

    /**
     * How many people there are.
     *
     * @return their number
     */
    public int count() {
        return count;
    }

    /**
     * Everybody once, under his own name.
     *
     * @return the people as they are in their first squad, in their order
     */
    public List<Bowler> bowlers() {
        return List.copyOf(firstEntries);
    }

    /**
     * Whose entry it is.
     *
     * @param entry number of the entry
     * @return number of the person
     */
    public int personOf(int entry) {
        return personOfEntry.get(entry);
    }

    /**
     * What everybody bowled.
     *
     * @param people everybody's games by squad, as they count, in the order of the people
     * @param entries the entries these games belong to, by person, then in the same order of play
     */
    public record Bowled(List<Entrant> people, List<List<Integer>> entries) {
        /** Copies the lists. */
        public Bowled {
            people = List.copyOf(people);
            entries = entries.stream().map(List::copyOf).toList();
        }
    }

    /**
     * Gathers everybody's games of an event that was played as it is drawn.
     *
     * @param squads what came of it, in order of play; the games of a substitute count for nobody
     * @param cut whether handicap counts
     * @return what everybody bowled
     */
    public Bowled asDrawn(List<SquadResult> squads, Cut cut) {
        return bowled(squads, cut, true);
    }

    /**
     * Gathers everybody's games of an event in which people sit wherever they like, each under the name of his entry.
     *
     * @param squads what came of it, in order of play
     * @param cut whether handicap counts
     * @return what everybody bowled
     */
    public Bowled seated(List<SquadResult> squads, Cut cut) {
        return bowled(squads, cut, false);
    }

    private Bowled bowled(List<SquadResult> squads, Cut cut, boolean asDrawn) {
        List<List<List<Integer>>> blocks = new ArrayList<>();
        List<List<Integer>> entries = new ArrayList<>();
        for (int person = 0; person < count; person++) {
            blocks.add(new ArrayList<>());
            entries.add(new ArrayList<>());
        }
        for (SquadResult squad : squads) {
            for (BowlerResult result : squad.bowlers()) {
                String name = result.bowler().id();
                Integer entry = entryOf.get(asDrawn ? nameOfEntry(squad.squad(), name) : name);
                if (entry != null) {
                    blocks.get(personOf(entry)).add(games(result, cut));
                    entries.get(personOf(entry)).add(entry);
                }
            }
        }
        return new Bowled(blocks.stream().map(Entrant::new).toList(), entries);
    }

    private static List<Integer> games(BowlerResult result, Cut cut) {
        int handicap = cut.withHandicap() ? result.bowler().handicapPins() : 0;
        return result.scores().stream().map(game -> game + handicap).toList();
    }
}
