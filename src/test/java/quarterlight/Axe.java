package quarterlight;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Looks over a page that is open in a real browser for what shuts people out, by the rules of axe-core. */
public final class Axe {
    private static final String RUN =
            """
            axe.run(document, { %sresultTypes: ['violations'] }).then(found => found.violations.flatMap(rule =>
                rule.nodes.map(node => rule.id + ' at ' + node.target.join(' ') + ': '
                    + [...node.any, ...node.all, ...node.none].map(one => one.message).join('; '))))""";

    /** Elements that reach beyond the right edge, if the page can be scrolled sideways. */
    private static final String OVER =
            """
            document.documentElement.scrollWidth <= document.documentElement.clientWidth ? [] :
                [...document.querySelectorAll('body *')]
                    .filter(one => { for (let up = one.parentElement; up; up = up.parentElement) {
                        if (up !== document.body && getComputedStyle(up).overflowX !== 'visible') { return false; } } return true; })
                    .filter(one => one.getBoundingClientRect().right > document.documentElement.clientWidth + 0.5)
                    .slice(0, 8).map(one => one.tagName + '.' + one.getAttribute('class') + ' to '
                        + Math.round(one.getBoundingClientRect().right) + ': ' + one.textContent.slice(0, 40))""";

    private Axe() {}

    /** What runs over the right edge of the page. */
    public static List<String> runningOver(Browser.Tab tab) {
        return lines(tab.value(OVER));
    }

    /** What is wrong, one line each: rule, place, why. */
    public static List<String> violations(Browser.Tab tab) throws IOException {
        return violations(tab, "");
    }

    /** The same of one rule alone: colors are all that differs between light and dark. */
    public static List<String> contrasts(Browser.Tab tab) throws IOException {
        return violations(tab, "runOnly: ['color-contrast'], ");
    }

    private static List<String> violations(Browser.Tab tab, String rules) throws IOException {
        if (!tab.value("typeof axe === 'object'").asBoolean()) {
            try (InputStream script = Axe.class.getResourceAsStream("axe/axe.min.js")) {
                tab.value(new String(script.readAllBytes(), StandardCharsets.UTF_8) + ";0");
            }
        }
        return lines(tab.value(RUN.formatted(rules)));
    }

    private static List<String> lines(JsonNode found) {
        List<String> lines = new ArrayList<>();
        found.forEach(line -> lines.add(line.asText()));
        return lines;
    }
}
