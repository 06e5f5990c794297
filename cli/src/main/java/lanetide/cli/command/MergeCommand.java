package lanetide.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import lanetide.cli.output.AnswerFile;
import lanetide.cli.output.ExitCode;
import lanetide.cli.output.Outputs;
import lanetide.cli.output.PlayingsFile;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Joins files of finished playings. */
@Command(
        name = "merge",
        header = "Joins files of finished playings into one",
        description = {
            "Runs with --part play shares of the same playings, each into a --resume FILE of its own. The joined file holds the playings of all, in one order whatever that of the files is. With it as --resume FILE, and without --part, the same command answers as one run would have, and plays what is still missing.",
            "",
            "The joined file goes to FILE with --out, and nothing to standard output. Failures go to standard error."
        },
        exitCodeList = {HelpText.DONE, HelpText.WRONG_USE + ", or files of different playings", HelpText.FILE_TROUBLE},
        footer = {"  lanetide merge part-1.txt part-2.txt -o all.txt", "  lanetide merge part-1.txt -o sound.txt"})
public final class MergeCommand implements Callable<Integer> {
    @Parameters(
            arity = "1..*",
            paramLabel = "FILE",
            description = "Files of playings of the same scenario, seed, command and options. Required.")
    private List<Path> files;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            required = true,
            description = "Write the joined file to FILE, in one step; none of those that are joined. Required.")
    private Path out;

    @Override
    public Integer call() {
        Outputs outputs = new Outputs();
        AnswerFile joined = outputs.file("--out", out);
        outputs.keep(files);
        joined.write(PlayingsFile.joined(files));
        return ExitCode.DONE;
    }
}
