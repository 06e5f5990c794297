package lanetide.cli.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;

/**
 * Notices that say the same of several lines, such as of a word misspelt in a whole column: the first is told, and of
 * the others where they are.
 *
 * @param notices one or more, in their order
 */
record SameCause(List<Notice> notices) {
    /** Of notices of one kind about one column or key, with other values, so many are told one by one. */
    private static final int TOLD_OF_A_KIND = 5;

    private static final String INDEX = "\\[\\d+]";

    SameCause {
        notices = List.copyOf(notices);
    }

    /** What makes two notices the same: all but the place. */
    private record Key(NoticeCode code, String file, String field, String value, String message) {
        static Key cause(Notice notice) {
            return new Key(
                    notice.code(),
                    notice.file(),
                    notice.field().replaceAll(INDEX, ""),
                    notice.value(),
                    notice.message().replace(notice.field(), "").replaceAll(INDEX, ""));
        }

        static Key kind(Notice notice) {
            return new Key(notice.code(), notice.file(), notice.field().replaceAll(INDEX, ""), "", "");
        }
    }

    /** Sorts notices by cause, in the order of the first of each; of many causes of a kind the later ones together. */
    static List<SameCause> of(List<Notice> notices) {
        Map<Key, List<Notice>> byCause = new LinkedHashMap<>();
        notices.forEach(notice -> byCause.computeIfAbsent(Key.cause(notice), key -> new ArrayList<>())
                .add(notice));
        Map<Key, Integer> told = new LinkedHashMap<>();
        Map<Key, List<Notice>> together = new LinkedHashMap<>();
        byCause.forEach((cause, same) -> {
            Key kind = Key.kind(same.get(0));
            // Without a field notices of one kind differ in more than a value, but for rows that are too long.
            boolean alone = kind.field().isEmpty() && kind.code() != NoticeCode.SYNTAX_ERROR;
            boolean oneByOne = alone || told.merge(kind, 1, Integer::sum) <= TOLD_OF_A_KIND;
            together.computeIfAbsent(oneByOne ? cause : kind, key -> new ArrayList<>())
                    .addAll(same);
        });
        return together.values().stream().map(SameCause::new).toList();
    }

    Notice first() {
        return notices.get(0);
    }

    /** Where the others are, such as {@code The same 129 times more, on lines 3 to 131.}; empty if there is one. */
    String others() {
        if (notices.size() == 1) {
            return "";
        }
        boolean same = notices.stream().map(Key::cause).distinct().count() == 1;
        List<Integer> lines =
                notices.stream().skip(1).map(Notice::line).distinct().sorted().toList();
        int more = notices.size() - 1;
        return (same ? " The same " : " Something like it ") + more + (more == 1 ? " time" : " times") + " more, on "
                + (lines.size() == 1 ? "line " : "lines ") + ranges(lines) + ".";
    }

    private static String ranges(List<Integer> lines) {
        List<String> ranges = new ArrayList<>();
        int from = 0;
        while (from < lines.size()) {
            int to = from;
            while (to + 1 < lines.size() && lines.get(to + 1) == lines.get(to) + 1) {
                to++;
            }
            ranges.add(lines.get(from) + (to == from ? "" : (to == from + 1 ? ", " : " to ") + lines.get(to)));
            from = to + 1;
        }
        return String.join(", ", ranges);
    }
}
