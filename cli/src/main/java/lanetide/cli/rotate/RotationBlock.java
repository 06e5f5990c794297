package lanetide.cli.rotate;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.report.Page;
import lanetide.squads.rotation.Rotation;

/** A rotation as a scenario writes it: one row a game, in it the pair of every group. */
final class RotationBlock {
    private RotationBlock() {}

    static List<String> lines(Rotation rotation, PairRow pairs) {
        List<String> lines = new ArrayList<>(List.of("rotation:", "  design: listed", "  table:"));
        for (int game = 0; game < rotation.games(); game++) {
            StringBuilder line = new StringBuilder("    - [");
            for (int group = 0; group < rotation.groups(); group++) {
                String cell = pairs.name(rotation.pairOf(game, group)) + (group + 1 < rotation.groups() ? "," : "]");
                if (line.length() + 1 + cell.length() > Page.WIDTH) {
                    lines.add(line.toString());
                    line = new StringBuilder("      ");
                }
                line.append(line.charAt(line.length() - 1) == '[' ? "" : " ").append(cell);
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
