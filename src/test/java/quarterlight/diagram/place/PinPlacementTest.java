package quarterlight.diagram.place;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterlight.diagram.place.PinPlacement.Placed;
import quarterlight.diagram.place.PinPlacement.Wish;

class PinPlacementTest {
    private static final Rectangle2D FRAME = new Rectangle2D.Double(0, 0, 600, 300);

    private static void assertApart(List<Placed> pins, String as) {
        for (int i = 0; i < pins.size(); i++) {
            assertThat(FRAME.contains(
                            pins.get(i).bounds().getCenterX(),
                            pins.get(i).bounds().getCenterY()))
                    .isTrue();
            for (int j = i + 1; j < pins.size(); j++) {
                assertThat(pins.get(i).center().distance(pins.get(j).center()))
                        .as(
                                "%s: pins %d and %d",
                                as, pins.get(i).number(), pins.get(j).number())
                        .isGreaterThanOrEqualTo(PinPlacement.DISC);
            }
        }
    }

    @Test
    void aLonePinLiesBesideItsPointAndLeavesItOpen() {
        Placed pin = PinPlacement.place(List.of(new Wish(1, new Point2D.Double(300, 150))), FRAME, List.of())
                .get(0);
        assertThat(pin.center().distance(pin.tip())).isBetween(PinPlacement.DISC / 2, 20.0);
    }

    @Test
    void twentyPinsAtOnePointFanOut() {
        List<Wish> wishes = new ArrayList<>();
        for (int i = 1; i <= 20; i++) {
            wishes.add(new Wish(i, new Point2D.Double(300, 150)));
        }
        List<Placed> pins = PinPlacement.place(wishes, FRAME, List.of());
        assertApart(pins, "one point");
        pins.forEach(pin -> assertThat(pin.center().distance(pin.tip())).isBetween(9.0, 100.0));
    }

    @Test
    void scatteredPinsNeverCoverEachOther() {
        for (long seed = 1; seed <= 20; seed++) {
            Random random = new Random(seed);
            List<Wish> wishes = new ArrayList<>();
            for (int i = 1; i <= 60; i++) {
                wishes.add(new Wish(i, new Point2D.Double(random.nextDouble() * 600, random.nextDouble() * 300)));
            }
            List<Placed> pins = PinPlacement.place(wishes, FRAME, List.of());
            assertApart(pins, "seed " + seed);
            assertThat(PinPlacement.place(wishes, FRAME, List.of())).isEqualTo(pins);
        }
    }

    @Test
    void pinsStayOffLabelsAndInsideTheFrame() {
        Rectangle2D label = new Rectangle2D.Double(305, 125, 40, 14);
        Placed pin = PinPlacement.place(List.of(new Wish(1, new Point2D.Double(300, 150))), FRAME, List.of(label))
                .get(0);
        assertThat(label.intersects(pin.center().getX() - 9, pin.center().getY() - 9, 18, 18))
                .isFalse();
        Placed corner = PinPlacement.place(List.of(new Wish(1, new Point2D.Double(599, 1))), FRAME, List.of())
                .get(0);
        assertThat(FRAME.contains(corner.center().getX() - 9, corner.center().getY() - 9, 18, 18))
                .isTrue();
    }
}
