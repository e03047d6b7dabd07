package quarterlight.compare;

/** One of the two cars. */
public enum Side {
    A,
    B;

    public Side other() {
        return this == A ? B : A;
    }
}
