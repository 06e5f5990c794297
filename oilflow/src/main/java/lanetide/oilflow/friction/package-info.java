/** How slippery a contact is, given the film in it. */
package lanetide.oilflow.friction;
