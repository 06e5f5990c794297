package lanetide.oilflow;

import java.util.List;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.ball.BallCore;
import lanetide.oilflow.pocket.Deflection;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.oilflow.pocket.Rack;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/** Rows of the validation table about the pins. */
final class CarryRows {
    private static final String RIDENOUR = "Ridenour (USBC), Is that the 3 pin carrying the 10 pin?";

    private CarryRows() {}

    static List<ValidationRow> rows() {
        return List.of(
                carry(), exit("flush", 17.75, 5.5, 19, Use.FITTED), exit("light", 16.5, 6, 14, Use.CHECK), pins());
    }

    private static ValidationRow carry() {
        PinCarry carry = new PinCarry();
        SummaryStatistics carried = new SummaryStatistics();
        for (int i = -125; i <= 125; i++) {
            carried.addValue(100 * carry.strikeChance(PinCarry.POCKET_BOARD + 0.01 * i, Math.toRadians(5)));
        }
        return new ValidationRow(
                "Strikes among pocket hits at 5°",
                "40 of 54 in televised finals (Thomas)",
                "70 to 80 %",
                ValidationRow.format("%.0f %%", carried.getMean()),
                carried.getMean() >= 70 && carried.getMean() <= 80,
                Use.FITTED);
    }

    private static ValidationRow exit(String hit, double board, double deg, double published, Use use) {
        double exit = new Deflection(BallCore.DEFAULT.massKg()).exitBoard(board, Math.toRadians(deg));
        return new ValidationRow(
                "Board at which a " + hit + " hit (" + board + " at " + deg + "°) leaves the pins",
                RIDENOUR,
                ValidationRow.format("about %.0f, taken as ± 0.75", published),
                ValidationRow.format("%.1f", exit),
                Math.abs(exit - published) <= 0.75,
                use);
    }

    private static ValidationRow pins() {
        Deflection ball = new Deflection(BallCore.DEFAULT.massKg());
        ball.exitBoard(PinCarry.POCKET_BOARD, Math.toRadians(6));
        String touched = Rack.format(ball.touched());
        return new ValidationRow(
                "Pins that the ball itself touches on the best hit (17.5 at 6°)",
                "USBC study (bowling checklists, July 2014)",
                "1-3-5-9",
                touched,
                touched.equals("1-3-5-9"),
                Use.CHECK);
    }
}
