package quarterlight.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quarterlight.car.ZoneId;
import quarterlight.table.VisitFixture;
import quarterlight.visit.photo.MediaFacts;
import quarterlight.visit.photo.MediaHeader;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.photo.Sha256;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.statement.StatementDetails;

/** What of a visit a buyer gets while a paper is held back, and what once it is released. */
class WithheldFilesTest {
    private static final PhotoId PAPER = new PhotoId(1);
    private static final PhotoId PICTURE = new PhotoId(2);
    private static final ZoneId HOOD = new ZoneId("hood");
    private static final ZoneId ROOF = new ZoneId("roof");

    private static Photo photo(PhotoId id, MediaKind kind) {
        return new Photo(
                id,
                new PhotoFile(
                        "file " + id,
                        "originals/file-" + id,
                        new Sha256(String.format("%064x", id.value())),
                        1,
                        kind,
                        "any",
                        MediaHeader.NONE,
                        OptionalDouble.empty(),
                        List.of(),
                        MediaFacts.NONE),
                Optional.empty());
    }

    private static VisitRecord visit(
            MediaKind kind, List<Recorded<BuyerRelease>> released, ReportExclusion... leftOut) {
        Statement statement = new Statement(
                HOOD,
                Facets.of(Condition.DAMAGED),
                "Dented.",
                Optional.empty(),
                Optional.empty(),
                Optional.of(PAPER),
                Optional.of(2.0),
                List.of(PICTURE),
                StatementDetails.NONE);
        return new VisitParts(
                        VisitParts.facts(VisitFixture.usual().record().facts().car(), ZoneOffset.UTC))
                .photos(List.of(photo(PAPER, kind), photo(PICTURE, MediaKind.PHOTO)))
                .pins(VisitParts.rows(List.of(VisitParts.pin(PAPER, HOOD), VisitParts.pin(PICTURE, HOOD))))
                .statements(VisitParts.rows(List.of(statement)))
                .leftOut(VisitParts.rows(List.of(leftOut)))
                .released(released)
                .record();
    }

    @Test
    void nothingPointsAtWhatIsHeldBack() {
        for (MediaKind kind : List.of(MediaKind.PAPER, MediaKind.SOUND, MediaKind.WORDS, MediaKind.SIDECAR)) {
            VisitRecord open = visit(kind, List.of(), ReportExclusion.of(PAPER), ReportExclusion.of(ROOF))
                    .forBuyer();
            assertThat(open.photos()).extracting(Photo::id).containsExactly(PICTURE);
            assertThat(open.pins()).extracting(row -> row.value().photo()).containsExactly(PICTURE);
            Statement statement = open.statements().get(0).value();
            assertThat(statement.text()).isEqualTo("Dented.");
            assertThat(statement.photos()).containsExactly(PICTURE);
            assertThat(statement.atSeconds())
                    .as("a page of the paper is no moment of the photo")
                    .isEmpty();
            assertThat(open.leftOut()).singleElement().isEqualTo(open.leftOut().get(0));
            assertThat(open.leftOut().get(0).value().zone()).contains(ROOF);
        }
    }

    @Test
    void whatIsReleasedOrShotGoesOutWhole() {
        VisitRecord released = visit(MediaKind.PAPER, VisitParts.rows(List.of(new BuyerRelease(PAPER))));
        assertThat(released.forBuyer()).isEqualTo(released);
        VisitRecord film = visit(MediaKind.FILM, List.of());
        assertThat(film.forBuyer()).isEqualTo(film);
        VisitRecord other = visit(MediaKind.PAPER, VisitParts.rows(List.of(new BuyerRelease(PICTURE))));
        assertThat(other.forBuyer().photos()).hasSize(1);
    }

    @Test
    void whatIsLeftOutStaysWithAllThatIsToldOfIt() {
        VisitRecord photo =
                visit(MediaKind.PHOTO, List.of(), ReportExclusion.of(PAPER)).forBuyer();
        assertThat(photo.photos()).extracting(Photo::id).containsExactly(PICTURE);
        assertThat(photo.leftOut()).as("so that pages can say how many").hasSize(1);
        VisitRecord zone =
                visit(MediaKind.PHOTO, List.of(), ReportExclusion.of(HOOD)).forBuyer();
        assertThat(zone.statements()).isEmpty();
        assertThat(zone.pins()).isEmpty();
        assertThat(zone.photos()).as("photos of nothing but the zone").isEmpty();
    }
}
