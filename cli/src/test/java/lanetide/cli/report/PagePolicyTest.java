package lanetide.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class PagePolicyTest {
    /** The example of Content Security Policy Level 3, W3C, under "nonces and hashes". */
    @Test
    void aScriptIsKnownByTheHashOfItsText() {
        assertThat(PagePolicy.of(List.of("p {}"), List.of("alert('Hello, world.');")))
                .startsWith("default-src 'none'; base-uri 'none'; form-action 'none'; style-src 'sha256-")
                .contains("; script-src 'sha256-qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng=';")
                .endsWith("; img-src data:");
    }

    @Test
    void aPageWithoutScriptsMayRunNone() {
        assertThat(PagePolicy.of(List.of("p {}"), List.of())).doesNotContain("script-src", "unsafe-inline");
    }
}
