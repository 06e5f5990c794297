package lanetide.squads.study;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;

/** A checkpoint in memory that counts, and that may forget. */
public final class Memory implements Checkpoint {
    private final Map<String, byte[]> known = new ConcurrentSkipListMap<>();
    private final AtomicInteger kept = new AtomicInteger();

    @Override
    public Optional<byte[]> find(String study, int playing) {
        return Optional.ofNullable(known.get(study + " " + playing));
    }

    @Override
    public void keep(String study, int playing, byte[] bytes) {
        kept.incrementAndGet();
        known.put(study + " " + playing, bytes);
    }

    /** How often something was kept since this was asked last. */
    public int kept() {
        return kept.getAndSet(0);
    }

    /** Forgets every so-manieth. */
    public void forgetEvery(int which) {
        int number = 0;
        for (String key : List.copyOf(known.keySet())) {
            if (number++ % which == 0) {
                known.remove(key);
            }
        }
    }

    /** Learns what another one knows. */
    public void add(Memory other) {
        known.putAll(other.known);
    }
}
