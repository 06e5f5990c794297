package lanetide.cli;

/** Entry point. */
public final class Lanetide {
    private Lanetide() {}

    public static void main(String[] args) {
        System.out.println("lanetide");
    }
}
