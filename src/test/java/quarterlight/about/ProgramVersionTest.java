package quarterlight.about;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class ProgramVersionTest {
    @Test
    void namesVersionAndBuild() {
        ProgramVersion version = ProgramVersion.of(properties("1.2.3", "1a2b3c4"));
        assertThat(version).isEqualTo(new ProgramVersion("1.2.3", Optional.of("1a2b3c4")));
        assertThat(version.text()).isEqualTo("Quarterlight 1.2.3 (build 1a2b3c4)");
    }

    @Test
    void saysNoBuildWhereTheBuildKnewNone() {
        assertThat(ProgramVersion.of(properties("1.2.3", "${git.commit.id.abbrev}"))
                        .text())
                .isEqualTo("Quarterlight 1.2.3");
        assertThat(ProgramVersion.of(new Properties()).text()).isEqualTo("Quarterlight development");
    }

    private static Properties properties(String version, String build) {
        Properties properties = new Properties();
        properties.setProperty("version", version);
        properties.setProperty("build", build);
        return properties;
    }
}
