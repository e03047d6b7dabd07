package quarterlight.ui.notes;

import quarterlight.coverage.MeasureLimit;
import quarterlight.ui.kit.Texts;
import quarterlight.units.Numerals;

/** A limit in words: {@code 1.6 mm or more (49 CFR 570.9: 2/32 in)}. Pure. */
final class MeasureWords {
    private MeasureWords() {}

    static String limit(Texts texts, MeasureLimit limit, String unit) {
        String least = limit.least().map(Numerals::typed).orElse("");
        String most = limit.most().map(Numerals::typed).orElse("");
        String key = limit.most().isEmpty()
                ? "notes.limit.least"
                : limit.least().isEmpty() ? "notes.limit.most" : "notes.limit.range";
        return texts.get(key, least, most, unit, limit.source());
    }
}
