package quarterlight.visit.row;

import static quarterlight.language.Sentences.say;

import java.util.Objects;
import java.util.Optional;

/** Reads the fields of one row. */
public final class FieldReader {
    private final CellSource in;

    public FieldReader(CellSource in) {
        this.in = Objects.requireNonNull(in, "in");
    }

    /** The value of a field; empty if its cell is blank. */
    public <V> Optional<V> get(Field<?, V> field) throws CellRefused {
        return field.shape().read().from(in, in.name(field));
    }

    /** @throws CellRefused also if the cell is blank */
    public <V> V need(Field<?, V> field) throws CellRefused {
        return need(in.name(field), get(field));
    }

    /** @throws CellRefused if there is no value */
    public static <V> V need(String name, Optional<V> value) throws CellRefused {
        return value.orElseThrow(() -> new CellRefused(name, say("cell.empty", name)));
    }
}
