package lanetide.cli.scenario.key;

import java.util.Map;
import lanetide.cli.scenario.key.Form.Choice;
import lanetide.cli.scenario.key.Form.Clock;
import lanetide.cli.scenario.key.Form.Name;
import lanetide.cli.scenario.key.Form.Quantity;
import lanetide.cli.scenario.key.Form.Shares;
import lanetide.cli.scenario.key.Form.Structure;
import lanetide.cli.scenario.key.Form.Text;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Knowledge;
import lanetide.squads.score.ScoreCard;

/** Keys of the bowlers: drawn by shares or listed, and who does not bowl as listed. */
public final class BowlerKeys {
    /** The spare ball of whoever names none. */
    public static final String SPARE_BALL = "plastic";

    /** Most bowlers in one squad: as many as the largest centre holds. */
    static final int MAX_BOWLERS = 1000;

    /** The share of one kind in a field. */
    public static final Quantity<Double> SHARE = Form.share(0, 1);

    private static final Form<Map<String, Double>> PARTS = new Shares<>(SHARE);
    private static final Form<String> COVERS_BY_NAME = new Name("cover", "");
    private static final Quantity<Integer> AVERAGES = Form.count(Measure.PINS, "pins", 0, ScoreCard.PERFECT);
    private static final Quantity<Double> TEMPOS = Form.share(0.2, 5);

    private static final String BESIDE_ENTRIES = "required; beside entries, usual shares";
    private static final String DRAWN = "drawn by the shares of field, else by usual ones; of a substitute required";

    /** Bowlers by shares; beside entries, what is drawn of whom the entries do not say it. */
    public static final Block FIELD = new Block("field");

    public static final Key<Integer> PER_SQUAD = FIELD.key(
                    "perSquad", Form.whole(1, MAX_BOWLERS), "bowlers in a squad, spread evenly over the pairs")
            .optional("4 to 6 a pair", "required; not beside entries");
    public static final Key<Map<String, Double>> HANDS =
            FIELD.key("hands", PARTS, "share of right and left").optional("{right: 85 %, left: 15 %}", BESIDE_ENTRIES);
    public static final Key<Map<String, Double>> STYLES = FIELD.key("styles", PARTS, "share of each playing style")
            .optional("{stroker: 60 %, tweener: 40 %}", BESIDE_ENTRIES);
    public static final Key<Map<String, Double>> LEVELS = FIELD.key("levels", PARTS, "share of each level of skill")
            .optional("{scratch: 60 %, league: 40 %}", "required; beside entries, by the averages alone");
    public static final Key<Map<String, Double>> COVERS = FIELD.key("covers", PARTS, "share of each strike ball cover")
            .optional("{urethane: 20 %, medium-reactive: 80 %}", BESIDE_ENTRIES);
    public static final Key<String> FIELD_SPARE_COVER = FIELD.key(
                    "spareCover", COVERS_BY_NAME, "cover of everybody's spare ball")
            .optional(SPARE_BALL, SPARE_BALL);
    public static final Key<Double> SLOW =
            FIELD.key("slow", SHARE, "share of slow bowlers").usual("0 % to 20 %", 0.0);
    public static final Key<Double> SLOW_TEMPO = FIELD.key(
                    "slowTempo", TEMPOS, "time slow bowlers take over a shot, of the usual")
            .usual(1.5);
    public static final Key<String> FIELD_SECOND_COVER = FIELD.key(
                    "secondCover", COVERS_BY_NAME, "cover of everybody's second ball for full racks")
            .optional("weak-reactive", "none");

    /** One bowler. */
    public static final Block ENTRY = new Block("entries");

    public static final Key<String> ID = ENTRY.key("id", new Text(false), "name or number, alone in his squad")
            .required("Anchor");
    public static final Key<Hand> HAND = ENTRY.key("hand", new Choice<>("hand", Names.HANDS), "right or left")
            .optional("right", DRAWN);
    public static final Key<String> STYLE =
            ENTRY.key("style", new Name("style", ""), "playing style").optional("tweener", DRAWN);
    public static final Key<String> LEVEL = ENTRY.key("level", new Name("level", ""), "level of skill")
            .optional("league", "by the average, else by the shares of field, else required; of a substitute required");
    public static final Key<String> COVER =
            ENTRY.key("cover", COVERS_BY_NAME, "cover of the strike ball").optional("medium-reactive", DRAWN);
    public static final Key<String> SPARE_COVER =
            ENTRY.key("spareCover", COVERS_BY_NAME, "cover of the spare ball").optional(SPARE_BALL, SPARE_BALL);
    public static final Key<Double> TEMPO = ENTRY.key("tempo", TEMPOS, "time he takes over a shot, of the usual")
            .usual("80 % to 150 %", Bowler.DEFAULT_TEMPO);
    public static final Key<String> SECOND_COVER = ENTRY.key(
                    "secondCover", COVERS_BY_NAME, "cover of a second ball for full racks")
            .optional("weak-reactive", "none");

