package lanetide.cli.scenario.key;

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
public final class Defaults {
    private static final String PRACTICE_OF_THE_TRADE = "common practice, no source";
    private static final String ASSUMPTION = "assumption";
    private static final String CHOSEN = "chosen to fit the published length rule, not measured";

    public static final Default SEED = new Default(1, "1", "any seed would do");
    public static final Default PRACTICE = new Default(600_000, "10 min", PRACTICE_OF_THE_TRADE);
    public static final Default MACHINES = new Default(LaneMachines.USUAL.combined(), "1", ASSUMPTION);
    public static final Default STRIP_TIME = pace(LaneMachines.USUAL.stripMsPerLane());
    public static final Default OIL_TIME = pace(LaneMachines.USUAL.oilMsPerLane());
    public static final Default TOPOGRAPHY_LIMIT =
            new Default(LaneSurvey.LIMIT_M, "0.040 in", "USBC, as quoted by several pages");
    public static final Default TOPOGRAPHY_SPREAD = new Default(0, "0 in", ASSUMPTION);
    public static final Default MACHINE_WALK = new Default(
            LaneMachines.USUAL.walkMsPerPair(), LaneMachines.USUAL.walkMsPerPair() / 1000 + " s", ASSUMPTION);
    public static final Default CREWS = new Default(Incidents.NONE.crews(), "1", ASSUMPTION);
    public static final Default PATIENCE =
            new Default(Incidents.NONE.patienceMs(), Incidents.NONE.patienceMs() / 60_000 + " min", ASSUMPTION);
    public static final Default WORK_SPREAD = new Default(0.5, "50 %", ASSUMPTION);
    public static final Default MOVE = new Default(1, "1 pair", PRACTICE_OF_THE_TRADE);
    public static final Default TURNING_MOVE = new Default(2, "2 pairs", PRACTICE_OF_THE_TRADE);
    public static final Default EVERY = new Default(1, "1 game", PRACTICE_OF_THE_TRADE);
    public static final Default TAPER_FROM = boards(OilPattern.DEFAULT_TAPER_FROM_BOARD);
    public static final Default TAPER_TO = boards(OilPattern.DEFAULT_TAPER_TO_BOARD);
    public static final Default DECAY = new Default(OilPattern.DEFAULT_DECAY, plain(OilPattern.DEFAULT_DECAY), CHOSEN);
    public static final Default FLOOR =
            new Default(OilPattern.DEFAULT_FLOOR, plain(100 * OilPattern.DEFAULT_FLOOR) + " %", CHOSEN);
    public static final Default BUFF_TO =
            new Default(OilPattern.DEFAULT_BUFF_TO, plain(100 * OilPattern.DEFAULT_BUFF_TO) + " %", ASSUMPTION);
    public static final Default TAPE_ERROR = new Default(2, "2 units", ASSUMPTION);
    public static final Default SHORT_TO = feet(PatternBands.PUBLISHED.shortToM());
    public static final Default LONG_FROM = feet(PatternBands.PUBLISHED.longFromM());
    public static final Default LOW_BELOW = millilitres(PatternBands.PUBLISHED.lowBelowMl());
    public static final Default HIGH_ABOVE = millilitres(PatternBands.PUBLISHED.highAboveMl());
    public static final Default SPORT_TO = ratio(PatternBands.PUBLISHED.sportTo());
    public static final Default HOUSE_FROM = ratio(PatternBands.PUBLISHED.houseFrom());
    public static final Default FIRST_SHOT = pace(PaceOfPlay.USUAL.firstShotMs());
    public static final Default SPARE_SHOT = pace(PaceOfPlay.USUAL.spareShotMs());
    public static final Default SHOT_SPREAD =
            new Default(PaceOfPlay.USUAL.spread(), plain(100 * PaceOfPlay.USUAL.spread()) + " %", ASSUMPTION);
    public static final Default PINSETTER = pace(PaceOfPlay.USUAL.pinsetterMs());
    public static final Default BALL_RETURN = pace(PaceOfPlay.USUAL.ballReturnMs());
    public static final Default APPROACH = new Default(
            PaceOfPlay.USUAL.courtesy().approachMs(),
            PaceOfPlay.USUAL.courtesy().approachMs() / 1000 + " s",
            ASSUMPTION);
    public static final Default SLOW = new Default(0, "0 %", ASSUMPTION);
    public static final Default SLOW_TEMPO = new Default(1.5, "150 %", ASSUMPTION);
    public static final Default TEMPO =
            new Default(Bowler.DEFAULT_TEMPO, plain(100 * Bowler.DEFAULT_TEMPO) + " %", PRACTICE_OF_THE_TRADE);
    public static final Default MOVE_PER_PAIR = pace(PaceOfPlay.USUAL.movePerPairMs());
    public static final Default SETTLE = pace(PaceOfPlay.USUAL.settleMs());
    public static final String COURTESY = "one";
    public static final Default TIRING = new Default(0, "0 %", "nobody tires; how much elite bowlers do was not found");
    public static final Default FOULS = new Default(0, "0 %", ASSUMPTION);
    public static final Default MARGIN = new Default(
            FairnessPlan.USUAL_MARGIN_PINS,
            plain(FairnessPlan.USUAL_MARGIN_PINS) + " pins",
            "moves a median bowler's chance to pass a cut by at most five in a hundred");
    public static final Default LIMIT = boards(ReoilPlan.DEFAULT_LIMIT_BOARDS, ASSUMPTION);
    public static final String REMEDY = "wait";
    public static final String ROTATION = "stay";
    public static final String SPARE_COVER = "plastic";
    public static final String PATTERN_NAME = "pattern";

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
    public static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static Default pace(long timeMs) {
        return new Default(timeMs, timeMs / 1000 + " s", PRACTICE_OF_THE_TRADE);
    }
}
