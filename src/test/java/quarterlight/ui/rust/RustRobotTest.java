package quarterlight.ui.rust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.KeyEvent;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.assertj.swing.edt.GuiActionRunner;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.row.RowEdits;
import quarterlight.rust.plane.PhotoPlane;
import quarterlight.store.VisitStore;
import quarterlight.task.Progress;
import quarterlight.ui.DeskRobot;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.visit.VisitParts;
import quarterlight.visit.annotation.PhotoScale.KnownRectangle;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.annotation.TraceKind;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.row.RecordKind;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;

/**
 * A patch of 60 by 45 mm beside a card, both seen at 2 pixels a mm, is outlined by the mouse and by keys alone; the visit then holds its
 * area.
 */
class RustRobotTest extends DeskRobot {
    private static final double PX_PER_MM = 2;
    private static final Rectangle2D PATCH = new Rectangle2D.Double(200, 150, 60 * PX_PER_MM, 45 * PX_PER_MM);
    private static final Rectangle2D CARD = new Rectangle2D.Double(430, 330, 85.60 * PX_PER_MM, 53.98 * PX_PER_MM);
    private static final ZoneId HOOD = new ZoneId("hood");

    @Override
    protected void make(Path path) throws Exception {
        super.make(path);
        Path card = folder.resolve("near/IMG_900.JPG");
        Files.createDirectories(card.getParent());
        BufferedImage picture = new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = picture.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setColor(new Color(0x2A4D8F));
        g.fillRect(0, 0, 800, 600);
        g.setColor(new Color(0x8B4513));
        g.fill(PATCH);
        g.setColor(new Color(0xF0F0F0));
        g.fill(CARD);
        g.dispose();
        ImageIO.write(picture, "jpg", card.toFile());
        try (VisitStore store = VisitStore.openForEditing(path, CLOCK)) {
            new Intake(store, CLOCK, (photo, jpeg) -> {}).run(List.of(card.getParent()), Progress.NONE);
            PhotoId photo = store.read().photos().stream()
                    .filter(one -> one.file().name().equals("IMG_900.JPG"))
                    .findFirst()
                    .orElseThrow()
                    .id();
            new RowEdits(store).add(RecordKind.PINS, List.of(VisitParts.pin(photo, HOOD)));
        }
    }

    private PhotoCanvas canvas() {
        return (PhotoCanvas) robot.finder().findByName("rust-photo", true);
    }

    /** Opens the station with the photo of the patch in hand: without a time it is the last one. */
    private PhotoCanvas toPatch() {
        window.toggleButton("station-3").click();
        PhotoCanvas canvas = canvas();
        robot.focusAndWaitForFocusGain(canvas);
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(KeyEvent.VK_LEFT);
        robot.releaseKey(KeyEvent.VK_ALT);
        until(
                "the photo of the patch is in hand",
                () -> GuiActionRunner.execute(
                        () -> canvas.photo().map(photo -> photo.file().name()).equals(Optional.of("IMG_900.JPG"))));
        return canvas;
    }

    private static Point at(PhotoCanvas canvas, double x, double y) {
        return GuiActionRunner.execute(() -> {
            Point2D zero = canvas.photoPoint(new Point(0, 0)).orElseThrow();
            double zoom = canvas.zoom().orElseThrow();
            return new Point((int) Math.round((x - zero.getX()) * zoom), (int) Math.round((y - zero.getY()) * zoom));
        });
    }

    private void clickCorners(PhotoCanvas canvas, Rectangle2D box) {
        robot.click(canvas, at(canvas, box.getMinX(), box.getMinY()));
        robot.click(canvas, at(canvas, box.getMaxX(), box.getMinY()));
        robot.click(canvas, at(canvas, box.getMaxX(), box.getMaxY()));
        robot.click(canvas, at(canvas, box.getMinX(), box.getMaxY()));
    }

    private Trace kept() {
        until("the outline is kept", () -> held().traces().size() == 1);
        return held().traces().get(0).value();
    }

    private static double mm2(Trace trace) {
        return PhotoPlane.of(trace.scale()).orElseThrow().areaMm2(trace.outline());
    }

    @Test
    void aPatchOutlinedByTheMouseHasItsArea() {
        PhotoCanvas canvas = toPatch();
        robot.pressAndReleaseKeys(KeyEvent.VK_4);
        robot.pressAndReleaseKeys(KeyEvent.VK_O);
        clickCorners(canvas, PATCH);
        robot.click(canvas, at(canvas, PATCH.getMinX(), PATCH.getMinY()));
        until("the scale is asked for", () -> window.label("rust-figure").text().contains("No scale"));
        clickCorners(canvas, CARD);
        until("the area stands there", () -> window.label("rust-figure").text().contains("quarter coins"));
        assertThat(held().traces()).as("nothing is kept before it is asked").isEmpty();
        withControl(KeyEvent.VK_ENTER);

        Trace trace = kept();
        assertThat(trace.zone()).as("from the photo's only pin").isEqualTo(HOOD);
        assertThat(trace.kind()).isEqualTo(TraceKind.HOLE);
        assertThat(trace.outline().shell()).hasSize(4);
        assertThat(((KnownRectangle) trace.scale()).widthMm()).isEqualTo(85.60);
        assertThat(mm2(trace)).isCloseTo(60 * 45, within(0.03 * 60 * 45));

        withControl(KeyEvent.VK_Z);
        until("undo takes it out of the visit", () -> held().traces().isEmpty());
    }

