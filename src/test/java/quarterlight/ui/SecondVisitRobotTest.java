package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The photos of the second sample visit pinned by counted keys, by the hand that walked round the first car a week before. */
class SecondVisitRobotTest extends EveningRobot {
    private static final SampleWalk WALK = SampleWalk.of("chicory-1971");

    @Override
    protected void make(Path path) throws Exception {
        Path settings = Files.createDirectories(folder.resolve("settings"));
        SampleWalk.of("tamarisk-1971").remembered(settings, folder.resolve("first"), CLOCK);
        WALK.takeIn(path, CLOCK);
    }

    @Test
    void theWalkOfTheFirstVisitSavesKeysInTheSecond() throws Exception {
        assertThat(pinAll(WALK.places(held()))).as("keys a photo").isLessThanOrEqualTo(1.6);
    }
}
