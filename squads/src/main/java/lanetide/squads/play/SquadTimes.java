package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import lanetide.squads.result.TimetableEntry;

/** From when to when a squad's games and breaks went on, over all its pairs. */
final class SquadTimes {
    private final String squad;
    private final Span[] games;
    private final Span[] breaks;

    SquadTimes(String squad, int games, int breaks) {
        this.squad = squad;
        this.games = spans(games);
        this.breaks = spans(breaks);
    }

    /** A game, from 0, goes on. */
    void inGame(int game, long timeMs) {
        games[game].extend(timeMs);
    }

    /** A break, from 0, goes on. */
    void inBreak(int pause, long timeMs) {
        breaks[pause].extend(timeMs);
    }

    /** The games and breaks in order of start. */
    List<TimetableEntry> timetable() {
        List<TimetableEntry> entries = new ArrayList<>();
        add(entries, TimetableEntry.Activity.GAME, games);
        add(entries, TimetableEntry.Activity.BREAK, breaks);
        entries.sort(Comparator.comparingLong(TimetableEntry::startMs));
        return entries;
    }

    private void add(List<TimetableEntry> entries, TimetableEntry.Activity what, Span[] spans) {
        for (int i = 0; i < spans.length; i++) {
            if (spans[i].endMs >= 0) {
                entries.add(new TimetableEntry(squad, what, i + 1, spans[i].startMs, spans[i].endMs));
            }
        }
    }

    private static Span[] spans(int count) {
        Span[] spans = new Span[count];
        Arrays.setAll(spans, i -> new Span());
        return spans;
    }

    /** From the first moment to the last. */
    private static final class Span {
        private long startMs = Long.MAX_VALUE;
        private long endMs = -1;

        void extend(long timeMs) {
            startMs = Math.min(startMs, timeMs);
            endMs = Math.max(endMs, timeMs);
        }
    }
}
