package quarterlight.cli;

/** The call or its input is unusable and nothing was changed; the message says what, where and what to do. */
final class CallRefused extends Exception {
    CallRefused(String message) {
        super(message);
    }
}
