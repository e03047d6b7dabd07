package quarterlight.cli.call;

/** Exit statuses of the command line. */
public final class Exit {
    /** Done. */
    public static final int DONE = 0;

    /** Done, but something did not hold: a file refused, a hash off. */
    public static final int NOT_ALL = 1;

    /** The call or its input is unusable; nothing changed. */
    public static final int UNUSABLE = 2;

    /** The visit cannot be opened. */
    public static final int CLOSED = 3;

    private Exit() {}
}
