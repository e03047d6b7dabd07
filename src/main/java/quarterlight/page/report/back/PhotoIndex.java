package quarterlight.page.report.back;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.findings.Findings;
import quarterlight.page.CaptureTimeText;
import quarterlight.page.report.text.ReportContent;
import quarterlight.page.report.text.Shots;
import quarterlight.visit.photo.PhotoId;

/** Every photo of a report by its number: file, when it was taken, and the hash by which its original can be told. */
public final class PhotoIndex {
    private PhotoIndex() {}

    public static List<ReportContent.PhotoRow> of(Findings car, Shots shots) {
        Map<PhotoId, Shots.Shot> first = new LinkedHashMap<>();
        shots.all().forEach(shot -> first.putIfAbsent(shot.frame().photo(), shot));
        List<ReportContent.PhotoRow> rows = new ArrayList<>();
        first.forEach((id, shot) -> car.visit()
                .photo(id)
                .ifPresent(photo -> rows.add(new ReportContent.PhotoRow(
                        Optional.of(new ReportContent.Link(shot.id(), shot.number())),
                        shot.file(),
                        CaptureTimeText.words(
                                car.times(), id, car.visit().facts().date()),
                        photo.file().sha256().hex()))));
        return rows;
    }
}
