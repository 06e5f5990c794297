package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import lanetide.squads.qualifying.CutPlayed;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.SquadResult;
import lanetide.squads.study.Execution;
import lanetide.squads.study.Part;
import lanetide.squads.study.PlayingSummary;
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
    private List<Long> endsAsDrawnMs = List.of();

    /** No round yet, of as many as a plan allows. */
    RoundsPlayed(PossibleEvents events, FairnessPlan plan) {
        this.events = events;
        this.plan = plan;
        this.rounds = new SeatingRounds(events, plan);
        this.playings = new SeatedPlayings(events, rounds);
    }

    /** What is kept of a playing: mean scores by bowler, what the cut does, and when squads end (ms). */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Kept(double[] scores, Optional<CutPlayed> cut, List<Long> endsMs) {}

    int playings() {
        return scores.size();
    }

    /** Plays until there are so many rounds; {@code onDone} is told the playings done by this call. */
    void playTo(int wanted, Execution execution, IntConsumer onDone) {
        if (rounds.playings(wanted) <= scores.size()) {
            return;
        }
        Part part = new Part(scores.size(), rounds.playings(wanted));
        List<Kept> kept =
                new Study(playings).play(part, execution, Kept.class, number -> Watch.ofPlay(this::kept), onDone);
        int drawn = rounds.firstAsDrawn();
        if (part.from() <= drawn && drawn < part.to()) {
            endsAsDrawnMs = kept.get(drawn - part.from()).endsMs();
        }
        for (Kept one : kept) {
            scores.add(one.scores());
            one.cut().ifPresent(cuts::add);
        }
    }

    private Kept kept(PlayingSummary summary) {
        EventResult result = summary.result();
        return new Kept(
                playings.scores(result),
                playings.cut(result),
                result.squads().stream().map(SquadResult::endMs).toList());
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

    /** When squads end where everybody sits where he is drawn (ms); at least one round must have been played. */
    List<Long> endsAsDrawnMs() {
        return endsAsDrawnMs;
    }
}
