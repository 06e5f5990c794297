package lanetide.cli.scenario.pattern;

import java.util.Optional;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.TapePattern;
import lanetide.oilflow.film.TapeTable;

/** Makes a pattern of tape readings, and holds it to the stated volume. */
final class TapedPattern {
    private TapedPattern() {}

    static Optional<OilPattern> build(Section section, String name, TapeTable tapes) {
        double lengthM = section.get(PatternKeys.LENGTH);
        double tapedMl = tapes.volumeMl(lengthM, 0);
        if (!PatternKeys.VOLUMES.range().contains(tapedMl)) {
            section.value(PatternKeys.BY_TAPES).ifPresent(value -> beyondVolumes(value, tapedMl));
            return Optional.empty();
        }
        Optional<Double> statedMl = section.find(PatternKeys.VOLUME);
        if (statedMl.isEmpty()) {
            return Optional.of(TapePattern.of(name, lengthM, tapes));
        }
        Range heldMl = Range.between(
                tapes.volumeMl(lengthM, -tapes.errorUnits()), tapes.volumeMl(lengthM, tapes.errorUnits()));
        if (!heldMl.contains(statedMl.get())) {
            section.value(PatternKeys.VOLUME).ifPresent(value -> contradicted(value, heldMl, tapes.errorUnits()));
            return Optional.empty();
        }
        return Optional.of(new TapePattern(name, lengthM, statedMl.get(), tapes));
    }

    private static void beyondVolumes(Value tapes, double tapedMl) {
        tapes.say(
                NoticeCode.OUT_OF_RANGE,
                "",
                tapes.path() + " amount to " + Range.round(tapedMl) + " mL on a lane; a volume must be "
                        + PatternKeys.VOLUMES.limits() + ". Check the readings and their unit.");
    }

    private static void contradicted(Value volume, Range heldMl, double errorUnits) {
        volume.refuse(
                NoticeCode.TAPES_CONTRADICT_VOLUME,
                ", but the tapes hold " + Range.round(heldMl.low()) + " mL to " + Range.round(heldMl.high())
                        + " mL, every reading off by its error bar of " + Range.round(errorUnits)
                        + " units. Correct the volume or the readings, leave the volume out, or widen"
                        + " pattern.tapes.error.");
    }
}
