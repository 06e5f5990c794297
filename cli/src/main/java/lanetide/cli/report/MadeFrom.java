package lanetide.cli.report;

import lanetide.cli.scenario.Scenario;

/** What a page or a sheet was made from, so that it can be made again. */
public final class MadeFrom {
    private static final int MARK = 16;

    private MadeFrom() {}

    /**
     * Of a sheet.
     *
     * @param scenario the scenario it tells of
     * @return program, file, seed and the beginning of the file's hash
     */
    public static String of(Scenario scenario) {
        return told(scenario, "");
    }

    /**
     * Of a page that rests on playings.
     *
     * @param scenario the scenario it tells of
     * @param playings how many there were
     * @return the same, with their number
     */
    public static String of(Scenario scenario, int playings) {
        return told(scenario, playings + " playings, ");
    }

    private static String told(Scenario scenario, String playings) {
        return "Lanetide " + ProgramVersion.text() + ", " + scenario.fileName() + ", seed " + scenario.seed() + ", "
                + playings + "scenario " + scenario.sha256().substring(0, MARK) + ".";
    }
}
