package lanetide.cli.scenario.reader;

import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.TapePattern;
import lanetide.oilflow.film.TapeTable;

/** Makes a pattern of tape readings, and holds it to the stated volume. */
record TapedPattern(Section section, String name, double lengthM, TapeTable tapes) {
    Optional<OilPattern> build(OptionalDouble statedMl) {
        double tapedMl = tapes.volumeMl(lengthM, 0);
        if (!PatternReader.VOLUMES.contains(tapedMl)) {
            return refuse("tapes", tapedMl, PatternReader.VOLUMES.inWords(Measure.VOLUME.usualUnit()));
        }
        if (statedMl.isEmpty()) {
            return Optional.of(TapePattern.of(name, lengthM, tapes));
        }
        double leastMl = tapes.volumeMl(lengthM, -tapes.errorUnits());
        double mostMl = tapes.volumeMl(lengthM, tapes.errorUnits());
        if (statedMl.getAsDouble() < leastMl || statedMl.getAsDouble() > mostMl) {
            section.get("volume").ifPresent(value -> contradicted(value, leastMl, mostMl));
            return Optional.empty();
        }
        return Optional.of(new TapePattern(name, lengthM, statedMl.getAsDouble(), tapes));
    }

    private Optional<OilPattern> refuse(String key, double tapedMl, String limits) {
        section.get(key)
                .ifPresent(value -> value.say(
                        NoticeCode.OUT_OF_RANGE,
                        "",
                        value.path() + " amount to " + Range.round(tapedMl) + " mL on a lane; a volume must be "
                                + limits + ". Check the readings and their unit."));
        return Optional.empty();
    }

    private void contradicted(Value volume, double leastMl, double mostMl) {
        volume.refuse(
                NoticeCode.TAPES_CONTRADICT_VOLUME,
                ", but the tapes hold " + Range.round(leastMl) + " mL to " + Range.round(mostMl)
                        + " mL, every reading off by its error bar of " + Range.round(tapes.errorUnits())
                        + " units. Correct the volume or the readings, leave the volume out, or widen pattern.tapes.error.");
    }
}
