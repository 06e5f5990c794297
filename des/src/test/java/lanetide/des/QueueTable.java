package lanetide.des;

import static lanetide.des.ServiceLaw.ERLANG_2;
import static lanetide.des.ServiceLaw.EXPONENTIAL;
import static lanetide.des.ServiceLaw.FIXED;
import static lanetide.des.ServiceLaw.HYPEREXPONENTIAL;
import static lanetide.des.ServiceLaw.UNIFORM;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import lanetide.des.QueueModel.Seen;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.Tally;

/**
 * Closed forms of queueing theory, and what the kernel makes of them.
 *
 * <p>Sources: D. Gross and C. M. Harris, "Fundamentals of Queueing Theory" (3rd ed. 1998), chapters from memory: M/M/1
 * and M/M/c, Erlang's formulas B and C, machine repair, Little's formula (chapter 2); the formula of Pollaczek and
 * Khinchine for M/G/1 (chapter 5). Six digits computed from the formulas by a separate program.
 */
final class QueueTable {

    private static final int REPLICATIONS = 20;
    private static final RandomStreams STREAMS = new RandomStreams(20261125);

    /** A quantity of a model and its exact value. */
    record Row(QueueModel model, String quantity, ToDoubleFunction<Seen> value, double expected) {}

    /** A row and the mean over the replications. */
    record Outcome(Row row, double mean, double standardError) {

        double standardErrorsOff() {
            return (mean - row.expected()) / standardError;
        }

        String asTableRow() {
            String expected =
                    BigDecimal.valueOf(row.expected()).stripTrailingZeros().toPlainString();
            return String.format(
                    Locale.ROOT,
                    "| %s: %s | %s | %.6f ± %.6f | %+.1f |",
                    row.model().name(),
                    row.quantity(),
                    expected,
                    mean,
                    standardError,
                    standardErrorsOff());
        }
    }

    private final List<Row> rows = new ArrayList<>();

