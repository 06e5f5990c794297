/** Surfaces, covers and styles that come with the program, read from data files that name each value's source. */
package lanetide.oilflow.catalogue;
