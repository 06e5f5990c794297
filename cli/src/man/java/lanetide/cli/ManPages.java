package lanetide.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.cli.report.Cautions;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/**
 * Writes the manual of the program, one page a command, in the form that a processor of AsciiDoc turns into man pages.
 */
final class ManPages {
    private ManPages() {}

    /**
     * Writes all pages.
     *
     * @param args the folder they go to
     * @throws IOException if it cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[0]));
        CommandLine program = Lanetide.commands(Optional.empty());
        List<CommandSpec> commands = new ArrayList<>(List.of(program.getCommandSpec()));
        program.getSubcommands().values().forEach(command -> commands.add(command.getCommandSpec()));
        commands.forEach(ManPages::suitPaper);
        int exitCode = ManPageGenerator.generateManPage(
                folder.toFile(), null, new boolean[0], true, commands.toArray(CommandSpec[]::new));
        if (exitCode != 0) {
            throw new IOException("the pages cannot be written to " + folder);
        }
    }

    /**
     * Headings as manuals have them, the cautions as a section of their own, and the way back to the program's page.
     */
    private static void suitPaper(CommandSpec command) {
        var page = command.usageMessage();
        page.exitCodeListHeading("Exit status").footerHeading("Examples");
        List<String> footer = new ArrayList<>(List.of(page.footer()));
        footer.addAll(List.of("", "== Cautions"));
        Cautions.ALL.forEach(caution -> footer.addAll(List.of("", caution)));
        footer.addAll(List.of("", "== See also", "", seeAlso(command)));
        page.footer(footer.toArray(String[]::new));
    }

    private static String seeAlso(CommandSpec command) {
        return command.parent() == null
                ? "Every command has a page of its own, such as *lanetide-simulate*(1)."
                : "*" + command.root().name() + "*(1)";
    }
}
