package lanetide.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.openqa.selenium.WebElement;

/** What a browser puts on paper, as PDF. */
final class PrintedPage {
    private static final double MM_PT = 72 / 25.4;

    private final double widthPt;
    private final double heightPt;
    private final List<TextPosition> letters = new ArrayList<>();
    private final String text;
    private final String firstPage;
    private final int pages;

    private PrintedPage(byte[] bytes, double widthPt, double heightPt) throws IOException {
        this.widthPt = widthPt;
        this.heightPt = heightPt;
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            pages = pdf.getNumberOfPages();
            PDFTextStripper stripper = new PDFTextStripper() {
                @Override
                protected void writeString(String string, List<TextPosition> positions) throws IOException {
                    letters.addAll(positions);
                    super.writeString(string, positions);
                }
            };
            text = stripper.getText(pdf).replaceAll("\\s+", "");
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            firstPage = first.getText(pdf).replaceAll("\\s+", "");
        }
    }

    static PrintedPage of(Browser browser, String name, double widthInches, double heightInches) throws IOException {
        byte[] bytes = browser.pdf(widthInches, heightInches);
        Files.createDirectories(Path.of("target", "pictures"));
        Files.write(Path.of("target", "pictures", name + ".pdf"), bytes);
        return new PrintedPage(bytes, widthInches * 72, heightInches * 72);
    }

    int pages() {
        return pages;
    }

    void keepsMargin(double marginMm) {
        assertThat(letters).isNotEmpty();
        for (TextPosition letter : letters) {
            assertThat((double) letter.getXDirAdj() + letter.getWidthDirAdj())
                    .as("right edge of %s", letter)
                    .isLessThanOrEqualTo(widthPt - marginMm * MM_PT + 1);
            assertThat((double) letter.getXDirAdj())
                    .as("left edge of %s", letter)
                    .isGreaterThanOrEqualTo(marginMm * MM_PT - 1);
            assertThat((double) letter.getYDirAdj())
                    .as("foot of %s", letter)
                    .isLessThanOrEqualTo(heightPt - marginMm * MM_PT + 1);
        }
    }

    void has(String words) {
        assertThat(text).contains(words.replaceAll("\\s+", ""));
    }

    void beginsWith(String words) {
        assertThat(firstPage).contains(words.replaceAll("\\s+", ""));
    }

    void hasAllRows(Browser browser) {
        List<WebElement> rows = browser.all("tbody tr");
        assertThat(rows).isNotEmpty();
        for (WebElement row : rows) {
            assertThat(text).contains(row.getText().replaceAll("\\s+", ""));
        }
    }
}
