/** The ball and how it is released. */
package lanetide.oilflow.ball;
