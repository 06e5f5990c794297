package lanetide.cli.scenario;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lanetide.squads.model.Costs;

/** The blocks of a scenario and their keys: the reader knows no others, and the documents are checked against these. */
@SuppressWarnings("ImmutableEnumChecker") // the lists come from List.of
public enum Block {
    /** The whole file. */
    SCENARIO(
            "",
            required("name", "text", "what the event is called", "Club night"),
            optional("seed", "whole number", "same scenario and seed, same answer", "1", "1"),
            required("centre", "block", "the lanes in use", "a block with lanes and surface"),
            required("pattern", "block", "the oil pattern", "a block with length, volume and ratio"),
            required("games", "whole number", "games a bowler plays in one squad", "3 to 8"),
            optional("practice", "min", "on the starting pair before the first game", "5 min to 15 min", "10 min"),
            optional("rotation", "name or block", "how groups move over the pairs", "stay or right", "stay"),
            required("squads", "list", "who plays when, in order of start", "- {id: A, start: \"08:00\", oil: fresh}"),
            optional(
                    "field",
                    "block",
                    "the bowlers of every squad by shares",
                    "a block",
                    "entries, or each squad's own"),
            optional(
                    "entries",
                    "list or file name",
                    "the bowlers one by one, or a CSV table of them",
                    "a list",
                    "field"),
            optional(
                    "changes",
                    "list",
                    "who does not bowl as listed: absent, late or replaced",
                    "- {bowler: A-07, from: 3}",
                    "none"),
            optional("pace", "block", "how long things take", "a block", "the usual pace"),
            optional("bowlers", "block", "what all bowlers have in common", "a block", "bowlers as they are"),
            optional("scoring", "block", "how the event is scored", "a block", "by the rules, without handicap"),
            optional("incidents", "block", "what can go wrong with lanes, and what is done then", "a block", "nothing"),
            optional("laws", "block", "laws of friction and oil", "a block", "the usual laws"),
            optional("fairness", "block", "what counts as fair", "{margin: 2 pins}", "the usual margin"),
            optional("costs", "block", "what oiling costs, and what it saves", "a block", "assumed costs"),
            optional("surfaces", "block", "lane surfaces of your own, by name", "a block", "the shipped ones alone"),
            optional("covers", "block", "ball covers of your own, by name", "a block", "the shipped ones alone"),
            optional("styles", "block", "playing styles of your own, by name", "a block", "the shipped ones alone"),
            optional("levels", "block", "levels of skill of your own, by name", "a block", "the shipped ones alone")),
    /** The lanes. */
    CENTRE(
            "centre",
            optional("lanes", "lane range", "lanes in use, paired from the left", "1 to 24", "pairs"),
            optional("pairs", "list of pairs", "pairs in use, from left to right", "[1-2, 5-6]", "lanes"),
            optional("closed", "list of pairs", "pairs of `lanes` that are not in use", "[3-4]", "none"),
            optional(
                    "spare", "list of pairs", "pairs in use that no group is sent to, for breakdowns", "[3-4]", "none"),
            required("surface", "name", "what the lanes are made of", "hard-synthetic"),
            optional(
                    "spares",
                    "list of pairs",
                    "pairs kept free for groups whose lane fails; not among those above",
                    "[25-26]",
                    "none"),
            optional("machines", "whole number", "lane machines that clean and oil, side by side", "1", "1"),
            optional("cleaners", "whole number", "machines that only clean, in place of machines", "1", "machines"),
            optional("oilers", "whole number", "machines that only oil, beside cleaners", "1", "machines"),
            optional("stripTime", "min or s", "to clean one lane", "30 s to 60 s", "45 s"),
            optional("oilTime", "min or s", "to oil one lane", "30 s to 60 s", "45 s"),
            optional(
                    "machineWalk",
                    "s",
                    "to move a machine to the next pair",
                    "5 s to 20 s",
                    Defaults.MACHINE_WALK.text()),
            optional("topography", "block", "how far the lanes are from level", "{spread: 0.01 in}", "level lanes")),
    /** How far the lanes are from level. */
    TOPOGRAPHY(
            "centre.topography",
            optional(
                    "limit",
                    "in or cm",
                    "most that a tilt, crown or depression may be",
                    "0.040 in (the rules) or 0.050 in (an inspector, for tilt)",
                    Defaults.TOPOGRAPHY_LIMIT.text()),
            optional(
                    "spread",
                    "in or cm",
                    "standard deviation of tilt and crown on lanes without readings, drawn by the seed",
                    "0.005 in to 0.02 in",
                    Defaults.TOPOGRAPHY_SPREAD.text() + ": level"),
            optional("readings", "list", "what was measured", "- {lane: 1, at: 20 ft, tilt: 0.01 in}", "none")),
    /** One reading of a lane's shape. */
    SHAPE(
            "centre.topography.readings",
            required("lane", "whole number", "the lane", "1"),
            optional("at", "ft or m", "distance from the foul line", "0 ft to 60 ft", "the whole lane"),
            optional(
                    "tilt",
                    "in or cm",
                    "left edge above the right one; below 0 under it",
                    "-0.02 in to 0.02 in",
                    "0 in"),
            optional(
                    "crown",
                    "in or cm",
                    "middle above the edges; below 0 a depression",
                    "-0.02 in to 0.02 in",
                    "0 in")),
    /** The oil pattern. */
    PATTERN(
            "pattern",
            optional("name", "text", "what the pattern is called", "House", "pattern"),
            required("length", "ft or m", "where the oil ends", "36 ft to 44 ft"),
            optional("volume", "mL", "oil on one lane", "20 mL to 30 mL", "required; with tapes, what they hold"),
            optional(
                    "ratio",
                    "n:1",
                    "middle five boards over boards 3 to 7",
                    "2:1 (hard) to 10:1 (house)",
                    "required; not beside tapes"),
            optional(
                    "taperFrom",
                    "boards",
                    "from either gutter, where the film starts to rise",
                    Defaults.TAPER_FROM.text(),
                    Defaults.TAPER_FROM.text()),
            optional(
                    "taperTo",
                    "boards",
                    "from either gutter, where it stops rising",
                    Defaults.TAPER_TO.text(),
                    Defaults.TAPER_TO.text()),
            optional(
                    "decay",
                    "number",
                    "exponent of the fall along the lane",
                    Defaults.DECAY.text(),
                    Defaults.DECAY.text()),
            optional(
                    "floor",
                    "%",
                    "share of the foul-line film left where the applied oil ends",
                    Defaults.FLOOR.text(),
                    Defaults.FLOOR.text()),
            optional("buffFrom", "ft or m", "where the applied oil ends and is only buffed on", "27 ft", "length"),
            optional(
                    "buffTo",
                    "%",
                    "share of the foul-line film left at the end of the buffed part",
                    Defaults.BUFF_TO.text(),
                    Defaults.BUFF_TO.text() + "; without buffFrom none"),
            optional("left", "block", "the half at the left-hand gutter, if it differs", "{ratio: 2:1}", "the same"),
            optional("tapes", "block", "the pattern by tape readings", "a block", "by ratio, taper and fall"),
            optional("bands", "block", "your own limits of short, low, sport and so on", "a block", "published ones")),
    /** The left half of a pattern. */
    LEFT(
            "pattern.left",
            optional(
                    "ratio", "n:1", "middle five boards over the left boards 3 to 7", "2:1 to 10:1", "as on the right"),
            optional(
                    "taperFrom",
                    "boards",
                    "from the left-hand gutter, where the film starts to rise",
                    "5 boards",
                    "as on the right"),
            optional(
                    "taperTo",
                    "boards",
                    "from the left-hand gutter, where it stops rising",
                    "14 boards",
                    "as on the right")),
    /** A pattern by tape readings. */
    TAPES(
            "pattern.tapes",
            optional(
                    "error",
                    "units or um",
                    "error bar of every reading",
                    Defaults.TAPE_ERROR.text(),
                    Defaults.TAPE_ERROR.text()),
            optional(
                    "boards",
                    "list of boards",
                    "boards read, from the right-hand gutter; to 20 at most if both halves are alike",
                    "[3, 5, 8, 11, 14, 20]",
                    "file"),
            optional("readings", "list", "one row a distance", "- {at: 8 ft, units: [9, 12, 17, 24, 30, 33]}", "file"),
            optional(
                    "file",
                    "file name",
                    "a CSV table beside the scenario with the columns distance, board, units",
                    "tapes.csv",
                    "boards and readings")),
    /** The readings at one distance. */
    TAPE(
            "pattern.tapes.readings",
            required("at", "ft or m", "distance from the foul line", "8 ft, 15 ft, 22 ft or 2 ft before the end"),
            required("units", "list of numbers", "units of oil, one a board", "[9, 12, 17, 24, 30, 33]")),
    /** Limits of bands and tiers. */
    BANDS(
            "pattern.bands",
            optional("shortTo", "ft or m", "longest short pattern", "35 ft to 37 ft", Defaults.SHORT_TO.text()),
            optional("longFrom", "ft or m", "shortest long pattern", "41 ft to 43 ft", Defaults.LONG_FROM.text()),
            optional("lowBelow", "mL", "less is low volume", "20 mL to 21 mL", Defaults.LOW_BELOW.text()),
            optional("highAbove", "mL", "more is high volume", "23 mL to 24 mL", Defaults.HIGH_ABOVE.text()),
            optional("sportTo", "n:1", "largest ratio of a sport pattern", "3:1 to 4:1", Defaults.SPORT_TO.text()),
            optional(
                    "houseFrom", "n:1", "smallest ratio of a house pattern", "6:1 to 8:1", Defaults.HOUSE_FROM.text())),
    /** How groups move. */
    ROTATION(
            "rotation",
            required(
                    "design",
                    "name",
                    "stay, right, left, turning, apart, balanced, part-balanced, drawn, searched or listed",
                    "right"),
            optional(
                    "move",
                    "pairs",
                    "how far at each move (right, left, turning, apart)",
                    "1 pair or 2 pairs",
                    "1 pair; turning 2 pairs"),
            optional("every", "games", "games on a pair before the next move (right, left)", "1 game", "1 game"),
            optional(
                    "table", "list of lists", "one row a game, in it each group's pair (listed)", "[1-2, 3-4]", "none"),
            optional(
                    "repeats",
                    "name",
                    "whether a group may come back to a pair: allowed or forbidden",
                    "forbidden",
                    "allowed")),
    /** One squad. */
    SQUAD(
            "squads",
            required("id", "text", "name, alone in the event", "A"),
            required("start", "time of day", "start of practice", "\"08:00\" or \"day 2 08:00\""),
            required("oil", "name", "fresh (cleaned, then oiled), over (oiled over what is left) or none", "fresh"),
            optional("games", "whole number", "of this squad", "3 to 8", "the event's"),
            optional("practice", "min", "of this squad", "5 min to 15 min", "the event's"),
            optional("bowlers", "whole number", "of this squad, in place of perSquad", "4 to 6 a pair", "perSquad"),
            optional("field", "block", "this squad's own field", "a block", "the event's"),
            optional("breaks", "list", "when its groups rest", "- {after: 3, length: 15 min}", "none"),
            optional("machines", "whole number", "lane machines used before it", "1", "all of the centre's")),
    /** A break. */
    BREAK(
            "squads.breaks",
            optional("after", "whole number", "game after which a group rests", "3", "at"),
            optional("at", "time of day", "a group rests after the game it plays then", "\"12:00\"", "after"),
            required("length", "min", "how long", "10 min to 60 min")),
    /** Bowlers by shares. */
    FIELD(
            "field",
            required("perSquad", "whole number", "bowlers in a squad, spread evenly over the pairs", "4 to 6 a pair"),
            required("hands", "%", "share of right and left", "{right: 85 %, left: 15 %}"),
            required("styles", "%", "share of each playing style", "{stroker: 60 %, tweener: 40 %}"),
            required("levels", "%", "share of each level of skill", "{scratch: 60 %, league: 40 %}"),
            required("covers", "%", "share of each strike ball cover", "{urethane: 20 %, medium-reactive: 80 %}"),
            optional("spareCover", "name", "cover of everybody's spare ball", "plastic", "plastic"),
            optional("slow", "%", "share of slow bowlers", "0 % to 20 %", Defaults.SLOW.text()),
            optional(
                    "slowTempo",
                    "%",
                    "time slow bowlers take over a shot, of the usual",
                    Defaults.SLOW_TEMPO.text(),
                    Defaults.SLOW_TEMPO.text()),
            optional(
                    "secondCover", "name", "cover of everybody's second ball for full racks", "weak-reactive", "none")),
    /** One bowler. */
    ENTRY(
            "entries",
            required("id", "text", "name or number, alone in the event", "Anchor"),
            required("hand", "name", "right or left", "right"),
            required("style", "name", "playing style", "tweener"),
            required("level", "name", "level of skill", "league"),
            required("cover", "name", "cover of the strike ball", "medium-reactive"),
            optional("spareCover", "name", "cover of the spare ball", "plastic", "plastic"),
            optional("tempo", "%", "time he takes over a shot, of the usual", "80 % to 150 %", Defaults.TEMPO.text()),
            optional("secondCover", "name", "cover of a second ball for full racks", "weak-reactive", "none"),
            optional("average", "pins", "the bowler's average, for the handicap", "187 pins", "the level's"),
            optional("squad", "text", "id of the bowler's squad", "A", "the only squad"),
            optional("group", "whole number", "who shares a pair, by starting pair", "1", "the list fills the pairs")),
    /** A change of who bowls. */
    CHANGE(
            "changes",
            required("bowler", "text", "name of a bowler, listed or drawn", "A-07"),
            optional("from", "whole number", "first game that he does not bowl", "3", "1"),
            optional(
                    "arrives",
                    "time of day",
                    "when a late bowler is there; he joins at his group's next game",
                    "\"08:40\"",
                    "in time"),
            optional("substitute", "block", "who bowls in his place", "{id: Guest, hand: right}", "nobody")),
    /** A substitute. */
    SUBSTITUTE(
            "changes.substitute",
            required("id", "text", "name or number, alone in the event", "Guest"),
            required("hand", "name", "right or left", "right"),
            required("style", "name", "playing style", "tweener"),
            required("level", "name", "level of skill", "league"),
            required("cover", "name", "cover of the strike ball", "medium-reactive"),
            optional("spareCover", "name", "cover of the spare ball", "plastic", "plastic"),
            optional("tempo", "%", "time he takes over a shot, of the usual", "80 % to 150 %", Defaults.TEMPO.text()),
            optional("secondCover", "name", "cover of a second ball for full racks", "weak-reactive", "none")),
    /** What can go wrong with lanes. */
    INCIDENTS(
            "incidents",
            optional("jams", "block", "short stops of pinsetters by chance", "{every: 150 games, work: 2 min}", "none"),
            optional("faults", "block", "faults of lanes by chance", "{every: 2000 games, work: 25 min}", "none"),
            optional("planned", "list", "faults at given times", "- {lane: 7, at: \"09:15\", work: 30 min}", "none"),
            optional("crews", "whole number", "people who put lanes in order, one lane each at a time", "1", "1"),
            optional(
                    "remedy",
                    "name",
                    "wait, spare (move to a spare pair) or split (over other groups)",
                    "wait",
                    "wait"),
            optional(
                    "patience",
                    "min",
                    "longest work that is waited for in any case",
                    "5 min to 15 min",
                    Defaults.PATIENCE.text())),
    /** Short stops. */
    JAMS("incidents.jams", stops("50 games to 500 games", "1 min to 5 min")),
    /** Faults. */
    FAULTS("incidents.faults", stops("500 games to 5000 games", "10 min to 60 min")),
    /** A fault at a given time. */
    PLANNED(
            "incidents.planned",
            required("lane", "whole number", "the lane", "7"),
            required("at", "time of day", "when it fails", "\"09:15\""),
            required("work", "min or s", "time of the work", "10 min to 60 min")),
    /** How long things take. */
    PACE(
            "pace",
            optional("firstShot", "s", "mean from lane free to first ball", "15 s to 30 s", Defaults.FIRST_SHOT.text()),
            optional(
                    "spareShot",
                    "s",
                    "mean from the ball's return to the next ball",
                    "10 s to 20 s",
                    Defaults.SPARE_SHOT.text()),
            optional(
                    "spread",
                    "%",
                    "standard deviation of these two, of their mean",
                    "10 % to 40 %",
                    Defaults.SHOT_SPREAD.text()),
            optional("pinsetter", "s", "from ball at the pins to pins set", "10 s to 20 s", Defaults.PINSETTER.text()),
            optional(
                    "ballReturn",
                    "s",
                    "from ball at the pins to ball back",
                    "10 s to 20 s",
                    Defaults.BALL_RETURN.text()),
            optional(
                    "courtesy",
                    "name",
                    "none, one or two lanes on which a neighbour is let go first",
                    Defaults.COURTESY,
                    Defaults.COURTESY),
            optional("approach", "s", "on the approach before a release", "4 s to 10 s", Defaults.APPROACH.text()),
            optional(
                    "movePerPair", "s", "walk to the neighbouring pair", "10 s to 30 s", Defaults.MOVE_PER_PAIR.text()),
            optional(
                    "settle",
                    "min or s",
                    "on a new pair before its first shot",
                    "1 min to 3 min",
                    Defaults.SETTLE.text())),
    /** What all bowlers have in common. */
    BOWLERS(
            "bowlers",
            optional(
                    "knowledge",
                    "name",
                    "what they choose lines by: own-balls, everything (they see the oil) or nothing (they never move)",
                    "own-balls",
                    "own-balls"),
            optional(
                    "tiring",
                    "%",
                    "share of his speed a bowler loses over 72 balls at full racks",
                    "0 % to 2 %",
                    "0 %")),
    /** How the event is scored. */
    SCORING(
            "scoring",
            optional("system", "name", "traditional or current-frame", "traditional", "traditional"),
            optional("noTap", "pins", "pins on a new rack that count as a strike", "9 pins", "10 pins"),
            optional("fouls", "%", "share of balls that are fouls", "0.1 %", "0 %"),
            optional("handicap", "block", "pins added for what an average lacks", "a block", "none")),
    /** Handicap. */
    HANDICAP(
            "scoring.handicap",
            required("base", "pins", "average that gets no handicap", "200 pins to 230 pins"),
            required("share", "%", "share of base less average that is added", "80 % to 100 %"),
            optional(
                    "averages",
                    "pins",
                    "average by level of skill, for those who have none of their own",
                    "{scratch: 205 pins, league: 185 pins}",
                    "each entry's own")),
    /** The laws. */
    LAWS(
            "laws",
            optional(
                    "friction",
                    "name",
                    "mixed-lubrication or exponential-stribeck",
                    "mixed-lubrication",
                    "mixed-lubrication"),
            optional(
                    "split",
                    "name",
                    "forward-roll, walker-fetsko, or none (balls move no oil)",
                    "forward-roll",
                    "forward-roll")),
    /** What counts as fair. */
    FAIRNESS(
            "fairness",
            optional(
                    "margin",
                    "pins",
                    "largest advantage, in pins a game, that still counts as fair",
                    "1 pin to 4 pins",
                    Defaults.MARGIN.text()),
            optional(
                    "limit",
                    "boards",
                    "move of the windows at which a lane counts as failed (reoil)",
                    "1 board to 3 boards",
                    Defaults.LIMIT.text())),
    /** What oiling costs, and what it saves, in a currency of the user's. */
    COSTS(
            "costs",
            optional("currency", "text", "short name of the currency", "EUR", Costs.USUAL.currency()),
            cost("oilLitre", "a litre of oil", "10 to 40", Costs.USUAL.oilLitre()),
            cost("cleanerLane", "cleaner for one lane", "0.1 to 0.5", Costs.USUAL.cleanerLane()),
            cost("labourHour", "an hour of whoever minds a machine", "15 to 40", Costs.USUAL.labourHour()),
            cost(
                    "laneHour",
                    "what a lane brings in in an hour, lost while it is oiled; 0 before opening",
                    "0 to 30",
                    Costs.USUAL.laneHour()),
            cost("pin", "worth of one bowler's expected game not changing by one pin", "0.02 to 1", Costs.USUAL.pin()),
            cost(
                    "unplanned",
                    "how many times as much an oiling costs that stops the play",
                    "2 to 10",
                    Costs.USUAL.unplanned())),
    /** A lane surface. */
    SURFACE(
            "surfaces.NAME",
            required("dryFriction", "number", "friction of a medium cover on the clean surface", "0.18 to 0.24"),
            required("roughness", "um", "roughness Ra", "0.3 um to 0.6 um"),
            required("source", "text", "where the values come from, or assumption", "assumption")),
    /** A ball cover. */
    COVER(
            "covers.NAME",
            required("frictionFactor", "number", "dry friction relative to a medium cover", "0.6 to 1.1"),
            optional("roughness", "um", "roughness Ra", "0.15 um to 1 um", "grit"),
            optional(
                    "grit",
                    "number",
                    "abrasive with which the ball was sanded all over until its finish changed no more",
                    "500 to 4000",
                    "roughness"),
            required("flareOverlap", "%", "share of a revolution's strip the next runs over again", "15 % to 90 %"),
            required("absorption", "min or s, or none", "time to take in 63 % of the oil on it", "300 s to 600 s"),
            optional("rg", "in or cm", "radius of gyration", "2.48 in to 2.70 in", "2.55 in"),
            optional(
                    "differential",
                    "in or cm",
                    "difference of radii of gyration; held to the rules, while the flare itself is flareOverlap",
                    "0.020 in to 0.055 in",
                    "within the rules"),
            optional("diameter", "in or cm", "of the ball", "8.5 in to 8.595 in", "8.54 in"),
            optional("weight", "lb or kg", "of the ball", "12 lb to 16 lb", "15 lb"),
            required("source", "text", "where the values come from, or assumption", "assumption")),
    /** A playing style. */
    STYLE(
            "styles.NAME",
            required("speed", "mph, m/s or km/h", "ball speed at release", "16 mph to 20 mph"),
            required("revRate", "rpm", "rev rate at release", "170 rpm to 450 rpm"),
            required("axisRotation", "deg", "between heading and drive", "25 deg to 60 deg"),
            required("axisTilt", "deg", "of the axis out of the horizontal", "5 deg to 20 deg"),
            required("naturalLaunch", "deg", "launch angle at home, positive to the own gutter", "0 deg to 2 deg"),
            required("source", "text", "where the values come from, or assumption", "assumption")),
    /** A level of skill. */
    LEVEL(
            "levels.NAME",
            required("arrows", "boards", "standard deviation at the arrows", "0.65 boards to 1.5 boards"),
            required("speedShare", "%", "standard deviation of speed", "1 % to 3 %"),
            required("spinShare", "%", "standard deviation of rev rate", "3 % to 7 %"),
            required("sees", "boards", "error in reading where the ball met the pins", "0.7 boards to 2.5 boards"),
            required(
                    "deadBand",
                    "boards",
                    "smallest believed miss that makes the bowler move",
                    "0.6 boards to 2 boards"),
            required("gain", "number", "share of the believed miss that a move takes out", "0.8 to 1"),
            required("patience", "shots", "shots on a lane from one move to the next", "2 shots to 5 shots"),
            required(
                    "drift",
                    "boards",
                    "how fast the bowler reckons a line goes off in a game",
                    "0.1 boards to 0.3 boards"),
            required("form", "%", "how much the scatter changes from game to game", "0 % to 20 %"),
            required("source", "text", "where the values come from, or assumption", "assumption"));

