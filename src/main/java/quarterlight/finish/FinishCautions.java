package quarterlight.finish;

import java.util.List;

/** What every page that carries a likelihood says beside it. */
public final class FinishCautions {
    private FinishCautions() {}

    /** Full sentences, in the order in which they matter. */
    public static List<String> texts() {
        return List.of(
                "The refinish and repair likelihoods are aids to a trained eye. They prove nothing.",
                "The likelihoods rest on the stated finish profile and on judged numbers; the band shows how far other"
                        + " plausible numbers would move them.",
                "Thickness alone proves nothing: factory finish can be thick, and a refinished panel can lie within the"
                        + " factory range.",
                "Body filler and lead count as substrate in some published guidance; a gauge cannot tell them from a"
                        + " coating of the same thickness.",
                "Zones that the gauge cannot read (fiberglass, plastic, wood, or aluminum with a gauge for steel) are"
                        + " judged by signs alone.");
    }

    /** For sanding, scraping or disturbing an old finish. */
    public static String oldPaint() {
        return "Old paint can hold lead, chromium or cadmium: do not sand or scrape it to find out. Follow local rules"
                + " and leave the work to people licensed for it.";
    }
}
