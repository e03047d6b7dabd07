package quarterlight.rust.need;

/**
 * How much of something was found.
 *
 * @param known what could be measured, 0 for none
 * @param unknown true if there is some of it that could not be measured
 */
record Extent(double known, boolean unknown) {}
