package lanetide.cli.page;

import java.io.ByteArrayOutputStream;

/**
 * Run-length coding of bytes: a head byte n from 0 to 127 comes before n + 1 bytes as they are, one from 129 to 255
 * before a byte that stands 257 - n times. Unlike a compressor of the system it gives the same bytes on every machine.
 *
 * <p>Source: TIFF Revision 6.0, Adobe, 1992, section 9, PackBits compression.
 */
final class PackBits {
    private static final int MAX = 128;

    private PackBits() {}

    /**
     * Packs bytes.
     *
     * @param bytes any number of bytes
     * @return the runs, at most one byte longer for every 128 bytes
     */
    static byte[] pack(byte[] bytes) {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        int at = 0;
        while (at < bytes.length) {
            int run = runAt(bytes, at);
            if (run > 1) {
                packed.write(257 - run);
                packed.write(bytes[at]);
                at += run;
            } else {
                int plain = plainAt(bytes, at);
                packed.write(plain - 1);
                packed.write(bytes, at, plain);
                at += plain;
            }
        }
        return packed.toByteArray();
    }

    /** How often the byte stands here in a row. */
    private static int runAt(byte[] bytes, int from) {
        int to = from + 1;
        while (to < bytes.length && to - from < MAX && bytes[to] == bytes[from]) {
            to++;
        }
        return to - from;
    }

    /** How many bytes follow before three of a kind: a pair inside plain bytes costs less than a run of its own. */
    private static int plainAt(byte[] bytes, int from) {
        int to = from + 1;
        while (to < bytes.length && to - from < MAX && runAt(bytes, to) < 3) {
            to++;
        }
        return to - from;
    }
}
