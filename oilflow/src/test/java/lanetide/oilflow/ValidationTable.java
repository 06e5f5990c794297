package lanetide.oilflow;

import java.util.ArrayList;
import java.util.List;

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
        rows.addAll(TopographyRows.rows());
        rows.addAll(TransitionRows.rows());
        rows.addAll(CarryRows.rows());
        StringBuilder table = new StringBuilder("| Check | Source | Published | Model | Status | Used for |\n");
        table.append("|---|---|---|---|---|---|\n");
        rows.forEach(row -> table.append(row.markdown()).append('\n'));
        return table.toString();
    }
}
