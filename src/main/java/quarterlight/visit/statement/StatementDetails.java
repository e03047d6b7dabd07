package quarterlight.visit.statement;

import java.util.Objects;
import java.util.Optional;
import quarterlight.visit.pin.RecordId;

/**
 * What may be told beside a statement.
 *
 * @param part a part within the zone: {@code upper hose}, {@code left brake union}
 * @param size how large, as said
 * @param confidential whether it never leaves in anything made for the buyer
 * @param withdraws the earlier statement that this one takes back; it stays visible as withdrawn
 */
public record StatementDetails(
        Optional<String> part,
        Optional<Certainty> certainty,
        SaidBy saidBy,
        Optional<SaidSize> size,
        boolean confidential,
        Optional<RecordId> withdraws) {
    /** Nothing but what the inspector says. */
    public static final StatementDetails NONE = new StatementDetails(
            Optional.empty(), Optional.empty(), SaidBy.INSPECTOR, Optional.empty(), false, Optional.empty());

    public StatementDetails {
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(certainty, "certainty");
        Objects.requireNonNull(saidBy, "saidBy");
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(withdraws, "withdraws");
    }

    public StatementDetails withPart(Optional<String> other) {
        return new StatementDetails(other, certainty, saidBy, size, confidential, withdraws);
    }

    public StatementDetails withCertainty(Optional<Certainty> other) {
        return new StatementDetails(part, other, saidBy, size, confidential, withdraws);
    }

    public StatementDetails withSaidBy(SaidBy other) {
        return new StatementDetails(part, certainty, other, size, confidential, withdraws);
    }

    public StatementDetails withSize(Optional<SaidSize> other) {
        return new StatementDetails(part, certainty, saidBy, other, confidential, withdraws);
    }

    public StatementDetails withConfidential(boolean other) {
        return new StatementDetails(part, certainty, saidBy, size, other, withdraws);
    }
}
