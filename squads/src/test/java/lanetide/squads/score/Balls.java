package lanetide.squads.score;

/** Bowls a game written the way a score sheet shows it. */
final class Balls {

    private Balls() {}

    /** X strike, / spare, - miss, F foul, digits pins; one sign a ball, blanks ignored. */
    static TenpinScore bowl(String sheet) {
        return bowl(new TenpinScore(), sheet);
    }

    /** Bowls on a card; S before a digit means nothing here. */
    static <T extends ScoreCard> T bowl(T card, String sheet) {
        sheet.chars().filter(sign -> sign != ' ' && sign != 'S').forEach(sign -> bowl(card, (char) sign));
        return card;
    }

    private static void bowl(ScoreCard card, char sign) {
        switch (sign) {
            case 'X' -> card.roll(10);
            case '/' -> card.roll(card.pinsStanding());
            case '-' -> card.roll(0);
            case 'F' -> card.foul();
            default -> card.roll(Character.digit(sign, 10));
        }
    }
}
