package quarterlight.matters.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterlight.units.Worded;

class MatterRuleTest {
    private static final Path DOC =
            Path.of(System.getProperty("quarterlight.basedir", "."), "docs/methods/what-matters.md");

    @Test
    void theTableOfTheDocsIsTheRule() throws IOException {
        String head = "| --- | --- | --- | --- | --- | --- |\n";
        String doc = Files.readString(DOC);
        int from = doc.indexOf(head) + head.length();
        List<String> rows =
                doc.substring(from, doc.indexOf("\n\n", from)).lines().toList();
        assertThat(rows)
                .containsExactlyElementsOf(Arrays.stream(MatterRule.values())
                        .map(MatterRuleTest::row)
                        .toList());
        assertThat(doc).contains("## The rule (version " + MatterRule.VERSION + ")");
    }

    private static String row(MatterRule rule) {
        return "| " + rule.word() + " | " + rule.kind().word() + " | " + rule.when() + " | "
                + rule.severity().map(Worded::word).orElse("as given") + " | "
                + rule.safety().map(Worded::word).orElse("") + " | " + rule.why() + " |";
    }

    @Test
    void rowsStandByFallingSeverity() {
        List<Integer> ranks = Arrays.stream(MatterRule.values())
                .flatMap(rule -> rule.severity().stream())
                .map(severity -> -severity.ordinal())
                .toList();
        assertThat(ranks).isSorted();
    }

    @Test
    void cautionsAreFullSentences() {
        assertThat(Safety.values())
                .allSatisfy(safety -> assertThat(safety.caution()).endsWith("."));
    }
}
