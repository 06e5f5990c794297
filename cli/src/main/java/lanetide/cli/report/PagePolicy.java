package lanetide.cli.report;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What a page may do in a browser (Content Security Policy Level 3, W3C): use the styles and the scripts that stand in
 * it, each known by its hash, and pictures that it makes itself; nothing from elsewhere, nothing sent, no other base.
 */
public final class PagePolicy {
    private PagePolicy() {}

    /**
     * The policy of a page.
     *
     * @param styles the text of each of its style elements
     * @param scripts the text of each of its script elements that is run
     * @return what stands in the policy's meta element
     */
    public static String of(List<String> styles, List<String> scripts) {
        return "default-src 'none'; base-uri 'none'; form-action 'none'; style-src " + hashes(styles)
                + (scripts.isEmpty() ? "" : "; script-src " + hashes(scripts)) + "; img-src data:";
    }

    private static String hashes(List<String> texts) {
        return texts.stream().map(PagePolicy::hash).collect(Collectors.joining(" "));
    }

    private static String hash(String text) {
        try {
            byte[] sha256 = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(sha256) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256, which every Java platform must provide, is missing", e);
        }
    }
}
