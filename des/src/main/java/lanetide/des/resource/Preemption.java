package lanetide.des.resource;

import java.util.Comparator;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Who has to go so that a better request can be served; rules in {@link Resource}. */
final class Preemption {

    private Preemption() {}

    /**
     * Displaces holders until enough units are free, or nobody at all.
     *
     * @param free units free now, fewer than the request wants
     * @param displace takes the units from a holder
     * @return whether enough units are free now
     */
    static boolean makeRoom(
            Request request, int free, RequestList holders, Comparator<Request> order, Consumer<Request> displace) {
        Predicate<Request> displaceable = holder -> mayDisplace(request, holder);
        if (free + holders.units(displaceable) < request.units) {
            return false;
        }
        int enough = free;
        while (enough < request.units) {
            Request victim = holders.max(order, displaceable);
            enough += victim.units;
            displace.accept(victim);
        }
        return true;
    }

    private static boolean mayDisplace(Request request, Request holder) {
        boolean sameOwner = request.owner != null && request.owner == holder.owner;
        return holder.priority() > request.priority() && !sameOwner;
    }
}
