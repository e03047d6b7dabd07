package quarterlight.visit.statement;

import java.util.Locale;
import quarterlight.units.Worded;

/** What a part or zone is: where it comes from. */
public enum Origin implements Worded {
    ORIGINAL,
    REPLACED,
    DOES_NOT_BELONG;

    @Override
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
