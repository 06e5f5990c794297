/** What is to be expected of an event: times, scores, lanes and oil over many playings, and the logs of the first. */
package lanetide.cli.simulate;
