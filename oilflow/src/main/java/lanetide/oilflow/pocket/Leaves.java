package lanetide.oilflow.pocket;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.catalogue.DataFile;

/** What is left of a full rack by where the ball met the head pin, from the data file beside this class. */
final class Leaves {
    private final List<Zone> zones = new ArrayList<>();

    Leaves() {
        DataFile file = new DataFile(Leaves.class, "leaves.properties");
        for (String id : file.ids()) {
            zones.add(Zone.read(file, id));
        }
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

    private record Zone(double fromBoard, double toBoard, List<Leave> leaves, double totalWeight) {
        static Zone read(DataFile file, String id) {
            List<Leave> leaves = new ArrayList<>();
            for (String item : file.text(id, "leaves").split(",", -1)) {
                String[] parts = item.split(":", -1);
                leaves.add(new Leave(Rack.parse(parts[0]), Double.parseDouble(parts[1])));
            }
            double total = leaves.stream().mapToDouble(Leave::weight).sum();
            return new Zone(file.number(id, "fromBoard"), file.number(id, "toBoard"), List.copyOf(leaves), total);
        }

        int draw(double u) {
            double left = u * totalWeight;
            for (Leave leave : leaves) {
                left -= leave.weight();
                if (left < 0) {
                    return leave.pins();
                }
            }
            return leaves.get(leaves.size() - 1).pins();
        }
    }
}
