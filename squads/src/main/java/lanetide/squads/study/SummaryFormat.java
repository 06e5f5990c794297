package lanetide.squads.study;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Event;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.FinalsResult;
import lanetide.squads.result.FinalsResult.Finalist;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.LaneStop;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.StyleWindow;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.result.WaitCause;

/**
 * Writes the summaries of a part of a study and reads them back exactly: numbers are kept to the last bit.
 *
 * <p>The form is that of {@link java.io.DataOutput}: big-endian integers, doubles by their 64 bits, strings as modified
 * UTF-8 with their length before them; a list is its size as an int and its items, an enum its name, what may be
 * missing a list of at most one. First comes the string {@code lanetide-playings 2}, then the list of playings. A
 * playing is its number, then the components of {@link EventResult} in the order of their declaration, and so on with
 * the records inside. A bowler is his name alone: who he is stands in the event that the design gives for that number.
 */
public final class SummaryFormat {
    private static final String HEADER = "lanetide-playings 3";

    private SummaryFormat() {}

    /**
     * Writes summaries.
     *
     * @param summaries some playings of one study
     * @param to where to; it is left open
     * @throws IOException if it takes no more
     */
    public static void write(List<PlayingSummary> summaries, OutputStream to) throws IOException {
        DataOutputStream out = new DataOutputStream(to);
        out.writeUTF(HEADER);
        new Writer(out).list(summaries, Writer::summary);
        out.flush();
    }

    /**
     * Reads what {@link #write} has written.
     *
     * @param from where from; it is left open
     * @param design the design of the study
     * @return the summaries
     * @throws IOException if the input ends early or is not in this form, or names a bowler whom the design's event
     *     does not have
     */
    public static List<PlayingSummary> read(InputStream from, Design design) throws IOException {
        DataInputStream in = new DataInputStream(from);
        if (!in.readUTF().equals(HEADER)) {
            throw new IOException("this is no file of playings in the form \"" + HEADER + "\"");
        }
        return list(in, () -> {
            Playing playing = design.playing(in.readInt());
            return new PlayingSummary(
                    playing, new Reader(in, design.setup(playing).event()).result());
        });
    }

    private interface Item<T> {
        void write(Writer writer, T item) throws IOException;
    }

    private interface Source<T> {
        T read() throws IOException;
    }

