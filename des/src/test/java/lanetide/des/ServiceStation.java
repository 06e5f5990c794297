package lanetide.des;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.LongConsumer;
import java.util.function.LongSupplier;

/** First come, first served before a number of equal servers: the model behind the checks against queueing theory. */
final class ServiceStation {

    private record Customer(long arrivedMs, Runnable whenServed) {}

    private final Simulator simulator;
    private final LongSupplier serviceMs;
    private final LongConsumer waitsMs;
    private final Deque<Customer> queue = new ArrayDeque<>();
    private int idleServers;

    /**
     * @param serviceMs draws one service time
     * @param waitsMs is told the time each customer waited, when its service starts
     */
    ServiceStation(Simulator simulator, int servers, LongSupplier serviceMs, LongConsumer waitsMs) {
        this.simulator = simulator;
        this.serviceMs = serviceMs;
        this.waitsMs = waitsMs;
        idleServers = servers;
    }

    void arrive(Runnable whenServed) {
        queue.add(new Customer(simulator.nowMs(), whenServed));
        serveNext();
    }

    int waiting() {
        return queue.size();
    }

    private void serveNext() {
        if (idleServers == 0 || queue.isEmpty()) {
            return;
        }
        idleServers--;
        Customer customer = queue.remove();
        waitsMs.accept(simulator.nowMs() - customer.arrivedMs());
        simulator.schedule(serviceMs.getAsLong(), 0, "departure", () -> depart(customer));
    }

    private void depart(Customer customer) {
        idleServers++;
        customer.whenServed().run();
        serveNext();
    }
}
