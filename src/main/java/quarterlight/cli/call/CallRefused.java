package quarterlight.cli.call;

/** The call or its input is unusable and nothing was changed; the message says what, where and what to do. */
public final class CallRefused extends Exception {
    public CallRefused(String message) {
        super(message);
    }
}
