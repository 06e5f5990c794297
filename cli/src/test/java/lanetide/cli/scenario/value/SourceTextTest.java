package lanetide.cli.scenario.value;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import org.junit.jupiter.api.Test;

class SourceTextTest {
    private final Notices notices = new Notices("test.yaml");
    private final SourceText source = new SourceText(notices);

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private void assertRefused(NoticeCode code, int line, int column, String value) {
        Yaml.assertRefused(notices, code, line, column, value);
    }

    @Test
    void aTextIsReadWithoutItsByteOrderMark() {
        assertThat(source.read(utf8("\uFEFFname: \u00e4\n"))).contains("name: \u00e4\n");
        assertThat(source.read(utf8("a\tb\r\n"))).contains("a\tb\r\n");
        assertThat(source.read(new byte[0])).contains("");
    }

    @Test
    void aControlCharacterIsToldWithItsPlace() {
        assertThat(source.read(utf8("one\ntwo\u0007"))).isEmpty();
        assertRefused(NoticeCode.FILE_NOT_TEXT, 2, 4, "character U+0007");
    }

    @Test
    void aByteThatIsNoUtf8IsToldWithItsPlace() {
        assertThat(source.read(new byte[] {'a', '\n', 'b', (byte) 0xE4, 'c'})).isEmpty();
        assertRefused(NoticeCode.FILE_NOT_TEXT, 2, 2, "byte E4");
    }

    @Test
    void aTableWithThatByteIsReadAsSpreadsheetsOfTheWestWriteIt() {
        assertThat(source.readTable(new byte[] {'a', (byte) 0xE4})).contains("a\u00e4");
        assertThat(source.readTable(utf8("a\u00e4"))).contains("a\u00e4");
    }

    @Test
    void aMegabyteIsReadAndAByteMoreIsNot() {
        assertThat(source.read(utf8("#".repeat(SourceText.MAX_BYTES)))).isPresent();
        assertThat(source.read(utf8("#".repeat(SourceText.MAX_BYTES + 1)))).isEmpty();
        assertRefused(NoticeCode.FILE_TOO_LARGE, 1, 1, "over 1 MB");
    }

    /** Source: the SHA-256 example for the message "abc" in FIPS 180-4's example values (NIST, 2001). */
    @Test
    void theHashIsThatOfTheStandard() {
        assertThat(SourceText.sha256(utf8("abc")))
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
