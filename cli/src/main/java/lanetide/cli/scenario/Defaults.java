package lanetide.cli.scenario;

import java.math.BigDecimal;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternBands;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.squads.fairness.FairnessPlan;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.recondition.ReoilPlan;

/** Every value that holds where a scenario says nothing, in one place. */
final class Defaults {
    private static final String PRACTICE_OF_THE_TRADE = "common practice, no source";
    private static final String ASSUMPTION = "assumption";
    private static final String CHOSEN = "chosen to fit the published length rule, not measured";

    static final Default SEED = new Default(1, "1", "any seed would do");
    static final Default PRACTICE = new Default(600_000, "10 min", PRACTICE_OF_THE_TRADE);
    static final Default MACHINES = new Default(LaneMachines.USUAL.combined(), "1", ASSUMPTION);
    static final Default STRIP_TIME = pace(LaneMachines.USUAL.stripMsPerLane());
    static final Default OIL_TIME = pace(LaneMachines.USUAL.oilMsPerLane());
    static final Default TOPOGRAPHY_LIMIT =
            new Default(LaneSurvey.LIMIT_M, "0.040 in", "USBC, as quoted by several pages");
    static final Default TOPOGRAPHY_SPREAD = new Default(0, "0 in", ASSUMPTION);
    static final Default MACHINE_WALK = new Default(
            LaneMachines.USUAL.walkMsPerPair(), LaneMachines.USUAL.walkMsPerPair() / 1000 + " s", ASSUMPTION);
    static final Default CREWS = new Default(Incidents.NONE.crews(), "1", ASSUMPTION);
    static final Default PATIENCE =
            new Default(Incidents.NONE.patienceMs(), Incidents.NONE.patienceMs() / 60_000 + " min", ASSUMPTION);
    static final Default WORK_SPREAD = new Default(0.5, "50 %", ASSUMPTION);
    static final Default MOVE = new Default(1, "1 pair", PRACTICE_OF_THE_TRADE);
    static final Default TURNING_MOVE = new Default(2, "2 pairs", PRACTICE_OF_THE_TRADE);
    static final Default EVERY = new Default(1, "1 game", PRACTICE_OF_THE_TRADE);
    static final Default TAPER_FROM = boards(OilPattern.DEFAULT_TAPER_FROM_BOARD);
    static final Default TAPER_TO = boards(OilPattern.DEFAULT_TAPER_TO_BOARD);
    static final Default DECAY = new Default(OilPattern.DEFAULT_DECAY, plain(OilPattern.DEFAULT_DECAY), CHOSEN);
    static final Default FLOOR =
            new Default(OilPattern.DEFAULT_FLOOR, plain(100 * OilPattern.DEFAULT_FLOOR) + " %", CHOSEN);
    static final Default BUFF_TO =
            new Default(OilPattern.DEFAULT_BUFF_TO, plain(100 * OilPattern.DEFAULT_BUFF_TO) + " %", ASSUMPTION);
    static final Default TAPE_ERROR = new Default(2, "2 units", ASSUMPTION);
    static final Default SHORT_TO = feet(PatternBands.PUBLISHED.shortToM());
    static final Default LONG_FROM = feet(PatternBands.PUBLISHED.longFromM());
    static final Default LOW_BELOW = millilitres(PatternBands.PUBLISHED.lowBelowMl());
    static final Default HIGH_ABOVE = millilitres(PatternBands.PUBLISHED.highAboveMl());
    static final Default SPORT_TO = ratio(PatternBands.PUBLISHED.sportTo());
    static final Default HOUSE_FROM = ratio(PatternBands.PUBLISHED.houseFrom());
    static final Default FIRST_SHOT = pace(PaceOfPlay.USUAL.firstShotMs());
    static final Default SPARE_SHOT = pace(PaceOfPlay.USUAL.spareShotMs());
    static final Default SHOT_SPREAD =
            new Default(PaceOfPlay.USUAL.spread(), plain(100 * PaceOfPlay.USUAL.spread()) + " %", ASSUMPTION);
    static final Default PINSETTER = pace(PaceOfPlay.USUAL.pinsetterMs());
    static final Default BALL_RETURN = pace(PaceOfPlay.USUAL.ballReturnMs());
    static final Default APPROACH = new Default(
            PaceOfPlay.USUAL.courtesy().approachMs(),
            PaceOfPlay.USUAL.courtesy().approachMs() / 1000 + " s",
            ASSUMPTION);
    static final Default SLOW = new Default(0, "0 %", ASSUMPTION);
    static final Default SLOW_TEMPO = new Default(1.5, "150 %", ASSUMPTION);
    static final Default TEMPO =
            new Default(Bowler.DEFAULT_TEMPO, plain(100 * Bowler.DEFAULT_TEMPO) + " %", PRACTICE_OF_THE_TRADE);
    static final Default MOVE_PER_PAIR = pace(PaceOfPlay.USUAL.movePerPairMs());
    static final Default SETTLE = pace(PaceOfPlay.USUAL.settleMs());
    static final String COURTESY = "one";
    static final Default TIRING = new Default(0, "0 %", "nobody tires; how much elite bowlers do was not found");
    static final Default FOULS = new Default(0, "0 %", ASSUMPTION);
    static final Default MARGIN = new Default(
            FairnessPlan.USUAL_MARGIN_PINS,
            plain(FairnessPlan.USUAL_MARGIN_PINS) + " pins",
            "moves a median bowler's chance to pass a cut by at most five in a hundred");
    static final Default LIMIT = boards(ReoilPlan.DEFAULT_LIMIT_BOARDS, ASSUMPTION);
    static final String REMEDY = "wait";
    static final String ROTATION = "stay";
    static final String SPARE_COVER = "plastic";
    static final String PATTERN_NAME = "pattern";

    private Defaults() {}

    private static Default feet(double metres) {
        return new Default(metres, Range.round(metres / LaneGeometry.FOOT_M) + " ft", PatternBands.LENGTH_SOURCE);
    }

    private static Default millilitres(double volumeMl) {
        return new Default(volumeMl, plain(volumeMl) + " mL", PatternBands.VOLUME_SOURCE);
    }

    private static Default ratio(double ratio) {
        return new Default(ratio, plain(ratio) + ":1", PatternBands.RATIO_SOURCE);
    }

    private static Default boards(double board) {
        return boards(board, "most published patterns");
    }

    private static Default boards(double board, String source) {
        return new Default(board, plain(board) + " boards", source);
    }

    /** A number without the zeros that carry nothing. */
    static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static Default pace(long timeMs) {
        return new Default(timeMs, timeMs / 1000 + " s", PRACTICE_OF_THE_TRADE);
    }
}
