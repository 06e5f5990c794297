package lanetide.cli.options;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lanetide.cli.lines.Kind;
import lanetide.cli.lines.Kinds;
import lanetide.cli.lines.Question;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.preview.Place;
import lanetide.cli.preview.Seating;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.entries.Trait;
import lanetide.cli.scenario.key.Names;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;
import picocli.CommandLine.Option;

/** Whose way through an event is asked for: a bowler by name, or a pair to start on and a way to play. */
public final class PlaceOptions {
    @Option(
            names = "--squad",
            paramLabel = "ID",
            description = "Your squad (default: that of --bowler, or the only one).")
    private String squad;

    @Option(
            names = "--bowler",
            paramLabel = "NAME",
            description = "Your name in the entries, or such as A-7 in a field (default: none; give --pair).")
    private String bowler;

    @Option(
            names = "--pair",
            paramLabel = "LANES",
            description = "The pair you start on, such as 7-8 (default: that of --bowler).")
    private String pair;

    @Option(
            names = "--style",
            paramLabel = "STYLE",
            completionCandidates = Candidates.Styles.class,
            description =
                    "Your playing style: ${COMPLETION-CANDIDATES}, or the scenario's own (default: the bowler's, or that of the pair's first).")
    private String style;

    @Option(
            names = "--hand",
            paramLabel = "HAND",
            completionCandidates = Candidates.Hands.class,
            description = "One of ${COMPLETION-CANDIDATES} (default: the bowler's, or that of the pair's first).")
    private String hand;

    @Option(
            names = "--cover",
            paramLabel = "COVER",
            completionCandidates = Candidates.Covers.class,
            description =
                    "Cover of your ball: ${COMPLETION-CANDIDATES}, or the scenario's own (default: the bowler's, or the commonest of the style).")
    private String cover;

    @Option(
            names = "--level",
            paramLabel = "LEVEL",
            completionCandidates = Candidates.Skills.class,
            description =
                    "Your level of skill: ${COMPLETION-CANDIDATES}, or the scenario's own (default: the bowler's, or the commonest of the style).")
    private String level;

    /** A place, a bowler who stands for those who sit there, and what of him was drawn, not known. */
    public record Chosen(Place place, Kind kind, Set<Trait> drawn) {}

    /**
     * Finds the place, and how he plays there: as the options say, else as the bowler named, else as is commonest for
     * the style in the event.
     */
    public Chosen choose(Scenario scenario) {
        Map<String, Seating> all = seatings(scenario.event());
        if (bowler == null) {
            Seating found = onPair(scenario.event(), all);
            return new Chosen(found.place(), commonest(scenario, found.bowler()), Set.of());
        }
        Seating found = NamedOption.of("--bowler", bowler, all);
        return new Chosen(found.place(), kind(scenario.names(), found.bowler()), drawn(scenario, found));
    }

    /** What was drawn of a bowler and no option tells. */
    private Set<Trait> drawn(Scenario scenario, Seating found) {
        String squadId = scenario.event().squads().get(found.place().squad()).id();
        Map<Trait, Object> told = new EnumMap<>(Trait.class);
        told.put(Trait.STYLE, style);
        told.put(Trait.HAND, hand);
        told.put(Trait.COVER, cover);
        told.put(Trait.LEVEL, level);
        return scenario.drawn().of(squadId, found.bowler().id()).stream()
                .filter(trait -> told.containsKey(trait) && told.get(trait) == null)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Trait.class)));
    }

    private Kind kind(Names names, Bowler who) {
        return new Kind(
                style == null ? who.style() : NamedOption.of("--style", style, names.styles()),
                hand == null ? who.hand() : NamedOption.of("--hand", hand, Names.HANDS),
                cover == null ? who.cover() : NamedOption.of("--cover", cover, names.covers()),
                level == null ? who.level() : NamedOption.of("--level", level, names.levels()));
    }

    private Kind commonest(Scenario scenario, Bowler example) {
        Kind kind = kind(scenario.names(), example);
        Question question = new Question(
                List.of(),
                List.of(kind.style()),
                List.of(kind.hand()),
                cover == null ? List.of() : List.of(kind.cover()),
                List.of(),
                Optional.ofNullable(level).map(name -> kind.level()));
        return Kinds.of(scenario.event(), question).get(0);
    }

    /** The bowlers asked about, by name. */
    private Map<String, Seating> seatings(Event event) {
        Map<String, Seating> all = new LinkedHashMap<>();
        Map<String, Integer> squads = NamedOption.places(event.squads(), Squad::id);
        int only = squad == null ? -1 : NamedOption.of("--squad", squad, squads);
        for (Seating each : Seating.of(event)) {
            if (only < 0 || only == each.place().squad()) {
                all.putIfAbsent(each.bowler().id(), each);
            }
        }
        // Who bowls in an earlier squad too is called by his later one; where that is named, his name is enough.
        String byHisSquad = " (" + squad + ")";
        List.copyOf(all.keySet()).stream()
                .filter(name -> name.endsWith(byHisSquad))
                .forEach(
                        name -> all.putIfAbsent(name.substring(0, name.length() - byHisSquad.length()), all.get(name)));
        return all;
    }

    private Seating onPair(Event event, Map<String, Seating> all) {
        if (squad == null && event.squads().size() > 1) {
            throw CommandFailure.wrongUse(
                    "The event has several squads: name yours with --squad, or yourself with" + " --bowler.");
        }
        Map<String, Seating> byPair = new LinkedHashMap<>();
        for (Seating each : all.values()) {
            String start = each.place().pair(event, 0).id();
            if (!byPair.containsKey(start)
                    || (plays(each.bowler()) && !plays(byPair.get(start).bowler()))) {
                byPair.put(start, each);
            }
        }
        if (pair == null) {
            throw CommandFailure.wrongUse("Name the pair you start on with --pair, or yourself with --bowler. Pairs: "
                    + String.join(", ", byPair.keySet()) + ".");
        }
        Seating found = NamedOption.of("--pair", pair, byPair);
        return new Seating(found.place().ofGroup(), found.bowler());
    }

    private boolean plays(Bowler each) {
        return (style == null || each.style().id().equals(style))
                && (hand == null || Names.HANDS.get(hand) == each.hand());
    }
}
