package lanetide.des.resource;

/** The requests that wait, in the order in which they are to be served. */
interface WaitingLine {

    /** Adds a request that waits nowhere yet; one that was pre-empted takes the place its number gives it. */
    void add(Request request);

    /** Removes a request that is in this line. */
    void remove(Request request);

    /** The request to be served next, leaving out interrupted ones; null if there is none. */
    Request firstReady();
}
