package quarterlight.task;

/** A long piece of work that returns a value; it knows neither windows nor threads. */
@FunctionalInterface
public interface Job<T> {
    T run(Progress progress) throws Exception;
}
