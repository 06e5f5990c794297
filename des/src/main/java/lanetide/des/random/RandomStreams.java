package lanetide.des.random;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.core.source64.XoShiRo256PlusPlus;

/**
 * A family of random streams, each known by what it is used for, such as {@code bowler/17/release}.
 *
 * <p>A stream depends on the master seed, the replication and its own purpose key, and on nothing else: adding a bowler
 * changes no draw of another bowler, and two schedules simulated with the same seed meet the same luck (common random
 * numbers).
 *
 * <p>Generator: xoshiro256++, period 2<sup>256</sup> - 1 (D. Blackman and S. Vigna, "Scrambled linear pseudorandom
 * number generators", ACM Transactions on Mathematical Software 47, 2021). Its four state words are the SHA-256 digest
 * (FIPS 180-4), read as big-endian 64-bit numbers, of: the master seed as 8 bytes big-endian, the replication as 4
 * bytes big-endian (-1 outside any replication), the purpose key in UTF-8. Distinct keys thus start at points of the
 * period that are as good as drawn at random; that two of a million streams of 2<sup>40</sup> draws overlap has a
 * probability below 2<sup>-170</sup>.
 *
 * <p>Immutable, and safe to share between threads. The generators it hands out are not.
 */
public final class RandomStreams {

    private static final int NO_REPLICATION = -1;

    private final long masterSeed;
    private final int replication;

    /** The family outside any replication. */
    public RandomStreams(long masterSeed) {
        this(masterSeed, NO_REPLICATION);
    }

    private RandomStreams(long masterSeed, int replication) {
        this.masterSeed = masterSeed;
        this.replication = replication;
    }

    /**
     * The family of the same master seed for one replication, independent of those of all others and of the family
     * outside any replication. It depends on the master seed and the number alone.
     *
     * @param replication number of the replication, counted from 0
     * @throws IllegalArgumentException if {@code replication < 0}
     */
    public RandomStreams forReplication(int replication) {
        if (replication < 0) {
            throw new IllegalArgumentException("replication is " + replication + ", but must be at least 0");
        }
        return new RandomStreams(masterSeed, replication);
    }

    /**
     * A new generator at the start of the stream with this purpose. Asking twice gives two generators that draw the
     * same numbers, so ask once for each purpose.
     *
     * @param purposeKey what the stream is for, not blank
     * @throws IllegalArgumentException if {@code purposeKey} is blank
     */
    public UniformRandomProvider stream(String purposeKey) {
        if (purposeKey.isBlank()) {
            throw new IllegalArgumentException("purposeKey is '" + purposeKey
                    + "', but must say what the stream is for, such as 'bowler/17/release'");
        }
        ByteBuffer state = ByteBuffer.wrap(digest(purposeKey.getBytes(StandardCharsets.UTF_8)));
        return new XoShiRo256PlusPlus(state.getLong(), state.getLong(), state.getLong(), state.getLong());
    }

    private byte[] digest(byte[] purpose) {
        ByteBuffer identity = ByteBuffer.allocate(Long.BYTES + Integer.BYTES + purpose.length)
                .putLong(masterSeed)
                .putInt(replication)
                .put(purpose);
        return sha256().digest(identity.array());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256, which every Java platform must provide, is missing", e);
        }
    }
}
