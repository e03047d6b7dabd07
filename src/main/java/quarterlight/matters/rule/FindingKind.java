package quarterlight.matters.rule;

import java.util.Locale;
import quarterlight.units.Worded;

/** What a finding rests on. */
public enum FindingKind implements Worded {
    STATEMENT,
    TRIAL,
    GAUGE_CHECK,
    RUST_NEED,
    FINISH,
    DATE,
    NUMBER,
    CLAIM,
    NOT_LOOKED_AT;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
