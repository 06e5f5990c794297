package lanetide.squads.fit;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Laws;
import lanetide.squads.play.Setup;
import lanetide.squads.study.Design;
import lanetide.squads.study.Playable;
import lanetide.squads.study.Playing;
import lanetide.squads.study.Watch;
import lanetide.squads.watch.Observers;

/**
 * Members of an ensemble that play some days, each day a few times. All days of one time of a member have one luck;
 * from the second time on what a set draws of its lanes is luck as well, and is drawn anew.
 */
final class MemberDays implements Design {
    private final List<FitDay> days;
    private final List<ValueSet> members;
    private final List<Integer> which;
    private final int times;
    private final int firstLuck;
    private final RandomStreams streams;
    private final Map<ValueSet, Playable> known;
    private final Map<Ready, Playable> ready = new ConcurrentHashMap<>();
    /** By number, from when it is known who will watch a playing until it is played. */
    private final Map<Integer, Playable> watched = new ConcurrentHashMap<>();

    /** Days of a member under the same laws, which share the lines that bowlers bring. */
    private record Ready(int member, Laws laws) {}

    /**
     * Members that play.
     *
     * @param days the days
     * @param members the members of the ensemble
     * @param which the places of those that play, whose luck is their own whoever else plays
     * @param known sets that are ready to be played under the laws of all days, whose lines serve here too
     */
    MemberDays(
            List<FitDay> days,
            List<ValueSet> members,
            List<Integer> which,
            Map<ValueSet, Playable> known,
            int times,
            int firstLuck,
            RandomStreams streams) {
        this.days = days;
        this.members = members;
        this.which = which;
        this.known = known;
        this.times = times;
        this.firstLuck = firstLuck;
        this.streams = streams;
    }

    int size() {
        return which.size() * times * days.size();
    }

    /** The number of a playing, by which results are found again; place is that among those that play. */
    int number(int place, int time, int day) {
        return (place * times + time) * days.size() + day;
    }

    /** The time stands where studies of seats have the seating. */
    @Override
    public Playing playing(int number) {
        int played = number / days.size();
        int member = which.get(played / times);
        int time = played % times;
        return new Playing(number, firstLuck + member * times + time, 1 + member, time);
    }

    private FitDay day(Playing playing) {
        return days.get(playing.number() % days.size());
    }

    @Override
    public Setup setup(Playing playing) {
        Playable known = watched.remove(playing.number());
        return (known == null ? comes(playing) : known).setup(LuckSource.byBall(luck(playing)));
    }

    private RandomStreams luck(Playing playing) {
        return streams.forReplication(playing.luck());
    }

    private Playable comes(Playing playing) {
        FitDay day = day(playing);
        ValueSet member = members.get(playing.set() - 1);
        Ready key = new Ready(playing.set(), day.laws());
        Playable under =
                ready.computeIfAbsent(key, of -> known.containsKey(member) ? known.get(member) : day.under(member));
        if (playing.number() % (times * days.size()) == times * days.size() - 1) {
            ready.keySet().removeIf(of -> of.member() == playing.set());
        }
        ValueSet drawn = playing.seating() == 0 ? member : member.drawnBy(member.seed() + playing.seating());
        return day.comes(under, drawn, luck(playing));
    }

    /** Reads in a playing what is asked of its day. */
    Watch<double[]> reading(int number, Function<FitDay, List<Reading>> asked) {
        Playing playing = playing(number);
        List<Reading> of = asked.apply(day(playing));
        Playable comes = comes(playing);
        watched.put(number, comes);
        ReadingEye eye = new ReadingEye(of, comes, luck(playing));
        return Watch.by(Observers.of(eye), summary -> FitDay.there(of, eye, comes.event(), summary.result()));
    }
}
