package lanetide.cli.options;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import lanetide.cli.output.CommandFailure;
import lanetide.cli.output.PlayingsFile;
import lanetide.cli.output.PlayingsHead;
import lanetide.cli.report.ProgramVersion;
import lanetide.cli.scenario.Reading;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PartPlayedException;
import lanetide.squads.study.Share;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Playing that goes on where it was stopped, and that several runs share. */
public final class ResumeOptions {
    /** Options that say how an answer is told, or that stand in the head otherwise; playings do not hang on them. */
    private static final Set<String> NOT_OF_PLAYINGS = Set.of(
            "--all-lanes",
            "--bowlers",
            "--fail-if-unfair",
            "--format",
            "--help",
            "--lane",
            "--measured",
            "--no-color",
            "--out",
            "--part",
            "--quiet",
            "--resume",
            "--seed",
            "--shot-log",
            "--threads",
            "--trace",
            "--units",
            "--version");

    /** What options are that were not given and have no usual value. */
    private static final Set<String> LEFT_OUT = Set.of("null", "false", "[]");

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description =
                    "Keep every finished playing in FILE, and play only those that it does not hold: after a stop the same command goes on from there and gives the same answer (default: none are kept).")
    private Path file;

    @Option(
            names = "--part",
            paramLabel = "I/N",
            description =
                    "Play only the I-th of N shares of the playings, such as 3/8, each into a --resume FILE of its own, and answer nothing; merge joins the files (default: all of them).")
    private Share share;

    /**
     * Looks whether playings can be kept, before a long run.
     *
     * @param options the command's, which know its outputs
     * @throws CommandFailure if they cannot
     */
    public void check(CommonOptions options) {
        if (file == null && share != null) {
            throw CommandFailure.wrongUse("--part needs --resume FILE, which keeps what is played.");
        }
        options.file("--resume", file);
    }

    /** Whether one of several shares is to be played. */
    public boolean inParts() {
        return share != null;
    }

    /**
     * Plays.
     *
     * @param options the command's
     * @param readings the scenarios that it plays
     * @param play what it makes of an execution
     * @return that
     * @throws CommandFailure if playings cannot be kept, or if one of several shares is played now
     */
    public <T> T playing(CommonOptions options, List<Reading> readings, Function<Execution, T> play) {
        if (file == null) {
            return play.apply(Execution.on(options.threads()));
        }
        PlayingsHead head = PlayingsHead.of(ProgramVersion.withCommit(), command.name(), readings, values());
        try (PlayingsFile kept = PlayingsFile.open(file, head)) {
            tellDamaged(options, kept.damaged());
            T answer = play.apply(Execution.from(options.threads(), kept, share == null ? Share.ALL : share));
            if (share != null) {
                throw CommandFailure.nothingYet(
                        file + " holds all playings; the same command without --part answers from them.");
            }
            return answer;
        } catch (PartPlayedException e) {
            throw CommandFailure.nothingYet("Part " + share.number() + " of " + share.of() + " is played: " + file
                    + " holds " + e.known() + " of " + e.all() + " playings of this step. Join the files of all parts"
                    + " with `lanetide merge`; the same command answers with the joined one, without --part.");
        } catch (CancellationException e) {
            throw CommandFailure.interrupted("Interrupted; " + file
                    + " holds the playings that had ended, and the same command goes on from there.");
        }
    }

    private void tellDamaged(CommonOptions options, int damaged) {
        if (damaged > 0) {
            options.err()
                    .println("lanetide: " + damaged + " playings in " + file + " are damaged and are played again.");
            options.err().flush();
        }
    }

    /** What is asked for otherwise than usual. */
    private Map<String, String> values() {
        Map<String, String> values = new TreeMap<>();
        for (OptionSpec option : command.options()) {
            String value = String.valueOf(option.<Object>getValue());
            if (!NOT_OF_PLAYINGS.contains(option.longestName()) && !LEFT_OUT.contains(value)) {
                values.put(option.longestName(), value);
            }
        }
        return values;
    }
}
