package quarterlight.words.lexicon;

/** One row of a lexicon file: phrases, separated by bars, and what they stand for. */
public record LexiconRow(TermKind kind, String value, String phrases, double weight, PartName part) {}