    private QueueTable() {
        QueueModel half = QueueModel.open("M/M/1, rho 0.5", 1, 0.5, EXPONENTIAL, 1);
        add(half, "wait", Seen::meanWait, 1);
        add(half, "time in system", Seen::sojourn, 2);
        add(half, "number in system", Seen::present, 1);
        QueueModel busy = QueueModel.open("M/M/1, rho 0.8", 1, 0.8, EXPONENTIAL, 1);
        add(busy, "wait", Seen::meanWait, 4);
        add(busy, "time in system", Seen::sojourn, 5);
        add(busy, "queue", Seen::queue, 3.2);
        add(busy, "share waiting over 5", Seen::over5, 0.294304);
        QueueModel heavy = QueueModel.open("M/M/1, rho 0.9", 1, 0.9, EXPONENTIAL, 1);
        add(heavy, "wait", Seen::meanWait, 9);
        add(heavy, "queue", Seen::queue, 8.1);
        QueueModel barber = QueueModel.open("M/M/1, lambda 5, mu 6", 1, 5, EXPONENTIAL, 1.0 / 6);
        add(barber, "number in system", Seen::present, 5);
        add(barber, "queue", Seen::queue, 4.166667);
        add(barber, "wait", Seen::meanWait, 0.833333);
        add(barber, "time in system", Seen::sojourn, 1);
        add(QueueModel.open("M/M/1, lambda 5, mu 8", 1, 5, EXPONENTIAL, 1.0 / 8), "wait", Seen::meanWait, 0.208333);
        QueueModel clinic = QueueModel.open("M/M/3, lambda 6, mu 3", 3, 6, EXPONENTIAL, 1.0 / 3);
        add(clinic, "share of time empty", Seen::idle, 0.111111);
        add(clinic, "share who wait", Seen::delayed, 0.444444);
        add(clinic, "queue", Seen::queue, 0.888889);
        add(clinic, "wait", Seen::meanWait, 0.148148);
        add(clinic, "time in system", Seen::sojourn, 0.481481);
        add(clinic, "number in system", Seen::present, 2.888889);
        add(QueueModel.open("M/M/3, lambda 0.2, mu 0.1", 3, 0.2, EXPONENTIAL, 10), "wait", Seen::meanWait, 4.444444);
        QueueModel two = QueueModel.open("M/M/2, rho 0.8", 2, 1.6, EXPONENTIAL, 1);
        add(two, "share who wait", Seen::delayed, 0.711111);
        add(two, "wait", Seen::meanWait, 1.777778);
        QueueModel five = QueueModel.open("M/M/5, rho 0.8", 5, 4, EXPONENTIAL, 1);
        add(five, "share who wait", Seen::delayed, 0.554113);
        add(five, "wait", Seen::meanWait, 0.554113);
        add(QueueModel.open("M/D/1, rho 0.5", 1, 0.5, FIXED, 1), "wait", Seen::meanWait, 0.5);
        add(QueueModel.open("M/D/1, rho 0.8", 1, 0.8, FIXED, 1), "wait", Seen::meanWait, 2);
        add(QueueModel.open("M/D/1, rho 0.9", 1, 0.9, FIXED, 1), "wait", Seen::meanWait, 4.5);
        add(QueueModel.open("M/G/1, Erlang-2, rho 0.8", 1, 0.8, ERLANG_2, 1), "wait", Seen::meanWait, 3);
        add(QueueModel.open("M/G/1, uniform, rho 0.8", 1, 0.8, UNIFORM, 1), "wait", Seen::meanWait, 2.666667);
        add(QueueModel.open("M/G/1, c2 = 4, rho 0.8", 1, 0.8, HYPEREXPONENTIAL, 1), "wait", Seen::meanWait, 10);
        add(QueueModel.loss("M/M/2/2, load 1", 2, 1), "Erlang B", Seen::refused, 0.2);
        add(QueueModel.loss("M/M/5/5, load 3", 5, 3), "Erlang B", Seen::refused, 0.110054);
        add(QueueModel.loss("M/M/10/10, load 5", 10, 5), "Erlang B", Seen::refused, 0.018385);
        add(QueueModel.loss("M/M/20/20, load 15", 20, 15), "Erlang B", Seen::refused, 0.045593);
        add(QueueModel.open("M/M/2, load 1", 2, 1, EXPONENTIAL, 1), "Erlang C", Seen::delayed, 0.333333);
        add(QueueModel.open("M/M/5, load 3", 5, 3, EXPONENTIAL, 1), "Erlang C", Seen::delayed, 0.236152);
        add(QueueModel.open("M/M/10, load 8", 10, 8, EXPONENTIAL, 1), "Erlang C", Seen::delayed, 0.409180);
        add(QueueModel.open("M/M/20, load 15", 20, 15, EXPONENTIAL, 1), "Erlang C", Seen::delayed, 0.160429);
        QueueModel robots = QueueModel.repair("machine repair, 5 robots, 2 repairmen", 2, 5, 30, 3);
        add(robots, "share of time none is down", Seen::idle, 0.618592);
        add(robots, "number down", Seen::present, 0.464794);
        add(robots, "queue", Seen::queue, 0.011274);
        add(robots, "time down", Seen::sojourn, 3.074575);
    }

    /** Simulates every row, each model once. */
    static List<Outcome> simulate(int warmUp, int customers) {
        Map<QueueModel, List<Seen>> seen = new LinkedHashMap<>();
        List<Outcome> outcomes = new ArrayList<>();
        for (Row row : new QueueTable().rows) {
            List<Seen> replications = seen.computeIfAbsent(row.model(), model -> replicate(model, warmUp, customers));
            Tally tally = new Tally(row.quantity());
            replications.stream().mapToDouble(row.value()).forEach(tally::add);
            outcomes.add(new Outcome(row, tally.mean(), tally.standardError()));
        }
        return outcomes;
    }

    private static List<Seen> replicate(QueueModel model, int warmUp, int customers) {
        return Replications.run(
                REPLICATIONS,
                2,
                i -> model.replicate(STREAMS.forReplication(i)::stream, warmUp, customers),
                done -> {});
    }

    private void add(QueueModel model, String quantity, ToDoubleFunction<Seen> value, double expected) {
        rows.add(new Row(model, quantity, value, expected));
    }
}
