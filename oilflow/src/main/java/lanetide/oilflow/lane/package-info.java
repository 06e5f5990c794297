/** The lane as the rules measure it: geometry, boards, hands, surfaces and the grid the film lives on. */
package lanetide.oilflow.lane;
