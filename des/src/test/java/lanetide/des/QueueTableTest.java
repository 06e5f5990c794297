package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import java.util.stream.Collectors;
import lanetide.des.QueueTable.Outcome;
import lanetide.des.random.Mrg32k3a;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.Tally;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The kernel, its streams, resources and statistics together, against closed forms of queueing theory: the mean of 20
 * independent replications must lie within three standard errors of the exact value, and the standard error must be
 * small enough for this to mean something.
 */
class QueueTableTest {

    private static final Path README = Path.of("README.md");
    private static final String BEGIN = "<!-- queues begin: written by QueueTableTest -->\n";
    private static final String END = "<!-- queues end -->\n";

    /**
     * The long form, whose results stand in the README. After a change that moves them, run it with
     * {@code -Dqueues.write=true}, which writes them there before it judges them.
     */
    @Test
    @Tag("slow")
    void everyRowOfTheTableIsThatOfTheory() throws IOException {
        List<Outcome> outcomes = QueueTable.simulate(20_000, 200_000);
        String table = BEGIN + "| quantity | expected | seen | standard errors off |\n|---|---|---|---|\n"
                + outcomes.stream().map(Outcome::asTableRow).collect(Collectors.joining("\n", "", "\n")) + END;
        if (Boolean.getBoolean("queues.write")) {
            String readme = Files.readString(README);
            String before = readme.substring(0, readme.indexOf(BEGIN));
            Files.writeString(README, before + table + readme.substring(readme.indexOf(END) + END.length()));
        }
        assertThat(Files.readString(README)).contains(table);
        assertAgree(outcomes, 0.05);
    }

    @Test
    void everyRowIsThatOfTheoryInShortRunsToo() {
        assertAgree(QueueTable.simulate(2_000, 8_000), 0.15);
    }

    /** From an empty M/M/1 the second customer waits lambda / (lambda + mu) / mu on average; memorylessness. */
    @Test
    void theSecondCustomerFromEmptyWaitsAsLongAsTheorySays() {
        Tally waits = new Tally("wait of the second customer");
        Replications.run(100_000, 2, i -> secondWait(new RandomStreams(20261125).forReplication(i)), done -> {})
                .forEach(waits::add);
        assertThat(Math.abs(waits.mean() - 0.8 / 1.8)).isLessThan(3 * waits.standardError());
        assertThat(waits.standardError()).isLessThan(0.01);
        ReadmeRow.says(
                "M/M/1 from empty: wait of the 2nd customer (100 000 runs)",
                String.format(Locale.ROOT, "%.4f ± %.4f", waits.mean(), waits.standardError()));
    }

    private static double secondWait(RandomStreams streams) {
        DoubleSupplier services = ServiceLaw.EXPONENTIAL.sampler(streams.stream("service"), 1);
        DoubleSupplier gaps = ServiceLaw.EXPONENTIAL.sampler(streams.stream("arrival"), 1 / 0.8);
        Simulator simulator = new Simulator();
        Resource server = new Resource("server", 1);
        long firstMs = millis(services);
        long[] secondMs = new long[2];
        server.acquire(() -> simulator.schedule(firstMs, 0, "departure", server::release));
        simulator.schedule(millis(gaps), 0, "arrival", () -> {
            secondMs[0] = simulator.nowMs();
            server.acquire(() -> secondMs[1] = simulator.nowMs());
        });
        simulator.run();
        return (secondMs[1] - secondMs[0]) / 1e6;
    }

    private static long millis(DoubleSupplier units) {
        return Math.round(units.getAsDouble() * 1e6);
    }

    /** Another family of generators, with published draws: what agrees with theory does not hang on the one in use. */
    @Test
    void theWaitIsThatOfTheoryUnderAnotherGeneratorToo() {
        QueueModel model = QueueModel.open("M/M/1, rho 0.8", 1, 0.8, ServiceLaw.EXPONENTIAL, 1);
        Tally waits = new Tally("wait");
        Mrg32k3a stream = new Mrg32k3a();
        for (int replication = 0; replication < 20; replication++) {
            Mrg32k3a arrivals = stream.ahead(76);
            Mrg32k3a services = arrivals.ahead(76);
            stream = stream.ahead(127);
            waits.add(model.replicate(name -> name.endsWith("source") ? arrivals : services, 2_000, 20_000)
                    .meanWait());
        }
        assertThat(Math.abs(waits.mean() - 4)).isLessThan(3 * waits.standardError());
        assertThat(waits.standardError()).isLessThan(0.2);
        ReadmeRow.says(
                "M/M/1, rho 0.8, drawn from MRG32k3a: mean wait",
                String.format(Locale.ROOT, "%.3f ± %.3f", waits.mean(), waits.standardError()));
    }

    private static void assertAgree(List<Outcome> outcomes, double mostRelativeError) {
        SoftAssertions all = new SoftAssertions();
        for (Outcome outcome : outcomes) {
            String row = outcome.asTableRow();
            all.assertThat(Math.abs(outcome.standardErrorsOff())).as(row).isLessThanOrEqualTo(3);
            all.assertThat(outcome.standardError())
                    .as(row)
                    .isLessThan(mostRelativeError * outcome.row().expected());
        }
        all.assertAll();
    }
}
