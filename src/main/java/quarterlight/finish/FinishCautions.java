package quarterlight.finish;

import static quarterlight.language.Sentences.say;

import java.util.List;

/** What every page that carries a likelihood says beside it. */
public final class FinishCautions {
    private FinishCautions() {}

    /** Full sentences, in the order in which they matter. */
    public static List<String> texts() {
        return List.of(
                say("finish.finish-cautions.the-refinish-and-repair-likelihoods"),
                say("finish.finish-cautions.the-likelihoods-rest-on-the"),
                say("finish.finish-cautions.thickness-alone-proves-nothing"),
                say("finish.finish-cautions.body-filler-and-lead-count"),
                say("finish.finish-cautions.zones-that-the-gauge-cannot"));
    }

    /** For sanding, scraping or disturbing an old finish. */
    public static String oldPaint() {
        return say("finish.finish-cautions.old-paint-can-hold-lead");
    }
}