    private static <T> List<T> list(DataInputStream in, Source<T> item) throws IOException {
        int size = in.readInt();
        List<T> list = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            list.add(item.read());
        }
        return list;
    }

    private record Writer(DataOutputStream out) {
        <T> void list(List<T> items, Item<T> item) throws IOException {
            out.writeInt(items.size());
            for (T one : items) {
                item.write(this, one);
            }
        }

        void summary(PlayingSummary summary) throws IOException {
            EventResult result = summary.result();
            out.writeInt(summary.playing().number());
            list(result.squads(), Writer::squad);
            list(result.timetable(), Writer::entry);
            list(result.lanes(), Writer::lane);
            oil(result.oil());
            out.writeLong(result.shots());
            list(result.stops(), Writer::stop);
            list(result.finals().stream().toList(), Writer::finals);
        }

        private void finals(FinalsResult finals) throws IOException {
            out.writeLong(finals.endMs());
            list(finals.finalists(), Writer::finalist);
        }

        private void finalist(Finalist finalist) throws IOException {
            out.writeUTF(finalist.name());
            out.writeInt(finalist.seed());
            list(finalist.games(), (writer, game) -> writer.out.writeInt(game));
            out.writeDouble(finalist.wins());
            out.writeInt(finalist.place());
        }

        private void squad(SquadResult squad) throws IOException {
            out.writeUTF(squad.squad());
            out.writeLong(squad.startMs());
            out.writeLong(squad.endMs());
            list(squad.bowlers(), Writer::bowler);
            pace(squad.pace());
        }

        private void bowler(BowlerResult bowler) throws IOException {
            out.writeUTF(bowler.bowler().id());
            out.writeUTF(bowler.group());
            out.writeInt(bowler.firstGame());
            list(bowler.scores(), (writer, score) -> writer.out.writeInt(score));
            list(bowler.sheets(), (writer, sheet) -> writer.out.writeUTF(sheet));
            out.writeInt(bowler.ballChanges());
        }

        private void pace(PaceKept pace) throws IOException {
            out.writeLong(pace.pairMs());
            out.writeInt(pace.bowlerGames());
            list(List.copyOf(pace.waitedMs().entrySet()), (writer, waited) -> {
                writer.out.writeUTF(waited.getKey().name());
                writer.out.writeLong(waited.getValue());
            });
        }

        private void entry(TimetableEntry entry) throws IOException {
            out.writeUTF(entry.squad());
            out.writeUTF(entry.what().name());
            out.writeInt(entry.game());
            out.writeLong(entry.startMs());
            out.writeLong(entry.endMs());
        }

        private void lane(LaneState lane) throws IOException {
            out.writeInt(lane.lane());
            out.writeUTF(lane.squad());
            out.writeInt(lane.afterGame());
            out.writeInt(lane.gamesOnOil());
            out.writeDouble(lane.volumeMl());
            out.writeDouble(lane.headUnits());
            out.writeDouble(lane.headUnitsLow());
            out.writeDouble(lane.carrydownMl());
            list(lane.windows(), Writer::window);
        }

        private void window(StyleWindow window) throws IOException {
            out.writeUTF(window.style());
            out.writeUTF(window.hand().name());
            list(window.boards().stream().toList(), (writer, boards) -> {
                writer.out.writeDouble(boards.low());
                writer.out.writeDouble(boards.high());
                writer.out.writeDouble(boards.best());
            });
        }

        private void oil(OilAccount oil) throws IOException {
            out.writeDouble(oil.appliedMl());
            out.writeDouble(oil.onLanesMl());
            out.writeDouble(oil.onBallsMl());
            out.writeDouble(oil.absorbedMl());
            out.writeDouble(oil.wipedMl());
            out.writeDouble(oil.strippedMl());
        }

        private void stop(LaneStop stop) throws IOException {
            out.writeInt(stop.lane());
            out.writeUTF(stop.kind().name());
            out.writeLong(stop.startMs());
            out.writeLong(stop.endMs());
        }
    }

    /**
     * Reads one playing of an event. Java evaluates arguments from left to right, in the order in which they are
     * written.
     */
    private record Reader(DataInputStream in, Event event) {
        EventResult result() throws IOException {
            return new EventResult(
                    list(in, this::squad),
                    list(in, this::entry),
                    list(in, this::lane),
                    oil(),
                    in.readLong(),
                    list(in, this::stop),
                    list(in, this::finals).stream().findFirst());
        }

        private FinalsResult finals() throws IOException {
            return new FinalsResult(in.readLong(), list(in, this::finalist));
        }

        private Finalist finalist() throws IOException {
            return new Finalist(in.readUTF(), in.readInt(), list(in, in::readInt), in.readDouble(), in.readInt());
        }

        private SquadResult squad() throws IOException {
            String squad = in.readUTF();
            return new SquadResult(squad, in.readLong(), in.readLong(), list(in, () -> bowler(squad)), pace());
        }

        private BowlerResult bowler(String squad) throws IOException {
            String name = in.readUTF();
            return new BowlerResult(
                    event.squads().stream()
                            .filter(one -> one.id().equals(squad))
                            .flatMap(one -> one.everybody().stream())
                            .filter(one -> one.id().equals(name))
                            .findFirst()
                            .orElseThrow(
                                    () -> new IOException("the event has no bowler " + name + " in squad " + squad)),
                    in.readUTF(),
                    in.readInt(),
                    list(in, in::readInt),
                    list(in, in::readUTF),
                    in.readInt());
        }

        private PaceKept pace() throws IOException {
            long pairMs = in.readLong();
            int bowlerGames = in.readInt();
            Map<WaitCause, Long> waitedMs = new EnumMap<>(WaitCause.class);
            list(in, () -> waitedMs.put(WaitCause.valueOf(in.readUTF()), in.readLong()));
            return new PaceKept(pairMs, bowlerGames, waitedMs);
        }

        private TimetableEntry entry() throws IOException {
            return new TimetableEntry(
                    in.readUTF(),
                    TimetableEntry.Activity.valueOf(in.readUTF()),
                    in.readInt(),
                    in.readLong(),
                    in.readLong());
        }

        private LaneState lane() throws IOException {
            return new LaneState(
                    in.readInt(),
                    in.readUTF(),
                    in.readInt(),
                    in.readInt(),
                    in.readDouble(),
                    in.readDouble(),
                    in.readDouble(),
                    in.readDouble(),
                    list(in, this::window));
        }

        private StyleWindow window() throws IOException {
            return new StyleWindow(
                    in.readUTF(),
                    Hand.valueOf(in.readUTF()),
                    list(in, () -> new StyleWindow.Boards(in.readDouble(), in.readDouble(), in.readDouble())).stream()
                            .findFirst());
        }

        private OilAccount oil() throws IOException {
            return new OilAccount(
                    in.readDouble(),
                    in.readDouble(),
                    in.readDouble(),
                    in.readDouble(),
                    in.readDouble(),
                    in.readDouble());
        }

        private LaneStop stop() throws IOException {
            return new LaneStop(in.readInt(), LaneStop.Kind.valueOf(in.readUTF()), in.readLong(), in.readLong());
        }
    }
}
