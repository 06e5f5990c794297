package lanetide.des;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The benchmarks of this folder on a machine that others use too: timed by the processor time of the thread, which does
 * not count while others run, all sides by turns in one run, and judged by medians. It prints the tables of the README.
 */
public final class BusyMachine {

    private static final int ROUNDS = 5;
    private static final int IN_A_ROW = 300;
    private static final int QUEUES = 45;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();

    private BusyMachine() {}

    /** Runs everything; takes some minutes. */
    public static void main(String[] none) {
        BusyMachine machine = new BusyMachine();
        machine.queues();
        for (int pending : new int[] {100, 1_000, 100_000}) {
            machine.eventLists(pending);
        }
    }

    private void eventLists(int pending) {
        EventListBenchmark.Kernel kernel = new EventListBenchmark.Kernel();
        kernel.pending = pending;
        kernel.fill();
        EventListBenchmark.Peer peer = new EventListBenchmark.Peer();
        peer.pending = pending;
        peer.fill();
        EventListBenchmark.SsjHenriksen henriksen = new EventListBenchmark.SsjHenriksen();
        henriksen.pending = pending;
        henriksen.fill();
        EventListBenchmark.SsjSplayTree splay = new EventListBenchmark.SsjSplayTree();
        splay.pending = pending;
        splay.fill();
        Map<String, Runnable> sides = new LinkedHashMap<>();
        sides.put("kernel", kernel::hold);
        sides.put("priority queue", peer::hold);
        sides.put("SSJ Henriksen", henriksen::hold);
        sides.put("SSJ splay tree", splay::hold);
        print("hold, " + pending + " pending, ns", medians(sides, IN_A_ROW, ROUNDS));
    }

    private void queues() {
        QueueBenchmark queue = new QueueBenchmark();
        Map<String, Runnable> sides = new LinkedHashMap<>();
        sides.put("Lindley", queue::lindley);
        sides.put("kernel", queue::kernel);
        sides.put("kernel with resource", queue::kernelWithResource);
        sides.put("priority queue", queue::peerPriorityQueue);
        sides.put("SSJ splay tree", queue::peerSsjSplayTree);
        sides.put("SSJ Henriksen", queue::peerSsjHenriksen);
        Map<String, Double> perCustomer = medians(sides, 1, QUEUES);
        print("M/M/1, a million customers, us", perCustomer);
    }

    /** Median time of a call of each side in ns per thousand operations; the first two fifths of the rounds warm up. */
    private Map<String, Double> medians(Map<String, Runnable> sides, int inARow, int rounds) {
        Map<String, List<Double>> times = new LinkedHashMap<>();
        for (int round = 0; round < rounds; round++) {
            for (Map.Entry<String, Runnable> side : sides.entrySet()) {
                List<Double> own = times.computeIfAbsent(side.getKey(), name -> new ArrayList<>());
                repeat(side.getValue(), inARow);
                for (int i = 0; i < inARow; i++) {
                    double time = repeat(side.getValue(), 1);
                    if (5 * round >= 2 * rounds) {
                        own.add(time);
                    }
                }
            }
        }
        Map<String, Double> medians = new LinkedHashMap<>();
        times.forEach(
                (name, own) -> medians.put(name, own.stream().sorted().toList().get(own.size() / 2)));
        return medians;
    }

    private double repeat(Runnable side, int times) {
        long startNs = threads.getCurrentThreadCpuTime();
        for (int i = 0; i < times; i++) {
            side.run();
        }
        return (threads.getCurrentThreadCpuTime() - startNs) / 1_000.0 / times;
    }

    private static void print(String what, Map<String, Double> medians) {
        double kernel = medians.get("kernel");
        medians.forEach((name, median) -> System.out.printf(
                Locale.ROOT, "%s: %s %.1f, ratio to kernel %.2f%n", what, name, median, median / kernel));
    }
}
