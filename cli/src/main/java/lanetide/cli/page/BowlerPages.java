package lanetide.cli.page;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lanetide.cli.preview.Preview;
import lanetide.cli.preview.Seating;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.model.Event;

/** A page for every bowler of an event, and how the director's page leads to it. */
public final class BowlerPages {
    private BowlerPages() {}

    /**
     * What the files are called: by number, so that no two are alike, and by as much of the name as any file may have.
     *
     * @param event the event
     * @return the names, in the order of {@link Seating#of}
     */
    public static List<String> names(Event event) {
        List<String> names = new ArrayList<>();
        for (Seating seating : Seating.of(event)) {
            String plain = Normalizer.normalize(seating.bowler().id(), Normalizer.Form.NFD)
                    .toLowerCase(Locale.ROOT)
                    .replaceAll("\\p{M}", "")
                    .replaceAll("[^a-z0-9]+", "-")
                    .replaceAll("^-|-$", "");
            String number = String.format(Locale.ROOT, "%03d", names.size() + 1);
            names.add((plain.isEmpty() ? number : number + "-" + plain.substring(0, Math.min(40, plain.length())))
                    + ".html");
        }
        return names;
    }

    /**
     * Writes the pages.
     *
     * @param reading the scenario as it was read, without errors
     * @param previews what every bowler will meet, in the order of {@link Seating#of}
     * @return contents by name
     */
    public static Map<String, String> write(Reading reading, List<Preview> previews) {
        Scenario scenario = reading.scenario().orElseThrow();
        List<String> names = names(scenario.event());
        List<Seating> seatings = Seating.of(scenario.event());
        Map<String, String> pages = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            Seating seating = seatings.get(i);
            String squad =
                    scenario.event().squads().get(seating.place().squad()).id();
            pages.put(
                    names.get(i),
                    BowlerPage.write(
                            reading,
                            previews.get(i),
                            scenario.drawn().of(squad, seating.bowler().id())));
        }
        return pages;
    }

    /**
     * How a page leads to the pages of the bowlers.
     *
     * @param event the event
     * @param page where the page lies
     * @param folder where theirs lie
     * @return by squad, each bowler with the address of his page
     */
    public static List<PageModel.SquadLinks> links(Event event, Path page, Path folder) {
        List<String> names = names(event);
        List<Seating> seatings = Seating.of(event);
        List<PageModel.SquadLinks> squads = new ArrayList<>();
        event.squads().forEach(squad -> squads.add(new PageModel.SquadLinks(squad.id(), new ArrayList<>())));
        for (int i = 0; i < names.size(); i++) {
            squads.get(seatings.get(i).place().squad())
                    .bowlers()
                    .add(new PageModel.Link(
                            seatings.get(i).bowler().id(), address(page, folder.resolve(names.get(i)))));
        }
        return squads;
    }

    private static String address(Path page, Path file) {
        Path way = page.toAbsolutePath()
                .normalize()
                .getParent()
                .relativize(file.toAbsolutePath().normalize());
        try {
            return new URI(null, null, "./" + way.toString().replace('\\', '/'), null).toASCIIString();
        } catch (URISyntaxException e) {
            throw new IllegalArgumentException("no address for " + file, e);
        }
    }
}
