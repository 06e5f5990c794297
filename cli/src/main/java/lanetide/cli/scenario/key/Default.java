package lanetide.cli.scenario.key;

/**
 * A value that holds where a scenario says nothing.
 *
 * @param base the value in the base unit of its measure
 * @param text the value as reports write it
 * @param source where it comes from
 */
public record Default(double base, String text, String source) {}
