package lanetide.cli.output;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lanetide.squads.study.Checkpoint;

/**
 * The file of finished playings, which grows by a line as each playing ends and of which nothing that is there is ever
 * changed: a run that is killed at any moment leaves all playings that had ended. It belongs to one run at a time.
 */
public final class PlayingsFile implements Checkpoint, AutoCloseable {
    private final Path path;
    private final RandomAccessFile file;
    private final Map<PlayingsText.Key, byte[]> playings;
    private final int damaged;

    private PlayingsFile(Path path, RandomAccessFile file, Map<PlayingsText.Key, byte[]> playings, int damaged) {
        this.path = path;
        this.file = file;
        this.playings = playings;
        this.damaged = damaged;
    }

    /**
     * Opens a file, or begins it.
     *
     * @param path where it is or shall be
     * @param head what is played, line by line
     * @return the file, which no other run can open until it is closed
     * @throws CommandFailure if it cannot be used, holds something else, or is in use
     */
    public static PlayingsFile open(Path path, PlayingsHead head) {
        if (AnswerFile.isDevice(path)) {
            throw CommandFailure.fileTrouble(
                    "Playings cannot be kept in " + path + ", which is no plain file; name another one.");
        }
        try {
            RandomAccessFile file = new RandomAccessFile(path.toFile(), "rw");
            try {
                return read(path, file, head);
            } catch (IOException | RuntimeException e) {
                file.close();
                throw e;
            }
        } catch (IOException e) {
            throw trouble(path, e);
        }
    }

    private static PlayingsFile read(Path path, RandomAccessFile file, PlayingsHead head) throws IOException {
        lock(path, file);
        byte[] bytes = new byte[Math.toIntExact(file.length())];
        file.readFully(bytes);
        Optional<PlayingsText> known = PlayingsText.read(bytes);
        if (known.isEmpty()) {
            byte[] begun = PlayingsText.head(head.lines());
            if (!Arrays.equals(bytes, 0, bytes.length, begun, 0, Math.min(bytes.length, begun.length))) {
                throw noPlayings(path);
            }
            file.seek(0);
            file.write(begun);
            return new PlayingsFile(path, file, new TreeMap<>(), 0);
        }
        head.requireSame(path, known.get().head());
        file.setLength(known.get().whole());
        file.seek(known.get().whole());
        return new PlayingsFile(
                path, file, new TreeMap<>(known.get().playings()), known.get().damaged());
    }

    private static void lock(Path path, RandomAccessFile file) throws IOException {
        try {
            FileLock lock = file.getChannel().tryLock();
            if (lock != null) {
                return;
            }
        } catch (OverlappingFileLockException e) {
            // As if another program had it.
        }
        throw CommandFailure.fileTrouble("Another run keeps its playings in " + path
                + " now; wait until it ends, or give each run a file of its own and join them with `lanetide merge`.");
    }

    /**
     * Joins several files of the same playings.
     *
     * @param files at least one
     * @return what one file would hold, in one order whatever that of the files is
     * @throws CommandFailure if one of them cannot be read, holds something else, or differs where others have the same
     *     playing
     */
    public static String joined(List<Path> files) {
        Path first = files.get(0);
        PlayingsText joined = text(first);
        for (Path file : files) {
            PlayingsText other = text(file);
            new PlayingsHead(joined.head()).requireSame(file, other.head());
            other.playings().forEach((key, gave) -> {
                byte[] same = joined.playings().putIfAbsent(key, gave);
                if (same != null && !Arrays.equals(same, gave)) {
                    throw CommandFailure.wrongUse("Playing " + key.number() + " of " + key.study()
                            + " is not the same in " + file + " as in a file before it; they are not of one program.");
                }
            });
        }
        return joined.text();
    }

    private static PlayingsText text(Path file) {
        try {
            return PlayingsText.read(Files.readAllBytes(file)).orElseThrow(() -> noPlayings(file));
        } catch (IOException e) {
            throw CommandFailure.fileTrouble(
                    "The playings in " + file + " cannot be read (" + ScenarioFile.reason(e) + ").");
        }
    }

    private static CommandFailure noPlayings(Path path) {
        return CommandFailure.wrongUse(
                path + " is no file of playings, and is left as it is; name another, which need not be there.");
    }

    /**
     * How many playings cannot be read.
     *
     * @return number of those that have been changed since they were written
     */
    public int damaged() {
        return damaged;
    }

    @Override
    public synchronized Optional<byte[]> find(String study, int playing) {
        return Optional.ofNullable(playings.get(new PlayingsText.Key(study, playing)));
    }

    @Override
    public synchronized void keep(String study, int playing, byte[] bytes) {
        PlayingsText.Key key = new PlayingsText.Key(study, playing);
        try {
            file.write(PlayingsText.line(key, bytes));
        } catch (IOException e) {
            throw trouble(path, e);
        }
        playings.put(key, bytes);
    }

    @Override
    public void close() {
        try {
            file.close();
        } catch (IOException e) {
            throw trouble(path, e);
        }
    }

    private static CommandFailure trouble(Path path, IOException e) {
        return CommandFailure.fileTrouble("Playings cannot be kept in " + path + " (" + ScenarioFile.reason(e)
                + "); those that are there stay, and the same command goes on from them.");
    }
}
