package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.key.CutKeys;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.lanes.PairList;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Finals;
import lanetide.squads.model.Finals.From;
import lanetide.squads.model.Finals.Match;
import lanetide.squads.model.Finals.Side;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.model.TieRule;

/**
 * Reads what those who make the cut bowl.
 *
 * @param squads the squads of qualifying
 * @param people people who are entered
 * @param lanes the pairs of the centre; none if they are not known
 */
record FinalsReader(List<Squad> squads, int people, Lanes lanes) {
    private static final int MOST_PAIRS = CentreKeys.MAX_LANE / 2;
    private static final String SIDE = "([wWlL]?)(\\d{1,4})";
    private static final Pattern MATCH = Pattern.compile(SIDE + "\\s*-\\s*" + SIDE);
    private static final Map<String, From> FROM = Map.of("", From.SEED, "w", From.WINNER, "l", From.LOSER);

    /** The finals of a cut; empty if there are none or, with notices, wrong ones. */
    Optional<Finals> read(Section around, Cut cut) {
        return around.block(CutKeys.FINALS).flatMap(section -> finals(section, around, cut));
    }

    private Optional<Finals> finals(Section section, Section around, Cut cut) {
        if (cut.ties() == TieRule.ALL) {
            around.refuse(
                    CutKeys.TIES,
                    NoticeCode.CONFLICTING_KEYS,
                    ", but finals must know how many bowl in them. Choose another rule, or leave `finals` out.");
        }
        boolean roundRobin = section.find(CutKeys.IS_ROUND_ROBIN).orElse(true);
        refuseWhatMeansNothing(section, roundRobin);
        checkStart(section);
        int places = cut.places(people);
        List<LanePair> onPairs = pairs(section);
        // So many rounds of so many could not be planned in any time.
        if (roundRobin && refuseTooMany(section, places / 2, onPairs)) {
            return Optional.empty();
        }
        List<List<Match>> rounds = roundRobin ? Finals.roundRobin(Math.max(2, places)) : plan(section);
        Optional<Finals> finals = section.build(() -> new Finals(
                section.get(CutKeys.FINALS_START),
                section.get(CutKeys.FINALS_OIL),
                section.get(CutKeys.FINALS_PRACTICE),
                section.get(CutKeys.MATCH_GAMES),
                roundRobin ? section.get(CutKeys.BONUS) : 0,
                rounds,
                roundRobin,
                onPairs));
        finals.ifPresent(plan -> checkSize(section, plan, places));
        return finals;
    }

    private static void refuseWhatMeansNothing(Section section, boolean roundRobin) {
        if (roundRobin) {
            section.refuse(
                    CutKeys.MATCHES,
                    NoticeCode.CONFLICTING_KEYS,
                    ", but in a round robin everybody meets everybody. Leave it out, or choose `form: head-to-head`.");
        } else {
            section.require(CutKeys.MATCHES);
            section.refuse(
                    CutKeys.BONUS,
                    NoticeCode.CONFLICTING_KEYS,
                    ", but head to head the winner of a match goes on, and pins do not count. Leave it out.");
        }
    }

    private void checkStart(Section section) {
        if (squads.isEmpty()) {
            return;
        }
        Squad last = squads.get(squads.size() - 1);
        section.find(CutKeys.FINALS_START)
                .filter(startMs -> startMs < last.startMs())
                .ifPresent(startMs -> section.refuse(
                        CutKeys.FINALS_START,
                        NoticeCode.OUT_OF_RANGE,
                        ", but squad " + last.id() + " starts at " + TimeOfDay.write(last.startMs())
                                + "; finals must come after all squads. Correct the time."));
    }

    private List<LanePair> pairs(Section section) {
        Optional<Value> listed = section.value(CutKeys.FINALS_PAIRS);
        List<LanePair> pairs =
                listed.map(PairList::read).stream().flatMap(Set::stream).toList();
        pairs.stream()
                .filter(pair -> !lanes.pairs().isEmpty() && !lanes.pairs().contains(pair))
                .forEach(pair -> listed.get()
                        .say(
                                NoticeCode.UNKNOWN_PAIR,
                                pair.id(),
                                section.pathOf(CutKeys.FINALS_PAIRS) + " names " + pair.id()
                                        + ", which is not a pair in use. Those are "
                                        + Lanes.named(lanes.pairs())
                                        + "."));
        return pairs;
    }

    private static List<List<Match>> plan(Section section) {
        List<List<Match>> rounds = new ArrayList<>();
        for (Value row : section.list(CutKeys.MATCHES)) {
            rounds.add(row.list().orElse(List.of()).stream()
                    .flatMap(item -> match(item).stream())
                    .toList());
        }
        return rounds;
    }

    private static Optional<Match> match(Value item) {
        Matcher written = MATCH.matcher(item.plain());
        if (!item.isScalar() || !written.matches()) {
            item.refuse(
                    NoticeCode.WRONG_KIND,
                    "; a match must be two with a dash between, each a seed, or the winner or loser of an earlier match, which"
                            + " are counted through all rounds. Try 1-4, w1-w2 or w1-3.");
            return Optional.empty();
        }
        return Optional.of(new Match(side(written, 1), side(written, 3)));
    }

    private static Side side(Matcher written, int at) {
        return new Side(
                FROM.get(written.group(at).toLowerCase(java.util.Locale.ROOT)),
                Integer.parseInt(written.group(at + 1)));
    }

    private void checkSize(Section section, Finals plan, int places) {
        if (people > 0 && plan.seeds() > places) {
            section.refuse(
                    CutKeys.MATCHES,
                    NoticeCode.OUT_OF_RANGE,
                    ", which names seed " + plan.seeds() + ", but only " + places
                            + " go on; seeds are places at the cut. Let more go on, or correct the plan.");
        }
        refuseTooMany(section, plan.matchesAtOnce(), plan.onPairs());
    }

    /** Whether there are more matches at once than pairs for them, which is told. */
    private boolean refuseTooMany(Section section, int matches, List<LanePair> onPairs) {
        int pairs = onPairs.isEmpty() ? lanes.rotationPairs().size() : onPairs.size();
        boolean tooMany = matches > (pairs == 0 ? MOST_PAIRS : pairs);
        if (tooMany && pairs > 0) {
            section.notices()
                    .add(
                            NoticeCode.OUT_OF_RANGE,
                            section.place(),
                            section.path(),
                            "",
                            "The finals have " + matches + " matches at once, but there are only " + pairs
                                    + (pairs == 1 ? " pair" : " pairs") + " for them; each must have a pair of its own."
                                    + " Let fewer go on, or use more lanes.");
        }
        return tooMany;
    }
}
