package lanetide.cli.pattern;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.Figures;
import lanetide.cli.report.PatternWords;
import lanetide.cli.scenario.key.Names;
import lanetide.oilflow.film.PatternBands;
import lanetide.oilflow.lane.Hand;
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
        return Stream.of(Stream.of(length(), volume()), ratios(), Stream.of(surface()))
                .flatMap(sentences -> sentences)
                .toList();
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

    private Stream<String> ratios() {
        return facts.pattern().isSymmetric()
                ? Stream.of(ratio("Ratio ", Hand.RIGHT))
                : Stream.of(
                        ratio("Ratio on the right-hand half ", Hand.RIGHT),
                        ratio("Ratio on the left-hand half ", Hand.LEFT));
    }

    private String ratio(String which, Hand half) {
        double n = facts.ratio(half);
        String ratio = Double.isInfinite(n) ? "no oil outside" : Figures.plain(n, 2) + ":1";
        PatternBands.Tier tier = facts.tier(half);
        String named = tier == PatternBands.Tier.INVERSE ? ", no tier: " : ", " + ConstantName.of(tier) + " tier: ";
        return which
                + ratio
                + named
                + switch (tier) {
                    case INVERSE ->
                        "there is more oil outside than inside, so a wide ball is lost and a pulled one hooks at once.";
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
