package quarterlight.diagram.ink;

/** What covers a zone besides its tint: each looks unlike the others without color too. */
public enum Surface {
    /** Nothing. */
    PLAIN,
    /** Rusted through: a heavy outline and large holes in the grave color. */
    THROUGH,
    /** All evidence that is asked for is there: a quiet even tone. */
    COMPLETE,
    /** Some of it is there: broad bands. */
    PARTIAL,
    /** None of it is there: dark all over. */
    MISSING
}
