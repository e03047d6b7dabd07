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
    OVERRANGE
}
