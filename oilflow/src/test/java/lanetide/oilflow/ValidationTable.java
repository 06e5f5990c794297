package lanetide.oilflow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import lanetide.oilflow.ValidationRow.Use;

/**
 * The validation table of the module's README: what is published, what the model gives, and whether that is within the
 * stated limits. Nothing here is tuned; a row that is out stays in the table as open.
 */
final class ValidationTable {
    private ValidationTable() {}

    static String markdown() {
        List<ValidationRow> rows = new ArrayList<>(LawRows.rows());
        rows.addAll(ShotRows.rows());
        rows.addAll(LineRows.rows());
        rows.addAll(RuleRows.rows());
        rows.addAll(BallAdviceRows.rows());
        rows.addAll(TopographyRows.rows());
        rows.addAll(TransitionRows.rows());
        rows.addAll(CarryRows.rows());
        rows.addAll(HeldOutRows.rows());
        StringBuilder table = new StringBuilder("| Check | Source | Published | Model | Status | Used for |\n");
        table.append("|---|---|---|---|---|---|\n");
        rows.forEach(row -> table.append(row.markdown()).append('\n'));
        return table.append('\n').append(count(rows)).toString();
    }

    /** How many rows of each use are met. */
    private static String count(List<ValidationRow> rows) {
        String counts = Arrays.stream(Use.values()).map(use -> count(rows, use)).collect(Collectors.joining("; "));
        return "Met of all: " + counts + ".\n";
    }

    private static String count(List<ValidationRow> rows, Use use) {
        List<ValidationRow> ofUse =
                rows.stream().filter(row -> row.use() == use).toList();
        return use.printed() + " " + ofUse.stream().filter(ValidationRow::met).count() + " of " + ofUse.size();
    }
}
