package quarterlight.store.problem;

import java.sql.SQLException;
import java.util.Objects;

/** A row breaks a rule of the schema: a number out of range, a photo that is not there. Nothing of the edit was kept. */
public final class SchemaRefused extends IllegalArgumentException {
    private final String rule;

    public SchemaRefused(SQLException cause) {
        super("the visit's schema refuses a row: " + cause.getMessage(), cause);
        this.rule = rule(Objects.requireNonNullElse(cause.getMessage(), ""));
    }

    /** The rule that was broken, as the schema has it: {@code nominal_um BETWEEN -1e9 AND 1e9}. */
    public String rule() {
        return rule;
    }

    private static String rule(String message) {
        return message.replaceFirst("(?s)^.*constraint failed: ", "").replaceFirst("\\)$", "");
    }
}
