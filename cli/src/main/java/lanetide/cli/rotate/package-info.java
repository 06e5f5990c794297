/** What there is to say about the rotations of a scenario: checks, and the designs it could have instead. */
package lanetide.cli.rotate;
