/** Placeholder while the module is laid out. */
package lanetide.oilflow;
