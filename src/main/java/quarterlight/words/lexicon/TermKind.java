package quarterlight.words.lexicon;

import quarterlight.units.Worded;

/** What a phrase of the lexicon tells. */
public enum TermKind implements Worded {
    PART,
    SIDE,
    END,
    REGION,
    CONDITION,
    ORIGIN,
    SUBJECT,
    SIGN,
    SIGNNO,
    ITEM,
    GOOD,
    BAD,
    PARTIAL,
    NOTTRIED,
    NOTFITTED,
    BYPASSED,
    NOTLOOKED,
    CLAIM,
    GENERAL,
    HYPO,
    OTHER,
    NOISE,
    HEDGE,
    WITHDRAW,
    SAME,
    NEG,
    ODOMETER,
    READING,
    MARK,
    GAUGECHECK,
    UNIT,
    NONUNIT,
    OVERRANGE,
    /** The speaker means to come back to something. */
    PROMISE,
    /** Something said of the whole car: "never been painted". */
    SWEEPING;

    /** Whether drafts follow from phrases of this kind; what else is heard stands aside and changes no draft. */
    public boolean givesDrafts() {
        return this != PROMISE && this != SWEEPING;
    }
}
