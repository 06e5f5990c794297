package lanetide.cli.rotate;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanetide.cli.report.Figures;
import lanetide.cli.report.Page;
import lanetide.cli.report.Table;
import lanetide.cli.words.English;
import lanetide.squads.model.Event;
import lanetide.squads.rotation.check.GroupExposure;
import lanetide.squads.rotation.check.WearExposure;

/** How fresh the lanes are that the groups of each squad meet; ranges where the groups differ. */
final class ExposureTable {
    private ExposureTable() {}

    static void add(Page page, Event event, WearExposure wear) {
        int longest = wear.longestOiling();
        page.heading("Lanes met: games of a group on fresh, middle and worn lanes (thirds of an oiling of "
                + English.count(longest, "game") + ")");
        List<String> head = List.of("Squad", "Fresh", "Middle", "Worn", "Games since oiling, mean");
        page.table(Table.rows(head, event.squads(), squad -> row(squad.id(), wear.groupsOf(squad.id()))), 1);
    }

    private static List<String> row(String squad, List<GroupExposure> groups) {
        return List.of(
                squad,
                span(groups, GroupExposure::fresh, 0),
                span(groups, GroupExposure::middle, 0),
                span(groups, GroupExposure::worn, 0),
                span(groups, GroupExposure::gamesSinceOiling, 1));
    }

    private static String span(List<GroupExposure> groups, ToDoubleFunction<GroupExposure> of, int decimals) {
        DoubleSummaryStatistics range = groups.stream().mapToDouble(of).summaryStatistics();
        String least = Figures.fixed(range.getMin(), decimals);
        String most = Figures.fixed(range.getMax(), decimals);
        return least.equals(most) ? least : least + "-" + most;
    }
}
