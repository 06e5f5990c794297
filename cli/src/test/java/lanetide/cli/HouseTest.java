package lanetide.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Sizes that keep the house one to live in: folders a person can look over, methods he can read at a glance. */
class HouseTest {
    private static final int MAX_FILES_OF_FOLDER = 40;
    private static final int MAX_LINES_OF_METHOD = 39;

    @Test
    void noFolderOfMainCodeHoldsMoreFilesThanAPersonCanLookOver() throws IOException {
        Map<Path, Long> files =
                mainFiles().stream().collect(Collectors.groupingBy(Path::getParent, Collectors.counting()));

        assertThat(files)
                .isNotEmpty()
                .allSatisfy((folder, count) ->
                        assertThat(count).as("files in %s", folder).isLessThanOrEqualTo(MAX_FILES_OF_FOLDER));
    }

    @Test
    void noMethodOfMainCodeIsLongerThanAScreen() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> tooLong = new ArrayList<>();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(mainFiles()));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree file : task.parse()) {
                new LongMethods(file, positions, tooLong).scan(file, null);
            }
        }

        assertThat(tooLong).isEmpty();
    }

    private static List<Path> mainFiles() throws IOException {
        List<Path> all = new ArrayList<>();
        for (String module : List.of("des", "oilflow", "squads", "cli")) {
            try (Stream<Path> files = Files.walk(Path.of("..", module, "src", "main", "java"))) {
                files.filter(file -> file.toString().endsWith(".java")).forEach(all::add);
            }
        }
        return all;
    }

    /** Collects the methods of one file that are too long, from the first line of the declaration to its last brace. */
    private static final class LongMethods extends TreeScanner<Void, Void> {
        private final CompilationUnitTree file;
        private final SourcePositions positions;
        private final List<String> tooLong;

        LongMethods(CompilationUnitTree file, SourcePositions positions, List<String> tooLong) {
            this.file = file;
            this.positions = positions;
            this.tooLong = tooLong;
        }

        @Override
        public Void visitMethod(MethodTree method, Void unused) {
            LineMap lines = file.getLineMap();
            long end = positions.getEndPosition(file, method);
            if (method.getBody() != null && end >= 0) {
                long count =
                        lines.getLineNumber(end) - lines.getLineNumber(positions.getStartPosition(file, method)) + 1;
                if (count > MAX_LINES_OF_METHOD) {
                    tooLong.add(file.getSourceFile().getName() + " " + method.getName() + ": " + count + " lines");
                }
            }
            return super.visitMethod(method, null);
        }
    }
}
