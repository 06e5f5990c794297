/** Motion of the ball from the foul line to the pins, reading or wearing the film. */
package lanetide.oilflow.motion;
