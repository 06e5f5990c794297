package lanetide.cli.pattern;

import java.util.Comparator;
import java.util.List;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.Figures;
import lanetide.cli.report.PatternWords;
import lanetide.cli.scenario.key.Names;
import lanetide.oilflow.lane.LaneSurface;

/** What length, volume, ratio and surface of a pattern mean for play, in the words of the trade. */
final class PatternMeaning {
    private final PatternFacts facts;
    private final Names names;
    private final boolean metric;

    PatternMeaning(PatternFacts facts, Names names, boolean metric) {
        this.facts = facts;
        this.names = names;
        this.metric = metric;
    }

    List<String> sentences() {
        return List.of(length(), volume(), ratio(), surface());
    }

    private String length() {
        String start = "Length " + PatternWords.distance(facts.pattern().lengthM(), metric) + ", "
                + ConstantName.of(facts.lengthBand()) + ": ";
        return start
                + switch (facts.lengthBand()) {
                    case SHORT ->
                        "much dry lane after the oil, so the ball hooks early and a lot. Play near the gutter, straighter,"
                                + " with a cover that does not overreact.";
                    case MEDIUM ->
                        "the ball has room both to slide and to hook. Most styles find a line around the second arrow.";
                    case LONG ->
                        "little dry lane after the oil, so the ball hooks late and a little. Play farther inside, with a"
                                + " cover that answers quickly.";
                };
    }

    private String volume() {
        String start = "Volume " + Figures.plain(facts.pattern().volumeMl(), 1) + " mL, "
                + ConstantName.of(facts.volumeBand()) + ": ";
        return start
                + switch (facts.volumeBand()) {
                    case LOW -> "the oil is soon used up. Expect to move early, and start with a weaker cover.";
                    case MEDIUM -> "enough for a usual block. Expect to move as the heads wear.";
                    case HIGH ->
                        "the ball slides farther and the oil lasts longer. Rougher and stronger covers keep their place.";
                };
    }

    private String ratio() {
        String ratio = Double.isInfinite(facts.ratio()) ? "no oil outside" : Figures.plain(facts.ratio(), 2) + ":1";
        String start = "Ratio " + ratio + ", " + ConstantName.of(facts.tier()) + " tier: ";
        return start
                + switch (facts.tier()) {
                    case SPORT ->
                        "the film outside differs too little from that inside to help a miss on either side. Accuracy decides.";
                    case CHALLENGE ->
                        "some help: dry boards outside bring a wide ball back a little, oil inside holds a pulled one.";
                    case HOUSE ->
                        "dry boards outside bring a wide ball back and oil inside holds a pulled one. There is room to"
                                + " miss on both sides.";
                };
    }

    private String surface() {
        LaneSurface surface = facts.surface();
        LaneSurface slickest = names.surfaces().values().stream()
                .min(Comparator.comparingDouble(LaneSurface::dryFriction))
                .orElse(surface);
        String start = "Surface " + surface.id() + ", dry friction " + Figures.fixed(surface.dryFriction(), 2) + ": ";
        return surface.dryFriction() > slickest.dryFriction()
                ? start + "more than " + slickest.id() + " (" + Figures.fixed(slickest.dryFriction(), 2)
                        + "). The same pattern hooks earlier, and players stand deeper."
                : start
                        + "the least of the surfaces known here. The same pattern holds the ball longer than on others.";
    }
}
