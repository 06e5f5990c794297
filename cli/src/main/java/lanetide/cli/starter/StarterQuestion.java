package lanetide.cli.starter;

import lanetide.cli.report.ConstantName;

/** What a scenario to begin with is made of, in the order in which it is asked for. */
public enum StarterQuestion {
    NAME("What is the event called?", "My event"),
    LANES("Which lanes are in use?", "1 to 8"),
    SURFACE("What are the lanes made of?", "hard-synthetic"),
    LENGTH("Where does the oil end?", "40 ft"),
    VOLUME("How much oil is on one lane?", "24 mL"),
    RATIO("How much more is on the middle boards?", "5:1"),
    STARTS("When do the squads start (times with commas between)?", "19:30"),
    OIL("What is done before later squads (fresh, over, none)?", "fresh"),
    GAMES("How many games does a squad play?", "4"),
    PRACTICE("How long is practice?", "10 min"),
    ROTATION("How do groups move (such as stay, right, balanced)?", "stay"),
    DRAW("Are bowlers of a list drawn by lot (none, into groups, into squads)?", StarterDraft.NONE),
    ENTRIES("Which CSV table lists the bowlers?", StarterDraft.NONE),
    PARTNERS("Which of its columns names doubles, trios or teams?", StarterDraft.NONE),
    BOWLERS("How many bowlers are in a squad?", ""),
    CUT("How many go on to finals, or which share (such as 16 or 25 %)?", StarterDraft.NONE),
    COUNTS("What counts of who is entered in several squads (best, sum)?", "best"),
    FINALS("How do they meet in finals (none, round-robin, head-to-head)?", StarterDraft.NONE),
    FINALS_START("When do the finals start?", "");

    private final String words;
    private final String otherwise;

    StarterQuestion(String words, String otherwise) {
        this.words = words;
        this.otherwise = otherwise;
    }

    /** The name of the answer, which is that of its option. */
    public String key() {
        return ConstantName.of(this).replace('_', '-');
    }

    /** The question as it is put. */
    String words() {
        return words;
    }

    /** What is taken where nobody answers; empty where that depends on other answers. */
    public String otherwise() {
        return otherwise;
    }
}
