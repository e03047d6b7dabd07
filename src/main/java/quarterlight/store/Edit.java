package quarterlight.store;

/** What one edit does within its transaction. */
@FunctionalInterface
public interface Edit<T> {
    T apply(VisitTx tx);
}
