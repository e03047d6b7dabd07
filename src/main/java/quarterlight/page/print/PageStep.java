package quarterlight.page.print;

import static quarterlight.language.Sentences.say;

/** What is being done while pages are made, for those who wait. */
public enum PageStep {
    PHOTOS("progress.photos"),
    BRIEF("progress.brief"),
    DIAGRAM("progress.diagram"),
    DIAGRAM_PAGE("progress.diagram-page"),
    REPORT("progress.report"),
    REPORT_HTML("progress.report-html"),
    LOOK("progress.look");

    private final String key;

    PageStep(String key) {
        this.key = key;
    }

    /** In the language in hand. */
    public String said() {
        return say(key);
    }
}
