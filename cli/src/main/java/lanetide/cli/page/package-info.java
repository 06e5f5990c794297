/**
 * The answer as one page for a browser: a model of each section, filled into templates that escape what people wrote.
 */
package lanetide.cli.page;