    private static final String REQUIRED = "required";

    private static Key[] stops(String typicalGames, String typicalWork) {
        return new Key[] {
            required("every", "games", "mean bowlers' games (ten frames) on a lane from one to the next", typicalGames),
            required("work", "min or s", "mean time of the work", typicalWork),
            optional(
                    "spread",
                    "%",
                    "standard deviation of the work, of its mean",
                    "30 % to 100 %",
                    Defaults.WORK_SPREAD.text())
        };
    }

    private final String path;
    private final List<Key> keys;

    Block(String path, Key... keys) {
        this.path = path;
        this.keys = List.of(keys);
    }

    /**
     * Where the block stands.
     *
     * @return its path in the file, empty for the file itself
     */
    public String path() {
        return path;
    }

    /**
     * The keys the reader knows in this block.
     *
     * @return in the order a file usually has them
     */
    public List<Key> keys() {
        return keys;
    }

    /**
     * Describes a key.
     *
     * @param name the key's name
     * @return the key, empty if this block has none of that name
     */
    public Optional<Key> key(String name) {
        return keys.stream().filter(key -> key.name().equals(name)).findFirst();
    }

    List<String> names() {
        return keys.stream().map(Key::name).toList();
    }

    /** The block in which a key stands that was written in another one. */
    static Optional<Block> homeOf(String key) {
        return Arrays.stream(values())
                .filter(block -> block.key(key).isPresent())
                .findFirst();
    }

    private static Key required(String name, String unit, String meaning, String typical) {
        return new Key(name, unit, meaning, typical, REQUIRED);
    }

    private static Key cost(String name, String meaning, String typical, double usual) {
        return optional(name, "number", meaning, typical, Defaults.plain(usual));
    }

    private static Key optional(String name, String unit, String meaning, String typical, String otherwise) {
        return new Key(name, unit, meaning, typical, otherwise);
    }
}
