package lanetide.oilflow.film;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.oilflow.lane.LaneGeometry;

/** Tape tables for tests. */
final class Tapes {
    private static final double FOOT_M = LaneGeometry.FOOT_M;

    private Tapes() {}

    /** The same at 8 and 30 ft on every board: so much on boards 10 to 30, so much outside. */
    static TapeTable step(double inside, double outside) {
        List<Integer> boards = IntStream.rangeClosed(1, 39).boxed().toList();
        List<Double> row = boards.stream()
                .map(board -> board >= 10 && board <= 30 ? inside : outside)
                .toList();
        return new TapeTable(boards, List.of(8 * FOOT_M, 30 * FOOT_M), List.of(row, row), 2);
    }

    /** Boards 3, 10 and 20 at 8, 22 and 36 ft. */
    static TapeTable half() {
        return new TapeTable(
                List.of(3, 10, 20),
                List.of(8 * FOOT_M, 22 * FOOT_M, 36 * FOOT_M),
                List.of(List.of(8.0, 22.0, 30.0), List.of(6.0, 16.0, 22.0), List.of(2.0, 5.0, 7.0)),
                1);
    }
}
