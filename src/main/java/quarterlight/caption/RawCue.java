package quarterlight.caption;

/**
 * A cue as it stands in the file.
 *
 * @param until negative if the file does not say
 */
record RawCue(double from, double until, String text) {
    static final double UNSAID = -1;
}
