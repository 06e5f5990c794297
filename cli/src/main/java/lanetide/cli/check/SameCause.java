package lanetide.cli.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import lanetide.cli.scenario.notice.Notice;
import lanetide.cli.scenario.notice.NoticeCode;

/**
 * Notices that say the same of several lines, such as of a word misspelt in a whole column: the first is told, and of
 * the others where they are.
 *
 * @param notices one or more, in their order
 * @param isOne whether all are of one cause, not of one kind alone
 */
record SameCause(List<Notice> notices, boolean isOne) {
    /** Of notices of one kind about one column or key, with other values, so many are told one by one. */
    private static final int TOLD_OF_A_KIND = 5;

    private static final Pattern INDEX = Pattern.compile("\\[\\d+]");

    SameCause {
        notices = List.copyOf(notices);
    }

    /** What makes two notices the same: all but the place. */
    private record Key(NoticeCode code, String file, String field, String value, String message) {
        static Key cause(Notice notice) {
            return new Key(
                    notice.code(),
                    notice.file(),
                    withoutIndex(notice.field()),
                    notice.value(),
                    withoutIndex(notice.message().replace(notice.field(), "")));
        }

        static Key kind(Notice notice) {
            return new Key(notice.code(), notice.file(), withoutIndex(notice.field()), "", "");
        }

        private static String withoutIndex(String text) {
            return INDEX.matcher(text).replaceAll("");
        }
    }

    /** Sorts notices by cause, in the order of the first of each; of many causes of a kind the later ones together. */
    static List<SameCause> of(List<Notice> notices) {
        Map<Key, List<Notice>> byCause = new LinkedHashMap<>();
        notices.forEach(notice -> byCause.computeIfAbsent(Key.cause(notice), key -> new ArrayList<>())
                .add(notice));
        Map<Key, Integer> told = new LinkedHashMap<>();
        Map<Key, List<List<Notice>>> together = new LinkedHashMap<>();
        byCause.forEach((cause, same) -> {
            Key kind = Key.kind(same.get(0));
            // Without a field notices of one kind differ in more than a value, but for rows that are too long.
            boolean alone = kind.field().isEmpty() && kind.code() != NoticeCode.SYNTAX_ERROR;
            boolean oneByOne = alone || told.merge(kind, 1, Integer::sum) <= TOLD_OF_A_KIND;
            together.computeIfAbsent(oneByOne ? cause : kind, key -> new ArrayList<>())
                    .add(same);
        });
        return together.values().stream().map(SameCause::join).toList();
    }

    private static SameCause join(List<List<Notice>> causes) {
        return new SameCause(causes.stream().flatMap(List::stream).toList(), causes.size() == 1);
    }

    Notice first() {
        return notices.get(0);
    }

    /** Where the others are, such as {@code The same 129 times more, on lines 3 to 131.}; empty if there is one. */
    String others() {
        if (notices.size() == 1) {
            return "";
        }
        List<Integer> lines =
                notices.stream().skip(1).map(Notice::line).distinct().sorted().toList();
        int more = notices.size() - 1;
        return (isOne ? " The same " : " Something like it ") + more + (more == 1 ? " time" : " times") + " more, on "
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
