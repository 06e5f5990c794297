package lanetide.cli;

import java.util.Map;

/** Commands as they are shown to people, with so few playings that a test can wait for their answers. */
public final class FewPlayings {
    private static final Map<String, String> FEW = Map.of(
            "compare", "--replications 2",
            "fairness", "--replications 10 --bounds 2 --remedies 2",
            "preview", "--replications 2",
            "reoil", "--replications 4",
            "report", "--replications 2 --fairness 10 --remedies 2 --reoil 4",
            "sheets", "--replications 2",
            "simulate", "--replications 2");

    private FewPlayings() {}

    /**
     * A command that plays little.
     *
     * @param words the command and its options, without the name of the program
     * @return the same words where they say themselves how much is played, or where nothing is
     */
    public static String of(String words) {
        String few = FEW.get(words.split(" ", 2)[0]);
        boolean saysItself = words.contains("--replications") || words.contains("--until-halfwidth");
        return few == null || saysItself || words.contains("--help") ? words : words + " " + few;
    }
}
