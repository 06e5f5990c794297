package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import lanetide.squads.qualifying.CutPlayed;
import lanetide.squads.result.EventResult;
import lanetide.squads.study.Part;
import lanetide.squads.study.PossibleEvents;
import lanetide.squads.study.Study;
import lanetide.squads.study.Watch;

/** The rounds of an event that have been played so far; more can be played at any time. Not for several threads. */
final class RoundsPlayed {
    private final PossibleEvents events;
    private final FairnessPlan plan;
    private final SeatingRounds rounds;
    private final SeatedPlayings playings;
    private final List<double[]> scores = new ArrayList<>();
    private final List<CutPlayed> cuts = new ArrayList<>();
    private Optional<EventResult> asDrawn = Optional.empty();

    /** No round yet, of as many as a plan allows. */
    RoundsPlayed(PossibleEvents events, FairnessPlan plan) {
        this.events = events;
        this.plan = plan;
        this.rounds = new SeatingRounds(events, plan);
        this.playings = new SeatedPlayings(events, rounds);
    }

    /** What is kept of a playing: mean scores by bowler, what the cut does, and all of one. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Kept(double[] scores, Optional<CutPlayed> cut, Optional<EventResult> whole) {}

    int playings() {
        return scores.size();
    }

    /** Plays until there are so many rounds; {@code onDone} is told the playings done by this call. */
    void playTo(int wanted, int threads, IntConsumer onDone) {
        if (rounds.playings(wanted) <= scores.size()) {
            return;
        }
        int drawn = rounds.firstAsDrawn();
        Part part = new Part(scores.size(), rounds.playings(wanted));
        List<Kept> kept = new Study(playings)
                .play(
                        part,
                        threads,
                        number -> number == drawn
                                ? Watch.ofFilms(summary -> kept(summary.result(), Optional.of(summary.result())))
                                : Watch.ofPlay(summary -> kept(summary.result(), Optional.empty())),
                        onDone);
        for (Kept one : kept) {
            scores.add(one.scores());
            one.cut().ifPresent(cuts::add);
            one.whole().ifPresent(whole -> asDrawn = Optional.of(whole));
        }
    }

    private Kept kept(EventResult result, Optional<EventResult> whole) {
        return new Kept(playings.scores(result), playings.cut(result), whole);
    }

    /** The advantages; at least two rounds must have been played. */
    EffectEstimates estimates() {
        return FairnessStudy.estimates(events.event(), rounds, scores);
    }

    /** The verdict. */
    FairnessResult result() {
        FairnessResult result = FairnessStudy.judge(events.event(), rounds, plan, scores);
        return cuts.isEmpty() ? result : result.with(new CutEstimates(events.event(), rounds, cuts).chances());
    }

    /** The first playing in which everybody sits where he is drawn; at least one round must have been played. */
    EventResult asDrawn() {
        return asDrawn.orElseThrow();
    }
}