    /** A substitute: what an entry says of the bowler alone. */
    public static final Block SUBSTITUTE = new Block("changes.substitute");

    public static final Key<Integer> AVERAGE = ENTRY.key(
                    "average", AVERAGES, "the bowler's average, for the handicap, and for a level that is not given")
            .optional("187 pins", "the level's");
    public static final Key<String> SQUAD = ENTRY.key("squad", new Name("squad", ""), "id of the bowler's squad")
            .optional("A", "the only squad");
    public static final Key<Integer> GROUP = ENTRY.key(
                    "group", Form.whole(1, CentreKeys.MAX_LANE / 2), "who shares a pair, by starting pair")
            .optional("1", "the list fills the pairs");

    public static final Key<String> TEAM = ENTRY.key("team", new Text(false), "the bowler's team, told on his card")
            .optional("Rooks", "none");

    public static final Key<String> PARTNERS = ENTRY.key(
                    "partners",
                    new Text(false),
                    "name of the doubles, trio or team: who has the same bowls on one pair, and their pins are added")
            .optional("Foxes", "bowls for himself");

    public static final Key<Presence> COMES = ENTRY.key(
                    "comes",
                    new Choice<>("answer", ByName.of(Presence.values(), Presence::word)),
                    "no for one who stays away, waiting for one who takes the place of the next who does")
            .usual("no or waiting", Presence.YES);

    /** A change of who bowls. */
    public static final Block CHANGE = new Block("changes");

    public static final Key<String> BOWLER = CHANGE.key("bowler", new Text(false), "name of a bowler, listed or drawn")
            .required("A-07");
    public static final Key<Integer> FROM = CHANGE.key(
                    "from", Form.whole(1, EventKeys.MAX_GAMES), "first game that he does not bowl")
            .optional("3", "1");
    public static final Key<Long> ARRIVES = CHANGE.key(
                    "arrives", new Clock(), "when a late bowler is there; he joins at his group's next game")
            .optional("\"08:40\"", "in time");
    public static final Key<Void> REPLACED_BY = CHANGE.key("substitute", Structure.BLOCK, "who bowls in his place")
            .optional("{id: Guest, hand: right}", "nobody");

    /** What all bowlers have in common. */
    public static final Block BOWLERS = new Block("bowlers");

    public static final Key<Knowledge> KNOWLEDGE = BOWLERS.key(
                    "knowledge",
                    new Choice<>("knowledge", ByName.of(Knowledge.values(), Knowledge::id)),
                    "what they choose lines by: seen-and-told (their own balls, those of others on the pair, what is told of"
                            + " it), own-balls alone, everything (they see the oil) or nothing (they never move)")
            .assumed(
                    Bowling.USUAL.knowledge(),
                    "bowlers see balls, their own and others', not the oil; squads/README.md says how");
    public static final Key<Double> TIRING = BOWLERS.key(
                    "tiring", Form.share(0, 0.1), "share of his speed a bowler loses over 72 balls at full racks")
            .assumed(
                    "0 % to 2 %", Bowling.USUAL.tiringShare(), "nobody tires; how much elite bowlers do was not found");

    public static final Key<Map<String, Integer>> LEVEL_FROM = BOWLERS.key(
                    "levelFrom",
                    new Shares<>(AVERAGES),
                    "smallest average from which a listed bowler without a level is taken for each; lower ones for the lowest")
            .optional(
                    "{elite: 215 pins, scratch: 195 pins, league: 170 pins, casual: 0 pins}",
                    "published limits, from the averages 220, 200 and 180");

    static {
        for (Key<?> key : ENTRY.keys().subList(0, ENTRY.keys().indexOf(AVERAGE))) {
            SUBSTITUTE.add(key);
        }
    }

    private BowlerKeys() {}
}
