package lanetide.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.HexFormat;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PackBitsTest {
    private static final HexFormat HEX = HexFormat.ofDelimiter(" ").withUpperCase();

    /** Source: Technical Note TN1023, Understanding PackBits, Apple, 1996: the worked example. */
    @Test
    void theWorkedExampleOfItsAuthorsIsPackedAsTheyDo() {
        byte[] bytes = HEX.parseHex("AA AA AA 80 00 2A AA AA AA AA 80 00 2A 22 AA AA AA AA AA AA AA AA AA AA");

        assertThat(HEX.formatHex(PackBits.pack(bytes))).isEqualTo("FE AA 02 80 00 2A FD AA 03 80 00 2A 22 F7 AA");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 127, 128, 129, 130, 256, 1000})
    void whatIsPackedCanBeHadBackAndIsHardlyEverLonger(int length) {
        Random random = new Random(length);
        for (int kinds : new int[] {1, 2, 3, 250}) {
            byte[] bytes = new byte[length];
            for (int i = 0; i < length; i++) {
                bytes[i] = (byte) random.nextInt(kinds);
            }

            byte[] packed = PackBits.pack(bytes);

            assertThat(unpacked(packed)).isEqualTo(bytes);
            assertThat(packed.length).isLessThanOrEqualTo(length + (length + 127) / 128);
        }
    }

    /** By the letter of the specification, which has a head byte of 128 mean nothing. */
    private static byte[] unpacked(byte[] packed) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        int at = 0;
        while (at < packed.length) {
            int head = packed[at++];
            if (head >= 0) {
                bytes.write(packed, at, head + 1);
                at += head + 1;
            } else if (head != -128) {
                for (int i = 0; i < 1 - head; i++) {
                    bytes.write(packed[at]);
                }
                at++;
            }
        }
        return bytes.toByteArray();
    }
}
