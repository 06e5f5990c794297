package lanetide.squads.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.WaitCause;
import org.junit.jupiter.api.Test;

class KeptFormatTest {
    private record Inner(double value, OptionalDouble perhaps) {}

    @SuppressWarnings("ArrayRecordComponent") // compared part by part
    private record Outer(
            int whole,
            long large,
            boolean sure,
            String name,
            Hand hand,
            List<Integer> numbers,
            Optional<Inner> inner,
            Map<Hand, Long> byHand,
            Inner[][] looks,
            double[] scores,
            PaceKept pace) {}

    private static final Outer OUTER = new Outer(
            -7,
            Long.MIN_VALUE,
            true,
            "Zoë \u0000 ＝",
            Hand.LEFT,
            List.of(1, 2, 3),
            Optional.of(new Inner(Math.nextUp(0.1), OptionalDouble.empty())),
            Map.of(Hand.RIGHT, 3L),
            new Inner[][] {{null, new Inner(-0.0, OptionalDouble.of(Double.MIN_VALUE))}, {}},
            new double[] {1.0 / 3, Double.NEGATIVE_INFINITY},
            new PaceKept(1, 2, Map.of(WaitCause.MACHINES, 5L)));

    @Test
    void everythingIsReadBackToTheLastBit() {
        KeptFormat<Outer> format = new KeptFormat<>(Outer.class);
        byte[] bytes = format.write(OUTER);
        Outer read = format.read(bytes);

        assertThat(format.write(read)).isEqualTo(bytes);
        assertThat(read)
                .usingRecursiveComparison()
                .withStrictTypeChecking()
                .ignoringFields("byHand", "pace.waitedMs")
                .isEqualTo(OUTER);
        assertThat(read.byHand()).isEqualTo(OUTER.byHand());
        assertThat(read.pace()).isEqualTo(OUTER.pace());
        assertThat(read.looks()[0][1]).isEqualTo(OUTER.looks()[0][1]);
    }

    @Test
    void anArrayAloneCanBeKept() {
        KeptFormat<double[]> format = new KeptFormat<>(double[].class);
        assertThat(format.read(format.write(new double[] {0.1, -2}))).containsExactly(0.1, -2);
    }

    @Test
    void whatEndsEarlyOrNamesNoConstantIsNotRead() {
        KeptFormat<Outer> format = new KeptFormat<>(Outer.class);
        byte[] bytes = format.write(OUTER);
        for (int length = 0; length < bytes.length; length++) {
            byte[] torn = Arrays.copyOf(bytes, length);
            assertThatExceptionOfType(UncheckedIOException.class).isThrownBy(() -> format.read(torn));
        }
        KeptFormat<Hand> hand = new KeptFormat<>(Hand.class);
        assertThat(hand.read(hand.write(Hand.LEFT))).isEqualTo(Hand.LEFT);
        byte[] other = new KeptFormat<>(String.class).write("MIDDLE");
        assertThatExceptionOfType(UncheckedIOException.class).isThrownBy(() -> hand.read(other));
    }

    private record Dated(LocalDate date) {}

    private record Many(Set<Integer> numbers) {}

    @Test
    void whatIsNoPlainDataIsRefusedBeforeAnythingIsPlayed() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new KeptFormat<>(Dated.class))
                .withMessage("java.time.LocalDate is nothing that can be kept of a playing");
        assertThatIllegalArgumentException().isThrownBy(() -> new KeptFormat<>(Many.class));
    }
}
