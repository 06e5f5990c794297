package lanetide.oilflow.pocket;

import java.util.Arrays;
import java.util.stream.Stream;
import lanetide.oilflow.catalogue.DataFile;

/** What is left of a full rack by where the ball met the head pin, from the data file beside this class. */
final class Leaves {
    private final Zone[] zones;

    Leaves() {
        DataFile file = new DataFile(Leaves.class, "leaves.properties");
        zones = file.ids().stream().map(id -> Zone.read(file, id)).toArray(Zone[]::new);
    }

    /**
     * Draws a leave.
     *
     * @param arrivalBoard arrival from the delivery side, 13.75 to 20
     * @param u uniform number in [0, 1)
     * @return pins left standing
     */
    int draw(double arrivalBoard, double u) {
        for (Zone zone : zones) {
            if (arrivalBoard >= zone.fromBoard && arrivalBoard < zone.toBoard) {
                return zone.draw(u);
            }
        }
        throw new IllegalArgumentException("no zone of leaves holds board " + arrivalBoard);
    }

    private record Leave(int pins, double weight) {}

    private static final class Zone {
        private final double fromBoard;
        private final double toBoard;
        private final Leave[] leaves;
        private final double totalWeight;

        private Zone(double fromBoard, double toBoard, Leave[] leaves) {
            this.fromBoard = fromBoard;
            this.toBoard = toBoard;
            this.leaves = leaves;
            this.totalWeight = Arrays.stream(leaves).mapToDouble(Leave::weight).sum();
        }

        static Zone read(DataFile file, String id) {
            Leave[] leaves = Stream.of(file.text(id, "leaves").split(",", -1))
                    .map(item -> item.split(":", -1))
                    .map(parts -> new Leave(Rack.parse(parts[0]), Double.parseDouble(parts[1])))
                    .toArray(Leave[]::new);
            return new Zone(file.number(id, "fromBoard"), file.number(id, "toBoard"), leaves);
        }

        int draw(double u) {
            double left = u * totalWeight;
            for (Leave leave : leaves) {
                left -= leave.weight();
                if (left < 0) {
                    return leave.pins();
                }
            }
            return leaves[leaves.length - 1].pins();
        }
    }
}
