package quarterlight.draw;

/** A line of drawing data that cannot be read; the message says which line, what was found and what was expected. */
public final class DrawingFault extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public DrawingFault(String message) {
        super(message);
    }

    public DrawingFault(String message, Throwable cause) {
        super(message, cause);
    }
}
