package lanetide.squads.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import lanetide.des.StoppedRun;
import lanetide.des.StoppingRule;
import org.junit.jupiter.api.Test;

/** What is known is not played again, and shares of playings are together all of them. */
class ExecutionTest {
    private record Gave(int number, double value) {}

    private final Set<Integer> played = new ConcurrentSkipListSet<>();

    private Gave play(int number) {
        played.add(number);
        return new Gave(number, 1.0 / (1 + number));
    }

    private List<Gave> run(Execution execution, Part part) {
        return execution.play(part, Gave.class, this::play, done -> {});
    }

    /** What was played since this was asked last. */
    private List<Integer> played() {
        List<Integer> numbers = List.copyOf(played);
        played.clear();
        return numbers;
    }

    @Test
    void onlyWhatIsNotKnownIsPlayedAndTheResultIsThatOfAnUnbrokenRun() {
        List<Gave> unbroken = run(Execution.on(2), new Part(2, 9));
        assertThat(played()).containsExactly(2, 3, 4, 5, 6, 7, 8);
        Memory memory = new Memory();
        assertThat(run(Execution.from(2, memory, Share.ALL), new Part(2, 9))).isEqualTo(unbroken);
        played();

        memory.forgetEvery(3);
        assertThat(run(Execution.from(1, memory, Share.ALL), new Part(2, 9))).isEqualTo(unbroken);
        assertThat(played()).containsExactly(2, 5, 8);
        assertThat(run(Execution.from(1, memory, Share.ALL), new Part(2, 9))).isEqualTo(unbroken);
        assertThat(played()).isEmpty();
    }

    @Test
    void howFarItIsCountsWhatWasKnown() {
        Memory memory = new Memory();
        run(Execution.from(1, memory, Share.ALL), Part.first(4));
        List<Integer> told = new ArrayList<>();
        Execution.from(1, memory, Share.ALL).play(Part.first(6), Gave.class, this::play, told::add);
        assertThat(told).containsExactly(4, 5, 6);
    }

    @Test
    void sharesInAnyOrderAreTogetherTheWhole() {
        List<Gave> unbroken = run(Execution.on(1), Part.first(7));
        played();
        Memory joined = new Memory();
        List<Integer> all = new ArrayList<>();
        for (int share : List.of(3, 1, 2)) {
            Memory memory = new Memory();
            Execution part = Execution.from(2, memory, new Share(share, 3));
            assertThatExceptionOfType(PartPlayedException.class)
                    .isThrownBy(() -> run(part, Part.first(7)))
                    .satisfies(e -> {
                        assertThat(e.known()).isEqualTo(share == 1 ? 3 : 2);
                        assertThat(e.all()).isEqualTo(7);
                    });
            joined.add(memory);
            all.addAll(played());
        }
        Collections.sort(all);
        assertThat(all).containsExactly(0, 1, 2, 3, 4, 5, 6);
        assertThat(run(Execution.from(1, joined, Share.ALL), Part.first(7))).isEqualTo(unbroken);
        assertThat(played()).isEmpty();
    }

    @Test
    void aShareWithNothingLeftPlaysNothing() {
        Memory memory = new Memory();
        Execution fifth = Execution.from(1, memory, new Share(5, 5));
        assertThatExceptionOfType(PartPlayedException.class).isThrownBy(() -> run(fifth, Part.first(3)));
        assertThat(played()).isEmpty();
    }

    @Test
    void studiesAndStepsOfARunAreKeptApart() {
        Memory memory = new Memory();
        Execution first = Execution.from(1, memory, Share.ALL);
        run(first, Part.first(1));
        run(first, Part.first(1));
        run(first.step("more"), Part.first(1));
        run(first.step("more").step("deeper"), Part.first(1));
        assertThat(memory.kept()).isEqualTo(4);

        Execution again = Execution.from(1, memory, Share.ALL);
        run(again, Part.first(1));
        run(again, Part.first(1));
        run(again.step("more"), Part.first(1));
        run(again.step("more").step("deeper"), Part.first(1));
        run(again.step("other"), Part.first(1));
        assertThat(memory.kept()).isEqualTo(1);
    }

    @Test
    void playingUntilSomethingIsKnownGoesOnFromWhatIsKnown() {
        StoppingRule rule = new StoppingRule(0.05, 0.95, 10, 200);
        StoppedRun<Gave> unbroken = until(Execution.on(1), rule);
        int size = unbroken.results().size();
        assertThat(size).isBetween(11, 199);
        Memory memory = new Memory();
        until(Execution.from(2, memory, Share.ALL), rule);
        memory.forgetEvery(4);
        played();

        assertThat(until(Execution.from(1, memory, Share.ALL), rule).results()).isEqualTo(unbroken.results());
        assertThat(new TreeSet<>(played()).size()).isBetween(1, size / 2);
    }

    private StoppedRun<Gave> until(Execution execution, StoppingRule rule) {
        return execution.playUntil(rule, Gave.class, this::play, gave -> new double[] {gave.value()}, done -> {});
    }

    @Test
    void aShareIsOneOfSoMany() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Share(0, 3));
        assertThatIllegalArgumentException().isThrownBy(() -> new Share(4, 3));
    }
}
