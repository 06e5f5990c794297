package lanetide.cli.report;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.scenario.notice.Notices;

/** A page of plain text, in ASCII so that every screen and printer shows it. */
public final class Page {
    /** Columns of a page, unless it is to be narrower. */
    public static final int WIDTH = 100;

    private static final String INDENT = "  ";

    private final int width;
    private final StringBuilder text = new StringBuilder();

    /** A page of the usual width. */
    public Page() {
        this(WIDTH);
    }

    /**
     * A page.
     *
     * @param width columns, wider than any word
     */
    public Page(int width) {
        this.width = width;
    }

    /** Adds a heading with an empty line before it, unless it opens the page. */
    public Page heading(String heading) {
        if (!text.isEmpty()) {
            text.append('\n');
        }
        return line(heading);
    }

    /** Adds a line as it is, but for characters that a terminal would obey. */
    public Page line(String line) {
        text.append(Notices.printable(line.stripTrailing())).append('\n');
        return this;
    }

    /** Adds a paragraph, wrapped and indented. */
    public Page paragraph(String words) {
        return wrapped(INDENT, INDENT, words);
    }

    /** Adds a list item, wrapped and indented. */
    public Page item(String words) {
        return wrapped(INDENT + "- ", INDENT + "  ", words);
    }

    /** Adds a table: the first row is the head; the first {@code left} columns are set flush left, the others right. */
    public Page table(List<List<String>> rows, int left) {
        int columns = rows.get(0).size();
        int[] widths = new int[columns];
        for (List<String> row : rows) {
            for (int i = 0; i < columns; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        rows.forEach(row -> line(row(row, widths, left)));
        return this;
    }

    /** The page, each line ended by a line feed. */
    public String text() {
        return text.toString();
    }

    private static String row(List<String> cells, int[] widths, int left) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < cells.size(); i++) {
            String gap = " ".repeat(widths[i] - cells.get(i).length());
            line.append(INDENT).append(i < left ? cells.get(i) + gap : gap + cells.get(i));
        }
        return line.toString();
    }

    private Page wrapped(String first, String others, String words) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean empty = true;
        for (String word : words.split(" ", -1)) {
            if (!empty && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(others);
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        lines.add(line.toString());
        lines.forEach(this::line);
        return this;
    }
}
