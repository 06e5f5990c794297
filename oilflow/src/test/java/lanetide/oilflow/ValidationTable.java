package lanetide.oilflow;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.ValidationRow.Use;
import lanetide.oilflow.pocket.PinCarry;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;

/**
 * The validation table of the module's README: what is published, what the model gives, and whether that is within the stated
 * limits. Nothing here is tuned; a row that is out stays in the table as open.
 */
final class ValidationTable {
    private ValidationTable() {}

    static String markdown() {
        List<ValidationRow> rows = new ArrayList<>(LawRows.rows());
        rows.addAll(ShotRows.rows());
        rows.addAll(LineRows.rows());
        rows.addAll(TopographyRows.rows());
        rows.addAll(TransitionRows.rows());
        rows.add(carry());
        StringBuilder table = new StringBuilder("| Check | Source | Published | Model | Status | Used for |\n");
        table.append("|---|---|---|---|---|---|\n");
        rows.forEach(row -> table.append(row.markdown()).append('\n'));
        return table.toString();
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
                "74 ± 12 % (binomial)",
                ValidationRow.format("%.0f %%", carried.getMean()),
                Math.abs(carried.getMean() - 74) <= 12,
                Use.CALIBRATION);
    }
}