    private void press(int key, int times) {
        for (int i = 0; i < times; i++) {
            robot.pressAndReleaseKeys(key);
        }
    }

    /** A rectangle by arrows of 8 pixels of the screen from where the cross-hair is; Enter at each corner. */
    private void box(int right, int down) {
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        press(KeyEvent.VK_RIGHT, right);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        press(KeyEvent.VK_DOWN, down);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        press(KeyEvent.VK_LEFT, right);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
    }

    @Test
    void aPatchIsOutlinedChangedAndKeptByKeysAlone() {
        toPatch();
        robot.pressAndReleaseKeys(KeyEvent.VK_O);
        box(8, 6);
        press(KeyEvent.VK_RIGHT, 3);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        robot.pressAndReleaseKeys(KeyEvent.VK_BACK_SPACE);
        robot.pressAndReleaseKeys(KeyEvent.VK_C);
        until("the scale is asked for", () -> window.label("rust-figure").text().contains("No scale"));
        press(KeyEvent.VK_RIGHT, 10);
        box(8, 6);
        until("the area stands there", () -> window.label("rust-figure").text().contains("bank card"));
        withControl(KeyEvent.VK_ENTER);
        assertThat(mm2(kept())).as("as large as the card").isCloseTo(85.60 * 53.98, within(1.0));

        robot.pressAndReleaseKeys(KeyEvent.VK_F2);
        robot.pressAndReleaseKeys(KeyEvent.VK_N);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        withControl(KeyEvent.VK_LEFT);
        robot.pressAndReleaseKeys(KeyEvent.VK_ENTER);
        withControl(KeyEvent.VK_ENTER);
        until("the changed outline is kept", () -> mm2(held().traces().get(0).value()) > 85.60 * 53.98 * 1.2);
        assertThat(held().traces()).hasSize(1);
    }

    @Test
    void escapeLeavesStepByStepAndUndoBringsTheOutlineBack() {
        toPatch();
        robot.pressAndReleaseKeys(KeyEvent.VK_O);
        box(8, 6);
        robot.pressAndReleaseKeys(KeyEvent.VK_C);
        press(KeyEvent.VK_ESCAPE, 2);
        until("the outline is away", () -> window.label("rust-figure").text().isBlank());
        withControl(KeyEvent.VK_Z);
        until("it is back", () -> window.label("rust-figure").text().contains("No scale"));
        assertThat(held().traces()).isEmpty();
    }

    @Test
    void aWideRegionBecomesTheOutlineOfThePatchByItsColor() {
        PhotoCanvas canvas = toPatch();
        robot.pressAndReleaseKeys(KeyEvent.VK_O);
        clickCorners(
                canvas,
                new Rectangle2D.Double(
                        PATCH.getX() - 50, PATCH.getY() - 40, PATCH.getWidth() + 90, PATCH.getHeight() + 100));
        robot.pressAndReleaseKeys(KeyEvent.VK_C);
        clickCorners(canvas, CARD);
        robot.pressAndReleaseKeys(KeyEvent.VK_R);
        robot.pressKey(KeyEvent.VK_ALT);
        robot.pressAndReleaseKeys(KeyEvent.VK_4);
        robot.releaseKey(KeyEvent.VK_ALT);
        until(
                "the rust is painted over",
                () -> window.label("share-figure").text().startsWith("Painted over"));
        window.button("share-outlines").click();
        Trace trace = kept();
        assertThat(trace.kind()).as("Alt and 4 is not 4").isEqualTo(TraceKind.SURFACE);
        assertThat(mm2(trace)).isCloseTo(60 * 45, within(0.03 * 60 * 45));
        assertThat(trace.note().orElseThrow()).contains("by color").doesNotContain("%");
    }

    @Test
    void oneKeyStatesThatAZoneIsCleanAndTheTableFollows() {
        toPatch();
        window.comboBox("rust-which").selectItem(1);
        until(
                "zones never looked at are listed",
                () -> window.table("rust-zones").rowCount() > 50);
        int before = window.table("rust-zones").rowCount();
        window.table("rust-zones").selectRows(0);
        robot.pressAndReleaseKeys(KeyEvent.VK_F9);
        until("it is stated", () -> held().statements().size() == 1);
        assertThat(held().statements().get(0).value().what()).isEqualTo(Facets.of(Condition.NO_RUST));
        until("one zone less", () -> window.table("rust-zones").rowCount() == before - 1);
    }
}
