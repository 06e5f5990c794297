package lanetide.cli.report.schema;

import java.util.List;
import java.util.stream.Stream;

/** The fields of every answer in JSON: {@code path type meaning}, as {@link AnswerSchema} reads them. */
@SuppressWarnings("ImmutableEnumChecker") // the list comes from Stream.toList
enum Answer {
    CHECK("check", """
            errors integer
            warnings integer
            notices[].code text never changes its meaning
            notices[].severity text error, warning or info
            notices[].file text
            notices[].line integer from 1
            notices[].column integer from 1; in a table it counts cells
            notices[].field text empty for the whole file
            notices[].value text as written; empty for none
            notices[].message text what is wrong, where, and what to try
            """),
    COMPARE("compare", """
            otherScenarioSha256 text of the second scenario's bytes
            replications integer playings of each
            differences[].quantity text
            differences[].unit text
            differences[].a number mean in the first scenario
            differences[].b number mean in the second
            differences[].difference number second less first
            differences[].ci95.low number
            differences[].ci95.high number
            differences[].p number corrected for all that was compared
            differences[].isReal boolean p at most 5 %
            cautions[] text
            """),
    FAIRNESS("fairness", """
            verdict text fair, unfair or undecided
            marginPinsPerGame number
            lanesChange boolean false on lanes that stay as they are laid
            replications integer playings
            rounds integer independent rounds in these playings
            replicationsToDecide integer? playings in all that would decide with 90 % chance
            effects[].kind text squad, pair, group, hand or style
            effects[].id text
            effects[].bowlers integer
            effects[].advantagePinsPerGame number
            effects[].standardErrorPins number
            effects[].ci90.low number
            effects[].ci90.high number
            effects[].unfairP number corrected for all advantages looked at
            effects[].verdict text
            evenness object? of the groups' advantages; null for a single group
            evenness.spreadPins number
            evenness.meanEnvyPins number
            evenness.jain number
            evenness.gini number
            lateChanges object? what they do to the event as planned; null without any
            lateChanges.spreadBeforePins number
            lateChanges.spreadAfterPins number
            lateChanges.gainErrorPins number? null for too few rounds
            lateChanges.groups[].id text
            lateChanges.groups[].beforePins number
            lateChanges.groups[].afterPins number
            lateChanges.groups[].changeCi90.low number
            lateChanges.groups[].changeCi90.high number
            structure.isPermutation boolean whether every game gives each group a pair of its own
            structure.repeatedVisits[].squad text
            structure.repeatedVisits[].group text
            structure.repeatedVisits[].pair text
            structure.repeatedVisits[].firstGame integer
            structure.repeatedVisits[].game integer
            structure.carryOverIndex integer sum of squares of how often one group follows another
            structure.carryOverMinimum integer
            structure.carryOverMaximum integer
            structure.distinctPredecessors.min integer
            structure.distinctPredecessors.max integer
            structure.walkPairsPerGame number
            structure.longestWalkPairs number
            reasons[].code text never changes its meaning
            reasons[].text text
            remedies[].change text
            remedies[].expectedSpreadPins number from the worst to the best placed group
            remedies[].gainPins number against the event as it is
            remedies[].gainErrorPins number? null for too few rounds
            remedies[].extraMinutes number of the squad that is delayed most
            remedies[].extraCost number of oiling, in the scenario's currency
            remedies[].isChoice boolean whether no other is as good in all and better in one
            """ + Answer.ASSUMED),
    LINES("lines", """
            lines[].pattern text
            lines[].surface text
            lines[].style text
            lines[].hand text right or left; boards are counted from its gutter
            lines[].cover text
            lines[].level text
            lines[].basis text natural or free
            lines[].laydownBoard number? null if no line meets the pocket, as all that follow
            lines[].arrowsBoard number?
            lines[].launchAngleDeg number? positive toward the own gutter
            lines[].exitBoard number?
            lines[].exitWindow.low number? outermost good exit board
            lines[].exitWindow.high number? innermost good exit board
            lines[].breakpoint.board number?
            lines[].breakpoint.distanceFt number?
            lines[].entryAngleDeg number?
            lines[].speedAtPinsMph number?
            lines[].pocketShare number? 0 to 1
            lines[].strikeShare number? 0 to 1
            lines[].missRoomBoards number? both sides together, at the arrows
            lines[].missRoom.outsideBoards number?
            lines[].missRoom.insideBoards number?
            lines[].ballChange object? another ball that would help more than a move
            lines[].ballChange.cover text
            lines[].ballChange.strength text stronger or weaker
            lines[].ballChange.laydownBoard number
            lines[].ballChange.arrowsBoard number
            lines[].ballChange.strikeShare number 0 to 1
            lines[].ballChange.gain number in the share of strikes
            """ + Answer.ASSUMED),
    PATTERN("pattern", """
            patterns[].id text
            patterns[].lengthFt number
            patterns[].volumeMl number
            patterns[].ratio number? n of n:1
            patterns[].lengthBand text
            patterns[].volumeBand text
            patterns[].tier text
            patterns[].exitBoardByRule number? length in feet less 31
            patterns[].integratedVolumeMl number
            patterns[].basis text sheet or tapes
            patterns[].symmetric boolean
            patterns[].surface text
            patterns[].measuredLengthFt number
            patterns[].measuredRatio number? null over a dry outside, as the next three
            patterns[].measuredRatioRight number?
            patterns[].measuredRatioLeft number?
            patterns[].insideOutsideRatio number?
            patterns[].meanUnits number
            patterns[].bands.shortToFt number
            patterns[].bands.longFromFt number
            patterns[].bands.lowBelowMl number
            patterns[].bands.highAboveMl number
            patterns[].bands.sportTo number
            patterns[].bands.houseFrom number
            patterns[].tapes[].distanceFt number
            patterns[].tapes[].board integer from the right-hand gutter
            patterns[].tapes[].units number units of oil
            patterns[].exits[].style text
            patterns[].exits[].hand text
            patterns[].exits[].cover text
            patterns[].exits[].exitBoard number?
            patterns[].exits[].exitWindow object?
            patterns[].exits[].exitWindow.low number
            patterns[].exits[].exitWindow.high number
            """ + Answer.ASSUMED),
    ROTATE("rotate", """
            design.name text
            design.move integer pairs
            design.every integer games
            design.text text
            rotation[].squad text
            rotation[].game integer from 1
            rotation[].pair text such as 7-8
            rotation[].group text
            checks.isPermutation boolean whether every game gives each group a pair of its own
            checks.repeatedVisits[].squad text
            checks.repeatedVisits[].group text
            checks.repeatedVisits[].pair text
            checks.repeatedVisits[].firstGame integer
            checks.repeatedVisits[].game integer
            checks.carryOverIndex integer sum of squares of how often one group follows another
            checks.carryOverMinimum integer
            checks.carryOverMaximum integer
            checks.distinctPredecessors.min integer
            checks.distinctPredecessors.max integer
            checks.walkPairsPerGame number
            checks.longestWalkPairs number
            checks.named[].code text
            checks.named[].outcome text
            checks.named[].text text
            squads[].ids[] text squads that move alike
            squads[].verdict[] text
            squads[].checks[].code text
            squads[].checks[].outcome text
            squads[].checks[].text text
            squads[].~search object
            squads[].~search.start text
            squads[].~search.startCost number
            squads[].~search.cost number
            squads[].~search.tries integer
            squads[].~search.stoppedBecause text
            alternatives[].design text
            alternatives[].move integer
            alternatives[].squads[] text
            alternatives[].isPlanned boolean
            alternatives[].carryOverIndex integer
            alternatives[].carryOverMinimum integer
            alternatives[].carryOverMaximum integer
            alternatives[].repeatedVisits integer
            alternatives[].distinctPredecessors.min integer
            alternatives[].distinctPredecessors.max integer
            alternatives[].walkPairsPerGame number
            alternatives[].longestWalkPairs number
            alternatives[].cost number
            exposure[].squad text
            exposure[].group text
            exposure[].freshGames integer
            exposure[].middleGames integer
            exposure[].wornGames integer
            exposure[].gamesSinceOiling number mean over the group's games
            exposure[].rightHandedGamesBefore number
            exposure[].leftHandedGamesBefore number
            cautions[] text
            """),
    REOIL("reoil", """
            replications integer playings
            currency text
            recommendation.everyGames number games of a pair from one oiling to the next
            recommendation.low number 90 % interval
            recommendation.high number
            recommendation.beyond boolean whether it lies at the oldest oil looked at
            recommendation.basis text
            recommendation.costPerGame number?
            recommendation.controlBoards number?
            recommendation.text text
            policies[].everyGames number
            policies[].low number
            policies[].high number
            policies[].beyond boolean
            policies[].basis text cost, cost lane by lane, threshold, age replacement or condition
            policies[].costPerGame number?
            policies[].controlBoards number? move of the windows at which a pair is oiled
            policies[].text text
            curve[].games integer games a pair has seen
            curve[].windowShiftBoards number since the oiling
            curve[].windowWidthBoards number
            curve[].pocketShare number 0 to 1
            curve[].paceBoardsPerGame number
            curve[].spreadPins number root mean square change of expected scores
            curve[].levelPins number mean change of all scores
            curve[].costPerGame number
            oilOver.games integer of a squad
            oilOver.stripSpreadPins number
            oilOver.overSpreadPins number
            oilOver.stripCostPerGame number
            oilOver.overCostPerGame number
            oilOver.stripMinutes number
            oilOver.overMinutes number
            event.asPlanned.squads[] text before which lanes are done
            event.asPlanned.costPerPair number
            event.cheapest.squads[] text
            event.cheapest.costPerPair number
            pairAllAtOnce number cost of a pair's share of oiling all lanes
            pairAlone number cost of oiling a pair alone
            """ + Answer.ASSUMED),
    SIMULATE("simulate", """
            replications integer playings
            shots integer balls thrown in the first playing, practice included
            untilHalfWidth object? null for a fixed number of playings
            untilHalfWidth.wantedPins number
            untilHalfWidth.reachedPins number half the width of the widest 95 % interval of a squad's mean score
            untilHalfWidth.met boolean
            untilHalfWidth.projectedReplications integer playings it would roughly take
            squads[].id text
            squads[].start text time of day, as day 2 08:00 or 08:00
            squads[].end text in the first playing
            squads[].earliestEnd text over the playings
            squads[].latestEnd text over the playings
            squads[].games integer
            squads[].bowlers integer
            squads[].results[].id text bowler, in the first playing
            squads[].results[].group text
            squads[].results[].level text
            squads[].results[].handicapPins integer pins added to each game, not in the scores
            squads[].results[].scores[] integer pins by game
            squads[].results[].sheets[] text as X 72 S8/ F9: S before the pins of a ball that left a split, F a foul
            squads[].results[].ballChanges integer
            squads[].meanScore number pins a game
            squads[].meanScoreCi95 object? null for one playing
            squads[].meanScoreCi95.low number
            squads[].meanScoreCi95.high number
            squads[].meanScoreByGame[] number pins
            squads[].paceMinutesPerBowlerGame number
            squads[].waitedMinutesPerBowlerGame.* number a lane stood still for this cause
            timetable[].squad text
            timetable[].what text conditioning, practice, game or break
            timetable[].game integer for a break its number in the squad; 0 for conditioning and practice
            timetable[].start text mean over the playings
            timetable[].startRange90.low text between these, nine playings of ten
            timetable[].startRange90.high text
            timetable[].end text mean over the playings
            timetable[].endRange90.low text
            timetable[].endRange90.high text
            stops[].lane integer out of order in the first playing
            stops[].kind text jam or fault
            stops[].start text time of day
            stops[].end text
            lanes[].lane integer
            lanes[].games[].squad text
            lanes[].games[].afterGame integer 0 for the lane as the squad finds it
            lanes[].games[].gamesOnOil integer
            lanes[].games[].volumeMl number
            lanes[].games[].headUnits number units of oil on the thickest board of the first 15 ft
            lanes[].games[].headUnitsLow number units of oil on its most worn board
            lanes[].games[].carrydownMl number past the end of the pattern
            lanes[].games[].windows[].style text
            lanes[].games[].windows[].hand text boards are counted from its gutter
            lanes[].games[].windows[].low number? null if no line meets the pocket
            lanes[].games[].windows[].high number?
            lanes[].games[].windows[].best number?
            oil.appliedMl number
            oil.onLanesMl number
            oil.onBallsMl number
            oil.absorbedMl number
            oil.wipedMl number
            oil.strippedMl number
            oil.relativeError number share of the oil that is not found again
            """ + Answer.ASSUMED),
    PREVIEW("preview", """
            replications integer playings
            squad text
            pair text of the first game, such as 7-8
            bowler text? null if asked for a pair
            style text
            hand text boards are counted from its gutter
            level text
            cover text
            fresh.exitWindow.low number? on the fresh pattern, as all of this block; null if no line meets the pocket
            fresh.exitWindow.high number?
            fresh.exitBoard number?
            fresh.laydownBoard number?
            fresh.laydownSpread.low number?
            fresh.laydownSpread.high number?
            fresh.arrowsBoard number?
            fresh.pocketShare number? 0 to 1
            fresh.strikeShare number? 0 to 1
            fresh.foundShare number 0 to 1
            games[].game integer from 1
            games[].pair text
            games[].exitWindow.low number? medians over playings and lanes; null if on most no line meets the pocket
            games[].exitWindow.high number?
            games[].exitBoard number?
            games[].laydownBoard number?
            games[].laydownSpread.low number? a tenth of the starts lies below
            games[].laydownSpread.high number? a tenth of the starts lies above
            games[].arrowsBoard number?
            games[].pocketShare number? 0 to 1
            games[].strikeShare number? 0 to 1
            games[].foundShare number share of lanes on which a line meets the pocket, 0 to 1
            games[].moveBoards number? with the feet since the game before, positive away from the own gutter
            games[].cover text the ball to play
            games[].text text
            signs[].asGame integer 0 for lanes as freshly oiled
            signs[].boardsHigh number where a good shot then meets the pins, past the pocket's board
            watch[] text what to watch in practice
            cautions[] text
            """);

    private static final String ASSUMED = """
            assumptions[].name text
            assumptions[].value text
            assumptions[].source text
            cautions[] text
            """;

    private static final String OPENING = """
            schemaVersion integer grows when a field changes its meaning or goes
            version text of the program
            seed integer? same scenario, seed and version, same answer
            scenarioSha256 text? of the scenario's bytes
            ~namedFilesSha256.* text of a table beside the scenario, by its name
            """;

    private final String command;
    private final List<String> fields;

    Answer(String command, String fields) {
        this.command = command;
        this.fields = Stream.concat(Answer.opening().lines(), fields.lines()).toList();
    }

    private static String opening() {
        return OPENING;
    }

    String command() {
        return command;
    }

    List<String> fields() {
        return fields;
    }
}
